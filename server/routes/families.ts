import type { FastifyInstance } from 'fastify';
import { families } from '../../item-bank/families/index.ts';
import type { FamilyList, MadeItems, MakeOrder, VariantOrder } from '../../item-bank/types.ts';
import { makeInBank, makeVariants } from '../making.ts';
import { answerJson, pathParameters, type RouteSchema, schemaNamed } from '../open-api.ts';
import type { Store } from '../store/open-store.ts';
import { idParameter } from './shared.ts';

const made = { 200: answerJson('The items, with ids where they are kept, and why there are fewer.', 'made-items') };

const schemas = {
	list: {
		summary: 'List the families of items',
		response: { 200: answerJson('Every family at its newest version.', 'family-list') },
	},
	make: {
		summary: 'Make items of a family',
		description: 'The same order makes the same items, and keeps nothing twice. All are kept or none.',
		body: schemaNamed('make-order'),
		response: made,
	},
	vary: {
		summary: 'Make items of the same shape as one of the bank',
		description:
			'Same signs, crossing of zero, size band and error patterns. Where no family makes such items, says why.',
		params: pathParameters({ id: idParameter }),
		body: schemaNamed('variant-order'),
		response: made,
	},
} satisfies Record<string, RouteSchema>;

/** GET /api/families, POST /api/items/make, POST /api/items/{id}/variants */
export function addFamilyRoutes(app: FastifyInstance, store: Store): void {
	app.get('/api/families', { schema: schemas.list }, async (): Promise<FamilyList> => listFamilies());
	app.post<{ Body: MakeOrder }>(
		'/api/items/make',
		{ schema: schemas.make },
		({ body }): Promise<MadeItems> => makeInBank(store, body),
	);
	app.post<{ Params: { id: string }; Body: VariantOrder }>(
		'/api/items/:id/variants',
		{ schema: schemas.vary },
		({ params, body }): Promise<MadeItems> => makeVariants(store, params.id, body),
	);
}

/** What every family says of itself. */
export function listFamilies(): FamilyList {
	return families.map(({ findObstacle, make, ...facts }) => facts);
}
