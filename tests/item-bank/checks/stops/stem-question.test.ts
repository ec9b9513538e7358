import { expect, test } from 'vitest';
import { stemQuestion } from '../../../../item-bank/checks/stops/stem-question.ts';
import { makeGridded, makeSet } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const silent = [{ kind: 'mathematics', math: '-3 - (-8)' }] as const;

test('a stem without a paragraph is refused, of a set, its parts and other items', () => {
	expect(found(stemQuestion, makeGridded({ stem: silent }))).toMatchObject([
		{ code: 'stem-without-question', path: '/stem' },
	]);
	const set = makeSet({ stem: silent, parts: [makeGridded(), makeGridded({ stem: silent })] });
	expect(found(stemQuestion, set).map(({ path }) => path)).toEqual(['/stem', '/parts/1/stem']);
});

test('one paragraph is enough', () => {
	expect(found(stemQuestion, makeGridded({ stem: [...silent, { kind: 'paragraph', text: 'Work it out.' }] }))).toEqual(
		[],
	);
	expect(found(stemQuestion, makeSet())).toEqual([]);
});
