import { expect, test } from 'vitest';
import { distinctOptions } from '../../../../item-bank/checks/stops/distinct-options.ts';
import { makeChoice, makeInlineChoice } from '../../../helpers/items.ts';
import { found, offering } from '../found.ts';

const showing = (...math: readonly string[]) =>
	makeChoice({
		options: math.map((text, index) => ({ id: 'abcd'.charAt(index), content: { kind: 'mathematics', math: text } })),
	});

test('the same mathematics typed in two ways is refused', () => {
	expect(found(distinctOptions, showing('-11', '−11'))).toMatchObject([
		{ code: 'option-repeated', path: '/options/1' },
	]);
	expect(found(distinctOptions, showing('3 - -8', '-7', '3-(-8)'))).toMatchObject([{ path: '/options/2' }]);
});

test('the same words are refused, whatever they are worth and however they end', () => {
	expect(found(distinctOptions, offering('It rose by `-3`.', 'It fell.', 'It rose  by `−3`'))).toMatchObject([
		{ path: '/options/2', message: expect.stringContaining('"a"') },
	]);
	const options = ['1', '2'].map((worth, index) => ({
		id: 'ab'.charAt(index),
		content: { kind: 'text', text: 'up', worth } as const,
	}));
	expect(found(distinctOptions, makeChoice({ options }))).toHaveLength(1);
});

test('the same choice for a gap is refused', () => {
	const choices = ['<', '-5', '−5'].map((math, index) => ({ id: 'abc'.charAt(index), math }));
	expect(found(distinctOptions, makeInlineChoice({ choices }))).toMatchObject([{ path: '/choices/2' }]);
});

test('equal worth in another form, and letters in another case, are distinct', () => {
	expect(found(distinctOptions, showing('-4 - 9', '-4 + (-9)', '-9 - 4'))).toEqual([]);
	expect(found(distinctOptions, offering('point A', 'point a'))).toEqual([]);
});
