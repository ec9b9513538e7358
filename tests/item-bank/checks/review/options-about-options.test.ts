import { expect, test } from 'vitest';
import { optionsAboutOptions } from '../../../../item-bank/checks/review/options-about-options.ts';
import { makeChoice } from '../../../helpers/items.ts';

const offering = (...texts: readonly string[]) =>
	makeChoice({ options: texts.map((text, index) => ({ id: 'abcd'[index] ?? '', content: { kind: 'text', text } })) });

test('options that speak of other options are pointed at', () => {
	for (const text of ['All of the above', 'none of these', 'A and C only', 'both of them']) {
		const said = text.charAt(0) === text.charAt(0).toLowerCase() ? text : text.replace('All', 'all');
		expect(optionsAboutOptions.find(offering('up 7 metres', said)), text).toMatchObject([
			{ path: '/options/1/content/text' },
		]);
	}
});

test('options that stand by themselves are left alone', () => {
	expect(optionsAboutOptions.find(offering('all of the water', 'rooms A1 and C1'))).toEqual([]);
});
