import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { buildApp } from '../server/app.ts';
import { commandNames } from '../server/cli/commands.ts';
import { projectRoot } from '../server/project-root.ts';
import { openTestStore } from './helpers/test-store.ts';

const developers = readFileSync(join(projectRoot, 'DEVELOPERS.md'), 'utf8');
const readme = readFileSync(join(projectRoot, 'README.md'), 'utf8');
const manifest = JSON.parse(readFileSync(join(projectRoot, 'package.json'), 'utf8')) as {
	readonly scripts: Readonly<Record<string, string>>;
	readonly dependencies: Readonly<Record<string, string>>;
};

/** Body rows of the first table under a heading, cell by cell, backticks dropped. */
function tableUnder(heading: string): readonly (readonly string[])[] {
	const section = developers.split(/^## /m).find((part) => part.startsWith(`${heading}\n`)) ?? '';
	const rows = section.split('\n').filter((line) => line.startsWith('|'));
	return rows.slice(2).map((line) =>
		line
			.split('|')
			.slice(1, -1)
			.map((cell) => cell.trim().replaceAll('`', '')),
	);
}

const firstCells = (heading: string): readonly string[] => tableUnder(heading).map(([cell]) => cell ?? '');

function filesBelow(folder: string, ending: string): readonly string[] {
	return readdirSync(join(projectRoot, folder), { recursive: true, encoding: 'utf8' })
		.filter((name) => name.endsWith(ending))
		.map((name) => join(folder, name))
		.sort();
}

const sourceText = ['item-bank', 'server']
	.flatMap((folder) => filesBelow(folder, '.ts'))
	.map((file) => readFileSync(join(projectRoot, file), 'utf8'));

describe('the map', () => {
	test('names every folder of the source, and no other', () => {
		const folders = ['item-bank', 'schemas', 'server', 'web', 'tests'].flatMap((top) => [
			top,
			...readdirSync(join(projectRoot, top))
				.map((name) => join(top, name))
				.filter((path) => statSync(join(projectRoot, path)).isDirectory()),
		]);
		const ignored = ['schemas/published'];
		expect([...firstCells('Map')].sort()).toEqual(folders.filter((folder) => !ignored.includes(folder)).sort());
	});
});

describe('the tables of DEVELOPERS.md', () => {
	test('list every route the service registers, and no other', async () => {
		const app = buildApp({ store: await openTestStore() });
		await app.ready();
		const { paths } = (await app.inject('/api/openapi.json')).json<{
			paths: Record<string, Record<string, unknown>>;
		}>();
		const routes = Object.entries(paths).flatMap(([path, methods]) =>
			Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`),
		);
		expect([...firstCells('Routes')].sort()).toEqual(routes.sort());
		await app.close();
	});

	test('list every problem and error code in the source, and no other', () => {
		const codePattern =
			/\bcode(?::|\s*=)\s*'([a-z][a-z0-9-]+)'|\b\w*(?:Error|[pP]roblem\w*|checkSchema|refuse\w*)\(\s*'([a-z]+(?:-[a-z0-9]+)+)'|^\t\| '([a-z]+-[a-z-]+)';?$/gm;
		const codes = new Set(
			sourceText.flatMap((text) => [...text.matchAll(codePattern)].flatMap((match) => match[1] ?? match[2] ?? [])),
		);
		expect([...firstCells('Problem codes')].sort()).toEqual([...codes].sort());
	});

	test('list every npm script, and no other', () => {
		expect([...firstCells('Scripts')].sort()).toEqual(Object.keys(manifest.scripts).sort());
	});

	test('list every dependency the product runs on, and no other', () => {
		expect([...firstCells('Dependencies')].sort()).toEqual(Object.keys(manifest.dependencies).sort());
	});

	test('list every test that reads something from outside, and only tests that exist', () => {
		const outside = filesBelow('tests', '.ts').filter((file) => {
			const text = readFileSync(join(projectRoot, file), 'utf8');
			return /\brequireOutside\(/.test(text) && file !== 'tests/helpers/reference.ts';
		});
		const listed = new Set(tableUnder('Outside checks').flatMap(([, , file]) => (file ?? '').split(/,\s*/)));
		for (const file of listed) expect(existsSync(join(projectRoot, file)), file).toBe(true);
		expect([...listed].filter((file) => outside.includes(file)).sort()).toEqual([...outside]);
	});
});

describe('the README', () => {
	test('gives the two commands, and every command of the command line', () => {
		expect(readme).toContain('npm ci && npm start');
		expect(readme).toContain('npm test');
		for (const name of commandNames) expect(readme, name).toContain(`zeropair -- ${name}`);
	});

	test('names the item kinds of the schema and no others', () => {
		const schema = JSON.parse(readFileSync(join(projectRoot, 'schemas/json/item.schema.json'), 'utf8')) as {
			readonly $defs: Readonly<
				Record<string, { readonly properties?: { readonly kind?: { readonly const?: string } } }>
			>;
		};
		const kinds = Object.entries(schema.$defs)
			.filter(([name]) => name.endsWith('Item'))
			.flatMap(([, definition]) => definition.properties?.kind?.const ?? []);
		const listed = /\*\*Items\*\* of these kinds: ([^.]+)\./.exec(readme)?.[1]?.split(/, | and /);
		expect(listed?.sort()).toEqual(kinds.sort());
	});
});
