import { describe, expect, test } from 'vitest';
import { alignTo, choiceItem, griddedItem } from '../../helpers/sample-items.ts';
import { expectShape, openTestApp } from '../../helpers/test-app.ts';

describe('POST /api/items', () => {
	test('keeps a draft and says where', async () => {
		const { send } = await openTestApp();
		const answer = await send('POST', '/api/items', { item: griddedItem() });
		expect(answer.status).toBe(201);
		expectShape('item-saved', answer.json);
		expect(answer.headers.location).toBe('/api/items/test-0001');
		expect((await send('GET', '/api/items/test-0001')).json).toEqual(answer.json.record);
	});

	test('refuses unknown fields, wrong types and missing fields with their places, converting nothing', async () => {
		const { send, store } = await openTestApp();
		const { name: _name, ...nameless } = griddedItem();
		const answer = await send('POST', '/api/items', { item: { ...nameless, points: '1', colour: 'red' }, extra: true });
		expect(answer.status).toBe(400);
		expect(answer.json.code).toBe('content-refused');
		const places = answer.json.problems.map(({ code, path }: { code: string; path: string }) => `${code} ${path}`);
		expect(places.sort()).toEqual([
			'field-missing /item/name',
			'field-unknown /extra',
			'field-unknown /item/colour',
			'type-wrong /item/points',
		]);
		expect(await store.items.count()).toBe(0);
	});

	test('refuses a key that contradicts the expression with both values', async () => {
		const { send } = await openTestApp();
		const answer = await send('POST', '/api/items', { item: griddedItem({ key: 11 }) });
		expect(answer.status).toBe(400);
		expect(answer.json.problems).toEqual([
			{ code: 'key-mismatch', path: '/item/key', message: expect.stringMatching(/-11.*11/) },
		]);
	});

	test('refuses a code nobody knows and says which are near', async () => {
		const { send } = await openTestApp();
		const answer = await send('POST', '/api/items', { item: griddedItem({ alignments: [alignTo('7.NS.A.1x')] }) });
		expect(answer.status).toBe(400);
		expect(answer.json.problems[0]).toMatchObject({ code: 'unknown-standard', path: '/item/alignments/0/code' });
		expect(answer.json.problems[0].message).toContain('did you mean');
	});

	test('refuses an id in use', async () => {
		const { send } = await openTestApp();
		await send('POST', '/api/items', { id: 'lift-one', item: griddedItem() });
		const answer = await send('POST', '/api/items', { id: 'lift-one', item: griddedItem() });
		expect([answer.status, answer.json.code]).toEqual([409, 'id-taken']);
	});

	test('refuses a body of 10 MB and keeps nothing', async () => {
		const { send, store } = await openTestApp();
		const answer = await send('POST', '/api/items', { item: griddedItem({ name: 'x'.repeat(10_000_000) }) });
		expect([answer.status, answer.json.code]).toEqual([413, 'body-too-large']);
		expect(await store.items.count()).toBe(0);
	});
});

describe('POST /api/items/check', () => {
	test('tells problems, key and worked steps, and keeps nothing', async () => {
		const { send, store } = await openTestApp();
		const answer = await send(
			'POST',
			'/api/items/check',
			griddedItem({
				stem: [{ kind: 'paragraph', text: 'What is `2 - 5 × (-3)`?' }],
				expression: '2 - 5 × (-3)',
				key: 17,
			}),
		);
		expect(answer.status).toBe(200);
		expectShape('item-findings', answer.json);
		expect(answer.json).toMatchObject({ problems: [], key: { kind: 'value', value: 17 } });
		expect(answer.json.steps.at(-1).line).toBe('17');
		expect(await store.items.count()).toBe(0);
	});

	test('tells what the rules of item writing say, with where each comes from', async () => {
		const { send } = await openTestApp();
		const options = choiceItem().options.map((option, index) =>
			index === 0 ? { ...option, id: 'b' as const } : option,
		);
		const { status, json } = await send('POST', '/api/items/check', choiceItem({ options }));
		expect(status).toBe(200);
		expectShape('item-findings', json);
		const notes = json.notes as { severity: string; code: string; guideline: { source: string } }[];
		const stops = notes.filter(({ severity }) => severity === 'stop').map(({ code }) => code);
		expect(stops).toEqual(json.problems.map(({ code }: { code: string }) => code));
		expect(stops.length).toBeGreaterThan(0);
		expect(notes.some(({ code }) => code === 'review-unexplained-distractor')).toBe(true);
		for (const { guideline } of notes) expect(guideline.source).not.toBe('');
	});

	test('a document that is no item is a problem, not a refusal', async () => {
		const { send } = await openTestApp();
		const answer = await send('POST', '/api/items/check', { kind: 'gridded' });
		expect(answer.status).toBe(200);
		expect(answer.json.problems.length).toBeGreaterThan(3);
		expect(answer.json.key).toBeUndefined();
	});

	test('an expression that has no value gives problems and no steps', async () => {
		const { send } = await openTestApp();
		const answer = await send('POST', '/api/items/check', griddedItem({ expression: '7 ÷ 2' }));
		expect(answer.json.steps).toBeUndefined();
		expect(answer.json.problems.length).toBeGreaterThan(0);
	});
});

