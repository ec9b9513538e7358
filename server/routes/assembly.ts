import type { FastifyInstance } from 'fastify';
import type { BuildOrder, SwapOrder } from '../../item-bank/types.ts';
import { answerJson, pathParameters, type RouteSchema, schemaNamed } from '../open-api.ts';
import { buildFromBank, compareInBank, findSwaps, mainScope } from '../planning.ts';
import { RequestError } from '../request-errors.ts';
import type { Store } from '../store/open-store.ts';
import { idParameter, signalOfClose } from './shared.ts';

const schemas = {
	build: {
		summary: 'Build forms by a blueprint',
		description:
			'An answer of kind impossible is an answer, not an error: it names the requirements that conflict, the nearest forms and the items that are missing. The build ends when whoever asked goes away.',
		body: schemaNamed('build-order'),
		response: { 200: answerJson('What came of it.', 'build-result') },
	},
	compare: {
		summary: 'Compare two forms measure by measure',
		description: 'Forms built to one plan are not equated.',
		querystring: {
			type: 'object',
			additionalProperties: false,
			required: ['first', 'second'],
			properties: { first: idParameter, second: idParameter },
		},
		response: { 200: answerJson('Every measure with its value on each form.', 'balance-report') },
	},
	swap: {
		summary: 'Find items that could stand in the place of one',
		params: pathParameters({ id: idParameter }),
		body: schemaNamed('swap-order'),
		response: { 200: answerJson('The best first.', 'swap-offers') },
	},
} satisfies Record<string, RouteSchema>;

/** Routes that build forms, compare them and offer swaps. The clock says which day it is. */
export function addAssemblyRoutes(app: FastifyInstance, store: Store, clock: () => Date): void {
	app.post<{ Body: BuildOrder }>('/api/forms/build', { schema: schemas.build }, async (request, reply) => {
		const { blueprint, document, count, seed = '1', like, keep = false } = request.body;
		if ((blueprint === undefined) === (document === undefined)) {
			const found = blueprint === undefined ? 'neither' : 'both';
			const message = `expected blueprint (an id) or document, found ${found}`;
			throw new RequestError({ code: 'order-contradictory', status: 400, message });
		}
		const plan = document ?? (await store.blueprints.get(blueprint ?? '')).blueprint;
		const today = clock().toISOString().slice(0, 10);
		const signal = signalOfClose(reply);
		return buildFromBank(store, { blueprint: plan, count, seed, like, keep, today }, { signal });
	});
	app.get<{ Querystring: { first: string; second: string } }>(
		'/api/forms/compare',
		{ schema: schemas.compare },
		async ({ query: { first, second } }) =>
			compareInBank(store, [first, second], mainScope((await store.forms.get(first)).items)),
	);
	app.post<{ Params: { id: string }; Body: SwapOrder }>(
		'/api/forms/:id/swap',
		{ schema: schemas.swap },
		async ({ params, body: { position, version, blueprint } }) => {
			const plan = blueprint === undefined ? undefined : (await store.blueprints.get(blueprint)).blueprint;
			const { items } = await store.forms.get(params.id, version);
			return findSwaps(store, params.id, position, { version, blueprint: plan, scope: mainScope(items) });
		},
	);
}
