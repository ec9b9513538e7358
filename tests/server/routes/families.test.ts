import { describe, expect, test } from 'vitest';
import { families } from '../../../item-bank/families/index.ts';
import { griddedItem } from '../../helpers/sample-items.ts';
import { expectShape, openTestApp } from '../../helpers/test-app.ts';

describe('GET /api/families', () => {
	test('tells of every family what may be asked of it', async () => {
		const { send } = await openTestApp();
		const { status, json } = await send('GET', '/api/families');
		expect(status).toBe(200);
		expectShape('family-list', json);
		expect((json as unknown as { id: string }[]).map(({ id }) => id)).toEqual(families.map(({ id }) => id));
	});
});

describe('POST /api/items/make', () => {
	const order = { family: 'sum-of-two', count: 5, seed: 'retake', parameters: { largest: 30, signs: '-+' } };

	test('shows items and keeps nothing unless told to', async () => {
		const { send, store } = await openTestApp();
		const { status, json } = await send('POST', '/api/items/make', order);
		expect(status).toBe(200);
		expectShape('made-items', json);
		expect(json.items).toHaveLength(5);
		expect(json.problems).toEqual([]);
		expect(await store.items.count()).toBe(0);
	});

	test('keeps drafts, and the same order again keeps nothing twice', async () => {
		const { send, store } = await openTestApp();
		const first = (await send('POST', '/api/items/make', { ...order, keep: true })).json;
		expect(first.items.map(({ isNew }: { isNew: boolean }) => isNew)).toEqual([true, true, true, true, true]);
		const again = (await send('POST', '/api/items/make', { ...order, count: 6, keep: true })).json;
		expect(again.items.map(({ isNew }: { isNew: boolean }) => isNew)).toEqual([
			false,
			false,
			false,
			false,
			false,
			true,
		]);
		expect(await store.items.count()).toBe(6);
		expect((await store.items.get(first.items[0].id)).status).toBe('draft');
		expect((await store.items.get(first.items[0].id)).item).toEqual(first.items[0].item);
	});

	test('approves what it keeps when asked to', async () => {
		const { send, store } = await openTestApp();
		const { json } = await send('POST', '/api/items/make', { ...order, keep: true, approve: true });
		expect((await store.items.get(json.items[0].id)).status).toBe('approved');
	});

	test.each([
		[{ family: 'sum-of-tow' }, 'family-unknown', '/family'],
		[{ parameters: { largets: 9 } }, 'family-parameter-unknown', '/parameters/largets'],
		[{ parameters: { largest: 2 } }, 'family-parameter-value', '/parameters/largest'],
		[{ parameters: { least: 500, largest: 20 } }, 'family-parameters-impossible', '/parameters'],
		[{ standard: '8.EE.A.1' }, 'family-standard-missing', '/standard'],
	])('refuses %j and keeps nothing', async (change, code, path) => {
		const { send, store } = await openTestApp();
		const { status, json } = await send('POST', '/api/items/make', { ...order, keep: true, ...change });
		expect([status, json.code]).toEqual([422, 'making-refused']);
		expect(json.problems[0]).toMatchObject({ code, path });
		expect(await store.items.count()).toBe(0);
	});

	test('says why there are fewer than asked for', async () => {
		const { send } = await openTestApp();
		const small = { family: 'sum-of-two', count: 900, parameters: { least: 2, largest: 5 } };
		const { status, json } = await send('POST', '/api/items/make', small);
		expect(status).toBe(200);
		expect(json.items.length).toBeLessThan(900);
		expect(json.problems[0]).toMatchObject({ code: 'family-items-short', path: '/count' });
	});
});

describe('POST /api/items/{id}/variants', () => {
	test('makes other items of the shape of a made one, and keeps them', async () => {
		const { send, store } = await openTestApp();
		const made = await send('POST', '/api/items/make', { family: 'minus-negative', count: 1, seed: 'v', keep: true });
		const [{ id, item }] = made.json.items;
		const { status, json } = await send('POST', `/api/items/${id}/variants`, { count: 4, keep: true });
		expect(status).toBe(200);
		expectShape('made-items', json);
		expect(json.family).toBe('minus-negative');
		expect(new Set(json.items.map((each: { item: { stem: unknown } }) => JSON.stringify(each.item.stem))).size).toBe(4);
		for (const each of json.items) expect(each.item.kind).toBe(item.kind);
		expect(await store.items.count()).toBe(5);
	});

	test('says why no family makes such items', async () => {
		const { send } = await openTestApp();
		const expression = '((2 + 3) × 4 - 5) × 6 - 7 + 8 - 9';
		const stem = [{ kind: 'paragraph' as const, text: `What is \`${expression}\`?` }];
		const kept = await send('POST', '/api/items', { item: griddedItem({ stem, expression }) });
		const { status, json } = await send('POST', `/api/items/${kept.json.record.id}/variants`, { count: 2 });
		expect(status).toBe(200);
		expect(json.items).toEqual([]);
		expect(json.problems[0].code).toBe('variants-short');
		expect(json.problems[0].message).toMatch(/^no family makes/);
	});

	test('is refused for an item the bank does not have', async () => {
		const { send } = await openTestApp();
		expect((await send('POST', '/api/items/not-there/variants', { count: 1 })).status).toBe(404);
	});
});
