import { expect, test } from 'vitest';
import { alikeOptions } from '../../../../item-bank/checks/review/alike-options.ts';
import { makeChoice, makeMultipleChoice } from '../../../helpers/items.ts';
import { found, offering } from '../found.ts';

const showing = (...math: readonly string[]) => ({
	options: math.map((text, index) => ({
		id: 'abcd'.charAt(index),
		content: { kind: 'mathematics', math: text } as const,
	})),
});

test('numbers beside expressions or statements are pointed at', () => {
	expect(found(alikeOptions, makeChoice(showing('-7', '9 + 2', '11')))).toMatchObject([
		{ code: 'review-options-unlike', path: '/options', message: expect.stringContaining('numbers and expressions') },
	]);
	expect(found(alikeOptions, makeMultipleChoice(showing('-8 < -3', '-8')))).toHaveLength(1);
});

test('numbers of which some have a unit are pointed at', () => {
	expect(found(alikeOptions, offering('`-7` metres', '`7`', '11 metres'))).toHaveLength(1);
});

test('options of one sort are left alone, an opposite counted as a number', () => {
	expect(found(alikeOptions, makeChoice(showing('-7', '-(7)', '11')))).toEqual([]);
	expect(found(alikeOptions, makeChoice(showing('-7 + 2', '|-9 + 2|')))).toEqual([]);
	expect(found(alikeOptions, offering('`-7` metres', '7 metres'))).toEqual([]);
	expect(found(alikeOptions, offering('It rose by 7 metres.', 'It fell.'))).toEqual([]);
});

test('numbers and expressions may stand together where all of a value are asked for', () => {
	const rule = { kind: 'same-value', expression: '-7' } as const;
	expect(found(alikeOptions, makeMultipleChoice({ ...showing('-7', '2 - 9', '7'), rule }))).toEqual([]);
});
