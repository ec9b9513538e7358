import { CursorRefusedError } from './store-errors.ts';

/** Where a page ended: the value its order goes by, and the number of the last row. */
export interface PageEnd {
	readonly sort: string;
	readonly value: string;
	readonly id: number;
}

/** A page end as text for the next request. */
export function encodeCursor({ sort, value, id }: PageEnd): string {
	return Buffer.from(JSON.stringify([sort, value, id])).toString('base64url');
}

/** The page end in a cursor. Throws CursorRefusedError for text this bank did not make, or made for another order. */
export function decodeCursor(cursor: string, sort: string): PageEnd {
	const parts = parseParts(cursor);
	if (!Array.isArray(parts) || parts.length !== 3) throw new CursorRefusedError(cursor);
	const [made, value, id] = parts as readonly unknown[];
	if (made !== sort || typeof value !== 'string' || typeof id !== 'number' || !Number.isSafeInteger(id)) {
		throw new CursorRefusedError(cursor);
	}
	return { sort, value, id };
}

function parseParts(cursor: string): unknown {
	try {
		return JSON.parse(Buffer.from(cursor, 'base64url').toString());
	} catch {
		return undefined;
	}
}
