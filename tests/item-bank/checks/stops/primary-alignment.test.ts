import { expect, test } from 'vitest';
import { primaryAlignment } from '../../../../item-bank/checks/stops/primary-alignment.ts';
import { makeGridded, makeSet } from '../../../helpers/items.ts';
import { align } from '../alignment.ts';
import { found } from '../found.ts';

test('none and two primary alignments are refused, in parts of a set too', () => {
	expect(found(primaryAlignment, makeGridded({ alignments: [align()] }))).toMatchObject([
		{ code: 'primary-alignment-count', path: '/alignments' },
	]);
	const two = [align({ primary: true }), align({ code: '6.3(C)', primary: true })];
	expect(found(primaryAlignment, makeSet({ parts: [makeGridded(), makeGridded({ alignments: two })] }))).toMatchObject([
		{ path: '/parts/1/alignments' },
	]);
});

test('one primary alignment among others is left alone', () => {
	const alignments = [align({ primary: true }), align({ code: '6.3(C)' })];
	expect(found(primaryAlignment, makeGridded({ alignments }))).toEqual([]);
});
