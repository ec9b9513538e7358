import { describe, expect, test } from 'vitest';
import type { Item } from '../../../item-bank/types.ts';
import { alignTo, choiceItem, griddedItem } from '../../helpers/sample-items.ts';
import { openTestStore } from '../../helpers/test-store.ts';

describe('keeping items', () => {
	test('a new item is a draft at version 1 under an id of the bank', async () => {
		const store = await openTestStore();
		const { record, problems } = await store.items.create({ item: griddedItem() });
		expect(record).toEqual({ id: 'test-0001', version: 1, status: 'draft', item: griddedItem() });
		expect(problems).toEqual([]);
		expect(await store.items.get('test-0001')).toEqual(record);
	});

	test('a draft may have faults that can be mended, and is told of them', async () => {
		const store = await openTestStore();
		const { record, problems } = await store.items.create({ item: griddedItem({ expression: '3 +' }) });
		expect(record.status).toBe('draft');
		expect(problems.length).toBeGreaterThan(0);
		await expect(store.items.approve(record.id, 1)).rejects.toMatchObject({
			code: 'item-not-approvable',
			problems,
		});
		expect((await store.items.get(record.id)).status).toBe('draft');
	});

	test.each<readonly [string, Item, string, string]>([
		['a key that contradicts the expression', griddedItem({ key: 11 }), 'key-mismatch', '/key'],
		[
			'a code nobody knows',
			griddedItem({ alignments: [alignTo('7.NS.A.9')] }),
			'unknown-standard',
			'/alignments/0/code',
		],
		[
			'a framework nobody knows',
			griddedItem({ alignments: [alignTo('1', { framework: 'moon' })] }),
			'unknown-framework',
			'/alignments/0',
		],
		[
			'the same standard twice',
			griddedItem({ alignments: [alignTo('7.NS.A.1b'), alignTo('7.NS.A.1b', { primary: false })] }),
			'alignment-repeated',
			'/alignments/1',
		],
		[
			'a character XML cannot hold',
			griddedItem({ stem: [{ kind: 'paragraph', text: 'What\u0008?' }] }),
			'illegal-character',
			'/stem/0/text',
		],
		['an unknown field', { ...griddedItem(), colour: 'red' } as Item, 'field-unknown', '/colour'],
		['a wrong type', { ...griddedItem(), points: '1' } as unknown as Item, 'type-wrong', '/points'],
		['an unknown kind', { ...griddedItem(), kind: 'essay' } as unknown as Item, 'kind-unknown', '/kind'],
	])('refuses even as a draft: %s', async (_title, item, code, path) => {
		const store = await openTestStore();
		const refusal = await store.items.create({ item }).catch((error: unknown) => error);
		expect(refusal).toMatchObject({ code: 'content-refused' });
		expect(refusal).toMatchObject({ problems: expect.arrayContaining([expect.objectContaining({ code, path })]) });
		expect(await store.items.count()).toBe(0);
	});

	test('a mismatched key is reported with both values', async () => {
		const store = await openTestStore();
		await expect(store.items.create({ item: griddedItem({ key: 11 }) })).rejects.toThrow(/worth -11.*says 11/);
	});

	test('an id is used once', async () => {
		const store = await openTestStore();
		await store.items.create({ id: 'lift-one', item: choiceItem() });
		await expect(store.items.create({ id: 'lift-one', item: griddedItem() })).rejects.toMatchObject({
			code: 'id-taken',
		});
		expect((await store.items.get('lift-one')).item.kind).toBe('choice');
	});

	test('many items are kept all or not at all', async () => {
		const store = await openTestStore();
		const good = Array.from({ length: 450 }, (_unused, index) => ({ id: `bulk-${index}`, item: griddedItem() }));
		await expect(store.items.createMany([...good, { item: griddedItem({ key: 1 }) }])).rejects.toMatchObject({
			code: 'content-refused',
			problems: [{ path: '/450/item/key' }],
		});
		await expect(store.items.createMany([...good, { id: 'bulk-3', item: griddedItem() }])).rejects.toMatchObject({
			code: 'id-taken',
		});
		expect(await store.items.count()).toBe(0);
		const kept = await store.items.createMany(good);
		expect(kept).toHaveLength(450);
		expect(await store.items.count()).toBe(450);
		expect((await store.items.find({})).total).toBe(450);
	});
});

