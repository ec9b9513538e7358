import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import type { Api } from '../../../server/api.ts';
import { openTestApp } from '../../helpers/test-app.ts';

/** Every key of the contract, so that a route missing here does not compile. */
const contract: Readonly<Record<keyof Api, true>> = {
	'GET /api/health': true,
	'GET /api/items': true,
	'POST /api/items': true,
	'POST /api/items/check': true,
	'GET /api/items/{id}': true,
	'PUT /api/items/{id}': true,
	'GET /api/items/{id}/history': true,
	'POST /api/items/{id}/approve': true,
	'POST /api/items/{id}/retire': true,
	'POST /api/forms/{id}/print': true,
	'GET /api/forms/{id}/blueprint': true,
	'POST /api/forms/{id}/swap': true,
	'POST /api/forms/build': true,
	'GET /api/forms/compare': true,
	'GET /api/blueprints': true,
	'POST /api/blueprints': true,
	'POST /api/blueprints/check': true,
	'GET /api/blueprints/{id}': true,
	'PUT /api/blueprints/{id}': true,
	'GET /api/items/{id}/explanation': true,
	'GET /api/patterns': true,
	'GET /api/families': true,
	'POST /api/items/make': true,
	'POST /api/items/{id}/variants': true,
	'GET /api/forms/{id}/review': true,
	'GET /api/standards': true,
	'GET /api/standards/{framework}/{edition}': true,
	'GET /api/forms': true,
	'POST /api/forms': true,
	'GET /api/forms/{id}': true,
	'PUT /api/forms/{id}': true,
	'POST /api/forms/{id}/give': true,
	'POST /api/forms/{id}/export': true,
	'GET /api/forms/{id}/answer-map': true,
	'GET /api/forms/{id}/carrying': true,
	'GET /api/groups': true,
	'POST /api/groups': true,
	'GET /api/groups/{id}': true,
	'POST /api/figures/drawing': true,
	'GET /api/grid-profiles': true,
	'GET /api/openapi.json': true,
};

async function readDocument() {
	const { send } = await openTestApp();
	return (await send('GET', '/api/openapi.json')).json;
}

test('the document lists the routes of the contract and no others', async () => {
	const document = await readDocument();
	const listed = Object.entries(document.paths).flatMap(([path, methods]) =>
		Object.keys(methods as object).map((method) => `${method.toUpperCase()} ${path}`),
	);
	expect(listed.sort()).toEqual(Object.keys(contract).sort());
});

test('every route has a summary, its parameters, answers and an id of its own', async () => {
	const document = await readDocument();
	const ids = new Set<string>();
	for (const [path, methods] of Object.entries<Record<string, Record<string, unknown>>>(document.paths)) {
		for (const [method, route] of Object.entries(methods)) {
			expect(route.summary, `${method} ${path}`).toMatch(/^[A-Z]/);
			const inPath = (route.parameters as { in: string; name: string }[]).filter((each) => each.in === 'path');
			expect(inPath.map(({ name }) => `{${name}}`)).toEqual(path.match(/\{\w+\}/g) ?? []);
			expect(Object.keys(route.responses as object).some((status) => status.startsWith('2'))).toBe(true);
			expect(route.responses).toHaveProperty('default');
			if (method !== 'get') expect(route.requestBody).toBeDefined();
			ids.add(String(route.operationId));
		}
	}
	expect(ids.size).toBe(Object.keys(contract).length);
});

test('every reference leads to a component, and every component is a schema', async () => {
	const document = await readDocument();
	const references = [...JSON.stringify(document).matchAll(/"\$ref":"([^"]+)"/g)].map((match) => match[1] ?? '');
	expect(references.length).toBeGreaterThan(50);
	for (const reference of references) {
		expect(document.components.schemas, reference).toHaveProperty([reference.replace('#/components/schemas/', '')]);
	}
	const ajv = new Ajv2020({ strict: false });
	ajv.addSchema({ $id: 'api', components: document.components });
	for (const name of Object.keys(document.components.schemas)) {
		expect(() => ajv.compile({ $ref: `api#/components/schemas/${name}` }), name).not.toThrow();
	}
});
