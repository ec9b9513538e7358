import { describe, expect, test } from 'vitest';
import { fillDemo, readDemo } from '../../server/demo.ts';
import { openTestStore } from '../helpers/test-store.ts';

describe('the demo department', () => {
	test('moves in whole and approved', async () => {
		const store = await openTestStore();
		const report = await fillDemo(store);
		expect(report).toEqual({ items: 80, forms: 2, groups: readDemo().groups.length, blueprints: 4, sittings: 6 });
		const { total, facets } = await store.items.find({ limit: 1 });
		expect(total).toBe(80);
		expect(facets?.status).toEqual([{ value: 'approved', count: 80 }]);
		for (const { items } of await store.forms.list()) expect(items).toBe(20);
	});

	test('moves in once', async () => {
		const store = await openTestStore();
		await fillDemo(store);
		await expect(fillDemo(store)).rejects.toMatchObject({ code: 'demo-present' });
		expect((await store.items.find({ limit: 1 })).total).toBe(80);
	});

	test('makes up for what an interrupted run left out', async () => {
		const store = await openTestStore();
		const { items, groups } = readDemo();
		await store.items.createMany(items.slice(0, 50), 'approved');
		if (groups[0]) await store.groups.add(groups[0]);
		expect(await fillDemo(store)).toEqual({
			items: 30,
			forms: 2,
			groups: groups.length - 1,
			blueprints: 4,
			sittings: 6,
		});
		expect((await store.items.find({ limit: 1 })).total).toBe(80);
	});
});
