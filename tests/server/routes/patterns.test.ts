import { describe, expect, test } from 'vitest';
import { patterns } from '../../../item-bank/patterns/index.ts';
import { checkShape } from '../../../server/json-schemas.ts';
import { makeChoice, makeGridded } from '../../helpers/items.ts';
import { openTestApp } from '../../helpers/test-app.ts';

test('every error pattern is listed with its sentence and source', async () => {
	const { send } = await openTestApp();
	const { status, json } = await send('GET', '/api/patterns');
	expect(status).toBe(200);
	expect(checkShape('pattern-list.schema.json', json)).toEqual([]);
	expect(json).toHaveLength(patterns.length);
	for (const { sentence } of json) expect(sentence).toMatch(/^Consistent with /);
});

describe('what an answer is consistent with', () => {
	test('is told of a number, with any minus people type', async () => {
		const { send, store } = await openTestApp();
		await store.items.create({ id: 'difference', item: makeGridded() });
		for (const answer of ['-11', '−11']) {
			const { json } = await send('GET', `/api/items/difference/explanation?answer=${encodeURIComponent(answer)}`);
			expect(checkShape('answer-explanation.schema.json', json)).toEqual([]);
			expect(json.isRight).toBe(false);
			expect(json.patterns).toContain('second-minus-lost');
		}
		expect((await send('GET', '/api/items/difference/explanation?answer=5')).json.isRight).toBe(true);
	});

	test('is told of an option', async () => {
		const { send, store } = await openTestApp();
		await store.items.create({ id: 'sum', item: makeChoice() });
		expect((await send('GET', '/api/items/sum/explanation?answer=d')).json.patterns).toContain('signs-dropped');
	});

	test('is refused for no answer, an unreadable one, an option that is not there and an item that is not there', async () => {
		const { send, store } = await openTestApp();
		await store.items.create({ id: 'sum', item: makeChoice() });
		expect(await send('GET', '/api/items/sum/explanation')).toMatchObject({
			status: 400,
			json: { code: 'query-refused' },
		});
		expect(await send('GET', '/api/items/sum/explanation?answer=five')).toMatchObject({
			status: 400,
			json: { code: 'answer-unreadable' },
		});
		expect(await send('GET', '/api/items/sum/explanation?answer=h')).toMatchObject({
			status: 400,
			json: { code: 'option-unknown' },
		});
		expect(await send('GET', '/api/items/none/explanation?answer=a')).toMatchObject({
			status: 404,
			json: { code: 'not-found' },
		});
	});
});
