import type { FastifyInstance } from 'fastify';
import type { GroupCreation } from '../../item-bank/types.ts';
import { answerJson, pathParameters, type RouteSchema, schemaNamed } from '../open-api.ts';
import type { Store } from '../store/open-store.ts';
import { idParameter, underField } from './shared.ts';

const schemas = {
	list: {
		summary: 'List the class groups',
		response: {
			200: {
				description: 'All groups, by name.',
				content: { 'application/json': { schema: { type: 'array', items: schemaNamed('group-entry') } } },
			},
		},
	},
	add: {
		summary: 'Add a class group with its student codes',
		body: schemaNamed('group-creation'),
		response: { 201: answerJson('The group as kept.', 'group-entry') },
	},
	get: {
		summary: 'Show one class group',
		params: pathParameters({ id: idParameter }),
		response: { 200: answerJson('The group.', 'group-entry') },
	},
} satisfies Record<string, RouteSchema>;

/** Routes below /api/groups. */
export function addGroupRoutes(app: FastifyInstance, store: Store): void {
	app.get('/api/groups', { schema: schemas.list }, () => store.groups.list());
	app.post<{ Body: GroupCreation }>('/api/groups', { schema: schemas.add }, async ({ body }, reply) => {
		const entry = await underField('group', store.groups.add(body));
		return reply.code(201).header('location', `/api/groups/${entry.id}`).send(entry);
	});
	app.get<{ Params: { id: string } }>('/api/groups/:id', { schema: schemas.get }, ({ params }) =>
		store.groups.get(params.id),
	);
}
