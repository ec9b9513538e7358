import type { FastifyInstance } from 'fastify';
import { blueprintOf } from '../../item-bank/forms/blueprint-of.ts';
import type { BlueprintCreation, BlueprintRevision } from '../../item-bank/types.ts';
import { answerJson, pathParameters, type RouteSchema, schemaNamed } from '../open-api.ts';
import { finderOf, mainScope } from '../planning.ts';
import { examineBlueprint } from '../store/content-rules.ts';
import type { Store } from '../store/open-store.ts';
import { idParameter, underField, versionQuery } from './shared.ts';

const params = pathParameters({ id: idParameter });

const schemas = {
	list: {
		summary: 'List the blueprints',
		response: {
			200: {
				description: 'The newest version of each, by title.',
				content: { 'application/json': { schema: { type: 'array', items: schemaNamed('blueprint-entry') } } },
			},
		},
	},
	create: {
		summary: 'Keep a new blueprint',
		body: schemaNamed('blueprint-creation'),
		response: { 201: answerJson('The blueprint as kept.', 'blueprint-entry') },
	},
	check: {
		summary: 'Check a blueprint without keeping it',
		description: 'A document that is no blueprint at all is a problem too.',
		body: { type: 'object' },
		response: { 200: answerJson('What speaks against keeping it.', 'problem-list') },
	},
	get: {
		summary: 'Show one version of a blueprint',
		params,
		querystring: versionQuery,
		response: { 200: answerJson('The version.', 'blueprint-entry') },
	},
	revise: {
		summary: 'Keep a new version of a blueprint',
		description: 'Refused when the version it is based on is no longer the newest.',
		params,
		body: schemaNamed('blueprint-revision'),
		response: { 200: answerJson('The new version.', 'blueprint-entry') },
	},
	readOff: {
		summary: 'Read the blueprint off a form',
		params,
		querystring: versionQuery,
		response: { 200: answerJson('The plan the form follows.', 'blueprint') },
	},
} satisfies Record<string, RouteSchema>;

interface ById {
	readonly Params: { readonly id: string };
	readonly Querystring: { readonly version?: number };
}

/** Routes below /api/blueprints, and the blueprint of a form. */
export function addBlueprintRoutes(app: FastifyInstance, { blueprints, forms }: Store): void {
	app.get('/api/blueprints', { schema: schemas.list }, () => blueprints.list());
	app.post<{ Body: BlueprintCreation }>('/api/blueprints', { schema: schemas.create }, async ({ body }, reply) => {
		const entry = await underField('blueprint', blueprints.create(body));
		return reply.code(201).header('location', `/api/blueprints/${entry.id}`).send(entry);
	});
	app.post('/api/blueprints/check', { schema: schemas.check }, async ({ body }) => examineBlueprint(body));
	app.get<ById>('/api/blueprints/:id', { schema: schemas.get }, ({ params, query }) =>
		blueprints.get(params.id, query.version),
	);
	app.put<ById & { Body: BlueprintRevision }>('/api/blueprints/:id', { schema: schemas.revise }, ({ params, body }) =>
		underField('blueprint', blueprints.revise(params.id, body.baseVersion, body.blueprint)),
	);
	app.get<ById>('/api/forms/:id/blueprint', { schema: schemas.readOff }, async ({ params, query }) => {
		const { record, items } = await forms.get(params.id, query.version);
		return blueprintOf(record.form, finderOf(items), mainScope(items));
	});
}
