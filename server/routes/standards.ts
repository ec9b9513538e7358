import type { FastifyInstance } from 'fastify';
import { findFramework } from '../../item-bank/standards/code.ts';
import { frameworks } from '../../item-bank/standards/frameworks.ts';
import type { FrameworkList, Supply, SupplyQuery } from '../../item-bank/types.ts';
import { answerJson, pathParameters, type RouteSchema, schemaNamed } from '../open-api.ts';
import { RequestError } from '../request-errors.ts';
import type { SupplyCount } from '../store/item-search.ts';
import type { Store } from '../store/open-store.ts';

const schemas = {
	list: {
		summary: 'List the frameworks',
		response: { 200: answerJson('Every framework and edition the bank knows.', 'framework-list') },
	},
	supply: {
		summary: 'Show the standards of a framework with the supply of items',
		description:
			'Counts are per standard and model type, of approved items unless another status is asked for; an item counts once, under its lead alignment in this framework. Repeat a field to allow several values.',
		params: pathParameters({
			framework: { type: 'string', maxLength: 40, description: 'Id of the framework.' },
			edition: { type: 'string', maxLength: 20, description: 'Its edition.' },
		}),
		querystring: schemaNamed('supply-query'),
		response: { 200: answerJson('The standards in framework order.', 'supply') },
	},
} satisfies Record<string, RouteSchema>;

/** Routes below /api/standards. */
export function addStandardRoutes(app: FastifyInstance, store: Store): void {
	app.get(
		'/api/standards',
		{ schema: schemas.list },
		async (): Promise<FrameworkList> =>
			frameworks.map(({ id, edition, name, place, note, standards }) => ({
				framework: id,
				edition,
				name,
				place,
				...(note === undefined ? {} : { note }),
				standards: standards.length,
			})),
	);
	app.get<{ Params: { framework: string; edition: string }; Querystring: SupplyQuery }>(
		'/api/standards/:framework/:edition',
		{ schema: schemas.supply },
		async ({ params, query }): Promise<Supply> => {
			const framework = findFramework(params.framework, params.edition);
			if (!framework) {
				const message = `expected a framework and edition of the bank, found "${params.framework} ${params.edition}"`;
				throw new RequestError({ code: 'framework-unknown', status: 404, message });
			}
			const counts = await store.items.supply(framework.id, framework.edition, query);
			return {
				framework: framework.id,
				edition: framework.edition,
				name: framework.name,
				standards: framework.standards.map(
					({ isOwnCode: _own, labelSource: _source, uri: _uri, guid: _guid, ...standard }) => ({
						...standard,
						...countSupply(counts.filter(({ code }) => code === standard.code)),
					}),
				),
			};
		},
	);
}

function countSupply(counts: readonly SupplyCount[]): Pick<Supply['standards'][number], 'supply' | 'total'> {
	const of = (model: SupplyCount['model']): number => counts.find((cell) => cell.model === model)?.count ?? 0;
	return {
		supply: {
			symbols: of('symbols'),
			counters: of('counters'),
			'number-line': of('number-line'),
			story: of('story'),
			table: of('table'),
		},
		total: counts.reduce((sum, { count }) => sum + count, 0),
	};
}
