import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Folder that holds package.json: schemas, migrations and demo data are read from below it. Works from source and from the build. */
export const projectRoot: string = findRoot(dirname(fileURLToPath(import.meta.url)));

function findRoot(from: string): string {
	const file = join(from, 'package.json');
	if (existsSync(file) && JSON.parse(readFileSync(file, 'utf8')).name === 'zeropair') return from;
	const parent = dirname(from);
	if (parent === from) throw new Error(`no package.json of zeropair above ${from}`);
	return findRoot(parent);
}
