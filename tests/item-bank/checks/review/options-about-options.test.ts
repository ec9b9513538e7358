import { expect, test } from 'vitest';
import { optionsAboutOptions } from '../../../../item-bank/checks/review/options-about-options.ts';
import { makeChoice } from '../../../helpers/items.ts';
import { found, offering } from '../found.ts';

test('options that speak of other options are pointed at', () => {
	for (const text of [
		'A and C only',
		'both A and B',
		'options B and D',
		'A or C.',
		'Both of these',
		'either of them.',
	]) {
		expect(found(optionsAboutOptions, offering('up 7 metres', text)), text).toMatchObject([
			{ code: 'review-options-about-options', path: '/options/1/content/text' },
		]);
	}
});

test('options that stand by themselves are left alone', () => {
	expect(found(optionsAboutOptions, offering('points A and C', 'rooms A1 and C1', 'both of them rose'))).toEqual([]);
});

test('letters that name points or rows of the stem are left alone', () => {
	const points = ['A', 'C'].map((label, index) => ({ at: index * 3, label }));
	const stem = [
		{ kind: 'figure', figure: { kind: 'number-line', orientation: 'horizontal', points } },
		{ kind: 'paragraph', text: 'Which points are opposites?' },
	] as const;
	expect(found(optionsAboutOptions, makeChoice({ ...offering('A and C', 'C and A'), stem }))).toEqual([]);
});
