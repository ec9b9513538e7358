import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkItem } from '../../item-bank/checks/check-item.ts';
import { checkForm, maximumOf, positionsOf } from '../../item-bank/forms/check-form.ts';
import { computeKey } from '../../item-bank/items/key.ts';
import type { Form, Group, Item } from '../../item-bank/types.ts';
import { checkShape } from '../../server/json-schemas.ts';
import { projectRoot } from '../../server/project-root.ts';

const folder = join(projectRoot, 'item-bank/demo');
const read = <T>(path: string): T => JSON.parse(readFileSync(join(folder, path), 'utf8')) as T;
const items = readdirSync(join(folder, 'items'))
	.sort()
	.flatMap((name) => read<readonly { readonly id: string; readonly item: Item }[]>(`items/${name}`));
const forms = read<readonly { readonly id: string; readonly form: Form }[]>('forms.json');
const groups = read<readonly { readonly id: string; readonly group: Group }[]>('groups.json');
const findItem = (id: string): Item | undefined => items.find((entry) => entry.id === id)?.item;
const tally = (values: readonly (string | number)[]): Readonly<Record<string, number>> =>
	Object.fromEntries(
		[...new Set(values)].sort().map((value) => [value, values.filter((other) => other === value).length]),
	);

describe('the demo bank', () => {
	test('has 80 items with ids of their own', () => {
		expect(items).toHaveLength(80);
		expect(new Set(items.map(({ id }) => id)).size).toBe(80);
	});

	test.each(items.map(({ id, item }) => [id, item] as const))('%s fits its schema and has no problem', (_id, item) => {
		expect(checkShape('item.schema.json', item)).toEqual([]);
		expect(checkItem(item)).toEqual([]);
		expect(computeKey(item)).toBeDefined();
	});

	test('covers every model type, kind and DOK 1 to 3', () => {
		const given = tally(items.map(({ item }) => item.given));
		expect(Object.keys(given)).toEqual(['counters', 'number-line', 'story', 'symbols', 'table']);
		for (const count of Object.values(given)) expect(count).toBeGreaterThanOrEqual(10);
		expect(Object.keys(tally(items.map(({ item }) => item.kind)))).toEqual(['choice', 'gridded', 'multiple-choice']);
		expect(Object.keys(tally(items.map(({ item }) => item.dok)))).toEqual(['1', '2', '3']);
	});

	test('is aligned to at least 15 codes in three frameworks', () => {
		const keys = items.flatMap(({ item }) =>
			item.alignments.map(({ framework, edition, code }) => `${framework} ${edition} ${code}`),
		);
		expect(new Set(keys).size).toBeGreaterThanOrEqual(15);
		expect(new Set(keys.map((key) => key.split(' ')[0])).size).toBe(3);
	});

	test('tells positions, changes, total distances and comparisons apart in its stories and tables', () => {
		const contexts = items.flatMap(({ item }) => (item.context ? [item.context] : []));
		expect(Object.keys(tally(contexts.map(({ role }) => role)))).toEqual([
			'change',
			'comparison',
			'position',
			'total-distance',
		]);
		expect(new Set(contexts.map(({ setting }) => setting))).toEqual(
			new Set(['battery-bench', 'cold-storage', 'garden-fund', 'mine-lift', 'mountain-rail', 'tide-gauge']),
		);
	});

	test('asks for total distances as sizes without a sign', () => {
		for (const { id, item } of items.filter(
			({ item }) => item.context?.role === 'total-distance' && item.kind === 'gridded',
		)) {
			const key = computeKey(item);
			expect(key.kind === 'value' && key.value, id).toBeGreaterThan(0);
		}
	});
});

describe('the demo forms', () => {
	test.each(forms.map(({ id, form }) => [id, form] as const))(
		'%s has 20 sound items, gridded sections among them',
		(_id, form) => {
			expect(checkShape('form.schema.json', form)).toEqual([]);
			expect(checkForm(form, findItem)).toEqual([]);
			expect(positionsOf(form)).toHaveLength(20);
			const isGridded = form.sections.map(({ items: entries }) =>
				entries.every(({ item }) => findItem(item)?.kind === 'gridded'),
			);
			expect(isGridded).toContain(true);
		},
	);

	test('share no item, and agree in models, kinds, DOK and points', () => {
		const [a, b] = forms;
		if (!a || !b) throw new Error('expected two forms');
		const itemsOf = (form: Form): readonly Item[] =>
			positionsOf(form).flatMap(({ entry }) => findItem(entry.item) ?? []);
		const idsOf = (form: Form): readonly string[] => positionsOf(form).map(({ entry }) => entry.item);
		expect(idsOf(a.form).filter((id) => idsOf(b.form).includes(id))).toEqual([]);
		for (const trait of ['given', 'kind', 'dok', 'points'] as const) {
			expect(tally(itemsOf(a.form).map((item) => item[trait]))).toEqual(
				tally(itemsOf(b.form).map((item) => item[trait])),
			);
		}
		expect(maximumOf(a.form, findItem)).toBe(maximumOf(b.form, findItem));
	});
});

test('the demo groups hold codes, not names', () => {
	expect(groups.length).toBeGreaterThanOrEqual(3);
	for (const { group } of groups) {
		expect(checkShape('group.schema.json', group)).toEqual([]);
		for (const code of group.studentCodes) expect(code).toMatch(/^\d[A-Z]-\d+$/);
	}
});
