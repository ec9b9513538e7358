import type { AddressInfo } from 'node:net';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { RequestError } from './request-errors.ts';

/**
 * What protects a service without accounts from other programs and pages on the same machine: the names it answers to (a
 * page that points a name of its own at 127.0.0.1 is refused), the origin of every change, the type of its body, and
 * headers that keep pages from framing, sniffing or caching.
 */
export function addGuards(app: FastifyInstance): void {
	app.addHook('onRequest', async (request, reply) => {
		setHeaders(request, reply);
		checkHost(request);
		if (isChange(request)) {
			checkOrigin(request);
			checkContentType(request);
		}
	});
}

const names: readonly string[] = ['localhost', '127.0.0.1', '[::1]'];

function checkHost(request: FastifyRequest): void {
	const host = (request.headers.host ?? '').toLowerCase();
	const port = portOf(request);
	const allowed = names.flatMap((name) => (port === 80 ? [name, `${name}:80`] : [`${name}:${port}`]));
	if (!allowed.includes(host)) {
		throw new RequestError({
			code: 'host-refused',
			status: 421,
			message: `expected a request to ${names.map((name) => `${name}:${port}`).join(' or ')}, found "${host}"`,
		});
	}
}

/** The port the service listens on; 80 while it does not listen, as requests made within the process assume. */
function portOf(request: FastifyRequest): number {
	const address = request.server.server.address() as AddressInfo | null;
	return address?.port ?? 80;
}

function isChange({ method }: FastifyRequest): boolean {
	return method !== 'GET' && method !== 'HEAD' && method !== 'OPTIONS';
}

function checkOrigin(request: FastifyRequest): void {
	const { origin, host } = request.headers;
	const site = request.headers['sec-fetch-site'];
	const isOwn = origin === undefined || origin.toLowerCase() === `http://${(host ?? '').toLowerCase()}`;
	const isOwnSite = site === undefined || site === 'same-origin' || site === 'none';
	if (!isOwn || !isOwnSite) {
		throw new RequestError({
			code: 'origin-refused',
			status: 403,
			message: `expected a request from the bank's own pages or a program, found the origin "${origin ?? site}"`,
		});
	}
}

function checkContentType(request: FastifyRequest): void {
	const type = request.headers['content-type'] ?? '';
	if (!/^application\/json\s*(;\s*charset="?utf-8"?\s*)?$/i.test(type)) {
		throw new RequestError({
			code: 'content-type-refused',
			status: 415,
			message: `expected the content type application/json, found "${type}"`,
		});
	}
}

function setHeaders(request: FastifyRequest, reply: FastifyReply): void {
	reply.headers({
		'content-security-policy':
			"default-src 'self'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'; object-src 'none'",
		'x-content-type-options': 'nosniff',
		'x-frame-options': 'DENY',
		'referrer-policy': 'no-referrer',
		'cross-origin-resource-policy': 'same-origin',
		'cross-origin-opener-policy': 'same-origin',
		'permissions-policy': 'camera=(), microphone=(), geolocation=()',
	});
	if (request.url === '/api' || request.url.startsWith('/api/')) reply.header('cache-control', 'no-store');
}
