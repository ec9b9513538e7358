import { describe, expect, test } from 'vitest';
import { subjectsOf } from '../../../item-bank/patterns/item-subjects.ts';
import { twoNumbers } from '../../../item-bank/patterns/subject.ts';
import type { Figure } from '../../../item-bank/types.ts';
import { makeChoice, makeGridded, makeMultipleChoice } from '../../helpers/items.ts';

const withFigure = (figure: Figure, expression: string) =>
	subjectsOf(makeChoice({ stem: [{ kind: 'figure', figure }], rule: { kind: 'same-value', expression } }));

describe('what a student may be working on', () => {
	test('is the expression, and on a grid the right answer', () => {
		expect(subjectsOf(makeGridded())).toEqual([twoNumbers('subtract', -3, -8), { kind: 'grid-entry', value: 5 }]);
		expect(subjectsOf(makeGridded({ expression: '-(-23)' }))[0]).toEqual({ kind: 'opposite-number', of: -23 });
		expect(subjectsOf(makeGridded({ expression: '|-23|' }))[0]).toEqual({ kind: 'absolute-value', of: -23 });
	});

	test('is the difference that finds an unknown', () => {
		expect(subjectsOf(makeGridded({ expression: '-8 + ? = 5' }))).toEqual([
			twoNumbers('subtract', 5, -8),
			{ kind: 'grid-entry', value: 13 },
		]);
	});

	test('is a distance, or the difference without its bars', () => {
		expect(
			subjectsOf(makeChoice({ rule: { kind: 'same-value', expression: '|-4 - (-10)|' } })).map(({ kind }) => kind),
		).toEqual(['expression', 'distance', 'two-numbers']);
	});

	test('is the set of counters left when some are taken away', () => {
		const figure = { kind: 'counters', plus: 0, minus: 2, addedPairs: 5, removed: { sign: 'plus', count: 5 } } as const;
		expect(withFigure(figure, '-2 - 5')).toEqual([
			twoNumbers('subtract', -2, 5),
			{ kind: 'counter-set', plus: 0, minus: 7 },
		]);
		const groups = { kind: 'counter-groups', groups: 4, each: 3, sign: 'minus' } as const;
		expect(withFigure(groups, '4 × (-3)')).toContainEqual({ kind: 'counter-set', plus: 0, minus: 12 });
	});

	test('is a walk along the arrows, or from zero to the point that is worth the answer', () => {
		const arrows = { kind: 'number-line', orientation: 'vertical', start: 4, arrows: [-12], tickEvery: 2 } as const;
		expect(withFigure(arrows, '4 + (-12)')).toContainEqual({ kind: 'walk', start: 4, moves: [-12], tickEvery: 2 });
		const points = {
			kind: 'number-line',
			orientation: 'horizontal',
			tickEvery: 1,
			points: [{ at: -6 }, { at: 6 }],
		} as const;
		expect(withFigure(points, '-6')).toEqual([{ kind: 'walk', start: 0, moves: [-6], tickEvery: 1 }]);
	});

	test('is no figure that is worth something else than the answer', () => {
		expect(withFigure({ kind: 'counters', plus: 4, minus: 9 }, '2 - 3')).toEqual([twoNumbers('subtract', 2, 3)]);
	});

	test('is nothing where statements are judged, words decide or the expression cannot be read', () => {
		expect(subjectsOf(makeMultipleChoice())).toEqual([]);
		expect(subjectsOf(makeChoice({ rule: { kind: 'stated', options: ['a'], reason: 'why' } }))).toEqual([]);
		expect(subjectsOf(makeGridded({ expression: '3 -' }))).toEqual([]);
	});
});
