import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../item-bank/expression/evaluate.ts';
import { parseExpression } from '../../../item-bank/expression/parse.ts';
import { printMathematics } from '../../../item-bank/expression/print.ts';
import { checkFigure } from '../../../item-bank/figures/check-figure.ts';
import { expressionsShown, isShownBy } from '../../../item-bank/figures/expressions-shown.ts';
import type { CountersFigure, Figure, NumberLineFigure } from '../../../item-bank/types.ts';
import { counters, groups, lines } from './figure-arbitraries.ts';

const set = (parts: Partial<CountersFigure>): Figure => ({ kind: 'counters', plus: 0, minus: 0, ...parts });
const line = (parts: Partial<NumberLineFigure>): Figure => ({
	kind: 'number-line',
	orientation: 'horizontal',
	...parts,
});
const shown = (figure: Figure) => expressionsShown(figure).map((expression) => printMathematics(expression));
const isShown = (text: string, figure: Figure) => isShownBy(parseExpression(text), figure);

describe('expressionsShown', () => {
	test.each<readonly [string, Figure, readonly string[]]>([
		['two rows', set({ plus: 5, minus: 3 }), ['5 + (−3)', '−3 + 5']],
		['one sign', set({ minus: 3 }), ['−3']],
		['crossed out', set({ minus: 3, removed: { sign: 'minus', count: 2 } }), ['−3 − (−2)']],
		['pairs added', set({ plus: 5, addedPairs: 3, removed: { sign: 'minus', count: 3 } }), ['5 − (−3)']],
		['only pairs added', set({ addedPairs: 3, removed: { sign: 'plus', count: 3 } }), ['0 − 3']],
		[
			'both signs, then crossed out',
			set({ plus: 5, minus: 3, removed: { sign: 'minus', count: 2 } }),
			['5 + (−3) − (−2)', '−3 + 5 − (−2)'],
		],
		['only pairs', set({ addedPairs: 3 }), []],
		['groups', { kind: 'counter-groups', groups: 3, each: 2, sign: 'minus' }, ['3 × (−2)', '−2 + (−2) + (−2)']],
		['one group', { kind: 'counter-groups', groups: 1, each: 2, sign: 'minus' }, ['1 × (−2)', '−2']],
		['two arrows', line({ arrows: [-3, 5] }), ['−3 + 5', '−3 − (−5)']],
		['an arrow from a start', line({ start: -6, arrows: [-2] }), ['−6 + (−2)', '−6 − 2']],
		['equal arrows', line({ arrows: [-3, -3] }), ['−3 + (−3)', '−3 − 3', '2 × (−3)']],
		['one arrow', line({ arrows: [-4] }), ['−4']],
		['one point', line({ points: [{ at: -4 }] }), ['−4']],
		['two points', line({ points: [{ at: -4 }, { at: 3 }] }), ['|−4 − 3|', '|3 − (−4)|', '3 − (−4)']],
		['a point and zero', line({ points: [{ at: -4 }, { at: 0 }] }), ['|−4 − 0|', '|0 − (−4)|', '0 − (−4)', '|−4|']],
		['three points', line({ points: [{ at: 1 }, { at: 2 }, { at: 3 }] }), []],
		['a bare line', line({}), []],
	])('%s', (_name, figure, expected) => {
		expect(shown(figure)).toEqual(expected);
	});

	test('all expressions of a figure have one value, and each is shown by it', () => {
		fc.assert(
			fc.property(fc.oneof<fc.Arbitrary<Figure>[]>(counters, groups, lines), (figure) => {
				fc.pre(checkFigure(figure).length === 0);
				const expressions = expressionsShown(figure);
				expect(new Set(expressions.map(evaluate)).size).toBeLessThanOrEqual(1);
				expect(expressions.filter((expression) => !isShownBy(expression, figure))).toEqual([]);
			}),
		);
	});

	test('the value of counters is plus less minus, less what is crossed out', () => {
		fc.assert(
			fc.property(counters, (figure) => {
				const [first] = expressionsShown(figure);
				fc.pre(first !== undefined);
				const crossed = (figure.removed?.count ?? 0) * (figure.removed?.sign === 'minus' ? -1 : 1);
				if (first) expect(evaluate(first)).toBe(figure.plus - figure.minus - crossed + 0);
			}),
		);
	});

	test('the value of arrows is where the last one ends', () => {
		fc.assert(
			fc.property(lines, (figure) => {
				const [first] = expressionsShown(figure);
				fc.pre(first !== undefined && figure.arrows !== undefined);
				const end = [...(figure.arrows ?? []), figure.start ?? 0].reduce((sum, length) => sum + length, 0);
				if (first) expect(evaluate(first)).toBe(end);
			}),
		);
	});
});

describe('isShownBy', () => {
	test('counters may be read in either order and as a difference', () => {
		const figure = set({ plus: 5, minus: 3 });
		expect(['5 + (-3)', '-3 + 5', '5 - 3', '-3 - (-5)', '(5 + (-3))'].filter((text) => !isShown(text, figure))).toEqual(
			[],
		);
		expect(['2', '5 + 3', '3 + (-5)', '-5 + 3', '|5 - 3|', '5 × (-3)'].filter((text) => isShown(text, figure))).toEqual(
			[],
		);
	});

	test('crossing out shows the subtraction, not the addition it is equal to', () => {
		const figure = set({ minus: 3, removed: { sign: 'minus', count: 2 } });
		expect(isShown('-3 - (-2)', figure)).toBe(true);
		expect(['-3 + 2', '-3 - 2', '-1', '-2 - (-3)'].filter((text) => isShown(text, figure))).toEqual([]);
	});

	test('arrows are read in their order, and as a difference', () => {
		const figure = line({ arrows: [-3, 5] });
		expect(['-3 + 5', '-3 - (-5)'].filter((text) => !isShown(text, figure))).toEqual([]);
		expect(['5 + (-3)', '5 - 3', '2', '-3 + 4 + 1'].filter((text) => isShown(text, figure))).toEqual([]);
	});

	test('parentheses around later terms make one arrow of them, which separate arrows do not show', () => {
		expect(isShown('(2 + 3) + 4', line({ arrows: [2, 3, 4] }))).toBe(true);
		expect(isShown('2 + (3 + 4)', line({ arrows: [2, 3, 4] }))).toBe(false);
	});

	test('products may be read either way round, but not with the signs changed over', () => {
		const figure: Figure = { kind: 'counter-groups', groups: 3, each: 2, sign: 'minus' };
		expect(['3 × (-2)', '-2 × 3', '-2 + (-2) + (-2)'].filter((text) => !isShown(text, figure))).toEqual([]);
		expect(['-3 × 2', '2 × (-3)', '3 × 2', '-6', '-3 + (-3)'].filter((text) => isShown(text, figure))).toEqual([]);
	});

	test('two points show their distance either way round, not the difference below zero', () => {
		const figure = line({ points: [{ at: -4 }, { at: 3 }] });
		expect(['|-4 - 3|', '|3 - (-4)|', '|3 + 4|', '3 - (-4)'].filter((text) => !isShown(text, figure))).toEqual([]);
		expect(['-4 - 3', '|-4| + 3', '|4 - 3|', '7'].filter((text) => isShown(text, figure))).toEqual([]);
	});

	test('an expression that no figure can show is shown by none', () => {
		const arrows = line({ arrows: [2, 3] });
		expect(isShownBy({ kind: 'unknown' }, arrows)).toBe(false);
		expect(['-(2 + 3)', '6 ÷ 2', '2 × 3 + 1'].filter((text) => isShown(text, arrows))).toEqual([]);
	});
});
