import { expect, test } from 'vitest';
import { figureMismatch } from '../../../../item-bank/checks/review/figure-mismatch.ts';
import { makeChoice, makeGridded, numberOptions } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const stem = (text: string) =>
	[
		{ kind: 'figure', figure: { kind: 'counters', plus: 3, minus: 7 } },
		{ kind: 'paragraph', text },
	] as const;

test('a key of another value than the figure asked about is pointed at', () => {
	const gridded = makeGridded({ stem: stem('What is the value of this set of counters?'), expression: '3 + (-8)' });
	expect(found(figureMismatch, gridded)).toMatchObject([
		{ code: 'review-figure-mismatch', path: '/stem', message: expect.stringContaining('-4, found -5') },
	]);
	const choice = makeChoice({
		stem: stem('What number do the counters show?'),
		options: numberOptions(-5, 5, 11),
		rule: { kind: 'same-value', expression: '3 + (-8)' },
	});
	expect(found(figureMismatch, choice)).toHaveLength(1);
});

test('a key of the value shown, and questions about something else, are left alone', () => {
	for (const [text, expression] of [
		['What is the value of this set of counters?', '3 + (-7)'],
		['How many plus counters make the value of this set of counters 0?', '7 - 3'],
		['What is the value of this set of counters without its minus counters?', '3'],
	] as const) {
		expect(found(figureMismatch, makeGridded({ stem: stem(text), expression })), text).toEqual([]);
	}
});
