import type { Problem } from '../problem.ts';
import type { NumberLineFigure } from '../types.ts';
import { textSize } from './marks.ts';
import { layScale, type NumberLineScale, offsetOf, standClear } from './number-line-scale.ts';
import { arrowStops, chooseWindow, type NumberLineWindow } from './number-line-window.ts';
import { textWidth } from './text-width.ts';

/** More ticks than this stand too close to count on paper. */
const mostTicks = 41;
/** Shortest arrow whose head leaves some shaft to see, px. */
const shortestArrow = 14;

/** The problems of a number line; see checkFigure. */
export function checkNumberLine(figure: NumberLineFigure): readonly Problem[] {
	const unused = checkUnused(figure);
	const zeroLength = checkLengths(figure);
	const window = chooseWindow(figure);
	const broken = checkWindow(figure, window);
	// Without a sound window there are no ticks to hold anything else against.
	if (zeroLength.length > 0 || broken.length > 0) return [...unused, ...zeroLength, ...broken];
	const scale = layScale(figure);
	return [...unused, ...checkLabels(figure, scale), ...checkArrows(figure, scale), ...checkPoints(figure, scale)];
}

function checkUnused(figure: NumberLineFigure): readonly Problem[] {
	if (figure.arrows !== undefined) return [];
	const problems: Problem[] = [];
	const found = (path: string, message: string) => problems.push({ code: 'figure-arrows-missing', path, message });
	if (figure.start !== undefined) found('/start', `expected arrows from the start ${figure.start}, found none`);
	if (figure.arrowLabels) found('/arrowLabels', 'expected arrows to label, found none');
	return problems;
}

function checkLengths(figure: NumberLineFigure): readonly Problem[] {
	return (figure.arrows ?? []).flatMap((length, index) => {
		const message = 'expected an arrow with a length, found one of length 0';
		return length === 0 ? [{ code: 'figure-arrow-zero', path: `/arrows/${index}`, message }] : [];
	});
}

function checkWindow(figure: NumberLineFigure, window: NumberLineWindow): readonly Problem[] {
	const { from, to, tickEvery } = window;
	const path = figure.to !== undefined ? '/to' : figure.from !== undefined ? '/from' : '';
	if (from >= to) {
		const message = `expected a line that runs from a smaller to a greater number, found ${from} to ${to}`;
		return [{ code: 'figure-window-reversed', path, message }];
	}
	const problems: Problem[] = [];
	if ((to - from) % tickEvery !== 0) {
		const message = `expected the last tick at the end of the line, found steps of ${tickEvery} from ${from} that miss ${to}`;
		problems.push({ code: 'figure-ticks-uneven', path, message });
	}
	if (from < 0 && to > 0 && from % tickEvery !== 0) {
		const message = `expected a tick at 0, found steps of ${tickEvery} from ${from} that miss it`;
		problems.push({ code: 'figure-zero-off-ticks', path, message });
	}
	const ticks = Math.floor((to - from) / tickEvery) + 1;
	if (ticks > mostTicks) {
		const message = `expected at most ${mostTicks} ticks, found ${ticks}: ${from} to ${to} in steps of ${tickEvery}`;
		problems.push({
			code: 'figure-ticks-too-many',
			path: figure.tickEvery === undefined ? path : '/tickEvery',
			message,
		});
	}
	return problems;
}

function checkLabels(figure: NumberLineFigure, scale: NumberLineScale): readonly Problem[] {
	const { labels } = figure;
	if (labels === undefined) return [];
	if (typeof labels === 'string') {
		if ((labels !== 'zero' && labels !== 'ends-and-zero') || scale.ticks.includes(0)) return [];
		const message = `expected 0 on the line to label, found a line from ${scale.from} to ${scale.to}`;
		return [{ code: 'figure-label-off-ticks', path: '/labels', message }];
	}
	const problems: Problem[] = labels.flatMap((value, index) => {
		const message = `expected labels on ticks, every ${scale.tickEvery} from ${scale.from} to ${scale.to}, found ${value}`;
		return scale.ticks.includes(value) ? [] : [{ code: 'figure-label-off-ticks', path: `/labels/${index}`, message }];
	});
	if (!standClear(scale, labels)) {
		const message = `expected labels with room between them, found ${labels.join(', ')} on ticks ${scale.spacing} px apart`;
		problems.push({ code: 'figure-labels-overlap', path: '/labels', message });
	}
	return problems;
}

