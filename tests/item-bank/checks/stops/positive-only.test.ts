import { expect, test } from 'vitest';
import { positiveOnly } from '../../../../item-bank/checks/stops/positive-only.ts';
import { makeGridded, makeSet } from '../../../helpers/items.ts';
import { align } from '../alignment.ts';
import { found } from '../found.ts';

const alignments = [align({ primary: true }), align({ code: '6.3(E)' })];
const positive = makeGridded({
	alignments,
	expression: '3 * 8',
	stem: [{ kind: 'paragraph', text: 'What is `3 × 8`?' }],
});

test('a negative number under a standard about positive numbers is refused', () => {
	expect(found(positiveOnly, makeGridded({ alignments }))).toMatchObject([
		{ code: 'standard-positive-only', path: '/alignments/1/code' },
	]);
	const set = makeSet({ parts: [makeGridded(), makeGridded({ alignments })] });
	expect(found(positiveOnly, set)).toMatchObject([
		{ path: '/parts/1/alignments/1/code', message: expect.stringContaining('at /stem/0/text') },
	]);
});

test('positive numbers are left alone, beside a part with negative ones as well', () => {
	expect(found(positiveOnly, positive)).toEqual([]);
	expect(found(positiveOnly, makeSet({ parts: [makeGridded(), positive] }))).toEqual([]);
});
