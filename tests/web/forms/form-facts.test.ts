import { describe, expect, test } from 'vitest';
import type { Form, Item } from '../../../item-bank/types.ts';
import { findFacts, meanOf } from '../../../web/forms/form-facts.ts';
import { estimateMinutes, minutesOfForm } from '../../../web/forms/time-estimate.ts';
import { makeBlueprint } from '../../helpers/sample-blueprint.ts';
import { choiceItem, griddedItem } from '../../helpers/sample-items.ts';

const items: Readonly<Record<string, Item>> = {
	grid: griddedItem(),
	positive: griddedItem({ stem: [{ kind: 'paragraph', text: 'What is `9 - 4`?' }], expression: '9 - 4', points: 2 }),
	again: griddedItem({ name: 'The same sum again' }),
	choice: choiceItem(),
};
const form = (ids: readonly string[], points?: number): Form => ({
	title: 'Facts',
	gridProfile: 'plain-sign-first',
	sections: [
		{
			title: 'All',
			items: ids.map((item) => ({ item, version: 1, ...(points === undefined ? {} : { points }) })),
		},
	],
});
const find = (id: string) => items[id];

describe('facts of a form', () => {
	test('an empty form has none', () => {
		expect(findFacts(form([]), find)).toMatchObject({
			items: 0,
			points: 0,
			words: 0,
			keyPlaces: [],
			difficulty: [],
			longest: undefined,
			notes: [],
		});
	});

	test('counts points, words, signs and key places; the form’s own points go first', () => {
		// −3 + (−8) is −11, 9 − 4 is 5; the lift stands at −13, which is its option A
		const facts = findFacts(form(['grid', 'positive', 'choice']), find);
		expect(facts.points).toBe(1 + 2 + (items.choice?.points ?? 0));
		expect(facts.signs).toEqual({ negative: 2, zero: 0, positive: 1, other: 0 });
		expect(facts.keyPlaces.map(({ count }) => count).reduce((sum, count) => sum + count, 0)).toBe(1);
		expect(facts.longest?.position).toBe(3);
		expect(findFacts(form(['grid', 'positive'], 3), find).points).toBe(6);
	});

	test('items that give each other away are noted at the later one', () => {
		const facts = findFacts(form(['grid', 'choice', 'again']), find);
		expect(facts.notes.find(({ code }) => code === 'review-form-giveaway')?.position).toBe(3);
	});

	test('an item the bank lacks is counted and otherwise left out', () => {
		expect(findFacts(form(['grid', 'unknown']), find)).toMatchObject({ items: 2, points: 1 });
	});

	test('a plan is drawn line by line, with what is met and what is not', () => {
		const blueprint = makeBlueprint({
			items: { min: 12, max: 12 },
			readingLoad: { words: { max: 360 } },
			difficulty: { target: 4, band: 0.5 },
		});
		const { plan, breaches } = findFacts(form(['grid', 'choice']), find, blueprint);
		expect(plan.find(({ path }) => path === '/items')).toMatchObject({ min: 12, max: 12, found: 2, isMet: false });
		expect(plan.find(({ path }) => path === '/readingLoad/words')).toMatchObject({ isMet: true });
		expect(plan.filter(({ path }) => path === '/difficulty')).toHaveLength(1);
		expect(new Set(plan.map(({ path }) => path)).size).toBe(plan.length);
		expect(breaches.some(({ path }) => path === '/sections')).toBe(true);
	});
});

test('a mean is given to tenths, and none for nothing', () => {
	expect([meanOf([]), meanOf([1, 2, 2])]).toEqual([undefined, 1.7]);
});

test('an item takes longer the more there is to read, and a form as long as its items', () => {
	const [short, long] = [
		griddedItem(),
		griddedItem({ stem: [{ kind: 'paragraph', text: `${'word '.repeat(120)}?` }] }),
	];
	expect(estimateMinutes(long) - estimateMinutes(short)).toBeGreaterThan(0.9);
	expect(minutesOfForm([])).toEqual({ from: 0, to: 0 });
	expect(minutesOfForm([short, short]).to).toBeGreaterThanOrEqual(minutesOfForm([short]).to);
});
