import type { Figure } from '../types.ts';
import { describeCounterGroups, describeCounters } from './describe-counters.ts';
import { describeNumberLine } from './describe-number-line.ts';

/**
 * The text alternative of a figure: what is drawn, overview first, in the order it is drawn. It never states a total or a
 * value that a sighted student would have to work out.
 */
export function describeFigure(figure: Figure): string {
	switch (figure.kind) {
		case 'counters':
			return describeCounters(figure);
		case 'counter-groups':
			return describeCounterGroups(figure);
		case 'number-line':
			return describeNumberLine(figure);
		default:
			return figure satisfies never;
	}
}
