import type { FastifyInstance } from 'fastify';
import { gridProfiles } from '../../item-bank/responses/grid-profiles.ts';
import type { GridProfile } from '../../item-bank/types.ts';
import { type RouteSchema, schemaNamed } from '../open-api.ts';

const list = { type: 'array', items: schemaNamed('grid-profile') };
const schema: RouteSchema = {
	summary: 'List the answer grids',
	response: { 200: { description: 'Every grid profile.', content: { 'application/json': { schema: list } } } },
};

/** GET /api/grid-profiles */
export function addGridProfileRoutes(app: FastifyInstance): void {
	app.get('/api/grid-profiles', { schema }, async (): Promise<readonly GridProfile[]> => gridProfiles);
}
