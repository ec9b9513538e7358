import type { Expression } from '../expression/tree.ts';
import type { CountersFigure, Figure, NumberLineFigure } from '../types.ts';
import { checkFigure } from './check-figure.ts';
import { isShownBy } from './expressions-shown.ts';
import { farthest } from './number-line-window.ts';
import { factorsOf, termsOf, withoutGroups } from './terms.ts';

/** How a number line for an expression is drawn. */
export interface FigureOptions {
	/** Horizontal when left out. */
	readonly orientation?: NumberLineFigure['orientation'];
	readonly labels?: NonNullable<NumberLineFigure['labels']>;
	/** Whether arrows carry their lengths; when left out, only if an arrow ends between ticks. */
	readonly arrowLabels?: boolean;
	/** Whether the first number is where the first arrow starts, instead of an arrow of its own; when left out, only where it must. */
	readonly startsAtFirst?: boolean;
}

/**
 * A figure that shows an expression, or undefined when the model cannot show it: counters do sums of one positive and one
 * negative number, equal groups, and taking away (adding the zero pairs it needs); number lines do sums, differences,
 * repeated addition, one number as a point and distances. Whatever is returned passes checkFigure and isShownBy.
 */
export function figureFor(
	expression: Expression,
	model: 'counters' | 'number-line',
	options: FigureOptions = {},
): Figure | undefined {
	const candidates = model === 'counters' ? countersFor(expression) : linesFor(expression, options);
	return candidates.find(
		(figure) => isWithinBounds(figure) && checkFigure(figure).length === 0 && isShownBy(expression, figure),
	);
}

function countersFor(expression: Expression): readonly Figure[] {
	const plain = withoutGroups(expression);
	const product = factorsOf(plain);
	if (product !== undefined) {
		return [product, [product[1], product[0]] as const].map(([groups, each]) => ({
			kind: 'counter-groups',
			groups,
			each: Math.abs(each),
			sign: each < 0 ? 'minus' : 'plus',
		}));
	}
	const terms = termsOf(plain);
	if (terms === undefined) return [];
	const candidates: Figure[] = [];
	if (plain.kind === 'operation' && plain.operator === 'subtract' && terms.at(-1) !== 0) {
		candidates.push(takeAway(terms.slice(0, -1), 0 - (terms.at(-1) ?? 0)));
	}
	const [first = 0] = terms;
	if (terms.length > 1 && terms.every((term) => term === first)) {
		const sign = first < 0 ? 'minus' : 'plus';
		candidates.push({ kind: 'counter-groups', groups: terms.length, each: Math.abs(first), sign });
	}
	candidates.push(countersOf(terms));
	return candidates;
}

function countersOf(terms: readonly number[]): CountersFigure {
	const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
	const plus = sum(terms.filter((term) => term > 0));
	const minus = 0 - sum(terms.filter((term) => term < 0));
	return { kind: 'counters', plus, minus };
}

function takeAway(terms: readonly number[], value: number): CountersFigure {
	const start = countersOf(terms);
	const count = Math.abs(value);
	const sign = value < 0 ? 'minus' : 'plus';
	const addedPairs = Math.max(0, count - start[sign]);
	return { ...start, ...(addedPairs > 0 ? { addedPairs } : {}), removed: { sign, count } };
}

function linesFor(expression: Expression, options: FigureOptions): readonly Figure[] {
	const line: NumberLineFigure = {
		kind: 'number-line',
		orientation: options.orientation ?? 'horizontal',
		...(options.labels === undefined ? {} : { labels: options.labels }),
	};
	const plain = withoutGroups(expression);
	if (plain.kind === 'number') return [{ ...line, points: [{ at: plain.value }] }];
	if (plain.kind === 'absolute') {
		const inside = withoutGroups(plain.of);
		const [first, second = 0, ...others] = inside.kind === 'number' ? [inside.value] : (termsOf(inside) ?? []);
		if (first === undefined || others.length > 0) return [];
		return [{ ...line, points: [{ at: first }, { at: 0 - second }] }];
	}
	const product = factorsOf(plain);
	const walks =
		product === undefined ? [termsOf(plain)] : [repeat(product[0], product[1]), repeat(product[1], product[0])];
	return walks.flatMap((walk) => (walk === undefined ? [] : arrowLines(line, walk, options)));
}

function arrowLines(line: NumberLineFigure, walk: readonly number[], options: FigureOptions): readonly Figure[] {
	const [first = 0, ...rest] = walk;
	const fromZero = { ...line, arrows: walk };
	const fromFirst = { ...line, start: first, arrows: rest };
	// Seven numbers need the first as a start, since a line takes six arrows.
	const drawn =
		options.startsAtFirst === undefined ? [fromZero, fromFirst] : [options.startsAtFirst ? fromFirst : fromZero];
	const sound = drawn.filter(({ arrows }) => arrows.length > 0 && arrows.length <= 6 && !arrows.includes(0));
	const { arrowLabels } = options;
	if (arrowLabels !== undefined) return sound.map((figure) => ({ ...figure, arrowLabels }));
	return [...sound, ...sound.map((figure) => ({ ...figure, arrowLabels: true }))];
}

function repeat(times: number, length: number): readonly number[] | undefined {
	return times >= 2 && times <= 6 ? Array.from({ length: times }, () => length) : undefined;
}

/** The bounds of figure.schema.json. */
function isWithinBounds(figure: Figure): boolean {
	switch (figure.kind) {
		case 'counters':
			return Math.max(figure.plus, figure.minus, figure.addedPairs ?? 0) <= 24;
		case 'counter-groups':
			return [figure.groups, figure.each].every((count) => count >= 1 && count <= 10);
		case 'number-line':
			return (figure.arrows ?? []).every((length) => Math.abs(length) <= farthest);
		default:
			return figure satisfies never;
	}
}
