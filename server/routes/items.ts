import type { FastifyInstance } from 'fastify';
import type { ItemCreation, ItemQuery, ItemRevision, VersionChoice } from '../../item-bank/types.ts';
import { findOut } from '../item-findings.ts';
import { answerJson, pathParameters, type RouteSchema, schemaNamed } from '../open-api.ts';
import type { Store } from '../store/open-store.ts';
import { idParameter, underField, versionQuery } from './shared.ts';

const params = pathParameters({ id: idParameter });

const schemas = {
	find: {
		summary: 'Find items',
		description:
			'Finds the newest version of each item and, beside a newer draft, the approved one. Repeat a field to allow several values.',
		querystring: schemaNamed('item-query'),
		response: { 200: answerJson('One page, the number of all hits, and counts per value.', 'item-page') },
	},
	create: {
		summary: 'Keep a new item as a draft',
		body: schemaNamed('item-creation'),
		response: { 201: answerJson('The draft, and what speaks against approving it.', 'item-saved') },
	},
	check: {
		summary: 'Check an item without keeping it',
		description: 'Answers with problems, key and worked steps; a document that is no item at all is a problem too.',
		body: { type: 'object' },
		response: { 200: answerJson('What the bank finds out.', 'item-findings') },
	},
	get: {
		summary: 'Show one version of an item',
		params,
		querystring: versionQuery,
		response: { 200: answerJson('The version.', 'item-entry') },
	},
	history: {
		summary: 'Show every version of an item and what was done when',
		params,
		response: { 200: answerJson('Newest first.', 'item-history') },
	},
	revise: {
		summary: 'Keep a new draft version of an item',
		description: 'Refused when the version it is based on is no longer the newest.',
		params,
		body: schemaNamed('item-revision'),
		response: { 200: answerJson('The draft, and what speaks against approving it.', 'item-saved') },
	},
	approve: {
		summary: 'Approve a draft version',
		description: 'Refused while a check finds a problem. The version approved before is retired.',
		params,
		body: schemaNamed('version-choice'),
		response: { 200: answerJson('The approved version.', 'item-entry') },
	},
	retire: {
		summary: 'Retire a draft or approved version',
		params,
		body: schemaNamed('version-choice'),
		response: { 200: answerJson('The retired version.', 'item-entry') },
	},
} satisfies Record<string, RouteSchema>;

interface ById {
	readonly Params: { readonly id: string };
}

/** Routes below /api/items. */
export function addItemRoutes(app: FastifyInstance, store: Store): void {
	const { items } = store;
	app.get<{ Querystring: ItemQuery }>('/api/items', { schema: schemas.find }, ({ query }) => items.find(query));
	app.post<{ Body: ItemCreation }>('/api/items', { schema: schemas.create }, async ({ body }, reply) => {
		const saved = await underField('item', items.create(body));
		return reply.code(201).header('location', `/api/items/${saved.record.id}`).send(saved);
	});
	app.post('/api/items/check', { schema: schemas.check }, async ({ body }) => findOut(body));
	app.get<ById & { Querystring: { version?: number } }>(
		'/api/items/:id',
		{ schema: schemas.get },
		({ params, query }) => items.get(params.id, query.version),
	);
	app.get<ById>('/api/items/:id/history', { schema: schemas.history }, ({ params }) => items.history(params.id));
	app.put<ById & { Body: ItemRevision }>('/api/items/:id', { schema: schemas.revise }, ({ params, body }) =>
		underField('item', items.revise(params.id, body.baseVersion, body.item)),
	);
	app.post<ById & { Body: VersionChoice }>('/api/items/:id/approve', { schema: schemas.approve }, ({ params, body }) =>
		items.approve(params.id, body.version),
	);
	app.post<ById & { Body: VersionChoice }>('/api/items/:id/retire', { schema: schemas.retire }, ({ params, body }) =>
		items.retire(params.id, body.version),
	);
}