describe('changing and reading versions', () => {
	test('revise, approve, retire and history go together', async () => {
		const { send } = await openTestApp();
		await send('POST', '/api/items', { id: 'lift-one', item: choiceItem() });
		expect((await send('POST', '/api/items/lift-one/approve', { version: 1 })).json.status).toBe('approved');
		const revised = await send('PUT', '/api/items/lift-one', { baseVersion: 1, item: choiceItem({ dok: 3 }) });
		expect(revised.json.record).toMatchObject({ version: 2, status: 'draft' });
		expect((await send('GET', '/api/items/lift-one?version=1')).json.status).toBe('approved');
		expect((await send('POST', '/api/items/lift-one/retire', { version: 1 })).json.status).toBe('retired');
		const history = await send('GET', '/api/items/lift-one/history');
		expectShape('item-history', history.json);
		expect(history.json.versions.map(({ status }: { status: string }) => status)).toEqual(['draft', 'retired']);
	});

	test('a stale change is refused with both versions named', async () => {
		const { send } = await openTestApp();
		await send('POST', '/api/items', { id: 'lift-one', item: choiceItem() });
		await send('PUT', '/api/items/lift-one', { baseVersion: 1, item: choiceItem({ dok: 3 }) });
		const answer = await send('PUT', '/api/items/lift-one', { baseVersion: 1, item: choiceItem({ dok: 1 }) });
		expect([answer.status, answer.json.code]).toEqual([409, 'version-conflict']);
		expect(answer.json.message).toMatch(/version 1.*version 2/);
	});

	test('approval is refused with the problems while a check says stop', async () => {
		const { send } = await openTestApp();
		await send('POST', '/api/items', { id: 'half-done', item: griddedItem({ given: 'counters' }) });
		const answer = await send('POST', '/api/items/half-done/approve', { version: 1 });
		expect([answer.status, answer.json.code]).toEqual([422, 'item-not-approvable']);
		expect(answer.json.problems).toEqual([expect.objectContaining({ code: 'given-not-found', path: '/given' })]);
	});

	test('approving what is approved is refused', async () => {
		const { send } = await openTestApp();
		await send('POST', '/api/items', { id: 'lift-one', item: choiceItem() });
		await send('POST', '/api/items/lift-one/approve', { version: 1 });
		const answer = await send('POST', '/api/items/lift-one/approve', { version: 1 });
		expect([answer.status, answer.json.code]).toEqual([409, 'status-refused']);
	});

	test.each(['/api/items/nobody', '/api/items/nobody/history'])('GET %s is not found', async (url) => {
		const { send } = await openTestApp();
		const answer = await send('GET', url);
		expect([answer.status, answer.json.code]).toEqual([404, 'not-found']);
	});
});

describe('GET /api/items', () => {
	test('finds by query string, where numbers and single values arrive as text', async () => {
		const { send } = await openTestApp();
		await send('POST', '/api/items', { id: 'lift-one', item: choiceItem() });
		await send('POST', '/api/items', { id: 'tide-one', item: griddedItem() });
		const answer = await send('GET', '/api/items?dok=2&model=story&limit=5&facets=true');
		expect(answer.status).toBe(200);
		expectShape('item-page', answer.json);
		expect(answer.json.items.map(({ id }: { id: string }) => id)).toEqual(['lift-one']);
		expect(answer.json.facets.dok).toEqual([{ value: 2, count: 1 }]);
	});

	test.each([
		['an unknown field', 'colour=red'],
		['a model nobody knows', 'model=poem'],
		['a limit past the most', 'limit=5000'],
		['a word for a number', 'dok=deep'],
		['a code without its framework', 'code=7.NS.A.1b'],
	])('refuses %s', async (_title, query) => {
		const { send } = await openTestApp();
		const answer = await send('GET', `/api/items?${query}`);
		expect([answer.status, answer.json.code]).toEqual([400, 'query-refused']);
		expect(answer.json.problems.length).toBeGreaterThan(0);
	});

	test('refuses a standard nobody knows and says which are near', async () => {
		const { send } = await openTestApp();
		const answer = await send('GET', '/api/items?framework=ccss-m&edition=2010&code=7.NS.A.1z');
		expect([answer.status, answer.json.code]).toEqual([400, 'unknown-standard']);
		expect(answer.json.message).toContain('did you mean');
	});

	test('refuses a cursor it did not make', async () => {
		const { send } = await openTestApp();
		const answer = await send('GET', '/api/items?cursor=abc');
		expect([answer.status, answer.json.code]).toEqual([400, 'cursor-refused']);
	});
});

describe('bodies made to keep the service busy', () => {
	const words = Array.from({ length: 120_000 }, (_unused, index) => index.toString(36));
	const multipleChoice = { ...choiceItem(), kind: 'multiple-choice' };

	test.each([
		['a key of 120,000 options', { ...multipleChoice, key: words }],
		['120,000 tags', griddedItem({ tags: words })],
		['a stated rule of 120,000 options', { ...multipleChoice, rule: { kind: 'stated', options: words, reason: 'x' } }],
		['20,000 blocks of no kind', griddedItem({ stem: Array.from({ length: 20_000 }, () => ({}) as never) })],
	])('%s is refused at once, with at most 100 problems', async (_title, item) => {
		const { send } = await openTestApp();
		await send('GET', '/api/health');
		const start = performance.now();
		const answer = await send('POST', '/api/items', { item });
		expect([answer.status, answer.json.code]).toEqual([400, 'content-refused']);
		expect(answer.json.problems.length).toBeGreaterThan(0);
		expect(answer.json.problems.length).toBeLessThanOrEqual(100);
		expect(performance.now() - start).toBeLessThan(5000);
	});

	test('lists in lists in lists are refused', async () => {
		const { app } = await openTestApp();
		const response = await app.inject({
			method: 'POST',
			url: '/api/items',
			headers: { 'content-type': 'application/json' },
			payload: `{"item": ${'['.repeat(200_000)}${']'.repeat(200_000)}}`,
		});
		expect(response.statusCode).toBe(400);
		expect(response.json().problems[0]).toMatchObject({ code: 'type-wrong', path: '/item' });
	});
});
