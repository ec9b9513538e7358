import { expect, test } from 'vitest';
import { pointNotDrawn } from '../../../../item-bank/checks/review/point-not-drawn.ts';
import { makeChoice, makeGridded } from '../../../helpers/items.ts';
import { found, offering } from '../found.ts';

const line = (labels: string) => ({
	kind: 'figure' as const,
	figure: {
		kind: 'number-line' as const,
		orientation: 'horizontal' as const,
		points: [...labels].map((label, index) => ({ at: index * 2, label })),
	},
});

test('a point that is not on the line is pointed at, in stem and options', () => {
	const stem = [line('PQ'), { kind: 'paragraph', text: 'How far is it from points P and R?' }] as const;
	expect(found(pointNotDrawn, makeGridded({ stem }))).toMatchObject([
		{ code: 'review-point-not-drawn', path: '/stem/1/text', message: expect.stringContaining('"point R"') },
	]);
	const choice = makeChoice({ ...offering('point P', 'point S'), stem });
	expect(found(pointNotDrawn, choice).map(({ path }) => path)).toEqual(['/stem/1/text', '/options/1/content/text']);
});

test('points that are drawn, and lines without named points, are left alone', () => {
	const drawn = [
		line('PQ'),
		{ kind: 'paragraph', text: 'How far is point P from point Q? A point is a place.' },
	] as const;
	expect(found(pointNotDrawn, makeGridded({ stem: drawn }))).toEqual([]);
	const bare = [line(''), { kind: 'paragraph', text: 'Where is point P?' }] as const;
	expect(found(pointNotDrawn, makeGridded({ stem: bare }))).toEqual([]);
});