describe('versions', () => {
	test('revising makes a new draft and leaves the approved version approved', async () => {
		const store = await openTestStore();
		const { record } = await store.items.create({ item: griddedItem() });
		expect((await store.items.approve(record.id, 1)).status).toBe('approved');
		const revised = await store.items.revise(record.id, 1, griddedItem({ name: 'Second try' }));
		expect(revised.record).toMatchObject({ version: 2, status: 'draft' });
		expect((await store.items.get(record.id, 1)).status).toBe('approved');
		expect((await store.items.get(record.id)).item.name).toBe('Second try');
	});

	test('approving a newer version retires the one before', async () => {
		const store = await openTestStore();
		const { record } = await store.items.create({ item: griddedItem() });
		await store.items.approve(record.id, 1);
		await store.items.revise(record.id, 1, griddedItem({ name: 'Second try' }));
		await store.items.approve(record.id, 2);
		expect((await store.items.get(record.id, 1)).status).toBe('retired');
		const { versions, happenings } = await store.items.history(record.id);
		expect(versions.map(({ version, status, name }) => [version, status, name])).toEqual([
			[2, 'approved', 'Second try'],
			[1, 'retired', 'Tide gauge, two readings'],
		]);
		expect(happenings.map(({ what, version }) => `${what} ${version}`)).toEqual([
			'approved 2',
			'retired 1',
			'revised 2',
			'approved 1',
			'created 1',
		]);
	});

	test('a change based on an older version is refused with both versions', async () => {
		const store = await openTestStore();
		const { record } = await store.items.create({ item: griddedItem() });
		await store.items.revise(record.id, 1, griddedItem({ name: 'Mine' }));
		await expect(store.items.revise(record.id, 1, griddedItem({ name: 'Yours' }))).rejects.toMatchObject({
			code: 'version-conflict',
			base: 1,
			newest: 2,
		});
		expect((await store.items.get(record.id)).item.name).toBe('Mine');
	});

	test('of two changes made at once to the same version exactly one is kept', async () => {
		const store = await openTestStore();
		const { record } = await store.items.create({ item: griddedItem() });
		const results = await Promise.allSettled([
			store.items.revise(record.id, 1, griddedItem({ name: 'One' })),
			store.items.revise(record.id, 1, griddedItem({ name: 'Two' })),
		]);
		expect(results.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected']);
		expect((await store.items.history(record.id)).versions).toHaveLength(2);
	});

	test('a retired version cannot be approved or retired again, but stays readable', async () => {
		const store = await openTestStore();
		const { record } = await store.items.create({ item: griddedItem() });
		await store.items.retire(record.id, 1);
		await expect(store.items.approve(record.id, 1)).rejects.toMatchObject({ code: 'status-refused' });
		await expect(store.items.retire(record.id, 1)).rejects.toMatchObject({ code: 'status-refused' });
		expect((await store.items.get(record.id, 1)).item).toEqual(griddedItem());
	});

	test('what is not in the bank is not found', async () => {
		const store = await openTestStore();
		await store.items.create({ id: 'only-one', item: griddedItem() });
		const codes = await Promise.all(
			[
				store.items.get('nobody'),
				store.items.get('only-one', 2),
				store.items.history('nobody'),
				store.items.revise('nobody', 1, griddedItem()),
				store.items.approve('only-one', 7),
			].map((attempt) => (attempt as Promise<unknown>).catch((error: { code: string }) => error.code)),
		);
		expect(codes).toEqual(['not-found', 'not-found', 'not-found', 'not-found', 'not-found']);
	});
});
