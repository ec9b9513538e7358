import { describe, expect, test } from 'vitest';
import { checkAgainstBlueprint, checkTogether } from '../../../item-bank/forms/check-against-blueprint.ts';
import type { Blueprint, Form } from '../../../item-bank/types.ts';
import { makeChoice, makeGridded, numberOptions } from '../../helpers/items.ts';
import { finderOf, makeBlueprint, recordsOf } from './sample-blueprints.ts';

const ask = (expression: string) =>
	makeGridded({ expression, stem: [{ kind: 'paragraph', text: `What is \`${expression}\`?` }] });
const records = recordsOf(
	ask('-3 - (-8)'), // item-1: answer 5, estimate 4
	ask('2 + (-4)'), // item-2: answer −2
	ask('-8 - (-3)'), // item-3: answer −5, numbers of item-1
	ask('9 + (-4)'), // item-4: answer 5, estimate 3
	makeChoice({ given: 'story', points: 2, dok: 2, context: { setting: 'mine-lift', role: 'change' } }), // item-5
	makeChoice({ options: numberOptions(-11, -7, 7), rule: { kind: 'same-value', expression: '-9 + 2' } }), // item-6, key as item-5
);
const findItem = finderOf(records);
const formOf = (...ids: readonly number[]): Form => ({
	title: 'A',
	gridProfile: 'plain-sign-first',
	sections: [{ title: 'All', items: ids.map((id) => ({ item: `item-${id}`, version: 1 })) }],
});
const shortOf = (form: Form, more: Partial<Blueprint>): readonly string[] =>
	checkAgainstBlueprint(form, findItem, makeBlueprint({ order: { within: 'free' }, ...more })).map(
		({ path, found }) => `${path}: ${found}`,
	);

