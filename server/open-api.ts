import type { RouteOptions } from 'fastify';
import { type JsonSchema, jsonSchemas } from './json-schemas.ts';

/** What a route says of itself besides the schemas of its parts. */
export interface RouteSchema {
	readonly summary: string;
	readonly description?: string;
	readonly params?: JsonSchema;
	readonly querystring?: JsonSchema;
	readonly body?: JsonSchema;
	readonly response: Readonly<Record<number, ResponseSchema>>;
}

/** An answer: JSON of a schema, or content of other types. */
export interface ResponseSchema {
	readonly description: string;
	readonly content: Readonly<Record<string, { readonly schema: JsonSchema }>>;
}

/** An answer in JSON of one of the schemas in schemas/json, named without its ending. */
export function answerJson(description: string, name: string): ResponseSchema {
	return { description, content: { 'application/json': { schema: schemaNamed(name) } } };
}

/** Reference to a schema in schemas/json, named without its ending. */
export function schemaNamed(name: string): JsonSchema {
	return { $ref: `${name}.schema.json` };
}

/** Parameters of an address: each a schema. */
export function pathParameters(properties: Readonly<Record<string, JsonSchema>>): JsonSchema {
	return { type: 'object', additionalProperties: false, required: Object.keys(properties), properties };
}

/** The OpenAPI 3.1 document of the registered routes. */
export function describeApi(routes: readonly RouteOptions[]): JsonSchema {
	const paths: Record<string, Record<string, unknown>> = {};
	for (const route of routes) {
		const schema = route.schema as unknown as RouteSchema | undefined;
		if (!schema?.summary) continue;
		const path = route.url.replace(/:(\w+)/g, '{$1}');
		for (const method of [route.method].flat().filter((each) => each !== 'HEAD')) {
			paths[path] = { ...paths[path], [method.toLowerCase()]: describeRoute(method, path, schema) };
		}
	}
	return {
		openapi: '3.1.0',
		jsonSchemaDialect: 'https://json-schema.org/draft/2020-12/schema',
		info: {
			title: 'Zeropair',
			version: '1',
			description:
				'The bank of a mathematics department: items, forms, groups and exports. Answers on this machine only. Every error has one shape. Items and keys are confidential.',
		},
		servers: [{ url: '/' }],
		paths: Object.fromEntries(Object.entries(paths).sort(([a], [b]) => (a < b ? -1 : 1))),
		components: { schemas: Object.fromEntries(listComponents()) },
	};
}

function describeRoute(method: string, path: string, schema: RouteSchema): JsonSchema {
	const responses = Object.entries(schema.response).map(([status, { description, content }]) => [
		status,
		{
			description,
			content: Object.fromEntries(
				Object.entries(content).map(([type, part]) => [type, { schema: rewriteReferences(part.schema) }]),
			),
		},
	]);
	const error = { 'application/json': { schema: { $ref: '#/components/schemas/ErrorReport' } } };
	return {
		operationId: nameOperation(method, path),
		summary: schema.summary,
		...(schema.description === undefined ? {} : { description: schema.description }),
		parameters: [...listParameters(schema.params, 'path'), ...listParameters(schema.querystring, 'query')],
		...(schema.body
			? { requestBody: { required: true, content: { 'application/json': { schema: rewriteReferences(schema.body) } } } }
			: {}),
		responses: { ...Object.fromEntries(responses), default: { description: 'An error.', content: error } },
	};
}

function nameOperation(method: string, path: string): string {
	const words = path
		.split(/[/{}-]+/)
		.filter((word) => word !== '' && word !== 'api')
		.map((word) => word.replace(/[^a-zA-Z0-9]/g, '').replace(/^./, (letter) => letter.toUpperCase()));
	return `${method.toLowerCase()}${words.join('')}`;
}

function listParameters(schema: JsonSchema | undefined, place: 'path' | 'query'): readonly JsonSchema[] {
	if (!schema) return [];
	const whole = typeof schema.$ref === 'string' ? jsonSchemas.get(schema.$ref) : schema;
	const properties = (whole?.properties ?? {}) as Readonly<Record<string, JsonSchema>>;
	const required = (whole?.required ?? []) as readonly string[];
	return Object.entries(properties).map(([name, part]) => ({
		name,
		in: place,
		required: place === 'path' || required.includes(name),
		...(part.description === undefined ? {} : { description: part.description }),
		schema: rewriteReferences(part),
	}));
}

/** Every schema of schemas/json and every part that has a name of its own, by title. */
function listComponents(): readonly (readonly [string, unknown])[] {
	return [...jsonSchemas.entries()].flatMap(([file, schema]) => {
		const { $id: _id, $schema: _dialect, $defs, ...rest } = schema;
		const parts = Object.entries(($defs ?? {}) as Readonly<Record<string, unknown>>);
		return [
			[String(schema.title), rewriteReferences(rest, file)] as const,
			...parts.map(([name, part]) => [name, rewriteReferences(part, file)] as const),
		];
	});
}

/** Points references between files and into $defs at the components of the document. */
function rewriteReferences(schema: unknown, file = ''): unknown {
	if (Array.isArray(schema)) return schema.map((part) => rewriteReferences(part, file));
	if (typeof schema !== 'object' || schema === null) return schema;
	return Object.fromEntries(
		Object.entries(schema).map(([key, value]) =>
			key === '$ref' && typeof value === 'string'
				? [key, `#/components/schemas/${componentName(value, file)}`]
				: [key, rewriteReferences(value, file)],
		),
	);
}

function componentName(reference: string, file: string): string {
	const [target = '', pointer] = reference.split('#');
	if (pointer) return pointer.replace('/$defs/', '');
	return String(jsonSchemas.get(target === '' ? file : target)?.title);
}