function checkArrows(figure: NumberLineFigure, scale: NumberLineScale): readonly Problem[] {
	const problems: Problem[] = [];
	arrowStops(figure).forEach((stop, index) => {
		const path = index === 0 ? '/start' : `/arrows/${index - 1}`;
		const what = index === 0 ? 'the first arrow to start' : `arrow ${index} to end`;
		problems.push(...checkPlace(scale, stop, path, what));
		// A written length tells where an arrow ends; the start is told by its tick alone.
		if ((index === 0 || !figure.arrowLabels) && isOnLine(scale, stop) && !scale.ticks.includes(stop)) {
			const message = `expected ${what} on a tick, or arrow labels, found ${stop} with a tick every ${scale.tickEvery}`;
			problems.push({ code: 'figure-arrow-off-ticks', path, message });
		}
	});
	(figure.arrows ?? []).forEach((length, index) => {
		if ((Math.abs(length) / scale.tickEvery) * scale.spacing >= shortestArrow) return;
		const message = `expected an arrow long enough to see, found a length of ${length} with a tick every ${scale.tickEvery}`;
		problems.push({ code: 'figure-arrow-too-short', path: `/arrows/${index}`, message });
	});
	return problems;
}

function checkPoints(figure: NumberLineFigure, scale: NumberLineScale): readonly Problem[] {
	const points = figure.points ?? [];
	const problems: Problem[] = [];
	points.forEach((point, index) => {
		const path = `/points/${index}`;
		problems.push(...checkPlace(scale, point.at, `${path}/at`, `point ${point.label ?? index + 1}`));
		if (isOnLine(scale, point.at) && !scale.ticks.includes(point.at)) {
			const message = `expected a point on a tick, every ${scale.tickEvery} from ${scale.from}, found ${point.at}`;
			problems.push({ code: 'figure-point-off-ticks', path: `${path}/at`, message });
		}
		const earlier = points.slice(0, index);
		if (earlier.some((other) => other.at === point.at)) {
			const message = `expected points at different numbers, found two at ${point.at}`;
			problems.push({ code: 'figure-points-coincide', path: `${path}/at`, message });
		} else if (point.label !== undefined && earlier.some((other) => lettersTouch(scale, other, point))) {
			const message = `expected letters with room between them, found ${point.label} against its neighbour`;
			problems.push({ code: 'figure-labels-overlap', path: `${path}/label`, message });
		}
		if (point.label !== undefined && earlier.some((other) => other.label === point.label)) {
			const message = `expected a different letter for each point, found ${point.label} twice`;
			problems.push({ code: 'figure-point-label-repeated', path: `${path}/label`, message });
		}
	});
	return problems;
}

type Point = NonNullable<NumberLineFigure['points']>[number];

function lettersTouch(scale: NumberLineScale, a: Point, b: Point): boolean {
	if (a.label === undefined || b.label === undefined) return false;
	const width = (textWidth(a.label, textSize) + textWidth(b.label, textSize)) / 2;
	const room = scale.orientation === 'horizontal' ? width + 3 : textSize;
	return Math.abs(offsetOf(scale, a.at) - offsetOf(scale, b.at)) < room;
}

function checkPlace(scale: NumberLineScale, value: number, path: string, what: string): readonly Problem[] {
	if (isOnLine(scale, value)) return [];
	const message = `expected ${what} between ${scale.from} and ${scale.to}, found ${value}`;
	return [{ code: 'figure-outside-window', path, message }];
}

function isOnLine(scale: NumberLineScale, value: number): boolean {
	return value >= scale.from && value <= scale.to;
}
