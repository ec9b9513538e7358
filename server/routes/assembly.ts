import type { FastifyInstance } from 'fastify';
import type { Problem } from '../../item-bank/problem.ts';
import type { Blueprint, BuildOrder, SwapOrder } from '../../item-bank/types.ts';
import { answerJson, pathParameters, type RouteSchema, schemaNamed } from '../open-api.ts';
import { buildFromBank, compareInBank, findSwaps } from '../planning.ts';
import { OrderContradictoryError } from '../planning-errors.ts';
import { examineBlueprint } from '../store/content-rules.ts';
import type { Store } from '../store/open-store.ts';
import { ContentRefusedError } from '../store/store-errors.ts';
import { idParameter, signalOfClose } from './shared.ts';

const schemas = {
	build: {
		summary: 'Build forms by a blueprint',
		description:
			'An answer of kind impossible is an answer, not an error: it names the requirements that conflict, the nearest forms and the items that are missing. The answer comes when the search has ended; until then nothing is told of its progress. The build ends, and nothing is kept, when whoever asked goes away.',
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
		description: 'Nothing is changed: to take an offer, put a new version of the form that names the item.',
		params: pathParameters({ id: idParameter }),
		body: schemaNamed('swap-order'),
		response: { 200: answerJson('The best first.', 'swap-offers') },
	},
} satisfies Record<string, RouteSchema>;

/** Routes that build forms, compare them and offer swaps. The clock says which day it is. */
export function addAssemblyRoutes(app: FastifyInstance, store: Store, clock: () => Date): void {
	app.post<{ Body: BuildOrder }>('/api/forms/build', { schema: schemas.build }, async ({ body }, reply) => {
		const { count, seed = '1', like, keep = false, ids, titles, makeMissing } = body;
		const blueprint = await findPlan(store, body);
		const today = clock().toISOString().slice(0, 10);
		const signal = signalOfClose(reply);
		return buildFromBank(store, { blueprint, count, seed, like, keep, ids, titles, today, makeMissing }, { signal });
	});
	app.get<{ Querystring: { first: string; second: string } }>(
		'/api/forms/compare',
		{ schema: schemas.compare },
		({ query: { first, second } }) => compareInBank(store, first, second),
	);
	app.post<{ Params: { id: string }; Body: SwapOrder }>(
		'/api/forms/:id/swap',
		{ schema: schemas.swap },
		async ({ params, body: { position, version, blueprint: id, notOnForms } }) => {
			const blueprint = id === undefined ? undefined : (await store.blueprints.get(id)).blueprint;
			return findSwaps(store, params.id, position, { version, blueprint, notOnForms });
		},
	);
}

/** The blueprint that an order names or brings. */
async function findPlan(store: Store, { blueprint, version, document }: BuildOrder): Promise<Blueprint> {
	if (blueprint === undefined ? document === undefined : document !== undefined) {
		const found = blueprint === undefined ? 'neither' : 'both';
		throw new OrderContradictoryError(`expected blueprint (an id) or document, found ${found}`);
	}
	if (document === undefined) return (await store.blueprints.get(blueprint ?? '', version)).blueprint;
	if (version !== undefined) throw new OrderContradictoryError('expected version only with blueprint, found document');
	const problems = examineBlueprint(document);
	if (problems.length > 0) throw new ContentRefusedError('blueprint', underDocument(problems));
	return document;
}

function underDocument(problems: readonly Problem[]): readonly Problem[] {
	return problems.map((problem) => ({ ...problem, path: `/document${problem.path}` }));
}
