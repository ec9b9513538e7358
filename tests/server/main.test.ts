import type { AddressInfo } from 'node:net';
import { connect, createServer } from 'node:net';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findDataFolder, findPort, runService, serve } from '../../server/main.ts';
import { openStore } from '../../server/store/open-store.ts';
import { makeTestFolder } from '../helpers/test-folder.ts';

describe('serve', () => {
	test.each(['0.0.0.0', '::', '192.168.1.7', 'bank.example', ''])('refuses to listen on "%s"', async (host) => {
		const folder = makeTestFolder();
		await expect(serve({ dataFolder: join(folder, 'data'), port: 0, host })).rejects.toMatchObject({
			code: 'address-refused',
			host,
		});
	});

	test('fills a new bank with the demo department, once', async () => {
		const dataFolder = join(makeTestFolder(), 'data');
		const first = await serve({ dataFolder, port: 0, host: '127.0.0.1' });
		expect(first.demo).toMatchObject({ items: 600, forms: 2 });
		const page = (await (await fetch(`${first.url}api/items?status=approved&limit=1`)).json()) as { total: number };
		expect(page.total).toBe(600);
		await first.stop();
		const second = await serve({ dataFolder, port: 0, host: 'localhost' });
		expect(second.demo).toBeUndefined();
		expect((await fetch(`${second.url}api/health`)).status).toBe(200);
		await second.stop();
	});

	test('a port in use is named, and the bank is closed again', async () => {
		const other = createServer().listen(0, '127.0.0.1');
		await new Promise((resolve) => other.once('listening', resolve));
		const { port } = other.address() as AddressInfo;
		const dataFolder = join(makeTestFolder(), 'data');
		await expect(serve({ dataFolder, port, host: '127.0.0.1' })).rejects.toMatchObject({ code: 'port-refused', port });
		other.close();
		const store = await openStore(dataFolder);
		expect(await store.items.count()).toBe(600);
		await store.close();
	});

	test('stops although a connection was opened that never asked anything', async () => {
		const service = await serve({ dataFolder: join(makeTestFolder(), 'data'), port: 0, host: '127.0.0.1' });
		const { hostname, port } = new URL(service.url);
		const socket = connect(Number(port), hostname);
		const ended = new Promise((resolve) => socket.once('close', resolve));
		await new Promise((resolve) => socket.once('connect', resolve));
		// Answered after the connection was taken up, so that stopping meets it.
		expect((await fetch(`${service.url}api/health`)).status).toBe(200);
		await service.stop();
		await ended;
	}, 20_000);

	test('says where it answers, and stops when told to', async () => {
		const lines: string[] = [];
		const stop = new AbortController();
		const running = runService(
			{ dataFolder: join(makeTestFolder(), 'data'), port: 0, host: '127.0.0.1' },
			(line) => {
				lines.push(line);
				if (line.includes('answers at')) stop.abort();
			},
			stop.signal,
		);
		await running;
		expect(lines.join('\n')).toMatch(/http:\/\/127\.0\.0\.1:\d+\//);
		expect(lines.at(-1)).toBe('The bank is closed.');
	});
});

test('the port comes from the command line or PORT, and text that is no port is refused', () => {
	expect(findPort('0')).toBe(0);
	expect(findPort('')).toBe(8417);
	for (const text of ['http', '70000', '-1', '600.5'])
		expect(() => findPort(text)).toThrow(expect.objectContaining({ code: 'port-refused' }));
});

test('the data folder is the one named, or data in the project', () => {
	expect(findDataFolder('/somewhere')).toBe('/somewhere');
	expect(findDataFolder()).toBe(process.env.ZEROPAIR_DATA ?? join(import.meta.dirname, '../../data'));
});
