import type { AddressInfo } from 'node:net';
import { connect } from 'node:net';
import { describe, expect, test } from 'vitest';
import { buildApp } from '../../server/app.ts';
import type { Store } from '../../server/store/open-store.ts';
import { openTestApp } from '../helpers/test-app.ts';
import { openTestStore } from '../helpers/test-store.ts';

describe('errors have one shape', () => {
	test('an address nobody serves', async () => {
		const { send } = await openTestApp();
		const answer = await send('GET', '/api/nothing');
		expect([answer.status, answer.json.code]).toEqual([404, 'route-unknown']);
	});

	test('a method an address does not have, with those it has', async () => {
		const { send } = await openTestApp();
		const answer = await send('DELETE', '/api/items/abc', {});
		expect([answer.status, answer.json.code]).toEqual([405, 'method-refused']);
		expect(answer.headers.allow).toBe('GET, HEAD, PUT');
	});

	test.each(['{"item": ', '', 'item', '{"__proto__": {"x": 1}}', '{"constructor": {"prototype": {"x": 1}}}'])(
		'a body that is not plain JSON: %s',
		async (payload) => {
			const { app } = await openTestApp();
			const response = await app.inject({
				method: 'POST',
				url: '/api/items',
				headers: { 'content-type': 'application/json' },
				payload,
			});
			expect(response.statusCode).toBe(400);
			expect(response.json()).toMatchObject({ code: 'json-malformed', problems: [] });
		},
	);

	test('an address with broken percent encoding', async () => {
		const { send } = await openTestApp();
		const answer = await send('GET', '/api/items/%E0%A4%A');
		expect([answer.status, answer.json.code]).toEqual([400, 'url-malformed']);
	});

	test('an id that no item can have', async () => {
		const { send } = await openTestApp();
		const answer = await send('GET', '/api/items/UPPER');
		expect([answer.status, answer.json.code]).toEqual([400, 'query-refused']);
	});

	test('bytes that are no HTTP at all', async () => {
		const { app } = await openTestApp();
		await app.listen({ port: 0, host: '127.0.0.1' });
		const { port } = app.server.address() as AddressInfo;
		const answer = await new Promise<string>((resolve, reject) => {
			let text = '';
			const socket = connect(port, '127.0.0.1', () => socket.write('hello bank\r\n\r\n'));
			socket
				.on('data', (chunk) => {
					text += chunk;
				})
				.on('end', () => resolve(text))
				.on('error', reject);
		});
		expect(answer).toMatch(/^HTTP\/1.1 400/);
		expect(JSON.parse(answer.split('\r\n\r\n')[1] ?? '')).toMatchObject({ code: 'request-malformed', problems: [] });
		await app.close();
	});

	test('a fault of ours tells nothing of the inside, but is reported', async () => {
		const store = await openTestStore();
		const broken: Store = {
			...store,
			groups: { ...store.groups, list: () => Promise.reject(new Error('secret path /srv/x')) },
		};
		const reported: unknown[] = [];
		const app = buildApp({ store: broken, reportError: (error) => reported.push(error) });
		const response = await app.inject('/api/groups');
		expect(response.statusCode).toBe(500);
		expect(response.json()).toMatchObject({ code: 'internal', problems: [] });
		expect(response.body).not.toContain('secret');
		expect(reported).toEqual([expect.objectContaining({ message: 'secret path /srv/x' })]);
	});
});
