import type { FastifyInstance } from 'fastify';
import { expect } from 'vitest';
import { type AppOptions, buildApp } from '../../server/app.ts';
import { checkShape } from '../../server/json-schemas.ts';
import type { Store } from '../../server/store/open-store.ts';
import { openTestStore } from './test-store.ts';

/** A service over an empty bank in memory, and what it answers to requests made within the process. */
export interface TestApp {
	readonly app: FastifyInstance;
	readonly store: Store;
	/** Sends a request; a body goes as JSON. */
	send(
		method: 'GET' | 'POST' | 'PUT' | 'DELETE' | 'PATCH',
		url: string,
		body?: unknown,
		headers?: Readonly<Record<string, string>>,
	): Promise<Answer>;
}

/** An answer of the service; every answer outside 2xx has been held to the shape of errors. */
export interface Answer {
	readonly status: number;
	readonly headers: Readonly<Record<string, unknown>>;
	readonly text: string;
	readonly bytes: Buffer;
	// biome-ignore lint/suspicious/noExplicitAny: tests look into answers of every shape
	readonly json: any;
}

/** Builds the service with a fresh store. A fault nobody foresaw fails the test that meets it. */
export async function openTestApp(options: Partial<AppOptions> = {}): Promise<TestApp> {
	const store = options.store ?? (await openTestStore());
	const faults: unknown[] = [];
	const app = buildApp({
		webFolder: '/nowhere',
		reportError: (error) => faults.push(error),
		...options,
		store,
	});
	return {
		app,
		store,
		async send(method, url, body, headers = {}) {
			const response = await app.inject({
				method,
				url,
				headers: { ...(body === undefined ? {} : { 'content-type': 'application/json' }), ...headers },
				...(body === undefined ? {} : { payload: JSON.stringify(body) }),
			});
			if (faults.length > 0) throw faults[0];
			const isJson = String(response.headers['content-type']).startsWith('application/json');
			const json = isJson ? response.json() : undefined;
			if (response.statusCode >= 400) expect(checkShape('error-report.schema.json', json)).toEqual([]);
			return {
				status: response.statusCode,
				headers: response.headers,
				text: response.body,
				bytes: response.rawPayload,
				json,
			};
		},
	};
}

/** Fails unless a value fits the schema of that name. */
export function expectShape(schema: string, value: unknown): void {
	expect(checkShape(`${schema}.schema.json`, value)).toEqual([]);
}
