import { describe, expect, test } from 'vitest';
import { checkShape } from '../../../server/json-schemas.ts';
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
		expect((await send('POST', `/api/forms/${first}/swap`, { position: 9 })).json).toEqual([]);
		expect(await send('POST', `/api/forms/${first}/swap`, { position: 0 })).toMatchObject({ status: 400 });
	});

	test('have a blueprint read off them that they keep', async () => {
		const { send, first } = await openTwoForms();
		const { status, json } = await send('GET', `/api/forms/${first}/blueprint`);
		expect(status).toBe(200);
		expect(checkShape('blueprint.schema.json', json)).toEqual([]);
		expect(json.items).toEqual({ min: 2, max: 2 });
	});
});
