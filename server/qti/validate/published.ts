import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { projectRoot } from '../../project-root.ts';
import { getVersionFacts, type QtiVersion } from '../versions.ts';

/** A published schema of items and tests that is installed here. */
export interface PublishedSchema {
	readonly version: QtiVersion;
	/** Official address. */
	readonly address: string;
	/** Where it lies on this machine. */
	readonly file: string;
	/** Files on this machine by the address under which the schema imports them. */
	readonly imports: Readonly<Record<string, string>>;
}

/** Where published schemas are looked for: the folder given, else ZEROPAIR_SCHEMAS, else schemas/published. */
export function publishedFolder(given?: string): string {
	return resolve(given ?? process.env.ZEROPAIR_SCHEMAS ?? join(projectRoot, 'schemas/published'));
}

/**
 * The published schema of a version in a folder or one folder below it, or undefined where it is not installed. What the
 * schema imports is resolved by the catalog.xml beside it (OASIS XML Catalogs: the entries `uri name … uri`).
 */
export function findPublishedSchema(folder: string, version: QtiVersion): PublishedSchema | undefined {
	const address = getVersionFacts(version).location;
	const name = address.slice(address.lastIndexOf('/') + 1);
	const place = foldersIn(folder).find((candidate) => existsSync(join(candidate, name)));
	if (place === undefined) return undefined;
	return { version, address, file: join(place, name), imports: readCatalog(place) };
}

function foldersIn(folder: string): readonly string[] {
	if (!existsSync(folder)) return [];
	const below = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
	return [folder, ...below.map((entry) => join(folder, entry.name)).sort()];
}

function readCatalog(folder: string): Readonly<Record<string, string>> {
	const file = join(folder, 'catalog.xml');
	if (!existsSync(file)) return {};
	const entries = readFileSync(file, 'utf8').matchAll(/<uri\s+name="([^"]+)"\s+uri="([^"]+)"/g);
	return Object.fromEntries([...entries].map(([, address = '', path = '']) => [address, join(folder, path)]));
}
