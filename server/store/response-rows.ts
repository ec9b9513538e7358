import { CompiledQuery, type Kysely } from 'kysely';
import type { AnswerGiven, AnswerScore, PartResponse } from '../../item-bank/types.ts';
import type { Tables } from './tables.ts';

/** One answer to be kept. */
export interface NewAnswer {
	readonly position: number;
	/** Part of a set; undefined for an item by itself. */
	readonly part: number | undefined;
	/** As it came in. */
	readonly raw: string;
	readonly given: AnswerGiven;
	readonly score: AnswerScore;
}

/** Keeps an answer with its score in the first scoring. One prepared statement a row: the fastest way SQLite has. */
export async function insertAnswer(
	db: Kysely<Tables>,
	student: number,
	{ position, part = 0, raw, given, score }: NewAnswer,
): Promise<void> {
	const cameAs = given.kind === 'mark' ? given.mark : given.kind;
	const response = given.kind === 'response' ? JSON.stringify(given.response) : null;
	const points = given.kind === 'points' ? given.points : null;
	await db.executeQuery(
		CompiledQuery.raw(
			'INSERT INTO responses (student, position, part, raw, came_as, response, points) VALUES (?, ?, ?, ?, ?, ?, ?)',
			[student, position, part, raw, cameAs, response, points],
		),
	);
	await insertScore(db, { student, position, part }, 1, score);
}

/** Keeps a score of an answer in a scoring, in the place of one that is there. */
export async function insertScore(
	db: Kysely<Tables>,
	{ student, position, part }: { readonly student: number; readonly position: number; readonly part: number },
	scoring: number,
	{ state, points, maximum, reason = null }: { readonly reason?: string | null } & Omit<AnswerScore, 'reason'>,
): Promise<void> {
	await db.executeQuery(
		CompiledQuery.raw(
			'INSERT OR REPLACE INTO scores (student, position, part, scoring, state, points, maximum, reason) VALUES (?, ?, ?, ?, ?, ?, ?, ?)',
			[student, position, part, scoring, state, points, maximum, reason],
		),
	);
}

/** What was given, from the columns of a response. */
export function readGiven(
	row: Pick<Tables['responses'], 'came_as' | 'points'> & { readonly response: string | null },
): AnswerGiven {
	switch (row.came_as) {
		case 'response':
			return { kind: 'response', response: JSON.parse(row.response ?? 'null') as PartResponse };
		case 'points':
			return { kind: 'points', points: row.points ?? 0 };
		case 'omitted':
		case 'not-reached':
		case 'invalid':
			return { kind: 'mark', mark: row.came_as };
	}
}

/** A score from its columns. */
export function readScore(
	row: { readonly points: number } & Pick<Tables['scores'], 'state' | 'maximum' | 'reason'>,
): AnswerScore {
	const { state, points, maximum, reason } = row;
	return { state, points, maximum, ...(reason === null ? {} : { reason }) };
}
