import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { projectRoot } from '../server/project-root.ts';

interface SourceFile {
	readonly path: string;
	readonly text: string;
	readonly imports: readonly { readonly from: string; readonly isType: boolean }[];
}

const importPattern =
	/(?:^|\n)\s*(?:import|export)\s+(type\s)?[^'";]*?from\s+'([^']+)'|(?:^|\n)\s*import\s+'([^']+)'|\bimport\(\s*'([^']+)'\s*\)/g;

function readSources(folder: string): readonly SourceFile[] {
	return readdirSync(join(projectRoot, folder), { recursive: true, encoding: 'utf8' })
		.filter((name) => name.endsWith('.ts'))
		.map((name) => {
			const path = join(folder, name);
			const text = readFileSync(join(projectRoot, path), 'utf8');
			const imports = [...text.matchAll(importPattern)].map((match) => {
				const target = match[2] ?? match[3] ?? match[4] ?? '';
				const from = target.startsWith('.')
					? relative(projectRoot, resolve(projectRoot, dirname(path), target))
					: target;
				return { from, isType: match[1] !== undefined };
			});
			return { path, text, imports };
		});
}

/** Imports of the files that break a rule, as "file -> import". */
function breaches(
	files: readonly SourceFile[],
	isBreach: (from: string, isType: boolean) => boolean,
): readonly string[] {
	return files.flatMap(({ path, imports }) =>
		imports.filter(({ from, isType }) => isBreach(from, isType)).map(({ from }) => `${path} -> ${from}`),
	);
}

const core = readSources('item-bank');
const server = readSources('server');
const web = readSources('web').filter(({ path }) => path !== 'web/vite.config.ts');

test('the scan sees imports at all', () => {
	expect(core.flatMap(({ imports }) => imports).length).toBeGreaterThan(20);
	expect(server.flatMap(({ imports }) => imports).length).toBeGreaterThan(20);
});

test('the core imports nothing but itself', () => {
	expect(breaches(core, (from) => !from.startsWith('item-bank/'))).toEqual([]);
});

test('the core has no clock, no randomness and no global state of the machine', () => {
	const forbidden =
		/\b(Math\.random|Date\b(?!\s*\|)|performance\.|setTimeout|setInterval|crypto\.|process\.|globalThis)/;
	const code = core.filter(({ path }) => path !== 'item-bank/types.ts');
	expect(
		code.filter(({ text }) => forbidden.test(text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, ''))).map(({ path }) => path),
	).toEqual([]);
});

test('the server imports the core and itself, never the browser part or the tests', () => {
	expect(breaches(server, (from) => from.startsWith('web/') || from.startsWith('tests/'))).toEqual([]);
});

test('qti, cartridge, print, assembly, results and drawing know neither fastify nor the store', () => {
	const pure = server.filter(({ path }) => /^server\/(qti|cartridge|print|assembly|results|drawing)\//.test(path));
	expect(pure.length).toBeGreaterThan(5);
	const isForbidden = (from: string) =>
		/^(fastify|@fastify\/|kysely|better-sqlite3)|^server\/(store|routes|app|main|cli)/.test(from);
	expect(breaches(pure, isForbidden)).toEqual([]);
});

test('SQL and its libraries stay in the store', () => {
	const outside = server.filter(({ path }) => !path.startsWith('server/store/'));
	expect(breaches(outside, (from) => /^(kysely|better-sqlite3)/.test(from))).toEqual([]);
});

test('the browser part takes only types from the server, and values from the core and its own packages', () => {
	const isBreach = (from: string, isType: boolean) =>
		from.startsWith('node:') ||
		from.startsWith('tests/') ||
		(from.startsWith('server/') && !(isType && from === 'server/api.ts'));
	expect(breaches(web, isBreach)).toEqual([]);
});

test('a source file stays under 300 lines, tables of standards apart', () => {
	const code = [...core, ...server, ...web].filter(({ text }) => !/^export const \w+: Framework = \{/m.test(text));
	const long = code.filter(({ path, text }) => path !== 'item-bank/types.ts' && text.split('\n').length > 301);
	expect(long.map(({ path }) => path)).toEqual([]);
});

test('the top level holds what the layout names and nothing else', () => {
	const allowed =
		/^(README\.md|DEVELOPERS\.md|package\.json|package-lock\.json|tsconfig\.json|LICENSE|\.gitignore|\.ci|\.git|server|web|tests|schemas|item-bank|node_modules|dist|data)$/;
	expect(readdirSync(projectRoot).filter((name) => !allowed.test(name))).toEqual([]);
});
