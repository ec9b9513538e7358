import { expect, test } from 'vitest';
import { longSentence } from '../../../../item-bank/checks/review/long-sentence.ts';
import { makeGridded } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const asking = (text: string) => makeGridded({ stem: [{ kind: 'paragraph', text }] });
const words = (count: number): string => `${Array.from({ length: count }, () => 'tide').join(' ')}.`;

test('a sentence over 22 words is pointed at', () => {
	expect(found(longSentence, asking(words(23)))).toMatchObject([{ path: '/stem/0/text' }]);
});

test('22 words, several short sentences and a clock time are left alone', () => {
	expect(found(longSentence, asking(words(22)))).toEqual([]);
	expect(found(longSentence, asking(`${words(15)} ${words(15)}`))).toEqual([]);
	expect(
		found(
			longSentence,
			asking(
				'The gauge read `-12` centimetres at 3 a.m. At noon it read `-30` centimetres. How far did the water fall in those nine hours?',
			),
		),
	).toEqual([]);
});

test('mathematics counts as one word', () => {
	expect(
		found(longSentence, asking(`${Array.from({ length: 20 }, () => 'tide').join(' ')} \`-3 + 4 - 5 + 6\` here.`)),
	).toEqual([]);
});
