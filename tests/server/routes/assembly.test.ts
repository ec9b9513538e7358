import { describe, expect, onTestFinished, test } from 'vitest';
import { withItem } from '../../../item-bank/forms/swap-item.ts';
import { checkShape } from '../../../server/json-schemas.ts';
import { buildFromBank } from '../../../server/planning.ts';
import type { Store } from '../../../server/store/open-store.ts';
import { fillBuildBank } from '../../helpers/build-bank.ts';
import { makeBlueprint } from '../../helpers/sample-blueprint.ts';
import { openTestApp } from '../../helpers/test-app.ts';

async function openBank() {
	const bank = await openTestApp();
	await fillBuildBank(bank.store);
	await bank.store.blueprints.create({ id: 'plan-one', blueprint: makeBlueprint() });
	return bank;
}

describe('building forms', () => {
	test('answers forms that keep the plan, share no item, and are kept when asked', async () => {
		const { send, store } = await openBank();
		const { status, json } = await send('POST', '/api/forms/build', { blueprint: 'plan-one', count: 2, keep: true });
		expect(status).toBe(200);
		expect(checkShape('build-result.schema.json', json)).toEqual([]);
		expect(json.answer.kind).toBe('built');
		const items = json.answer.forms.flatMap((form: { sections: { items: { item: string }[] }[] }) =>
			form.sections.flatMap((section) => section.items.map(({ item }) => item)),
		);
		expect(items).toHaveLength(4);
		expect(new Set(items).size).toBe(4);
		expect((await store.forms.list()).map(({ id }) => id).sort()).toEqual([...json.kept].sort());
		expect(json.lines).toContain('Built 2 forms.');
	});

	test('gives the same forms for the same seed and keeps nothing unless asked', async () => {
		const { send, store } = await openBank();
		const order = { document: makeBlueprint(), count: 1, seed: 'spring' };
		const [first, second] = [
			await send('POST', '/api/forms/build', order),
			await send('POST', '/api/forms/build', order),
		];
		expect(second.json.answer).toEqual(first.json.answer);
		expect(await store.forms.list()).toEqual([]);
	});

	test('answers why it cannot be done', async () => {
		const { send } = await openBank();
		const { status, json } = await send('POST', '/api/forms/build', { blueprint: 'plan-one', count: 4, keep: true });
		expect(status).toBe(200);
		expect(json.answer.kind).toBe('impossible');
		expect(json.answer.conflict.length).toBeGreaterThan(0);
		expect(json.kept).toEqual([]);
	});

	test('knows on which day an item was given', async () => {
		const { send, store } = await openBank();
		const built = await send('POST', '/api/forms/build', { blueprint: 'plan-one', count: 1, keep: true });
		await store.groups.add({ id: 'seven-a', group: { name: '7A', studentCodes: ['7A-01'] } });
		const today = new Date().toISOString().slice(0, 10);
		await store.forms.give(built.json.kept[0], { version: 1, group: 'seven-a', date: today });
		const document = makeBlueprint({ exclusions: { usedWithinDays: 30 } });
		const again = await send('POST', '/api/forms/build', { document, count: 2 });
		expect(again.json.answer.kind).toBe('built');
		const none = await send('POST', '/api/forms/build', { document, count: 3 });
		expect(none.json.answer.kind).toBe('impossible');
		expect(JSON.stringify(none.json.answer.conflict)).toContain('difference-');
	});

	test('keeps forms under the ids and titles asked for', async () => {
		const { send, store } = await openBank();
		const order = { blueprint: 'plan-one', version: 1, count: 2, keep: true };
		const named = { ...order, ids: ['unit-a', 'unit-b'], titles: ['Unit check, blue', 'Unit check, green'] };
		const { status, json } = await send('POST', '/api/forms/build', named);
		expect(status).toBe(200);
		expect(json.kept).toEqual(['unit-a', 'unit-b']);
		expect(json.answer.balance.forms).toEqual(['Unit check, blue', 'Unit check, green']);
		expect((await store.forms.get('unit-b')).record.form.title).toBe('Unit check, green');
		expect(await send('POST', '/api/forms/build', named)).toMatchObject({ status: 409, json: { code: 'id-taken' } });
		const oneTaken = { ...named, ids: ['unit-c', 'unit-a'] };
		expect(await send('POST', '/api/forms/build', oneTaken)).toMatchObject({ status: 409 });
		expect(await store.forms.list()).toHaveLength(2);
	});

	test('refuses ids and titles that are too few, and ids for forms that are not kept', async () => {
		const { send } = await openBank();
		const order = { blueprint: 'plan-one', count: 2 };
		const refused = { status: 400, json: { code: 'order-contradictory' } };
		const build = (more: object) => send('POST', '/api/forms/build', { ...order, ...more });
		expect(await build({ titles: ['One'] })).toMatchObject(refused);
		expect(await build({ keep: true, ids: ['unit-a'] })).toMatchObject(refused);
		expect(await build({ ids: ['unit-a', 'unit-b'] })).toMatchObject(refused);
		expect(await build({ keep: true, ids: ['unit-a', 'unit-a'] })).toMatchObject({ status: 400 });
		expect(await build({ version: 2 })).toMatchObject({ status: 404, json: { code: 'not-found' } });
	});

	test('refuses a document that contradicts itself, saying where', async () => {
		const { send } = await openBank();
		const document = makeBlueprint({ items: { min: 5, max: 2 } });
		const { status, json } = await send('POST', '/api/forms/build', { document, count: 1 });
		expect(status).toBe(400);
		expect(json.code).toBe('content-refused');
		expect(json.problems[0].path).toMatch(/^\/document\/items/);
		const both = { document: makeBlueprint(), version: 1, count: 1 };
		expect(await send('POST', '/api/forms/build', both)).toMatchObject({ json: { code: 'order-contradictory' } });
	});

	test('refuses a request no search can answer', async () => {
		const { send, store } = await openBank();
		await store.blueprints.create({
			id: 'plan-far',
			blueprint: makeBlueprint({ forced: [{ item: 'sum-2', form: 2 }] }),
		});
		const { status, json } = await send('POST', '/api/forms/build', { blueprint: 'plan-far', count: 1 });
		expect([status, json.code ?? json.answer?.kind]).toEqual([422, 'build-request-refused']);
	});

	test('is given up without keeping anything when whoever asked stops it', async () => {
		const { store } = await openBank();
		const { blueprint } = await store.blueprints.get('plan-one');
		const stop = new AbortController();
		const wish = { blueprint, count: 2, seed: '1', keep: true, today: '2026-09-14' };
		const building = buildFromBank(store, wish, { signal: stop.signal, onProgress: () => stop.abort() });
		await expect(building).rejects.toMatchObject({ code: 'build-cancelled' });
		expect(await store.forms.list()).toEqual([]);
	});

	test('keeps nothing for somebody who hung up', async () => {
		const { send, store } = await openBank();
		const hangUp = new AbortController();
		const items: Store['items'] = {
			...store.items,
			// The build has begun when it asks for the approved items.
			approved: () => {
				setTimeout(() => hangUp.abort(), 20);
				return store.items.approved();
			},
		};
		const { app } = await openTestApp({ store: { ...store, items } });
		await app.listen({ port: 0, host: '127.0.0.1' });
		onTestFinished(() => app.close());
		const address = app.server.address();
		const url = `http://127.0.0.1:${typeof address === 'object' && address ? address.port : 0}/api/forms/build`;
		const order = { blueprint: 'plan-one', count: 2, keep: true };
		const body = JSON.stringify({ ...order, ids: ['gone-a', 'gone-b'] });
		const headers = { 'content-type': 'application/json' };
		await expect(fetch(url, { method: 'POST', headers, body, signal: hangUp.signal })).rejects.toThrow();
		// As long as the build would have taken, and longer.
		for (const ids of [
			['unit-a', 'unit-b'],
			['unit-c', 'unit-d'],
		]) {
			expect(await send('POST', '/api/forms/build', { ...order, ids })).toMatchObject({ status: 200 });
		}
		expect((await store.forms.list()).map(({ id }) => id).sort()).toEqual(['unit-a', 'unit-b', 'unit-c', 'unit-d']);
	});

	test('keeps one of two builds that want the same ids, whole', async () => {
		const { send, store } = await openBank();
		const order = { blueprint: 'plan-one', count: 2, keep: true };
		const [one, other] = await Promise.all([
			send('POST', '/api/forms/build', { ...order, ids: ['unit-a', 'unit-b'] }),
			send('POST', '/api/forms/build', { ...order, ids: ['unit-c', 'unit-b'] }),
		]);
		expect([one.status, other.status].sort()).toEqual([200, 409]);
		const kept = one.status === 200 ? ['unit-a', 'unit-b'] : ['unit-b', 'unit-c'];
		expect((await store.forms.list()).map(({ id }) => id).sort()).toEqual(kept);
	});

	test('refuses an order that asks for nothing or for two things, and blueprints that are not there', async () => {
		const { send } = await openBank();
		const build = (order: unknown) => send('POST', '/api/forms/build', order);
		expect(await build({ count: 1 })).toMatchObject({ status: 400, json: { code: 'order-contradictory' } });
		expect(await build({ count: 1, blueprint: 'plan-one', document: makeBlueprint() })).toMatchObject({ status: 400 });
		expect(await build({ count: 5, blueprint: 'plan-one' })).toMatchObject({ status: 400 });
		expect(await build({ count: 1, blueprint: 'plan-two' })).toMatchObject({ status: 404 });
		expect(await build({ count: 1, blueprint: 'plan-one', like: 'no-form' })).toMatchObject({ status: 404 });
	});
});

