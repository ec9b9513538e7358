import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseExpression } from '../../../item-bank/expression/parse.ts';
import { checkFigure } from '../../../item-bank/figures/check-figure.ts';
import { expressionsShown, isShownBy } from '../../../item-bank/figures/expressions-shown.ts';
import { figureFor } from '../../../item-bank/figures/figure-for.ts';
import type { Figure } from '../../../item-bank/types.ts';
import { counters, groups, lines } from './figure-arbitraries.ts';

const countersFor = (text: string) => figureFor(parseExpression(text), 'counters');
const lineFor = (text: string, options = {}) => figureFor(parseExpression(text), 'number-line', options);

describe('counters', () => {
	test.each([
		['5 + (-3)', { kind: 'counters', plus: 5, minus: 3 }],
		['-3 + 5', { kind: 'counters', plus: 5, minus: 3 }],
		['-4', { kind: 'counters', plus: 0, minus: 4 }],
		['-3 - (-2)', { kind: 'counters', plus: 0, minus: 3, removed: { sign: 'minus', count: 2 } }],
		['5 - (-3)', { kind: 'counters', plus: 5, minus: 0, addedPairs: 3, removed: { sign: 'minus', count: 3 } }],
		['3 - 5', { kind: 'counters', plus: 3, minus: 0, addedPairs: 2, removed: { sign: 'plus', count: 5 } }],
		['0 - (-4)', { kind: 'counters', plus: 0, minus: 0, addedPairs: 4, removed: { sign: 'minus', count: 4 } }],
		['5 + (-3) - (-2)', { kind: 'counters', plus: 5, minus: 3, removed: { sign: 'minus', count: 2 } }],
		['4 × (-3)', { kind: 'counter-groups', groups: 4, each: 3, sign: 'minus' }],
		['-3 × 4', { kind: 'counter-groups', groups: 4, each: 3, sign: 'minus' }],
		['-2 + (-2) + (-2)', { kind: 'counter-groups', groups: 3, each: 2, sign: 'minus' }],
	])('show %s', (text, expected) => {
		expect(countersFor(text)).toEqual(expected);
	});

	test.each(['-3 + (-4)', '3 - 0', '0', '-3 × (-4)', '12 × 3', '25 + (-3)', '6 ÷ (-2)', '|-3|', '3 - 40'])(
		'cannot show %s',
		(text) => {
			expect(countersFor(text)).toBeUndefined();
		},
	);
});

describe('number lines', () => {
	test.each([
		['-3 + 5', { arrows: [-3, 5] }],
		['-3 - (-5)', { arrows: [-3, 5] }],
		['5 - 8', { arrows: [5, -8] }],
		['3 × (-4)', { arrows: [-4, -4, -4] }],
		['-7', { points: [{ at: -7 }] }],
		['|-3 - 5|', { points: [{ at: -3 }, { at: 5 }] }],
		['|-6|', { points: [{ at: -6 }, { at: 0 }] }],
	])('show %s', (text, expected) => {
		expect(lineFor(text)).toEqual({ kind: 'number-line', orientation: 'horizontal', ...expected });
	});

	test('start at the first number where six arrows are too few', () => {
		expect(lineFor('1 + 1 + 1 + 1 + 1 + 1 + 1')).toMatchObject({ start: 1, arrows: [1, 1, 1, 1, 1, 1] });
	});

	test('start at the first number when asked', () => {
		expect(lineFor('-6 + 9', { startsAtFirst: true, orientation: 'vertical' })).toEqual({
			kind: 'number-line',
			orientation: 'vertical',
			start: -6,
			arrows: [9],
		});
	});

	test('write lengths on arrows that end between ticks, unless told not to', () => {
		expect(lineFor('137 + (-85)')).toMatchObject({ arrows: [137, -85], arrowLabels: true });
		expect(lineFor('137 + (-85)', { arrowLabels: false })).toBeUndefined();
	});

	test.each([
		'0 + 5',
		'5 + 0',
		'2 × 3 + 1',
		'-3 × (-4)',
		'12 ÷ 3',
		'1 + 1 + 1 + 1 + 1 + 1 + 1 + 1',
		'700 + 600',
		'|2 - 2|',
	])('cannot show %s', (text) => {
		expect(lineFor(text)).toBeUndefined();
	});
});

test.each(['counters', 'number-line'] as const)(
	'whatever %s are built for is shown, and the figure is sound',
	(model) => {
		const number = fc.integer({ min: -30, max: 30 }).map((value) => (value < 0 ? `(${value})` : String(value)));
		const text = fc
			.tuple(number, fc.array(fc.tuple(fc.constantFrom('+', '-', '×', '÷'), number), { maxLength: 3 }), fc.boolean())
			.map(([first, rest, isDistance]) => {
				const sum = [first, ...rest.map(([sign, value]) => `${sign} ${value}`)].join(' ');
				return isDistance ? `|${sum}|` : sum;
			});
		let found = 0;
		fc.assert(
			fc.property(text, (written) => {
				const expression = parseExpression(written);
				const figure = figureFor(expression, model);
				if (figure === undefined) return;
				found += 1;
				expect(checkFigure(figure)).toEqual([]);
				expect(isShownBy(expression, figure)).toBe(true);
			}),
			{ numRuns: 400 },
		);
		expect(found).toBeGreaterThan(20);
	},
);

test('what a figure shows first can be drawn again in the same model', () => {
	fc.assert(
		fc.property(fc.oneof<fc.Arbitrary<Figure>[]>(counters, groups, lines), (figure) => {
			const [first] = expressionsShown(figure);
			fc.pre(first !== undefined && checkFigure(figure).length === 0);
			if (figure.kind === 'counters' && figure.removed)
				fc.pre(figure[figure.removed.sign] + 24 >= figure.removed.count);
			const again = first && figureFor(first, figure.kind === 'number-line' ? 'number-line' : 'counters');
			if (again === undefined) expect([figure, first]).toEqual('drawn again');
		}),
	);
});
