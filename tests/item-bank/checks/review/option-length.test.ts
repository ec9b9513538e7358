import { expect, test } from 'vitest';
import { optionLength } from '../../../../item-bank/checks/review/option-length.ts';
import { makeChoice } from '../../../helpers/items.ts';

const offering = (...texts: readonly string[]) =>
	makeChoice({
		options: texts.map((text, index) => ({ id: 'abc'[index] ?? '', content: { kind: 'text', text } })),
		rule: { kind: 'stated', options: ['b'], reason: 'Said so.' },
	});

test('a key much longer than the others is pointed at', () => {
	const key = 'The water was lower at noon than it had been at six in the morning.';
	expect(optionLength.find(offering('It rose.', key, 'It stood still.'))).toMatchObject([{ path: '/options/1' }]);
});

test('a long wrong option and options of like length are left alone', () => {
	const long = 'The water was lower at noon than it had been at six in the morning.';
	expect(optionLength.find(offering(long, 'It rose.', 'It stood still.'))).toEqual([]);
	expect(optionLength.find(offering('It rose.', 'It fell a little.', 'It stood still.'))).toEqual([]);
});
