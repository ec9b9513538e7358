import { expect, test } from 'vitest';
import { doubledSign } from '../../../../item-bank/checks/stops/doubled-sign.ts';
import { makeInlineChoice } from '../../../helpers/items.ts';
import { asking, found } from '../found.ts';

test('a statement with a gap that doubles signs is refused, as it is printed as typed', () => {
	expect(found(doubledSign, makeInlineChoice({ statement: '3 - -8 _ -5' }))).toMatchObject([
		{ code: 'sign-doubled', path: '/statement' },
	]);
	const choices = ['3 + -5', '3 + 5'].map((math, index) => ({ id: 'ab'.charAt(index), math }));
	expect(found(doubledSign, makeInlineChoice({ statement: '-2 = _', choices }))).toMatchObject([
		{ path: '/choices/0/math' },
	]);
});

test('true signs doubled in words are refused', () => {
	expect(found(doubledSign, asking('Why is 3 − −8 equal to 11?'))).toMatchObject([{ path: '/stem/0/text' }]);
});

test('parentheses, a sign after a relation, and mathematics between backticks are left alone', () => {
	expect(found(doubledSign, makeInlineChoice({ statement: '3 - (-8) _ -5' }))).toEqual([]);
	expect(found(doubledSign, makeInlineChoice({ statement: '-8 < _' }))).toEqual([]);
	expect(found(doubledSign, asking('What is `3 - -8`? See pages 3--8.'))).toEqual([]);
});
