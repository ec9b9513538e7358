import { expect, test } from 'vitest';
import { hyphenAsMinus } from '../../../../item-bank/checks/stops/hyphen-as-minus.ts';
import { makeGridded, makeInlineChoice } from '../../../helpers/items.ts';
import { asking, found, offering } from '../found.ts';

test('a negative number outside backticks is refused, in words, cells and options', () => {
	expect(found(hyphenAsMinus, asking('The gauge read -4 cm. What is that?'))).toMatchObject([
		{ code: 'hyphen-as-minus', path: '/stem/0/text', message: expect.stringContaining('found "-4"') },
	]);
	expect(found(hyphenAsMinus, asking('Is (–7) right?'))).toHaveLength(1);
	expect(found(hyphenAsMinus, offering('up', '-3 metres', 'down'))).toMatchObject([
		{ path: '/options/1/content/text' },
	]);
	const table = { kind: 'table', header: ['Day', 'Change'], rows: [['Monday', '-3']] } as const;
	expect(found(hyphenAsMinus, makeGridded({ stem: [table] }))).toMatchObject([{ path: '/stem/0/rows/0/1' }]);
});

test('backticks, true minus signs, ranges and hyphenated words are left alone', () => {
	for (const text of [
		'The gauge read `-4` cm on pages 3-5 of a two-page log. What is that?',
		'Is −4 below zero?',
		'What fell from 9 a.m. -10 a.m.?',
		'Which pages, 3 -5 or 7 – 9?',
		'What does unit A-1 show?',
	]) {
		expect(found(hyphenAsMinus, asking(text)), text).toEqual([]);
	}
	expect(found(hyphenAsMinus, makeInlineChoice())).toEqual([]);
});

test('names, which students do not see, are left alone', () => {
	expect(found(hyphenAsMinus, makeGridded({ name: 'The sum of -3 and -4' }))).toEqual([]);
});
