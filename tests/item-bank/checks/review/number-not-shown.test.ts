import { expect, test } from 'vitest';
import { numberNotShown } from '../../../../item-bank/checks/review/number-not-shown.ts';
import { makeGridded, makePoint, makeSet } from '../../../helpers/items.ts';
import { found } from '../found.ts';

test('a number of the key that the student is not shown is pointed at, once', () => {
	const item = makeGridded({
		expression: '-46 + 82',
		stem: [{ kind: 'paragraph', text: 'A fund stood at `-46` dollars. Then 28 came in. What is it now?' }],
	});
	expect(found(numberNotShown, item)).toMatchObject([
		{ code: 'review-number-not-shown', path: '/stem', message: expect.stringContaining('found 82') },
	]);
	expect(found(numberNotShown, makePoint({ expression: '-3 + 5 - 5 + (-4)' }))).toHaveLength(1);
});

test('numbers in words, tables, figures and the stem of the set are shown', () => {
	const table = { kind: 'table', header: ['Day', 'Change'], rows: [['Monday', '`-9`']] } as const;
	const figure = { kind: 'figure', figure: { kind: 'counters', plus: 0, minus: 4, addedPairs: 5 } } as const;
	const words = { kind: 'paragraph', text: 'It fell six metres each hour for 8 hours, 5 times. What is it?' } as const;
	expect(
		found(numberNotShown, makeGridded({ expression: '6 × (-8) - 9 + 4 + 5', stem: [words, table, figure] })),
	).toEqual([]);
	const part = makeGridded({ expression: '-9 + 4', stem: [{ kind: 'paragraph', text: 'It goes up 4. Where is it?' }] });
	expect(found(numberNotShown, makeSet({ parts: [makeGridded(), part] }))).toEqual([]);
});

test('numbers everybody knows, and a key typed as a number, are left alone', () => {
	expect(found(numberNotShown, makeGridded({ expression: '(-3 - (-8)) × 7' }))).toEqual([]);
	expect(found(numberNotShown, makeGridded({ expression: '-36' }))).toEqual([]);
});

test('tens in words, and words that stand for a number to be worked out, are left alone', () => {
	const asked = (expression: string, text: string) => makeGridded({ expression, stem: [{ kind: 'paragraph', text }] });
	const rise = 'It stood at twenty-five below zero and rose forty. What is it?';
	expect(found(numberNotShown, asked('-25 + 40', rise))).toEqual([]);
	const fall = (time: string) => `It falls 3 metres a minute for ${time}. What is the change?`;
	expect(found(numberNotShown, asked('30 × (-3)', fall('half an hour')))).toEqual([]);
	expect(found(numberNotShown, asked('30 × (-3)', fall('an hour')))).toHaveLength(1);
});
