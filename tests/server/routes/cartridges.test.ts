import { afterAll, describe, expect, test } from 'vitest';
import { closeCartridges } from '../../../server/cartridge/cartridge-pool.ts';
import { griddedItem } from '../../helpers/sample-items.ts';
import { expectShape, openTestApp, type TestApp } from '../../helpers/test-app.ts';
import { sampleKinds } from '../qti/sample-kinds.ts';

afterAll(closeCartridges);

async function openWithKinds(): Promise<TestApp> {
	const opened = await openTestApp();
	const order = sampleKinds.find(({ item }) => item.kind === 'order');
	await opened.send('POST', '/api/items', { id: 'tide-one', item: griddedItem() });
	await opened.send('POST', '/api/items', { id: 'tide-order', item: order?.item });
	const items = ['tide-one', 'tide-order'].map((item) => ({ item, version: 1 }));
	const form = { title: 'Two kinds', gridProfile: 'plain-sign-first', sections: [{ title: 'All', items }] };
	expect((await opened.send('POST', '/api/forms', { id: 'form-a', form })).status).toBe(201);
	return opened;
}

describe('a form as a cartridge', () => {
	test('is refused with the list, and written when a choice is made', async () => {
		const { send } = await openWithKinds();
		const refused = await send('POST', '/api/forms/form-a/export', { as: 'cc-1.1' });
		expect([refused.status, refused.json.code]).toEqual([422, 'export-not-carried']);
		expect(refused.json.problems).toEqual([
			expect.objectContaining({ code: 'item-not-carried', path: '/sections/0/items/1' }),
		]);
		const written = await send('POST', '/api/forms/form-a/export', { as: 'cc-1.1', convert: true });
		expect(written.status).toBe(200);
		expect(written.headers['content-disposition']).toBe('attachment; filename="form-a-v1-cc-1.1.imscc"');
		const told = JSON.parse(decodeURIComponent(String(written.headers['zeropair-report'])));
		expect(told.notes.join(' ')).toContain('Converted to choice among whole orders: item 2.');
		const left = await send('POST', '/api/forms/form-a/export', { as: 'cc-1.1', leaveOut: true });
		expect(decodeURIComponent(String(left.headers['zeropair-report']))).toContain('is left out');
	});

	test('has an answer map of its own', async () => {
		const { send } = await openWithKinds();
		const refused = await send('GET', '/api/forms/form-a/answer-map?as=cc-1.1');
		expect([refused.status, refused.json.code]).toEqual([422, 'export-not-carried']);
		const map = await send('GET', '/api/forms/form-a/answer-map?as=cc-1.1&convert=true&version=1');
		expect(map.text).toContain('choice among whole orders');
		expect((await send('GET', '/api/forms/form-a/answer-map')).text).not.toContain('choice among whole orders');
	});

	test('takes no word that is not known', async () => {
		const { send } = await openWithKinds();
		expect((await send('POST', '/api/forms/form-a/export', { as: 'cc-1.1', convert: 'yes' })).status).toBe(400);
		expect((await send('POST', '/api/forms/form-a/export', { as: 'cc-1.1', drop: true })).status).toBe(400);
	});
});

describe('GET /api/forms/{id}/carrying', () => {
	test('shows the table before anything is written', async () => {
		const { send } = await openWithKinds();
		const answer = await send('GET', '/api/forms/form-a/carrying');
		expect(answer.status).toBe(200);
		expectShape('carrying-table', answer.json);
		expect(
			answer.json.items.map((row: { carries: Record<string, { how: string }> }) => row.carries['cc-1.1']?.how),
		).toEqual(['carried', 'converted']);
		expect((await send('GET', '/api/forms/form-a/carrying?version=9')).status).toBe(404);
	});
});