describe('checkAgainstBlueprint', () => {
	test('is silent about a form that keeps the plan', () => {
		expect(shortOf(formOf(1, 2), {})).toEqual([]);
	});

	test('says in the words of the plan what a range asks and what it found', () => {
		const blueprint = makeBlueprint({ cells: [{ standard: '6.3(C)', model: 'counters', items: { min: 3 } }] });
		expect(checkAgainstBlueprint(formOf(2, 1), findItem, blueprint)).toEqual([
			{ path: '/cells/0/items', requirement: 'needs at least 3 items on 6.3(C) with counters', found: '0 items' },
		]);
	});

	test('counts totals, points, kinds, DOK, point values, roles and shapes', () => {
		const form = formOf(1, 2, 5);
		expect(shortOf(form, { items: { min: 4, max: 4 } })).toEqual(['/items: 3 items']);
		expect(shortOf(form, { points: { max: 3 } })).toEqual(['/points: 4 points']);
		expect(shortOf(form, { kinds: [{ kind: 'gridded', items: { max: 1 } }] })).toEqual(['/kinds/0/items: 2 items']);
		expect(shortOf(form, { dok: [{ dok: 2, points: { min: 3 } }] })).toEqual(['/dok/0/points: 2 points']);
		expect(shortOf(form, { pointValues: [{ points: 2, items: { min: 2 } }] })).toEqual([
			'/pointValues/0/items: 1 items',
		]);
		expect(shortOf(form, { roles: [{ role: 'position', items: { min: 1 } }] })).toEqual(['/roles/0/items: 0 items']);
		expect(shortOf(form, { shapes: [{ shape: 'minus-negative', items: { min: 2 } }] })).toEqual([
			'/shapes/0/items: 1 items',
		]);
	});

	test('counts a coarser cell with everything below its standard', () => {
		expect(shortOf(formOf(1, 2), { cells: [{ standard: '6.3', items: { min: 2, max: 2 } }] })).toEqual([]);
	});

	test('adds up words and averages estimates', () => {
		expect(shortOf(formOf(1, 2), { readingLoad: { words: { max: 5 } } })).toEqual(['/readingLoad/words: 10 words']);
		expect(shortOf(formOf(1), { difficulty: { target: 4, band: 0 } })).toEqual([]);
		expect(shortOf(formOf(1), { difficulty: { target: 5, band: 0.9 } })).toEqual(['/difficulty: a mean of 4']);
	});

	test('finds items that share what they may not share', () => {
		const exclusions = { answerMost: 1, numbersMost: 1, settingMost: 1, keyPlaceMost: 1 };
		expect(shortOf(formOf(1, 4), { exclusions })).toEqual([
			'/exclusions/answerMost: 2 share the answer 5: item-1, item-4',
		]);
		expect(shortOf(formOf(1, 3), { exclusions })).toEqual([
			'/exclusions/numbersMost: 2 share the numbers 3 8: item-1, item-3',
		]);
		expect(shortOf(formOf(5, 6), { exclusions: { keyPlaceMost: 1 } })).toEqual([
			'/exclusions/keyPlaceMost: 2 share the key at option B: item-5, item-6',
		]);
	});

	test('finds items that stand in the wrong section, or sections that are not planned', () => {
		const sections = [{ title: 'All', kinds: ['choice' as const], items: { max: 4 } }];
		expect(shortOf(formOf(1), { sections })).toEqual(['/sections/0: "item-1"']);
		expect(shortOf(formOf(5), { sections: [{ title: 'Other', items: { max: 4 } }] })).toEqual(['/sections: All']);
	});

	test('finds harder before easier, and answers repeated in a row', () => {
		expect(shortOf(formOf(1, 4), { order: {} })).toEqual([
			'/order/within: the item at place 2 is easier than one before it',
		]);
		expect(shortOf(formOf(4, 1), { order: {} })).toEqual([]);
		expect(shortOf(formOf(1, 4), { order: { within: 'free', sameAnswerInARow: 1 } })).toEqual([
			'/order/sameAnswerInARow: one more at place 2',
		]);
	});

	test('finds missing anchors, forbidden items and items the bank does not have', () => {
		expect(shortOf(formOf(2), { anchors: [{ item: 'item-1' }] })).toEqual(['/anchors/0: it is not']);
		expect(shortOf(formOf(2), { forbidden: [{ item: 'item-2' }] })).toEqual(['/forbidden/0: it is on the form']);
		expect(shortOf(formOf(2, 9), {})).toEqual([': "item-9" version 1 is not']);
		expect(shortOf(formOf(5), { readingLoad: { mostPerItem: 2 } })).toEqual([
			'/readingLoad/mostPerItem: 10 in "item-5"',
		]);
	});
});

describe('checkTogether', () => {
	const together = (forms: readonly Form[], more: Partial<Blueprint>): readonly string[] =>
		checkTogether(forms, findItem, makeBlueprint({ order: { within: 'free' }, ...more })).map(
			({ path, found }) => `${path}: ${found}`,
		);

	test('finds items on two forms, anchors apart', () => {
		expect(together([formOf(1), formOf(1)], {})).toEqual([': "item-1" on more than one']);
		expect(together([formOf(1), formOf(1)], { anchors: [{ item: 'item-1' }] })).toEqual([]);
		expect(together([formOf(1, 2), formOf(4, 1)], { anchors: [{ item: 'item-1' }] })).toEqual(['/anchors: 1, 2']);
	});

	test('finds forms further apart than the bands', () => {
		expect(together([formOf(1), formOf(5)], { parallel: { points: 0, dok: 1 } })).toEqual([
			'/parallel/points: 1 and 2',
		]);
	});

	test('finds forced items that are missing or on another form', () => {
		expect(together([formOf(1), formOf(2)], { forced: [{ item: 'item-2' }] })).toEqual([]);
		expect(together([formOf(1), formOf(2)], { forced: [{ item: 'item-2', form: 1 }] })).toEqual([
			'/forced/0: it is not',
		]);
	});
});
