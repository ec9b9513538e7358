import { expect, test } from 'vitest';
import { optionLetters } from '../../../../item-bank/checks/stops/option-letters.ts';
import { makeChoice, makeInlineChoice, makeSet, numberOptions } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const named = (letters: string) =>
	numberOptions(-11, -7, 7).map((option, index) => ({ ...option, id: letters.charAt(index) }));

test('options and choices out of letter order are refused', () => {
	expect(found(optionLetters, makeChoice({ options: named('acb') })).map(({ path }) => path)).toEqual([
		'/options/1/id',
		'/options/2/id',
	]);
	const choices = [
		{ id: 'a', math: '<' },
		{ id: 'c', math: '>' },
	];
	expect(found(optionLetters, makeInlineChoice({ choices }))).toMatchObject([
		{ code: 'option-id-order', path: '/choices/1/id' },
	]);
});

test('letters in order are left alone, starting anew in each part', () => {
	expect(found(optionLetters, makeChoice({ options: named('abc') }))).toEqual([]);
	expect(found(optionLetters, makeSet({ parts: [makeChoice(), makeChoice()] }))).toEqual([]);
});
