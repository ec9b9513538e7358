import { checkFigure } from '../../figures/check-figure.ts';
import { figuresOf } from '../../items/figures.ts';
import { commonPractice, type Rule } from '../rule.ts';

/** Figures that cannot be drawn, wherever they stand in an item. */
export const drawableFigure: Rule = {
	severity: 'stop',
	guideline: commonPractice,
	find: ({ item }) =>
		figuresOf(item).flatMap(({ path, figure }) =>
			checkFigure(figure).map((problem) => ({ ...problem, path: path + problem.path })),
		),
};
