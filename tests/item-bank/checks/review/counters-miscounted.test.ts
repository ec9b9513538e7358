import { expect, test } from 'vitest';
import { countersMiscounted } from '../../../../item-bank/checks/review/counters-miscounted.ts';
import { makeGridded } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const telling = (text: string) =>
	makeGridded({
		stem: [
			{
				kind: 'figure',
				figure: { kind: 'counters', plus: 0, minus: 2, addedPairs: 5, removed: { sign: 'plus', count: 4 } },
			},
			{ kind: 'paragraph', text },
		],
	});

test('a count that the figure does not have is pointed at', () => {
	expect(found(countersMiscounted, telling('The set starts with 3 minus counters. What is it worth?'))).toMatchObject([
		{
			code: 'review-counters-miscounted',
			path: '/stem/1/text',
			message: expect.stringContaining('"3 minus counters"'),
		},
	]);
});

test('counts before and after adding and taking away are left alone', () => {
	const text =
		'The set has 2 minus counters at first and 7 minus counters later. 4 plus counters go and 1 plus counter stays.';
	expect(found(countersMiscounted, telling(text))).toEqual([]);
});

test('counters that need not be drawn are left alone', () => {
	expect(found(countersMiscounted, telling('Then 9 more minus counters come. What if 3 plus counters go?'))).toEqual(
		[],
	);
	expect(found(countersMiscounted, telling('Remove 3 minus counters. What is left?'))).toEqual([]);
	expect(found(countersMiscounted, makeGridded())).toEqual([]);
});
