import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020, type ErrorObject, type ValidateFunction } from 'ajv/dist/2020.js';
import type { Problem } from '../item-bank/problem.ts';
import { projectRoot } from './project-root.ts';

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

/** Turns what ajv found into problems, at most 100, each place once. */
export function describeErrors(errors: readonly ErrorObject[], document: unknown): readonly Problem[] {
	const problems = errors
		.filter(({ keyword }) => keyword !== 'oneOf' && keyword !== 'not')
		.map((error) => describe(error, document));
	const all = problems.length > 0 ? problems : errors.map((error) => describe(error, document));
	const seen = new Set<string>();
	return all
		.filter(({ path, message }) => {
			const key = `${path} ${message}`;
			if (seen.has(key)) return false;
			seen.add(key);
			return true;
		})
		.slice(0, 100);
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
	for (const schema of jsonSchemas.values()) ajv.addSchema(nameBranches(schema) as JsonSchema);
	return ajv;
}

/**
 * Says of every union whose branches are told apart by "kind" that they are, so that problems come from the branch that
 * was meant and not from all of them.
 */
function nameBranches(schema: unknown, root: unknown = schema): unknown {
	if (Array.isArray(schema)) return schema.map((part) => nameBranches(part, root));
	if (typeof schema !== 'object' || schema === null) return schema;
	const entries = Object.entries(schema).map(([key, value]) => [key, nameBranches(value, root)] as const);
	const isUnion =
		'oneOf' in schema && Array.isArray(schema.oneOf) && schema.oneOf.every((branch) => hasKind(branch, root));
	return {
		...Object.fromEntries(entries),
		...(isUnion ? { type: 'object', discriminator: { propertyName: 'kind' } } : {}),
	};
}

function hasKind(branch: unknown, root: unknown): boolean {
	const schema = resolveLocal(branch, root);
	if (typeof schema !== 'object' || schema === null || !('properties' in schema)) return false;
	const { properties } = schema;
	return typeof properties === 'object' && properties !== null && 'kind' in properties;
}

function resolveLocal(schema: unknown, root: unknown): unknown {
	if (typeof schema !== 'object' || schema === null || !('$ref' in schema)) return schema;
	const path = String(schema.$ref);
	if (!path.startsWith('#/')) return undefined;
	return path
		.slice(2)
		.split('/')
		.reduce<unknown>((node, step) => (node as Record<string, unknown> | undefined)?.[step], root);
}

function describe(error: ErrorObject, document: unknown): Problem {
	const { keyword, instancePath: path, params } = error;
	const found = quote(valueAt(document, path));
	switch (keyword) {
		case 'additionalProperties':
			return {
				code: 'field-unknown',
				path: `${path}/${params.additionalProperty}`,
				message: `expected no field "${params.additionalProperty}" ${place(path)}`,
			};
		case 'required':
			return {
				code: 'field-missing',
				path: `${path}/${params.missingProperty}`,
				message: `expected a field "${params.missingProperty}" ${place(path)}, found none`,
			};
		case 'type':
			return {
				code: 'type-wrong',
				path,
				message: `expected ${[params.type].flat().join(' or ')} ${place(path)}, found ${found}`,
			};
		case 'enum':
			return {
				code: 'value-not-allowed',
				path,
				message: `expected one of ${(params.allowedValues as unknown[]).join(', ')} ${place(path)}, found ${found}`,
			};
		case 'const':
			return {
				code: 'value-not-allowed',
				path,
				message: `expected ${quote(params.allowedValue)} ${place(path)}, found ${found}`,
			};
		case 'discriminator':
			return {
				code: 'kind-unknown',
				path: `${path}/kind`,
				message: `expected a known kind ${place(path)}, found ${quote(params.tagValue)}`,
			};
		case 'minimum':
		case 'maximum':
			return {
				code: 'value-out-of-range',
				path,
				message: `expected a number ${params.comparison} ${params.limit} ${place(path)}, found ${found}`,
			};
		case 'minLength':
		case 'maxLength':
			return {
				code: 'text-length',
				path,
				message: `expected text of at ${keyword === 'minLength' ? 'least' : 'most'} ${params.limit} characters ${place(path)}, found ${found}`,
			};
		case 'minItems':
		case 'maxItems':
			return {
				code: 'list-length',
				path,
				message: `expected at ${keyword === 'minItems' ? 'least' : 'most'} ${params.limit} entries ${place(path)}`,
			};
		case 'uniqueItems':
			return {
				code: 'list-repeats',
				path,
				message: `expected every entry once ${place(path)}, but entries ${params.j} and ${params.i} are the same`,
			};
		case 'pattern':
			return {
				code: 'spelling-wrong',
				path,
				message: `expected text like ${params.pattern} ${place(path)}, found ${found}`,
			};
		default:
			return { code: 'shape-wrong', path, message: `${error.message ?? keyword} ${place(path)}, found ${found}` };
	}
}

function place(path: string): string {
	return path === '' ? 'at the top' : `at ${path}`;
}

function valueAt(document: unknown, path: string): unknown {
	return path
		.split('/')
		.slice(1)
		.map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'))
		.reduce<unknown>((node, step) => (node as Record<string, unknown> | undefined)?.[step], document);
}

function quote(value: unknown): string {
	const text = value === undefined ? 'nothing' : JSON.stringify(value);
	return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}
