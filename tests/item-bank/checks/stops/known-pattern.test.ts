import { expect, test } from 'vitest';
import { knownPattern } from '../../../../item-bank/checks/stops/known-pattern.ts';
import { makeChoice, makeInlineChoice } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const tagged = (...patterns: readonly string[]) =>
	makeChoice({ options: makeChoice().options.map((option) => (option.id === 'a' ? { ...option, patterns } : option)) });

test('a pattern nobody knows is refused, at options and choices', () => {
	expect(found(knownPattern, tagged('signs-dropped', 'sign-dropped'))).toMatchObject([
		{ code: 'option-pattern-unknown', path: '/options/0/patterns/1' },
	]);
	const choices = ['<', '>'].map((math, index) => ({ id: 'ab'.charAt(index), math, patterns: ['by-size'] }));
	expect(found(knownPattern, makeInlineChoice({ choices }))).toHaveLength(2);
});

test('known patterns, and options without any, are left alone', () => {
	expect(found(knownPattern, tagged('signs-dropped', 'wall-at-zero'))).toEqual([]);
});
