import { expect, test } from 'vitest';
import { noneOfTheAbove } from '../../../../item-bank/checks/review/none-of-the-above.ts';
import { found, offering } from '../found.ts';

test('an option that stands for no option is pointed at', () => {
	for (const text of ['None of the above', 'none of these', 'Neither of them.']) {
		expect(found(noneOfTheAbove, offering('up 7 metres', text)), text).toMatchObject([
			{ code: 'review-none-of-the-above', path: '/options/1/content/text' },
		]);
	}
});

test('none of something named is left alone', () => {
	expect(found(noneOfTheAbove, offering('none of these rooms', 'None of the water rose.'))).toEqual([]);
});
