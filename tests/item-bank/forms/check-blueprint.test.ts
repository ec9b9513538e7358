import { describe, expect, test } from 'vitest';
import { checkBlueprint } from '../../../item-bank/forms/check-blueprint.ts';
import type { Blueprint } from '../../../item-bank/types.ts';
import { makeBlueprint } from './sample-blueprints.ts';

const codesOf = (more: Partial<Blueprint>): readonly string[] =>
	checkBlueprint(makeBlueprint(more)).map(({ code, path }) => `${code} ${path}`);

describe('checkBlueprint', () => {
	test('has nothing against a sound plan', () => {
		expect(codesOf({ cells: [{ standard: '6.3(D)', model: 'symbols', items: { min: 1, max: 2 } }] })).toEqual([]);
	});

	test('names unknown frameworks, grids and codes, with the codes most like them', () => {
		expect(codesOf({ framework: 'teks-mathe' })).toEqual(['unknown-framework /framework']);
		expect(codesOf({ gridProfile: 'plain' })).toEqual(['unknown-grid-profile /gridProfile']);
		const problems = checkBlueprint(makeBlueprint({ cells: [{ standard: '6.3D', items: { min: 1 } }] }));
		expect(problems).toMatchObject([{ code: 'unknown-standard', path: '/cells/0/standard' }]);
		expect(problems[0]?.message).toContain('such as 6.3(D); found "6.3D"');
		expect(codesOf({ sections: [{ title: 'A', standards: ['9.9'], items: { max: 4 } }] })).toEqual([
			'unknown-standard /sections/0/standards/0',
		]);
	});

	test('finds ranges that contradict themselves, wherever they stand', () => {
		expect(codesOf({ items: { min: 5, max: 4 } })).toContain('range-contradictory /items');
		expect(codesOf({ cells: [{ model: 'story', points: { min: 3, max: 2 } }] })).toEqual([
			'range-contradictory /cells/0/points',
		]);
		expect(codesOf({ dok: [{ dok: 2, items: { min: 2, max: 1 } }] })).toEqual(['range-contradictory /dok/0/items']);
		expect(codesOf({ readingLoad: { words: { min: 9, max: 3 } } })).toEqual(['range-contradictory /readingLoad/words']);
	});

	test('finds cells without a range, and cells twice', () => {
		expect(codesOf({ cells: [{ model: 'story' }] })).toEqual(['cell-without-range /cells/0']);
		expect(
			codesOf({
				cells: [
					{ model: 'story', items: { max: 1 } },
					{ model: 'story', items: { max: 2 } },
				],
			}),
		).toEqual(['cell-repeated /cells/1']);
	});

	test('wants a largest number of items, and not 500', () => {
		expect(codesOf({ items: { min: 3 } })).toEqual(['items-without-maximum /items']);
		expect(codesOf({ items: { min: 500, max: 500 }, sections: [{ title: 'All', items: { max: 500 } }] })).toEqual([
			'blueprint-too-long /items',
		]);
	});

	test('adds up parts that exclude each other', () => {
		const cells = [
			{ standard: '6.3(C)', items: { min: 3 } },
			{ standard: '6.3(D)', items: { min: 2 } },
		];
		expect(codesOf({ cells })).toEqual(['parts-exceed-whole /cells']);
		// A cell inside another is no further part.
		expect(
			codesOf({
				cells: [
					{ standard: '6.3', items: { min: 3 } },
					{ standard: '6.3(D)', items: { min: 3 } },
				],
			}),
		).toEqual([]);
		expect(
			codesOf({
				kinds: [
					{ kind: 'choice', items: { min: 3 } },
					{ kind: 'gridded', items: { min: 2 } },
				],
			}),
		).toEqual(['parts-exceed-whole /kinds']);
		expect(codesOf({ items: { min: 4, max: 4 }, sections: [{ title: 'All', items: { max: 3 } }] })).toEqual([
			'parts-below-whole /sections',
		]);
	});

	test('finds items named twice and anchors in sections that are not there', () => {
		expect(codesOf({ anchors: [{ item: 'item-1' }], forbidden: [{ item: 'item-1' }] })).toEqual([
			'item-named-twice /forbidden/0',
		]);
		expect(codesOf({ anchors: [{ item: 'item-1', section: 2 }] })).toEqual([
			'anchor-section-unknown /anchors/0/section',
		]);
	});

	test('wants score bands from 0 upwards within reach', () => {
		const facts = { setBy: 'the team', why: 'because', on: '2026-09-01' };
		const bands = (...froms: readonly number[]) => ({
			...facts,
			bands: froms.map((from, index) => ({ name: `band ${index}`, from })),
		});
		expect(codesOf({ scoreBands: bands(0, 5, 9), points: { max: 10 } })).toEqual([]);
		expect(codesOf({ scoreBands: bands(1, 5) })).toEqual(['score-bands-order /scoreBands/bands/0/from']);
		expect(codesOf({ scoreBands: bands(0, 5, 5) })).toEqual(['score-bands-order /scoreBands/bands/2/from']);
		expect(codesOf({ scoreBands: bands(0, 12), points: { max: 10 } })).toEqual([
			'score-band-out-of-reach /scoreBands/bands/1/from',
		]);
	});
});
