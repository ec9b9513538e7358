import { existsSync } from 'node:fs';
import { join } from 'node:path';
import serveFiles from '@fastify/static';
import { type FastifyInstance, type FastifyRequest, fastify, type RouteOptions } from 'fastify';
import { describeError, replyWithError } from './error-replies.ts';
import { addGuards } from './guards.ts';
import { compileSchema, type JsonSchema } from './json-schemas.ts';
import { projectRoot } from './project-root.ts';
import { RequestError } from './request-errors.ts';
import { addAssemblyRoutes } from './routes/assembly.ts';
import { addBlueprintRoutes } from './routes/blueprints.ts';
import { addFamilyRoutes } from './routes/families.ts';
import { addFigureRoutes } from './routes/figures.ts';
import { addFormRoutes } from './routes/forms.ts';
import { addGridProfileRoutes } from './routes/grid-profiles.ts';
import { addGroupRoutes } from './routes/groups.ts';
import { addHealthRoutes } from './routes/health.ts';
import { addItemRoutes } from './routes/items.ts';
import { addOpenApiRoutes } from './routes/open-api.ts';
import { addPatternRoutes } from './routes/patterns.ts';
import { addStandardRoutes } from './routes/standards.ts';
import { describeErrors } from './shape-problems.ts';
import type { Store } from './store/open-store.ts';

/** What the service is made of. */
export interface AppOptions {
	readonly store: Store;
	/** The current time, for exclusions by days. */
	readonly clock?: () => Date;
	/** Folder with published QTI schemas for exports, instead of the usual places. */
	readonly schemasFolder?: string;
	/** Folder of the built pages; dist/web when left out. */
	readonly webFolder?: string;
	/** Told of errors nobody foresaw; the answer says nothing of them. */
	readonly reportError?: (error: unknown) => void;
}

/** Largest body of a request in bytes. */
export const bodyLimit = 1_048_576;

/** The service as a fastify instance that does not listen yet. Everything it answers below /api is JSON unless the route says otherwise. */
export function buildApp(options: AppOptions): FastifyInstance {
	const { reportError = (error) => console.error(error) } = options;
	const app = fastify({
		bodyLimit,
		requestTimeout: 30_000,
		forceCloseConnections: 'idle',
		routerOptions: { maxParamLength: 100 },
		frameworkErrors: (error, _request, reply) => replyWithError(error, reply, reportError),
		clientErrorHandler: (_error, socket) => {
			const body = JSON.stringify({ code: 'request-malformed', message: 'expected an HTTP request', problems: [] });
			socket.end(
				`HTTP/1.1 400 Bad Request\r\nContent-Type: application/json\r\nContent-Length: ${body.length}\r\nConnection: close\r\n\r\n${body}`,
			);
		},
	});
	const routes: RouteOptions[] = [];
	app.addHook('onRoute', (route) => {
		routes.push(route);
	});
	app.removeContentTypeParser('text/plain');
	app.setValidatorCompiler(({ schema, httpPart }) => compilePart(schema as JsonSchema, httpPart ?? 'body'));
	// Answers are documented by their schemas and written as they are; tests hold them to the schemas.
	app.setSerializerCompiler(() => (data) => JSON.stringify(data));
	app.setErrorHandler((error, _request, reply) => replyWithError(error, reply, reportError));
	addGuards(app);

	addHealthRoutes(app);
	addItemRoutes(app, options.store);
	addStandardRoutes(app, options.store);
	addFormRoutes(app, options.store, options.schemasFolder);
	addGroupRoutes(app, options.store);
	addFigureRoutes(app);
	addGridProfileRoutes(app);
	addPatternRoutes(app, options.store);
	addFamilyRoutes(app, options.store);
	addBlueprintRoutes(app, options.store);
	addAssemblyRoutes(app, options.store, options.clock ?? (() => new Date()));
	addOpenApiRoutes(app, routes);
	addPages(app, options.webFolder ?? join(projectRoot, 'dist/web'), routes);
	return app;
}

function compilePart(schema: JsonSchema, part: string): (document: unknown) => { value?: unknown; error?: Error } {
	const validate = compileSchema(schema, part !== 'body');
	return (document) => {
		if (validate(document)) return { value: document };
		const problems = describeErrors(validate.errors ?? [], document);
		const error = new RequestError(
			part === 'body'
				? {
						code: 'content-refused',
						status: 400,
						message: `the body cannot be accepted: ${problems[0]?.message}`,
						problems,
					}
				: {
						code: 'query-refused',
						status: 400,
						message: `the address cannot be accepted: ${problems[0]?.message}`,
						problems,
					},
		);
		return { error };
	};
}

/** The built pages, if there are any; addresses of the app's own views get the one page. */
function addPages(app: FastifyInstance, folder: string, routes: readonly RouteOptions[]): void {
	const hasPages = existsSync(join(folder, 'index.html'));
	if (hasPages) void app.register(serveFiles, { root: folder, wildcard: false, cacheControl: false, etag: true });
	app.setNotFoundHandler((request, reply) => {
		const isView = hasPages && request.method === 'GET' && !isApi(request) && !/\.\w+$/.test(pathOf(request));
		if (isView) return reply.sendFile('index.html');
		const methods = listMethods(routes, pathOf(request));
		const error =
			methods.length > 0
				? new RequestError({
						code: 'method-refused',
						status: 405,
						message: `expected ${methods.join(' or ')} at ${pathOf(request)}, found ${request.method}`,
					})
				: new RequestError({ code: 'route-unknown', status: 404, message: `nothing is found at ${pathOf(request)}` });
		const { status, body } = describeError(error);
		if (methods.length > 0) reply.header('allow', methods.join(', '));
		return reply.code(status).send(body);
	});
}

function isApi(request: FastifyRequest): boolean {
	return request.url === '/api' || request.url.startsWith('/api/');
}

function pathOf(request: FastifyRequest): string {
	return request.url.split('?')[0] ?? '';
}

/** Methods that a path answers. */
function listMethods(routes: readonly RouteOptions[], path: string): readonly string[] {
	const fitting = routes.filter(({ url }) =>
		new RegExp(`^${url.replaceAll('.', '\\.').replace(/:\w+/g, '[^/]+')}$`).test(path),
	);
	return [...new Set(fitting.flatMap(({ method }) => [method].flat()))].filter((method) => !/\*/.test(method)).sort();
}
