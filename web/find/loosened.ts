import { callApi } from '../call-api.ts';
import { type Condition, type FindState, loosenFindState, queryOf } from './find-state.ts';

/** What a search finds with one condition less. */
export interface Loosened {
	readonly name: Condition;
	readonly state: FindState;
	/** Items it finds; at least 1. */
	readonly total: number;
}

/** Tries a search without each of its conditions in turn, most items first. Throws ApiError, and AbortError when given up. */
export async function tryLoosened(state: FindState, signal: AbortSignal): Promise<readonly Loosened[]> {
	const tried = await Promise.all(
		loosenFindState(state).map(async ({ name, state: looser }) => {
			const query = { ...queryOf(looser), limit: 1, facets: false };
			const { total } = await callApi('GET /api/items', { query, signal });
			return { name, state: looser, total };
		}),
	);
	return tried.filter(({ total }) => total > 0).sort((a, b) => b.total - a.total);
}
