import { expect, test } from 'vitest';
import { optionLength } from '../../../../item-bank/checks/review/option-length.ts';
import { makeChoice } from '../../../helpers/items.ts';
import { found, offering } from '../found.ts';

const long = 'The water was lower at noon than it had been at six in the morning.';

test('a key much longer than the others is pointed at', () => {
	expect(found(optionLength, offering('It rose.', long, 'It stood still.'))).toMatchObject([{ path: '/options/1' }]);
	const options = ['-7', '-9 + 2 - 3 + 4 - 5 + 4 - 0', '7 + 1'].map((math, index) => ({
		id: 'abc'.charAt(index),
		content: { kind: 'mathematics', math } as const,
	}));
	const expressions = [{ id: 'a', content: { kind: 'mathematics', math: '9 - 2' } } as const, ...options.slice(1)];
	expect(found(optionLength, makeChoice({ options: expressions }))).toHaveLength(1);
	expect(found(optionLength, makeChoice({ options }))).toEqual([]);
});

test('a key much shorter than the others is pointed at', () => {
	const longer = `${long} Nobody knows why.`;
	expect(found(optionLength, offering(long, 'It rose.', longer))).toMatchObject([
		{ message: expect.stringContaining('at least') },
	]);
});

test('a long wrong option and options of like length are left alone', () => {
	expect(found(optionLength, offering(long, 'It rose.', 'It stood still.'))).toEqual([]);
	expect(found(optionLength, offering('It rose.', 'It fell a little.', 'It stood still.'))).toEqual([]);
});
