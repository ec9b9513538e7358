import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { optionsOf } from '../../../item-bank/items/asked.ts';
import { computeKey } from '../../../item-bank/items/key.ts';
import { findPatternsBehind } from '../../../item-bank/patterns/explain-answer.ts';
import { findPattern } from '../../../item-bank/patterns/index.ts';
import type { Item } from '../../../item-bank/types.ts';
import { projectRoot } from '../../../server/project-root.ts';

const folder = join(projectRoot, 'item-bank/demo/items');
const entries = readdirSync(folder).flatMap(
	(name) => JSON.parse(readFileSync(join(folder, name), 'utf8')) as { readonly id: string; readonly item: Item }[],
);

/** Tags that describe how an option was made, and that no work on what the item asks leads to: for people to judge. */
const widerReadings = [
	'srm-mul-007 c sizes-subtracted-first-sign-kept', // made from the key option: −60 + (−24) worked by the pattern
	'srm-mul-007 c direction-by-operation',
	'srm-mul-008 a sizes-subtracted-first-sign-kept',
	'srm-mul-008 a direction-by-operation',
	'srm-ord-003 d distance-adds-sizes', // |−3 + 11| read as the distance from −3 to −11
	'srm-ord-004 b distance-adds-sizes',
	'srm-ord-009 c order-by-size', // only the negative numbers are ordered by size
	'srm-ord-010 a order-by-size',
	'srm-stp-009 b majority-colour-only', // only part of 4 + (−9) − (−9) is read off the counters
	'srm-stp-010 c majority-colour-only',
];

describe('patterns of the options of the demo bank', () => {
	test('exist, and stand at wrong options only', () => {
		for (const { id, item } of entries) {
			const key = computeKey(item);
			for (const option of optionsOf(item)) {
				const isKey = key.kind === 'options' && key.options.includes(option.id);
				expect(isKey, `${id} ${option.id}`).toBe(option.patterns === undefined);
				for (const pattern of option.patterns ?? [])
					expect(findPattern(pattern)?.id, `${id} ${option.id}`).toBe(pattern);
			}
		}
	});

	test('lead to the option they stand at, a few wider readings apart', () => {
		const missed = entries.flatMap(({ id, item }) =>
			optionsOf(item).flatMap((option) => {
				const computed: readonly string[] = findPatternsBehind(item, option.id);
				const tags = option.patterns ?? [];
				return tags.filter((tag) => !computed.includes(tag)).map((tag) => `${id} ${option.id} ${tag}`);
			}),
		);
		expect(missed.filter((line) => !widerReadings.includes(line))).toEqual([]);
	});

	test('are all that lead to a number, distances apart', () => {
		const isDistance = (item: Item) =>
			'rule' in item && 'expression' in item.rule && item.rule.expression.startsWith('|');
		const numeric = entries.filter(
			({ item }) => item.kind === 'choice' && item.answerIn === 'number' && !isDistance(item),
		);
		expect(numeric.length).toBeGreaterThan(10);
		for (const { id, item } of numeric) {
			for (const option of item.kind === 'choice' ? item.options : []) {
				expect(findPatternsBehind(item, option.id), `${id} ${option.id}`).toEqual(option.patterns ?? []);
			}
		}
	});
});
