import { checkFigure } from '../../../item-bank/figures/check-figure.ts';
import type { Figure } from '../../../item-bank/types.ts';
import type { Draw } from './random-draw.ts';

/** A figure that can be drawn. */
export function randomFigure(draw: Draw): Figure {
	for (;;) {
		const figure = draw.pick([randomCounters, randomGroups, randomLine, randomPoints])(draw);
		if (checkFigure(figure).length === 0) return figure;
	}
}

function randomCounters(draw: Draw): Figure {
	const plus = draw.whole(0, 12);
	const minus = draw.whole(0, 12);
	const ringed = draw.chance(0.4) ? { ringedPairs: draw.whole(0, Math.min(plus, minus)) } : {};
	const removed = draw.chance(0.3)
		? { removed: { sign: draw.pick(['plus', 'minus'] as const), count: draw.whole(1, 4) } }
		: {};
	return { kind: 'counters', plus, minus, ...ringed, ...removed };
}

function randomGroups(draw: Draw): Figure {
	return {
		kind: 'counter-groups',
		groups: draw.whole(1, 6),
		each: draw.whole(1, 6),
		sign: draw.pick(['plus', 'minus'] as const),
	};
}

function randomLine(draw: Draw): Figure {
	const arrows = [draw.whole(-9, 9) || 3, draw.whole(-9, 9) || -2];
	const orientation = draw.pick(['horizontal', 'vertical'] as const);
	return { kind: 'number-line', orientation, start: draw.whole(-8, 8), arrows, arrowLabels: draw.chance(0.5) };
}

function randomPoints(draw: Draw): Figure {
	const at = [draw.whole(-10, -1), draw.whole(0, 10)];
	const points = at.map((value, index) => ({ at: value, label: 'AB'.charAt(index) }));
	return {
		kind: 'number-line',
		orientation: 'horizontal',
		from: -10,
		to: 10,
		tickEvery: 1,
		labels: 'ends-and-zero',
		points,
	};
}
