import { request } from 'node:http';
import type { AddressInfo } from 'node:net';
import { describe, expect, test } from 'vitest';
import { griddedItem } from '../../helpers/sample-items.ts';
import { openTestApp } from '../../helpers/test-app.ts';

describe('names the service answers to', () => {
	test.each(['evil.example', 'localhost.evil.example', 'localhost:81', '127.0.0.1:8417', '10.0.0.5'])(
		'refuses a request to "%s"',
		async (host) => {
			const { send } = await openTestApp();
			const answer = await send('GET', '/api/items', undefined, { host });
			expect([answer.status, answer.json.code]).toEqual([421, 'host-refused']);
		},
	);

	test.each(['localhost', 'localhost:80', '127.0.0.1:80', '[::1]', 'LOCALHOST:80'])('answers to "%s"', async (host) => {
		const { send } = await openTestApp();
		expect((await send('GET', '/api/health', undefined, { host })).status).toBe(200);
	});

	test('goes by the port it listens on', async () => {
		const { app } = await openTestApp();
		await app.listen({ port: 0, host: '127.0.0.1' });
		const { port } = app.server.address() as AddressInfo;
		const ask = (host: string): Promise<number | undefined> =>
			new Promise((resolve, reject) => {
				request({ port, host: '127.0.0.1', path: '/api/health', headers: { host } }, (response) => {
					response.resume();
					resolve(response.statusCode);
				})
					.on('error', reject)
					.end();
			});
		expect(await ask(`localhost:${port}`)).toBe(200);
		expect(await ask('localhost')).toBe(421);
		expect(await ask(`localhost:${port + 1}`)).toBe(421);
		await app.close();
	});
});

describe('changes', () => {
	test.each([
		['http://evil.example', undefined],
		['null', undefined],
		['https://localhost:80', undefined],
		['http://localhost:3000', undefined],
		[undefined, 'cross-site'],
		[undefined, 'same-site'],
	])('are refused from the origin %s (site %s)', async (origin, site) => {
		const { send, store } = await openTestApp();
		const headers = { ...(origin ? { origin } : {}), ...(site ? { 'sec-fetch-site': site } : {}) };
		const answer = await send('POST', '/api/items', { item: griddedItem() }, headers);
		expect([answer.status, answer.json.code]).toEqual([403, 'origin-refused']);
		expect(await store.items.count()).toBe(0);
	});

	test('are taken from the own origin and from programs', async () => {
		const { send } = await openTestApp();
		const own = { origin: 'http://localhost:80', 'sec-fetch-site': 'same-origin' };
		expect((await send('POST', '/api/items', { item: griddedItem() }, own)).status).toBe(201);
		expect((await send('POST', '/api/items', { item: griddedItem() })).status).toBe(201);
	});

	test.each([
		'text/plain',
		'application/x-www-form-urlencoded',
		'multipart/form-data; boundary=x',
		'application/json; charset=utf-16',
		'',
	])('are refused with the content type "%s"', async (type) => {
		const { send } = await openTestApp();
		const answer = await send('POST', '/api/items', { item: griddedItem() }, { 'content-type': type });
		expect([answer.status, answer.json.code]).toEqual([415, 'content-type-refused']);
	});

	test('without a body are refused', async () => {
		const { send } = await openTestApp();
		const answer = await send('POST', '/api/items/abc/approve');
		expect([answer.status, answer.json.code]).toEqual([415, 'content-type-refused']);
	});
});

test('every answer forbids framing, sniffing, foreign scripts and, for data, caching', async () => {
	const { send } = await openTestApp();
	for (const url of ['/api/health', '/api/nothing', '/nothing']) {
		const { headers } = await send('GET', url);
		expect(headers['content-security-policy']).toContain("default-src 'self'");
		expect(headers['content-security-policy']).toContain("frame-ancestors 'none'");
		expect(headers['content-security-policy']).not.toContain('unsafe');
		expect(headers['x-content-type-options']).toBe('nosniff');
		expect(headers['referrer-policy']).toBe('no-referrer');
		expect(headers['access-control-allow-origin']).toBeUndefined();
		if (url.startsWith('/api')) expect(headers['cache-control']).toBe('no-store');
	}
});
