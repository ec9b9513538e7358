import { expect, test } from 'vitest';
import { unusedNumber } from '../../../../item-bank/checks/review/unused-number.ts';
import { makeGridded, makeSet } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const telling = (text: string, expression = '-85 + 30') =>
	makeGridded({
		given: 'story',
		context: { setting: 'mine-lift', role: 'position' },
		expression,
		stem: [{ kind: 'paragraph', text }],
	});

test('a number the answer does not need is pointed at, in parts of a set too', () => {
	const padded = telling('A lift for 12 people was at `-85` metres. It went up 30 metres. Where is it?');
	expect(found(unusedNumber, padded)).toMatchObject([
		{ path: '/stem/0/text', message: expect.stringContaining('found 12') },
	]);
	expect(found(unusedNumber, makeSet({ parts: [makeGridded(), padded] }))).toMatchObject([
		{ path: '/parts/1/stem/0/text' },
	]);
});

test('needed numbers, zero, clock times and numbers that name something are left alone', () => {
	for (const text of [
		'At 6 a.m. a lift was at `-85` metres. Ground is `0`. It went up 30 metres. Where is it?',
		'In 2019 a lift was at `-85` metres. By 2021 it had gone up 30 metres. Where was it?',
		'At 6:30 lift 4 was at `-85` metres. On days 2 and 3 it went up 30 metres in all. Where is it?',
	]) {
		expect(found(unusedNumber, telling(text)), text).toEqual([]);
	}
});

test('items that are no stories are left alone', () => {
	expect(
		found(unusedNumber, makeGridded({ stem: [{ kind: 'paragraph', text: 'Of 12 sums, what is `-3 - (-8)`?' }] })),
	).toEqual([]);
});
