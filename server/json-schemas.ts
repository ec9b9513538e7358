import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import type { Problem } from '../item-bank/problem.ts';
import { projectRoot } from './project-root.ts';
import { describeErrors } from './shape-problems.ts';

/** A JSON Schema as plain data. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/** Every schema in schemas/json by its file name, such as 'item.schema.json'. */
export const jsonSchemas: ReadonlyMap<string, JsonSchema> = readSchemas(join(projectRoot, 'schemas/json'));

/** Checks documents as they are; nothing is converted, filled in or dropped. */
const strictAjv = createAjv(false);

/** Checks query strings and path parameters, which arrive as text: "2" becomes 2, one value becomes a list of one. */
const textAjv = createAjv('array');

/** What a document has against a schema: an empty list means that it fits. */
export function checkShape(schema: string, document: unknown): readonly Problem[] {
	const validate = strictAjv.getSchema(schema);
	if (!validate) throw new Error(`no schema named ${schema}`);
	return validate(document) ? [] : describeErrors(validate.errors ?? [], document);
}

/** Compiles the schema of one part of a request; isText says that values arrive as text. */
export function compileSchema(schema: JsonSchema, isText: boolean): ValidateFunction {
	return (isText ? textAjv : strictAjv).compile(schema);
}

function readSchemas(folder: string): ReadonlyMap<string, JsonSchema> {
	return new Map(
		readdirSync(folder)
			.filter((file) => file.endsWith('.schema.json'))
			.sort()
			.map((file) => [file, JSON.parse(readFileSync(join(folder, file), 'utf8')) as JsonSchema]),
	);
}

function createAjv(coerceTypes: false | 'array'): Ajv2020 {
	const ajv = new Ajv2020({
		coerceTypes,
		removeAdditional: false,
		useDefaults: false,
		allErrors: true,
		discriminator: true,
		strict: true,
		strictTypes: false,
		strictRequired: false,
		allowUnionTypes: true,
		verbose: false,
	});
	for (const schema of jsonSchemas.values()) ajv.addSchema(prepareSchema(schema) as JsonSchema);
	return ajv;
}

/**
 * Says of every union whose branches are told apart by "kind" that they are, so that problems come from the branch that
 * was meant and not from all of them. Says of lists without repeats what type their entries have where a reference hides
 * it: ajv then needs a time that grows with the list and not with its square.
 */
function prepareSchema(schema: unknown, root: unknown = schema): unknown {
	if (Array.isArray(schema)) return schema.map((part) => prepareSchema(part, root));
	if (typeof schema !== 'object' || schema === null) return schema;
	const entries = Object.entries(schema).map(([key, value]) => [key, prepareSchema(value, root)] as const);
	const prepared: JsonSchema = Object.fromEntries(entries);
	if ('oneOf' in schema && Array.isArray(schema.oneOf) && schema.oneOf.every((branch) => hasKind(branch, root))) {
		return { ...prepared, type: 'object', discriminator: { propertyName: 'kind' } };
	}
	const type =
		'uniqueItems' in schema && 'items' in schema ? scalarTypeOf(resolveReference(schema.items, root)) : undefined;
	return type === undefined ? prepared : { ...prepared, items: { ...(prepared.items as JsonSchema), type } };
}

/** The type of a schema whose values are all text or all numbers. */
function scalarTypeOf(schema: unknown): unknown {
	if (typeof schema !== 'object' || schema === null) return undefined;
	if ('type' in schema) return ['string', 'integer', 'number'].includes(String(schema.type)) ? schema.type : undefined;
	const isText =
		'enum' in schema && Array.isArray(schema.enum) && schema.enum.every((value) => typeof value === 'string');
	return isText ? 'string' : undefined;
}

function hasKind(branch: unknown, root: unknown): boolean {
	const schema = resolveReference(branch, root);
	if (typeof schema !== 'object' || schema === null || !('properties' in schema)) return false;
	const { properties } = schema;
	return typeof properties === 'object' && properties !== null && 'kind' in properties;
}

/** What a schema that is only a reference refers to, within its file or in another. */
function resolveReference(schema: unknown, root: unknown): unknown {
	if (typeof schema !== 'object' || schema === null || !('$ref' in schema)) return schema;
	const [file = '', pointer = ''] = String(schema.$ref).split('#');
	return pointer
		.split('/')
		.slice(1)
		.reduce<unknown>(
			(node, step) => (node as Record<string, unknown> | undefined)?.[step],
			file === '' ? root : jsonSchemas.get(file),
		);
}
