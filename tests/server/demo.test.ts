import { describe, expect, test } from 'vitest';
import { faceOf } from '../../item-bank/families/make-items.ts';
import { fillDemo, readDemo } from '../../server/demo.ts';
import { openTestStore } from '../helpers/test-store.ts';

describe('the demo department', () => {
	test('moves in whole and approved', async () => {
		const store = await openTestStore();
		const report = await fillDemo(store);
		expect(report).toEqual({ items: 600, forms: 2, groups: readDemo().groups.length, blueprints: 4 });
		const { total, facets } = await store.items.find({ limit: 1 });
		expect(total).toBe(600);
		expect(facets?.status).toEqual([{ value: 'approved', count: 600 }]);
		for (const { items } of await store.forms.list()) expect(items).toBe(20);
	});

	test('moves in once', async () => {
		const store = await openTestStore();
		await fillDemo(store);
		await expect(fillDemo(store)).rejects.toMatchObject({ code: 'demo-present' });
		expect((await store.items.find({ limit: 1 })).total).toBe(600);
	});

	test('has items of every kind and model, no two of which ask the same', () => {
		const { items, made } = readDemo();
		const all = [...items, ...made].map(({ item }) => item);
		expect(new Set(all.map(({ kind }) => kind)).size).toBe(9);
		expect(new Set(all.map(({ given }) => given)).size).toBe(5);
		expect(new Set(all.map(faceOf)).size).toBe(all.length);
		expect(made.every(({ item }) => item.origin !== undefined)).toBe(true);
	});

	test('makes up for what an interrupted run left out', async () => {
		const store = await openTestStore();
		const { items, groups } = readDemo();
		await store.items.createMany(items.slice(0, 50), 'approved');
		if (groups[0]) await store.groups.add(groups[0]);
		expect(await fillDemo(store)).toEqual({ items: 550, forms: 2, groups: groups.length - 1, blueprints: 4 });
		expect((await store.items.find({ limit: 1 })).total).toBe(600);
	});
});
