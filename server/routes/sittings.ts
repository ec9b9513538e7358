import type { FastifyInstance } from 'fastify';
import type { PurgeOrder, RatingOrder, RescoringOrder, SittingCreation, StudentEntry } from '../../item-bank/types.ts';
import { answerJson, pathParameters, type RouteSchema, schemaNamed } from '../open-api.ts';
import { RequestError } from '../request-errors.ts';
import { enterAnswers, type Reader, readAgreement } from '../response-entry.ts';
import type { Store } from '../store/open-store.ts';
import { idParameter, underField } from './shared.ts';

const params = pathParameters({ id: idParameter });
/** Schema of a student code in an address. */
const codeParameter = { type: 'string', pattern: '^[A-Z0-9][A-Z0-9-]{1,23}$', description: 'Student code.' };

const schemas = {
	list: {
		summary: 'List the sittings',
		response: {
			200: {
				description: 'The newest day first.',
				content: { 'application/json': { schema: { type: 'array', items: schemaNamed('sitting-entry') } } },
			},
		},
	},
	add: {
		summary: 'Add a sitting',
		body: schemaNamed('sitting-creation'),
		response: { 201: answerJson('The sitting as kept.', 'sitting-entry') },
	},
	get: {
		summary: 'Show one sitting',
		params,
		response: { 200: answerJson('The sitting.', 'sitting-entry') },
	},
	answers: {
		summary: 'Show all responses of a sitting as a class grid',
		params,
		response: { 200: answerJson('Places, students, responses and scores.', 'sitting-answers') },
	},
	enter: {
		summary: 'Keep responses of one student entered by hand',
		description: 'All of them or none. Places not named stay as they are.',
		params: pathParameters({ id: idParameter, code: codeParameter }),
		body: schemaNamed('student-entry'),
		response: { 200: answerJson('The class grid.', 'sitting-answers') },
	},
	rescore: {
		summary: 'Score a sitting anew by the keys of another version of its form',
		description: 'The earlier scores are kept.',
		params,
		body: schemaNamed('rescoring-order'),
		response: { 200: answerJson('What changed.', 'rescoring-report') },
	},
	rate: {
		summary: 'Keep points a reader gives explanations by the rubric',
		params,
		body: schemaNamed('rating-order'),
		response: { 200: answerJson('How far two readers agree.', 'rating-agreement') },
	},
	agreement: {
		summary: 'Say how far two readers of explanations agree',
		description: 'With a reader: also the responses, with what that reader gave and nothing the other did.',
		params,
		querystring: {
			type: 'object',
			additionalProperties: false,
			properties: { reader: { enum: ['first', 'second', 'agreed'], description: 'Who scores.' } },
		},
		response: { 200: answerJson('Place by place.', 'rating-agreement') },
	},
	purge: {
		summary: 'Delete a sitting for good, also from backups',
		params,
		body: schemaNamed('purge-order'),
		response: { 200: answerJson('What was deleted, and where.', 'purge-report') },
	},
	student: {
		summary: 'Show everything the bank holds about a student code',
		params: pathParameters({ code: codeParameter }),
		response: { 200: answerJson('Groups, responses, scores and ratings.', 'student-record') },
	},
	purgeStudent: {
		summary: 'Delete everything about a student code for good, also from backups',
		params: pathParameters({ code: codeParameter }),
		body: schemaNamed('purge-order'),
		response: { 200: answerJson('What was deleted, and where.', 'purge-report') },
	},
} satisfies Record<string, RouteSchema>;

interface ById {
	readonly Params: { readonly id: string };
}
interface ByCode {
	readonly Params: { readonly code: string };
}

/** Routes below /api/sittings and /api/students. */
export function addSittingRoutes(app: FastifyInstance, store: Store): void {
	const { sittings, responses, ratings } = store;
	app.get('/api/sittings', { schema: schemas.list }, () => sittings.list());
	app.post<{ Body: SittingCreation }>('/api/sittings', { schema: schemas.add }, async ({ body }, reply) => {
		const entry = await underField('sitting', sittings.add(body));
		return reply.code(201).header('location', `/api/sittings/${entry.id}`).send(entry);
	});
	app.get<ById>('/api/sittings/:id', { schema: schemas.get }, ({ params }) => sittings.get(params.id));
	app.get<ById>('/api/sittings/:id/answers', { schema: schemas.answers }, ({ params }) => responses.grid(params.id));
	app.put<{ Params: { id: string; code: string }; Body: StudentEntry }>(
		'/api/sittings/:id/students/:code',
		{ schema: schemas.enter },
		async ({ params, body }) => {
			await enterAnswers(store, params.id, params.code, body);
			return responses.grid(params.id);
		},
	);
	app.post<ById & { Body: RescoringOrder }>(
		'/api/sittings/:id/rescore',
		{ schema: schemas.rescore },
		({ params, body }) => responses.rescore(params.id, body),
	);
	app.post<ById & { Body: RatingOrder }>(
		'/api/sittings/:id/ratings',
		{ schema: schemas.rate },
		async ({ params, body }) => {
			await ratings.rate(params.id, body);
			return readAgreement(store, params.id);
		},
	);
	app.get<ById & { Querystring: { readonly reader?: Reader } }>(
		'/api/sittings/:id/ratings',
		{ schema: schemas.agreement },
		({ params, query }) => readAgreement(store, params.id, query.reader),
	);
	app.post<ById & { Body: PurgeOrder }>('/api/sittings/:id/purge', { schema: schemas.purge }, ({ params, body }) => {
		confirm(params.id, body);
		return store.purge({ sitting: params.id }, body.backups);
	});
	app.get<ByCode>('/api/students/:code', { schema: schemas.student }, ({ params }) => store.readStudent(params.code));
	app.post<ByCode & { Body: PurgeOrder }>(
		'/api/students/:code/purge',
		{ schema: schemas.purgeStudent },
		({ params, body }) => {
			confirm(params.code, body);
			return store.purge({ student: params.code }, body.backups);
		},
	);
}

function confirm(wanted: string, { confirm: typed }: PurgeOrder): void {
	if (typed === wanted) return;
	const message = `expected "${wanted}" once more to confirm, found "${typed}"`;
	throw new RequestError({ code: 'confirmation-missing', status: 400, message });
}