describe('forms of the bank', () => {
	async function openTwoForms() {
		const bank = await openBank();
		const { json } = await bank.send('POST', '/api/forms/build', { blueprint: 'plan-one', count: 2, keep: true });
		const [first, second] = json.kept as readonly [string, string];
		return { ...bank, first, second };
	}

	test('are compared measure by measure', async () => {
		const { send, first, second } = await openTwoForms();
		const { status, json } = await send('GET', `/api/forms/compare?first=${first}&second=${second}`);
		expect(status).toBe(200);
		expect(checkShape('balance-report.schema.json', json)).toEqual([]);
		expect(json.shared).toEqual([]);
		expect(await send('GET', `/api/forms/compare?first=${first}&second=none`)).toMatchObject({ status: 404 });
	});

	test('get swaps offered that are not on the form', async () => {
		const { send, first } = await openTwoForms();
		const { status, json } = await send('POST', `/api/forms/${first}/swap`, { position: 1, blueprint: 'plan-one' });
		expect(status).toBe(200);
		expect(checkShape('swap-offers.schema.json', json)).toEqual([]);
		expect(json[0]).toMatchObject({ keepsPlan: true });
		const away = await send('POST', `/api/forms/${first}/swap`, { position: 9 });
		expect(away).toMatchObject({ status: 422, json: { code: 'position-unknown' } });
		expect(await send('POST', `/api/forms/${first}/swap`, { position: 0 })).toMatchObject({ status: 400 });
	});

	test('get no swaps from the forms they are not to share with', async () => {
		const { send, first, second } = await openTwoForms();
		const itemsOf = async (id: string) =>
			(await send('GET', `/api/forms/${id}`)).json.items.map((item: { id: string }) => item.id) as string[];
		const offered = async (order: object) =>
			(await send('POST', `/api/forms/${first}/swap`, { position: 1, ...order })).json.map(
				(offer: { item: string }) => offer.item,
			) as string[];
		const parallel = await itemsOf(second);
		expect((await offered({})).some((item) => parallel.includes(item))).toBe(true);
		expect((await offered({ notOnForms: [second] })).filter((item) => parallel.includes(item))).toEqual([]);
		const unknown = await send('POST', `/api/forms/${first}/swap`, { position: 1, notOnForms: ['no-form'] });
		expect(unknown).toMatchObject({ status: 404 });
	});

	test('keep a swap as a new version', async () => {
		const { send, first } = await openTwoForms();
		const [offer] = (await send('POST', `/api/forms/${first}/swap`, { position: 1 })).json;
		const { json } = await send('GET', `/api/forms/${first}`);
		const form = withItem(json.record.form, 1, offer);
		const kept = await send('PUT', `/api/forms/${first}`, { baseVersion: 1, form });
		expect(kept).toMatchObject({ status: 200, json: { version: 2 } });
		expect((await send('GET', `/api/forms/${first}`)).json.items[0].id).toBe(offer.item);
		expect((await send('GET', `/api/forms/${first}?version=1`)).json.items[0].id).toBe(json.items[0].id);
	});

	test('have a blueprint read off them that they keep', async () => {
		const { send, first } = await openTwoForms();
		const { status, json } = await send('GET', `/api/forms/${first}/blueprint`);
		expect(status).toBe(200);
		expect(checkShape('blueprint.schema.json', json)).toEqual([]);
		expect(json.items).toEqual({ min: 2, max: 2 });
		expect((await send('POST', '/api/blueprints/check', json)).json).toEqual([]);
		expect(await send('GET', `/api/forms/${first}/blueprint?version=7`)).toMatchObject({ status: 404 });
	});
});
