import { describe, expect, test } from 'vitest';
import { choiceItem, formOf, griddedItem } from '../../helpers/sample-items.ts';
import { expectShape, openTestApp, type TestApp } from '../../helpers/test-app.ts';

async function openWithItems(): Promise<TestApp> {
	const opened = await openTestApp();
	await opened.send('POST', '/api/items', { id: 'lift-one', item: choiceItem() });
	await opened.send('POST', '/api/items', { id: 'tide-one', item: griddedItem() });
	await opened.send('POST', '/api/forms', { id: 'form-a', form: formOf(['lift-one', 'tide-one']) });
	await opened.send('POST', '/api/groups', { id: 'class-7b', group: { name: 'Class 7B', studentCodes: ['7B-01'] } });
	return opened;
}

describe('POST /api/forms', () => {
	test('keeps a form and says where', async () => {
		const { send } = await openWithItems();
		const answer = await send('POST', '/api/forms', { form: formOf(['tide-one']) });
		expect(answer.status).toBe(201);
		expectShape('form-entry', answer.json);
		expect((await send('GET', String(answer.headers.location))).json.record).toEqual(answer.json);
	});

	test.each([
		['an item the bank does not have', formOf(['tide-one', 'nobody']), 'form-item-unknown', '/form/sections/0/items/1'],
		['an item twice', formOf(['tide-one', 'tide-one']), 'form-item-repeated', '/form/sections/0/items/1'],
		['no item at all', formOf([]), 'form-empty', '/form/sections'],
		[
			'a grid nobody knows',
			formOf(['tide-one'], { gridProfile: 'wide-open' }),
			'unknown-grid-profile',
			'/form/gridProfile',
		],
		['a title XML cannot hold', formOf(['tide-one'], { title: 'A\u0000' }), 'illegal-character', '/form/title'],
	])('refuses %s', async (_title, form, code, path) => {
		const { send, store } = await openWithItems();
		const answer = await send('POST', '/api/forms', { form });
		expect([answer.status, answer.json.code]).toEqual([400, 'content-refused']);
		expect(answer.json.problems).toContainEqual(expect.objectContaining({ code, path }));
		expect(await store.forms.list()).toHaveLength(1);
	});
});

describe('versions and givings', () => {
	test('a form shows its items in form order, and when it was given', async () => {
		const { send } = await openWithItems();
		const given = await send('POST', '/api/forms/form-a/give', { version: 1, group: 'class-7b', date: '2026-09-14' });
		expect(given.status).toBe(201);
		const answer = await send('GET', '/api/forms/form-a');
		expectShape('form-details', answer.json);
		expect(answer.json.items.map(({ id }: { id: string }) => id)).toEqual(['lift-one', 'tide-one']);
		expect(answer.json.givings).toEqual([{ version: 1, group: 'class-7b', date: '2026-09-14' }]);
	});

	test('the list shows the newest version with counts', async () => {
		const { send } = await openWithItems();
		await send('PUT', '/api/forms/form-a', { baseVersion: 1, form: formOf(['tide-one'], { title: 'Short' }) });
		await send('POST', '/api/forms/form-a/give', { version: 1, group: 'class-7b', date: '2026-09-14' });
		const answer = await send('GET', '/api/forms');
		expectShape('form-list', answer.json);
		expect(answer.json).toEqual([{ id: 'form-a', version: 2, title: 'Short', items: 1, givings: 1 }]);
		expect((await send('GET', '/api/forms/form-a?version=1')).json.items).toHaveLength(2);
	});

	test.each([
		[
			'a form nobody knows',
			'/api/forms/nobody/give',
			{ version: 1, group: 'class-7b', date: '2026-09-14' },
			404,
			'not-found',
		],
		[
			'a version it does not have',
			'/api/forms/form-a/give',
			{ version: 9, group: 'class-7b', date: '2026-09-14' },
			404,
			'not-found',
		],
		[
			'a group nobody knows',
			'/api/forms/form-a/give',
			{ version: 1, group: 'nobody', date: '2026-09-14' },
			404,
			'not-found',
		],
		[
			'no day of the calendar',
			'/api/forms/form-a/give',
			{ version: 1, group: 'class-7b', date: '2026-02-30' },
			400,
			'content-refused',
		],
		['no date', '/api/forms/form-a/give', { version: 1, group: 'class-7b', date: 'Monday' }, 400, 'content-refused'],
	])('a giving is refused for %s', async (_title, url, body, status, code) => {
		const { send } = await openWithItems();
		const answer = await send('POST', url, body);
		expect([answer.status, answer.json.code]).toEqual([status, code]);
	});

	test('the same giving is recorded once', async () => {
		const { send } = await openWithItems();
		const giving = { version: 1, group: 'class-7b', date: '2026-09-14' };
		await send('POST', '/api/forms/form-a/give', giving);
		const answer = await send('POST', '/api/forms/form-a/give', giving);
		expect([answer.status, answer.json.code]).toEqual([409, 'already-given']);
	});

	test('a stale change is refused', async () => {
		const { send } = await openWithItems();
		await send('PUT', '/api/forms/form-a', { baseVersion: 1, form: formOf(['tide-one']) });
		const answer = await send('PUT', '/api/forms/form-a', { baseVersion: 1, form: formOf(['lift-one']) });
		expect([answer.status, answer.json.code]).toEqual([409, 'version-conflict']);
	});
});

