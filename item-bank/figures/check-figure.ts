import type { Problem } from '../problem.ts';
import type { CountersFigure, Figure } from '../types.ts';
import { checkNumberLine } from './check-number-line.ts';

/**
 * What a figure that fits figure.schema.json still cannot be: more rings than pairs, marks off the line or off its ticks,
 * numbers written over each other. Paths are JSON pointers into the figure. A figure without problems can be drawn.
 */
export function checkFigure(figure: Figure): readonly Problem[] {
	switch (figure.kind) {
		case 'counters':
			return checkCounters(figure);
		case 'counter-groups':
			return [];
		case 'number-line':
			return checkNumberLine(figure);
		default:
			return figure satisfies never;
	}
}

function checkCounters(figure: CountersFigure): readonly Problem[] {
	const { plus, minus, ringedPairs = 0, addedPairs = 0, removed } = figure;
	const problems: Problem[] = [];
	if (plus + minus + addedPairs === 0) {
		const message = 'expected at least one counter, found 0 plus, 0 minus and no added pairs';
		problems.push({ code: 'figure-without-counters', path: '', message });
	}
	if (ringedPairs > Math.min(plus, minus)) {
		const message = `expected at most ${Math.min(plus, minus)} ringed pairs among ${plus} plus and ${minus} minus, found ${ringedPairs}`;
		problems.push({ code: 'figure-ringed-too-many', path: '/ringedPairs', message });
	}
	if (removed !== undefined && removed.count > figure[removed.sign] + addedPairs) {
		const there = figure[removed.sign] + addedPairs;
		const message = `expected at most ${there} ${removed.sign} counters taken away, as many as are drawn, found ${removed.count}`;
		problems.push({ code: 'figure-removed-too-many', path: '/removed/count', message });
	}
	return problems;
}
