import { describe, expect, test } from 'vitest';
import { answerOf, factsOf, keyPlaceOf, numbersOf } from '../../../item-bank/forms/asked.ts';
import { compareForms } from '../../../item-bank/forms/compare-forms.ts';
import { shapeOf } from '../../../item-bank/forms/shape.ts';
import { makeChoice, makeGridded, makeMultipleChoice } from '../../helpers/items.ts';
import { demoForms, demoPool, finderOf, recordsOf } from './sample-blueprints.ts';

const scope = { framework: 'teks-math', edition: '2012' };

describe('comparing forms made by hand', () => {
	const [a, b] = demoForms();
	const report = compareForms([a, b], finderOf(demoPool()), scope);
	const row = (label: string) => report.rows.find((one) => one.label === label);

	test('counts each measure on each form', () => {
		expect(row('items')).toMatchObject({ values: [20, 20], difference: 0 });
		expect(row('6.3(C) × counters')).toMatchObject({ group: 'cells', values: [4, 4] });
		expect(row('kind gridded')?.difference).toBe(0);
		expect(row('estimated difficulty, mean')?.values).toHaveLength(2);
	});

	test('names what is shared, and finds a form like itself in everything', () => {
		expect(report.shared).toEqual([]);
		const same = compareForms([a, a], finderOf(demoPool()), scope);
		expect(same.shared).toHaveLength(20);
		expect(same.rows.filter(({ difference }) => difference !== 0)).toEqual([]);
	});

	test('says how evenly standards are represented', () => {
		// Form A, lead standards by hand: 6.2(B) 2, 6.2(C) 1, 6.2(D) 2, 6.3(C) 7, 6.3(D) 8. O = 5, H = 20:
		// |0.2 − 0.1| + |0.2 − 0.05| + |0.2 − 0.1| + |0.2 − 0.35| + |0.2 − 0.4| = 0.7, halved 0.35.
		expect(report.representation[0]).toBeCloseTo(0.65, 12);
	});

	test('takes the points a form gives instead of the item', () => {
		const records = recordsOf(makeGridded(), makeGridded());
		const form = {
			title: 'A',
			gridProfile: 'plain-sign-first',
			sections: [{ title: 'S', items: [{ item: 'item-1', version: 1, points: 3 }] }],
		};
		const points = compareForms([form, form], finderOf(records), scope).rows.find(({ label }) => label === 'points');
		expect(points?.values).toEqual([3, 3]);
	});
});

describe('what an item asks', () => {
	const grid = (expression: string) => makeGridded({ expression });
	test.each([
		['-17 + 5', 'sum-unlike-signs'],
		['-3 + (-4)', 'sum-of-negatives'],
		['4 - 11', 'positive-minus-greater'],
		['-4 - 9', 'negative-minus-positive'],
		['-5 - (-12)', 'minus-negative'],
		['6 × (-7)', 'product-unlike-signs'],
		['-6 × (-7)', 'product-of-negatives'],
		['42 ÷ (-6)', 'quotient-unlike-signs'],
		['-42 ÷ (-6)', 'quotient-of-negatives'],
		['-9 - 4 + 7', 'several-steps'],
		['|-4 - (-10)|', 'size-or-opposite'],
		['9 - 4', 'no-negative'],
	])('%s is %s', (expression, shape) => {
		expect(shapeOf(grid(expression))).toBe(shape);
	});

	test('comparisons are order; different key statements are other', () => {
		expect(shapeOf(makeMultipleChoice())).toBe('order');
		expect(shapeOf(makeChoice({ rule: { kind: 'stated', options: ['a'], reason: 'r' } }))).toBe('other');
	});

	test('answers, numbers and key places are read off', () => {
		expect(answerOf(grid('-3 - (-8)'))).toBe('5');
		expect(answerOf(makeChoice())).toBe('-7');
		expect(keyPlaceOf(makeChoice())).toBe(1);
		expect(keyPlaceOf(makeMultipleChoice())).toBeUndefined();
		expect(numbersOf(grid('-8 + 0 - 3'))).toBe('3 8');
		expect(numbersOf(grid('-(-8)'))).toBeUndefined();
	});

	test('a fact is the same however it is written, and an equation in a stem tells one', () => {
		expect(factsOf(grid('-3 - 8'))).toEqual(factsOf(grid('-8 + (-3)')));
		expect(factsOf(grid('-3 - 8'))).not.toEqual(factsOf(grid('-3 + 8')));
		const teller = makeGridded({
			expression: '2 + 2',
			stem: [{ kind: 'paragraph', text: 'Since `-3 - 8 = -11`, what is `2 + 2`?' }],
		});
		expect(factsOf(teller)).toEqual(expect.arrayContaining([...factsOf(grid('-3 - 8'))]));
	});
});
