import type { Api } from '../server/api.ts';
import { request } from './api-client.ts';

type Field<Route extends keyof Api, Name extends string> = Api[Route] extends { readonly [name in Name]: infer Value }
	? Value
	: undefined;

/** What a call may carry beside the route. */
export interface CallParts<Route extends keyof Api> {
	/** Values for {id}, {framework} and the like. */
	readonly path?: Readonly<Record<string, string>>;
	readonly query?: Field<Route, 'query'>;
	readonly body?: Field<Route, 'body'>;
	/** Gives the call up; it then fails with an AbortError. */
	readonly signal?: AbortSignal;
}

/** Calls a route that answers in JSON. Throws ApiError when the bank refuses or cannot be reached. */
export async function callApi<Route extends keyof Api>(
	route: Route,
	parts: CallParts<Route> = {},
): Promise<Api[Route]['answer']> {
	const [method = 'GET', pattern = ''] = route.split(' ');
	const path = pattern.replace(/\{(\w+)\}/g, (_all, name: string) => encodeURIComponent(parts.path?.[name] ?? ''));
	const search = printQuery(parts.query ?? {});
	const response = await request(path + search, { method, body: parts.body, signal: parts.signal });
	return response.json() as Promise<Api[Route]['answer']>;
}

function printQuery(query: object): string {
	const fields = new URLSearchParams();
	for (const [name, value] of Object.entries(query)) {
		for (const each of Array.isArray(value) ? value : [value])
			if (each !== undefined) fields.append(name, String(each));
	}
	return fields.size === 0 ? '' : `?${fields}`;
}
