import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { adviceRules, stopRules } from '../../../item-bank/checks/index.ts';
import { reviewItem } from '../../../item-bank/checks/review-item.ts';
import type { Item } from '../../../item-bank/types.ts';
import { projectRoot } from '../../../server/project-root.ts';
import { makeChoice, makeGridded, numberOptions } from '../../helpers/items.ts';

const checks = 'item-bank/checks';
const rulesIn = (folder: string): readonly string[] => readdirSync(join(projectRoot, checks, folder)).sort();

test('stops come first and carry their guideline', () => {
	const notes = reviewItem(makeChoice({ options: numberOptions(-7, -11, 7) }));
	expect(notes[0]).toMatchObject({ severity: 'stop', code: 'option-number-order', guideline: { number: 21 } });
	expect(notes.at(-1)).toMatchObject({
		severity: 'advise',
		code: 'review-unexplained-distractor',
		guideline: { number: 30 },
	});
	const firstAdvice = notes.findIndex(({ severity }) => severity === 'advise');
	expect(notes.slice(firstAdvice).every(({ severity }) => severity === 'advise')).toBe(true);
});

test('numbers of guidelines that were not confirmed say that they are from memory', () => {
	for (const { guideline } of [...stopRules, ...adviceRules]) {
		if (guideline.number === undefined) continue;
		expect(guideline.isFromMemory === true).toBe(![20, 21, 23, 30].includes(guideline.number));
	}
});

test('every rule has a file, a test of the same name, and a place in the registry', () => {
	for (const [folder, rules] of [
		['stops', stopRules],
		['review', adviceRules],
	] as const) {
		const files = rulesIn(folder);
		expect(rules).toHaveLength(files.length);
		expect(new Set(rules).size).toBe(rules.length);
		const tests = readdirSync(join(projectRoot, 'tests', checks, folder)).sort();
		expect(tests).toEqual(files.map((file) => file.replace('.ts', '.test.ts')).sort());
	}
	expect(stopRules.every(({ severity }) => severity === 'stop')).toBe(true);
	expect(adviceRules.every(({ severity }) => severity === 'advise')).toBe(true);
});

test('a plain item gets no note', () => {
	expect(reviewItem(makeGridded())).toEqual([]);
});

test('the demo bank has no stop and hardly a note', () => {
	const folder = join(projectRoot, 'item-bank/demo/items');
	const items = readdirSync(folder).flatMap(
		(name) => JSON.parse(readFileSync(join(folder, name), 'utf8')) as { readonly item: Item }[],
	);
	const notes = items.flatMap(({ item }) => reviewItem(item));
	expect(notes.filter(({ severity }) => severity === 'stop')).toEqual([]);
	expect(notes.length).toBeLessThan(5);
});
