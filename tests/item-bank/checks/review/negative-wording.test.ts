import { expect, test } from 'vitest';
import { negativeWording } from '../../../../item-bank/checks/review/negative-wording.ts';
import { makeChoice, makeGridded } from '../../../helpers/items.ts';

const asking = (text: string) => makeGridded({ stem: [{ kind: 'paragraph', text }] });

test('a question asked negatively is pointed at', () => {
	expect(negativeWording.find(asking('Which number is NOT greater than `-3`?'))).toMatchObject([
		{ path: '/stem/0/text' },
	]);
	expect(negativeWording.find(asking('All of these except one are true. Which?'))).toHaveLength(1);
});

test('words that only look like it, and options, are left alone', () => {
	expect(negativeWording.find(asking('Which note shows `-3`? Nothing else counts.'))).toEqual([]);
	const options = ['It is not above zero.', 'It is above zero.'].map((text, index) => ({
		id: 'ab'[index] ?? '',
		content: { kind: 'text' as const, text },
	}));
	expect(negativeWording.find(makeChoice({ options }))).toEqual([]);
});
