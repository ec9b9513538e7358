import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { compile, type JSONSchema } from 'json-schema-to-typescript';
import { projectRoot } from './project-root.ts';

const schemaFolder = join(projectRoot, 'schemas/json');

/** TypeScript text of every shape in schemas/json, all properties and arrays readonly; item-bank/types.ts must equal it. */
export async function generateTypes(): Promise<string> {
	const files = readdirSync(schemaFolder)
		.filter((name) => name.endsWith('.schema.json'))
		.sort();
	const all: JSONSchema = {
		title: 'AllShapes',
		type: 'object',
		additionalProperties: false,
		properties: Object.fromEntries(files.map((name) => [name.replace('.schema.json', ''), { $ref: name }])),
	};
	const text = await compile(all, 'AllShapes', {
		cwd: `${schemaFolder}/`,
		bannerComment: '// Generated from schemas/json by `npm run types`. Edit the schemas, not this file.',
		additionalProperties: false,
		ignoreMinAndMaxItems: true,
		style: { useTabs: true, singleQuote: true, printWidth: 120 },
		$refOptions: {
			resolve: {
				file: {
					read: (file: { url: string }) => prepareSchema(readFileSync(join(schemaFolder, basename(file.url)), 'utf8')),
				},
			},
		},
	} as never);
	return text
		.replace(/export interface AllShapes \{[^}]*\}\n/, '')
		.replace(/^(\s+)((?:'[^']+'|[\w$]+)\??: )/gm, '$1readonly $2')
		.replace(/((?:[\w$]+|\([^()]*\)))((?:\[\])+)/g, (_match, type: string, brackets: string) =>
			readonlyArray(type, brackets),
		);
}

function readonlyArray(type: string, brackets: string): string {
	return brackets === '[]' ? `readonly ${type}[]` : `readonly (${readonlyArray(type, brackets.slice(2))})[]`;
}

/** Without $id (which would name the types) and without descriptions beside a $ref (which would copy the type). */
function prepareSchema(text: string): string {
	return JSON.stringify(JSON.parse(text), (key, value: unknown) => {
		if (key === '$id') return undefined;
		if (typeof value === 'object' && value !== null && '$ref' in value) return { $ref: value.$ref };
		return value;
	});
}

if (basename(process.argv[1] ?? '').startsWith('generate-types')) {
	writeFileSync(join(projectRoot, 'item-bank/types.ts'), await generateTypes());
}
