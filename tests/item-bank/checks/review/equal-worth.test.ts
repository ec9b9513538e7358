import { expect, test } from 'vitest';
import { equalWorth } from '../../../../item-bank/checks/review/equal-worth.ts';
import { makeChoice, makeMultipleChoice } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const showing = (...math: readonly string[]) => ({
	options: math.map((text, index) => ({
		id: 'abcd'.charAt(index),
		content: { kind: 'mathematics', math: text } as const,
	})),
	rule: { kind: 'same-value', expression: '-4 - 9' } as const,
});

test('two wrong options of one worth are pointed at', () => {
	expect(found(equalWorth, makeChoice(showing('-4 + 9', '-9 - 4', '9 - 4')))).toMatchObject([
		{ code: 'review-equal-worth', path: '/options/2', message: expect.stringContaining('C is worth 5 as A is') },
	]);
});

test('options of different worth, and equal ones where several are to be chosen, are left alone', () => {
	expect(found(equalWorth, makeChoice(showing('-4 + 9', '-9 - 4', '4 - 9')))).toEqual([]);
	expect(found(equalWorth, makeMultipleChoice(showing('-4 + 9', '-9 - 4', '9 - 4')))).toEqual([]);
});

test('forms of one value are left alone where a form is asked for', () => {
	expect(found(equalWorth, makeChoice({ ...showing('-4 + 9', '-9 - 4', '9 - 4'), rule: { kind: 'shown' } }))).toEqual(
		[],
	);
});
