import type { FastifyInstance, RouteOptions } from 'fastify';
import { describeApi, type RouteSchema } from '../open-api.ts';

const schema: RouteSchema = {
	summary: 'Describe every route',
	response: { 200: { description: 'OpenAPI 3.1.', content: { 'application/json': { schema: { type: 'object' } } } } },
};

/** GET /api/openapi.json, of all routes registered by the time it is asked. */
export function addOpenApiRoutes(app: FastifyInstance, routes: readonly RouteOptions[]): void {
	app.get('/api/openapi.json', { schema }, async () => describeApi(routes));
}
