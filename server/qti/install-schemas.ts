import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** One published schema as schemas/published.json names it. */
export interface ListedSchema {
	readonly schema: string;
	readonly version: string;
	readonly address: string;
	/** Folder below schemas/published. */
	readonly folder: string;
	readonly bytes: number | null;
	readonly sha256: string | null;
	/** False where size and hash are hearsay: a difference is then told, not refused. */
	readonly isProven: boolean;
}

/** The contents of schemas/published.json. */
export interface SchemaList {
	/** Hosts that schemas and what they import may come from. */
	readonly hosts: readonly string[];
	readonly files: readonly ListedSchema[];
}

/** A file that was installed. */
export interface InstalledSchema {
	readonly schema: string;
	readonly address: string;
	/** Path below schemas/published. */
	readonly file: string;
	readonly bytes: number;
	readonly sha256: string;
	/** True where size and hash are those known from a source. */
	readonly isVerified: boolean;
}

/** Why schemas could not be installed. */
export type SchemasErrorCode =
	| 'schemas-unreachable'
	| 'schemas-refused'
	| 'schemas-broken-off'
	| 'schemas-too-large'
	| 'schemas-mismatch'
	| 'schemas-foreign-address';

/** Published schemas could not be installed; whatever was installed before is untouched. */
export class SchemasError extends Error {
	readonly code: SchemasErrorCode;
	readonly address: string;

	constructor(code: SchemasErrorCode, address: string, message: string, cause?: unknown) {
		super(message, cause === undefined ? undefined : { cause });
		this.name = 'SchemasError';
		this.code = code;
		this.address = address;
	}
}

// The largest published schema known to us has 18 MB.
const mostBytes = 64 * 2 ** 20;
const patience = 60_000;

/**
 * Fetches every listed schema with all it imports, checks size and hash where they are known, and installs them with an
 * OASIS catalog.xml that maps each address to its copy. A folder is put in place only when it is complete: broken
 * downloads leave nothing behind. What is fetched is tried before it is put in place. Throws {@link SchemasError} and what
 * the trial throws.
 */
export async function installSchemas(
	list: SchemaList,
	folder: string,
	say: (line: string) => void = () => {},
	tryFolder: (folder: string) => Promise<void> = async () => {},
): Promise<readonly InstalledSchema[]> {
	mkdirSync(folder, { recursive: true });
	const incoming = mkdtempSync(join(folder, '.incoming-'));
	try {
		const installed: InstalledSchema[] = [];
		for (const listed of list.files) installed.push(...(await fetchListed(listed, list.hosts, incoming, say)));
		await tryFolder(incoming);
		for (const { folder: name } of list.files) {
			const target = join(folder, name);
			if (existsSync(target)) renameSync(target, join(incoming, `old-${name}`));
			renameSync(join(incoming, name), target);
		}
		writeFileSync(join(folder, 'installed.json'), `${JSON.stringify(installed, undefined, '\t')}\n`);
		return installed;
	} finally {
		rmSync(incoming, { recursive: true, force: true });
	}
}

async function fetchListed(
	listed: ListedSchema,
	hosts: readonly string[],
	incoming: string,
	say: (line: string) => void,
): Promise<readonly InstalledSchema[]> {
	const main = new URL(listed.address);
	const waiting = [main.href];
	const installed = new Map<string, InstalledSchema>();
	for (let address = waiting.shift(); address !== undefined; address = waiting.shift()) {
		if (installed.has(address)) continue;
		const url = new URL(address);
		if (!hosts.includes(url.hostname)) {
			const message = `expected an address at ${hosts.join(', ')}, found ${address}`;
			throw new SchemasError('schemas-foreign-address', address, message);
		}
		const content = await fetchFile(address, say);
		const isMain = address === main.href;
		const sha256 = createHash('sha256').update(content).digest('hex');
		const isVerified = isMain && checkListed(listed, content.length, sha256, say);
		const name = isMain
			? url.pathname.slice(url.pathname.lastIndexOf('/') + 1)
			: `imports/${url.hostname}${url.pathname}`;
		const file = join(listed.folder, name);
		mkdirSync(dirname(join(incoming, file)), { recursive: true });
		writeFileSync(join(incoming, file), content);
		installed.set(address, { schema: listed.schema, address, file, bytes: content.length, sha256, isVerified });
		waiting.push(...importsOf(content.toString('utf8'), address));
	}
	writeFileSync(join(incoming, listed.folder, 'catalog.xml'), writeCatalog(listed, [...installed.values()]));
	return [...installed.values()];
}

/** Whether the file is the one known. A proven difference is refused; hearsay that differs is told. */
function checkListed(listed: ListedSchema, bytes: number, sha256: string, say: (line: string) => void): boolean {
	const known = [listed.bytes ?? bytes, listed.sha256 ?? sha256];
	const isSame = known[0] === bytes && known[1] === sha256;
	if (!isSame) {
		const message = `expected ${listed.bytes} bytes with sha256 ${listed.sha256} at ${listed.address}, found ${bytes} with ${sha256}`;
		if (listed.isProven) throw new SchemasError('schemas-mismatch', listed.address, message);
		say(`note: ${message}`);
	}
	return isSame && listed.isProven && listed.sha256 !== null;
}

async function fetchFile(address: string, say: (line: string) => void): Promise<Buffer> {
	const response = await reach(address);
	if (!response.ok || !response.body) {
		throw new SchemasError('schemas-refused', address, `expected ${address}, found status ${response.status}`);
	}
	const total = Number(response.headers.get('content-length') ?? 0);
	const chunks: Uint8Array[] = [];
	let done = 0;
	let told = 0;
	try {
		for await (const chunk of response.body) {
			chunks.push(chunk);
			done += chunk.length;
			if (done > mostBytes) {
				throw new SchemasError(
					'schemas-too-large',
					address,
					`expected at most ${mostBytes} bytes, found more at ${address}`,
				);
			}
			if (done - told >= 500_000) {
				told = done;
				say(`${address}: ${done} of ${total > 0 ? total : 'unknown'} bytes`);
			}
		}
	} catch (cause) {
		if (cause instanceof SchemasError) throw cause;
		const message = `expected all of ${address}, found it broken off after ${done} bytes`;
		throw new SchemasError('schemas-broken-off', address, message, cause);
	}
	say(`${address}: ${done} bytes`);
	return Buffer.concat(chunks);
}

async function reach(address: string): Promise<Response> {
	try {
		return await fetch(address, { signal: AbortSignal.timeout(patience) });
	} catch (cause) {
		const message = `expected an answer from ${address}, found none: this machine seems to be offline. Copies can be named with --schemas DIR or ZEROPAIR_SCHEMAS`;
		throw new SchemasError('schemas-unreachable', address, message, cause);
	}
}

/** Addresses that a schema imports, includes or redefines. */
function importsOf(xsd: string, base: string): readonly string[] {
	const elements = xsd
		.replace(/<!--[\s\S]*?-->/g, '')
		.matchAll(/<(?:\w+:)?(?:import|include|redefine)\b[^>]*\bschemaLocation\s*=\s*["']([^"']+)["']/g);
	return [...elements].map(([, location = '']) => new URL(location, base).href);
}

function writeCatalog(listed: ListedSchema, installed: readonly InstalledSchema[]): string {
	const entries = installed.map(
		({ address, file }) => `\t<uri name="${address}" uri="${file.slice(listed.folder.length + 1)}"/>\n`,
	);
	return `<?xml version="1.0" encoding="UTF-8"?>\n<catalog xmlns="urn:oasis:names:tc:entity:xmlns:xml:catalog">\n${entries.join('')}</catalog>\n`;
}
