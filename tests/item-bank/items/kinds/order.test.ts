import { expect, test } from 'vitest';
import { computeKey } from '../../../../item-bank/items/key.ts';
import { score } from '../../../../item-bank/items/score.ts';
import { makeOrder } from '../../../helpers/items.ts';
import { keyCodes } from '../../../helpers/key-codes.ts';

test('the key is the order of the worths, in the direction asked', () => {
	expect(computeKey(makeOrder())).toEqual({ kind: 'order', order: ['c', 'a', 'd', 'b'] });
	expect(computeKey(makeOrder({ direction: 'descending' }))).toEqual({ kind: 'order', order: ['b', 'd', 'a', 'c'] });
	expect(keyCodes(makeOrder({ key: ['a', 'c', 'd', 'b'] }))).toEqual(['key-mismatch']);
});

test('ties, an order that is right already and entries without a worth are refused', () => {
	const entries = makeOrder().entries;
	const tied = { id: 'e', content: { kind: 'mathematics' as const, math: '-2 - 2' } };
	expect(keyCodes(makeOrder({ entries: [...entries, tied] }))).toEqual(['order-tie']);
	const right = ['-9', '-4', '2'].map((math, index) => ({
		id: 'abc'[index] ?? '',
		content: { kind: 'mathematics' as const, math },
	}));
	expect(keyCodes(makeOrder({ entries: right }))).toEqual(['order-already-right']);
	const words = { id: 'e', content: { kind: 'text' as const, text: 'cold' } };
	expect(keyCodes(makeOrder({ entries: [...entries, words] }))).toEqual(['option-not-computable']);
});

test('only the whole order counts; an incomplete one is invalid', () => {
	expect(score(makeOrder(), { kind: 'order', order: ['c', 'a', 'd', 'b'] }).state).toBe('correct');
	expect(score(makeOrder(), { kind: 'order', order: ['a', 'c', 'd', 'b'] }).state).toBe('incorrect');
	expect(score(makeOrder(), { kind: 'order', order: [] }).state).toBe('omitted');
	expect(score(makeOrder(), { kind: 'order', order: ['c', 'a'] })).toMatchObject({
		state: 'invalid',
		reason: 'order-incomplete',
	});
	expect(score(makeOrder(), { kind: 'order', order: ['c', 'a', 'd', 'h'] })).toMatchObject({
		reason: 'option-not-offered',
	});
});
