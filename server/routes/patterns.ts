import type { FastifyInstance } from 'fastify';
import { explainAnswer } from '../../item-bank/patterns/explain-answer.ts';
import { describeExplanation } from '../../item-bank/patterns/explanation-text.ts';
import { patterns } from '../../item-bank/patterns/index.ts';
import type { AnswerExplanation, PatternList } from '../../item-bank/types.ts';
import { readAnswer } from '../answers.ts';
import { answerJson, pathParameters, type RouteSchema } from '../open-api.ts';
import type { Store } from '../store/open-store.ts';
import { idParameter, versionParameter } from './shared.ts';

const schemas = {
	list: {
		summary: 'List the error patterns',
		response: { 200: answerJson('Every pattern.', 'pattern-list') },
	},
	explain: {
		summary: 'Say what an answer to an item is consistent with',
		params: pathParameters({ id: idParameter }),
		querystring: {
			type: 'object',
			additionalProperties: false,
			required: ['answer'],
			properties: {
				answer: { type: 'string', minLength: 1, maxLength: 20, description: 'A number, or the letter of an option.' },
				version: versionParameter,
			},
		},
		response: { 200: answerJson('Patterns, and pairs of patterns.', 'answer-explanation') },
	},
} satisfies Record<string, RouteSchema>;

/** GET /api/patterns and GET /api/items/{id}/explanation */
export function addPatternRoutes(app: FastifyInstance, store: Store): void {
	app.get(
		'/api/patterns',
		{ schema: schemas.list },
		async (): Promise<PatternList> =>
			patterns.map(({ id, name, sentence, source }) => ({ id, name, sentence, source })),
	);
	app.get<{ Params: { id: string }; Querystring: { answer: string; version?: number } }>(
		'/api/items/:id/explanation',
		{ schema: schemas.explain },
		async ({ params, query }): Promise<AnswerExplanation> => {
			const { item } = await store.items.get(params.id, query.version);
			const explanation = explainAnswer(item, readAnswer(query.answer));
			return { ...explanation, lines: describeExplanation(explanation) };
		},
	);
}
