import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { argv, exit, stdout } from 'node:process';
import { pathToFileURL } from 'node:url';
import { projectRoot } from './project-root.ts';
import { installSchemas, type SchemaList, SchemasError } from './qti/install-schemas.ts';
import { compilePublished, SchemaBrokenError } from './qti/validate/compile-published.ts';
import { closeValidation } from './qti/validate/pool.ts';
import { findPublishedSchema } from './qti/validate/published.ts';
import { qtiVersions } from './qti/versions.ts';

const usage = 'usage: npm run schemas [-- --schemas DIR]';

/** The published schemas that the project names, with what is known of them. */
export function readSchemaList(): SchemaList {
	return JSON.parse(readFileSync(join(projectRoot, 'schemas/published.json'), 'utf8'));
}

/** Fetches the published schemas into schemas/published, or looks at copies in a folder. Returns the exit code. */
export async function fetchSchemas(
	words: readonly string[],
	list: SchemaList = readSchemaList(),
	folder: string = join(projectRoot, 'schemas/published'),
	say: (line: string) => void = (line) => stdout.write(`${line}\n`),
): Promise<number> {
	const [flag, copies, ...rest] = words;
	if (flag === '--schemas' && copies !== undefined && rest.length === 0) return lookAtCopies(resolve(copies), say);
	if (words.length > 0) {
		say(usage);
		return 2;
	}
	try {
		const installed = await installSchemas(list, folder, say, (incoming) => compilePublished(incoming, say));
		for (const { schema, file, isVerified, sha256 } of installed) {
			say(`${schema}: ${file}, ${isVerified ? 'verified' : 'unverified'}, sha256 ${sha256}`);
		}
		say(`installed in ${folder}; every export is checked against them from now on`);
		return 0;
	} catch (error) {
		return sayWhy(error, say);
	} finally {
		await closeValidation();
	}
}

function sayWhy(error: unknown, say: (line: string) => void): number {
	if (!(error instanceof SchemasError || error instanceof SchemaBrokenError)) throw error;
	say(`${error.code}: ${error.message}`);
	return 1;
}

async function lookAtCopies(folder: string, say: (line: string) => void): Promise<number> {
	const found = qtiVersions.map((version) => ({ version, schema: findPublishedSchema(folder, version) }));
	for (const { version, schema } of found) {
		const imports = Object.keys(schema?.imports ?? {}).length;
		say(schema ? `${version}: ${schema.file}, with ${imports} imported addresses in its catalog` : `${version}: none`);
	}
	if (found.every(({ schema }) => !schema)) return 1;
	try {
		await compilePublished(folder, say);
	} catch (error) {
		return sayWhy(error, say);
	} finally {
		await closeValidation();
	}
	say(`set ZEROPAIR_SCHEMAS=${folder} to have every export checked against them`);
	return 0;
}

if (argv[1] !== undefined && import.meta.url === pathToFileURL(argv[1]).href) exit(await fetchSchemas(argv.slice(2)));
