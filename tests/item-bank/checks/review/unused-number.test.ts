import { expect, test } from 'vitest';
import { unusedNumber } from '../../../../item-bank/checks/review/unused-number.ts';
import { makeGridded } from '../../../helpers/items.ts';

const telling = (text: string, expression = '-85 + 30') =>
	makeGridded({
		given: 'story',
		context: { setting: 'mine-lift', role: 'position' },
		expression,
		stem: [{ kind: 'paragraph', text }],
	});

test('a number the answer does not need is pointed at', () => {
	expect(unusedNumber.find(telling('Lift 4 was at `-85` metres. It went up 30 metres. Where is it?'))).toMatchObject([
		{ path: '/stem/0/text', message: expect.stringContaining('found 4') },
	]);
});

test('needed numbers, zero and clock times are left alone, and so are items that are no stories', () => {
	expect(
		unusedNumber.find(
			telling('At 6 a.m. a lift was at `-85` metres. Ground is `0`. It went up 30 metres. Where is it?'),
		),
	).toEqual([]);
	expect(
		unusedNumber.find(makeGridded({ stem: [{ kind: 'paragraph', text: 'In step 4, what is `-3 - (-8)`?' }] })),
	).toEqual([]);
});
