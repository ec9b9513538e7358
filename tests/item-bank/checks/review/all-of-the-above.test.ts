import { expect, test } from 'vitest';
import { allOfTheAbove } from '../../../../item-bank/checks/review/all-of-the-above.ts';
import { asking, found, offering } from '../found.ts';

test('an option that stands for all options is pointed at', () => {
	for (const text of ['All of the above', 'all the others.', 'All of these']) {
		expect(found(allOfTheAbove, offering('up 7 metres', text)), text).toMatchObject([
			{ code: 'review-all-of-the-above', path: '/options/1/content/text' },
		]);
	}
});

test('other uses of the words, and stems, are left alone', () => {
	expect(found(allOfTheAbove, offering('all of the water', 'All of these rooms are cold.'))).toEqual([]);
	expect(found(allOfTheAbove, asking('Choose all of the above that are true.'))).toEqual([]);
});
