import { request } from 'node:http';
import { fastify } from 'fastify';
import { expect, test } from 'vitest';
import { signalOfClose } from '../../../server/routes/shared.ts';

/** A service whose one answer waits until it is let go, or until nobody waits for it. */
async function serveSlowly() {
	let letGo = (): void => undefined;
	const begun: ((signal: AbortSignal) => void)[] = [];
	const app = fastify();
	app.post('/slow', async (_request, reply) => {
		const signal = signalOfClose(reply);
		await new Promise<void>((resolve) => {
			letGo = resolve;
			signal.addEventListener('abort', () => resolve(), { once: true });
			for (const tell of begun) tell(signal);
		});
		return { isAborted: signal.aborted };
	});
	await app.listen({ port: 0, host: '127.0.0.1' });
	const address = app.server.address();
	const port = typeof address === 'object' && address ? address.port : 0;
	const begins = new Promise<AbortSignal>((resolve) => begun.push(resolve));
	return { app, port, begins, letGo: () => letGo() };
}

const headers = { 'content-type': 'application/json' };

test('an answer somebody waits for is not given up', async () => {
	const { app, port, begins, letGo } = await serveSlowly();
	const answer = fetch(`http://127.0.0.1:${port}/slow`, { method: 'POST', body: '{"a":1}', headers });
	await begins;
	// Long after the body was read, which closes the request.
	setTimeout(letGo, 100);
	expect(await (await answer).json()).toEqual({ isAborted: false });
	await app.close();
});

test('an answer nobody waits for any more is given up', async () => {
	const { app, port, begins } = await serveSlowly();
	const asked = request({ port, host: '127.0.0.1', path: '/slow', method: 'POST', headers });
	asked.on('error', () => undefined);
	asked.end('{"a":1}');
	const signal = await begins;
	const given = new Promise((resolve) => signal.addEventListener('abort', resolve, { once: true }));
	asked.destroy();
	await given;
	expect(signal.aborted).toBe(true);
	await app.close();
});