describe('taking a form out', () => {
	test('gives a zip with a name, and says what to know', async () => {
		const { send } = await openWithItems();
		const answer = await send('POST', '/api/forms/form-a/export', { as: 'qti-2.2' });
		expect(answer.status).toBe(200);
		expect(answer.headers['content-type']).toBe('application/zip');
		expect(answer.headers['content-disposition']).toBe('attachment; filename="form-a-v1-qti-2.2.zip"');
		expect(answer.bytes.subarray(0, 4).toString('latin1')).toBe('PK\u0003\u0004');
		const report = JSON.parse(decodeURIComponent(String(answer.headers['zeropair-report'])));
		expect(report.notes.join(' ')).toContain('placement in the grid is not enforced');
		expect(report.warningCount).toBe(2);
	});

	test('gives QTI 3.0 column by column, with feedback when asked, and says what that means', async () => {
		const { send } = await openWithItems();
		const order = { as: 'qti-3.0', grid: 'columns', feedback: true };
		const answer = await send('POST', '/api/forms/form-a/export', order);
		expect(answer.headers['content-disposition']).toBe('attachment; filename="form-a-v1-qti-3.0.zip"');
		const { notes } = JSON.parse(decodeURIComponent(String(answer.headers['zeropair-report'])));
		expect(notes.join(' ')).toContain('The package holds the keys');
		expect(notes.join(' ')).toContain('one list of marks for each column');
		const map = await send('GET', '/api/forms/form-a/answer-map?grid=columns');
		expect(map.text).toContain('COLUMN-1 ');
	});

	test.each([
		{ as: 'qti-3.0', grid: 'rows' },
		{ as: 'qti-3.0', feedback: 'yes' },
		{ as: 'qti-3.0', points: 'slider' },
	])('an order nobody can follow is refused: %o', async (order) => {
		const { send } = await openWithItems();
		const answer = await send('POST', '/api/forms/form-a/export', order);
		expect([answer.status, answer.json.code]).toEqual([400, 'content-refused']);
	});

	test('the answer map names the keys', async () => {
		const { send } = await openWithItems();
		const answer = await send('GET', '/api/forms/form-a/answer-map');
		expect(answer.status).toBe(200);
		expect(answer.headers['content-type']).toBe('text/csv; charset=utf-8');
		expect(answer.text).toContain('lift-one');
	});

	test('an unknown format and an unknown form are refused', async () => {
		const { send } = await openWithItems();
		expect((await send('POST', '/api/forms/form-a/export', { as: 'qti-9' })).json.code).toBe('content-refused');
		expect((await send('POST', '/api/forms/nobody/export', { as: 'qti-2.1' })).json.code).toBe('not-found');
	});

	test('a draft that has no key yet is refused, naming what is wrong', async () => {
		const { send } = await openWithItems();
		await send('POST', '/api/items', { id: 'half-done', item: griddedItem({ expression: '7 ÷ 2' }) });
		await send('POST', '/api/forms', { id: 'form-b', form: formOf(['half-done']) });
		const answer = await send('POST', '/api/forms/form-b/export', { as: 'qti-2.2' });
		expect([answer.status, answer.json.code]).toEqual([422, 'export-invalid']);
		expect(answer.json.message).toContain('"half-done"');
	});
});

describe('GET /api/forms/{id}/review', () => {
	test('tells what only the items together show, with where each rule comes from', async () => {
		const { send } = await openTestApp();
		await send('POST', '/api/items', { id: 'tide-one', item: griddedItem() });
		await send('POST', '/api/items', { id: 'tide-two', item: griddedItem({ name: 'The same again' }) });
		await send('POST', '/api/forms', { id: 'form-a', form: formOf(['tide-one', 'tide-two']) });
		const { status, json } = await send('GET', '/api/forms/form-a/review');
		expect(status).toBe(200);
		expectShape('review-list', json);
		expect(json.map(({ code }: { code: string }) => code)).toContain('review-form-giveaway');
		for (const { guideline } of json) expect(guideline.source).not.toBe('');
	});

	test('is refused for a form the bank does not have', async () => {
		const { send } = await openTestApp();
		expect((await send('GET', '/api/forms/nobody/review')).status).toBe(404);
	});
});
