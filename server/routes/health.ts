import type { FastifyInstance } from 'fastify';
import type { Health } from '../../item-bank/types.ts';
import { answerJson, type RouteSchema } from '../open-api.ts';

const schema: RouteSchema = {
	summary: 'Say that the service answers',
	response: { 200: answerJson('It does.', 'health') },
};

/** GET /api/health */
export function addHealthRoutes(app: FastifyInstance): void {
	app.get('/api/health', { schema }, async (): Promise<Health> => ({ status: 'ok' }));
}
