import { expect, test } from 'vitest';
import { sensitiveWord } from '../../../../item-bank/checks/review/sensitive-word.ts';
import { makeGridded } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const asking = (text: string) => makeGridded({ stem: [{ kind: 'paragraph', text }] });

test('words of sensitive topics are left to a person, each with its topic', () => {
	expect(found(sensitiveWord, asking('A family owes 30 dollars of rent. What is the debt?'))).toMatchObject([
		{ message: expect.stringContaining('money trouble') },
	]);
	expect(found(sensitiveWord, asking('A bet on poker is lost. What is left?'))).toMatchObject([
		{ message: expect.stringContaining('gambling') },
	]);
});

test('words that only contain them are left alone', () => {
	expect(found(sensitiveWord, asking('The better gauge is apparently current. Which reading is different?'))).toEqual(
		[],
	);
});
