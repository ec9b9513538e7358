import type { FastifyInstance } from 'fastify';
import { checkFigure } from '../../item-bank/figures/check-figure.ts';
import { describeFigure } from '../../item-bank/figures/describe-figure.ts';
import { drawFigure } from '../../item-bank/figures/draw-figure.ts';
import type { Figure, FigureDrawing } from '../../item-bank/types.ts';
import { writeSvg } from '../drawing/svg.ts';
import { answerJson, type RouteSchema, schemaNamed } from '../open-api.ts';
import { RequestError } from '../request-errors.ts';

const schema: RouteSchema = {
	summary: 'Draw a figure and describe it in words',
	body: schemaNamed('figure'),
	response: { 200: answerJson('The drawing as SVG, and its description.', 'figure-drawing') },
};

/** POST /api/figures/drawing; nothing is kept. */
export function addFigureRoutes(app: FastifyInstance): void {
	app.post<{ Body: Figure }>('/api/figures/drawing', { schema }, async ({ body }): Promise<FigureDrawing> => {
		const problems = checkFigure(body);
		if (problems.length > 0) {
			const message = `this figure cannot be drawn: ${problems[0]?.message}`;
			throw new RequestError({ code: 'content-refused', status: 400, message, problems });
		}
		return { svg: writeSvg(drawFigure(body).root), description: describeFigure(body) };
	});
}
