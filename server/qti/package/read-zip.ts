import { promisify } from 'node:util';
import { crc32 } from 'node:zlib';
import yauzl from 'yauzl';

/** Bounds on what is read from an archive that somebody else made. */
export interface ZipLimits {
	readonly entries: number;
	/** Bytes of one file after decompression. */
	readonly file: number;
	/** Bytes of all files after decompression. */
	readonly total: number;
}

/** Wide enough for ten thousand items with figures; a classroom form needs a hundredth of it. */
export const zipLimits: ZipLimits = { entries: 65_535, file: 64 * 2 ** 20, total: 512 * 2 ** 20 };

/** Why an archive cannot be read. */
export type ZipErrorCode =
	| 'package-not-zip'
	| 'package-path'
	| 'package-path-repeated'
	| 'package-too-large'
	| 'package-damaged';

/** An archive that cannot be read, or must not be. */
export class ZipError extends Error {
	readonly code: ZipErrorCode;
	/** Path within the archive, '' for the whole of it. */
	readonly file: string;

	constructor(code: ZipErrorCode, file: string, message: string, cause?: unknown) {
		super(message, cause === undefined ? undefined : { cause });
		this.name = 'ZipError';
		this.code = code;
		this.file = file;
	}
}

const openBuffer = promisify<Buffer, yauzl.Options, yauzl.ZipFile>(yauzl.fromBuffer);

/**
 * Reads every file of a ZIP archive into memory, by path; folders are left out. Refuses paths that leave the archive or are
 * absolute, repeated paths, encryption, wrong checksums and sizes beyond the limits. Throws {@link ZipError}.
 */
export async function readZip(bytes: Uint8Array, limits = zipLimits): Promise<ReadonlyMap<string, Buffer>> {
	const archive = await open(bytes);
	if (archive.entryCount > limits.entries) {
		const message = `expected at most ${limits.entries} files, found ${archive.entryCount}`;
		throw new ZipError('package-too-large', '', message);
	}
	const files = new Map<string, Buffer>();
	let total = 0;
	try {
		for await (const entry of archive.eachEntry()) {
			const path = entry.fileName;
			total += entry.uncompressedSize;
			if (entry.uncompressedSize > limits.file || total > limits.total) {
				const message = `expected at most ${limits.file} bytes a file and ${limits.total} in all, found more at ${path}`;
				throw new ZipError('package-too-large', path, message);
			}
			if (files.has(path)) {
				throw new ZipError('package-path-repeated', path, `expected each path once, found "${path}" again`);
			}
			if (!path.endsWith('/')) files.set(path, await readEntry(archive, entry));
		}
	} catch (error) {
		throw asZipError(error);
	}
	return files;
}

async function open(bytes: Uint8Array): Promise<yauzl.ZipFile> {
	const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	try {
		return await openBuffer(buffer, { lazyEntries: true, strictFileNames: true, validateEntrySizes: true });
	} catch (cause) {
		throw new ZipError('package-not-zip', '', `expected a ZIP archive, found: ${messageOf(cause)}`, cause);
	}
}

async function readEntry(archive: yauzl.ZipFile, entry: yauzl.Entry): Promise<Buffer> {
	if (entry.isEncrypted()) {
		throw new ZipError(
			'package-damaged',
			entry.fileName,
			`expected a readable file, found ${entry.fileName} encrypted`,
		);
	}
	const stream = await archive.openReadStreamPromise(entry);
	const chunks: Buffer[] = [];
	for await (const chunk of stream) chunks.push(chunk as Buffer);
	const content = Buffer.concat(chunks);
	if (crc32(content) !== entry.crc32) {
		const message = `expected the checksum of ${entry.fileName} to match, found another`;
		throw new ZipError('package-damaged', entry.fileName, message);
	}
	return content;
}

/** yauzl tells its reasons apart by message only. */
function asZipError(error: unknown): ZipError {
	if (error instanceof ZipError) return error;
	const message = messageOf(error);
	const isPath = /absolute path|invalid relative path|invalid characters in fileName/.test(message);
	return isPath
		? new ZipError('package-path', '', `expected relative paths with / between folders, found ${message}`, error)
		: new ZipError('package-damaged', '', `expected an intact archive, found: ${message}`, error);
}

function messageOf(error: unknown): string {
	return error instanceof Error ? error.message : String(error);
}
