import type { Kysely } from 'kysely';
import type { AnswerPlace } from '../../item-bank/forms/answer-places.ts';
import type { AnswerScore, RescoringReport, SittingAnswers, SittingEntry } from '../../item-bank/types.ts';
import { completeScorings, readPlaces, rescoreSitting } from './rescoring.ts';
import { type KeepingOrder, type KeepingReport, keepRows, type NewRow } from './response-keeping.ts';
import { insertAnswer, type NewAnswer, readGiven, readScore } from './response-rows.ts';
import { getEntry, noteSitting } from './sitting-store.ts';
import type { StoreContext } from './store-context.ts';
import type { Tables } from './tables.ts';

/** The newest scores of a sitting, as statistics take them. */
export interface ScoredSitting {
	readonly entry: SittingEntry;
	/** By the version whose keys the newest scoring follows. */
	readonly places: readonly AnswerPlace[];
	/** Codes of the group's list, with responses or without. */
	readonly roster: readonly string[];
	readonly answers: readonly ScoredAnswer[];
}

/** One answer with its newest score. */
export interface ScoredAnswer {
	readonly code: string;
	readonly position: number;
	/** 0 for an item by itself. */
	readonly part: number;
	readonly raw: string;
	/** JSON of the response; null where it came as points or a mark. */
	readonly response: string | null;
	readonly state: AnswerScore['state'];
	readonly points: number;
	readonly maximum: number;
}

/** Raw responses and their scores. */
export interface ResponseStore {
	/** Keeps rows in one unit of work, making sittings that are not there; see keepRows. */
	keep(rows: AsyncIterable<readonly NewRow[]>, order: KeepingOrder): Promise<KeepingReport>;
	/** All responses of a sitting as a class grid. Throws NotFoundError. */
	grid(sitting: string): Promise<SittingAnswers>;
	/** Keeps answers of one student, each in the place of one that is there. Throws NotFoundError. */
	put(sitting: string, code: string, answers: readonly NewAnswer[]): Promise<void>;
	/** What is answered in a sitting, by the version that was sat. Throws NotFoundError. */
	places(sitting: string): Promise<readonly AnswerPlace[]>;
	/** The newest scores. Throws NotFoundError. */
	scores(sitting: string): Promise<ScoredSitting>;
	/** Scores anew by the keys of another version of the form, keeping the earlier scores; see rescoreSitting. */
	rescore(sitting: string, order: { readonly version: number; readonly why: string }): Promise<RescoringReport>;
}

/** Responses kept in the tables of a store. */
export function createResponseStore(context: StoreContext): ResponseStore {
	const { kysely, clock } = context;
	const read = <T>(work: (db: Kysely<Tables>) => Promise<T>): Promise<T> =>
		kysely.transaction().setAccessMode('read only').execute(work);

	return {
		keep: (rows, order) => keepRows(context, rows, order),
		rescore: (sitting, order) => rescoreSitting(context, sitting, order),

		grid(id) {
			return read(async (db) => {
				const entry = await getEntry(db, id);
				const places = await readPlaces(db, entry.sitting.form, entry.sitting.version);
				const rows = await readAnswers(db, id, entry.scoring);
				const codes = new Set([...(await readRoster(db, entry.sitting.group)), ...rows.map(({ code }) => code)]);
				const byCode = groupByCode(rows);
				return {
					entry,
					places: places.map(({ position, part, label, record, item, points }) => ({
						position,
						...(part === undefined ? {} : { part }),
						label,
						item: record.id,
						version: record.version,
						name: record.item.name,
						kind: item.kind,
						points,
					})),
					students: [...codes].map((code) => ({
						code,
						answers: (byCode.get(code) ?? []).map((row) => ({
							position: row.position,
							...(row.part === 0 ? {} : { part: row.part }),
							raw: row.raw,
							given: readGiven({ ...row, points: row.given_points }),
							score: readScore(row),
						})),
					})),
				};
			});
		},

		put(id, code, answers) {
			return kysely.transaction().execute(async (db) => {
				await getEntry(db, id);
				const known = await db
					.selectFrom('sitting_students')
					.select('id')
					.where('sitting_id', '=', id)
					.where('code', '=', code)
					.executeTakeFirst();
				const student =
					known?.id ??
					(
						await db
							.insertInto('sitting_students')
							.values({ sitting_id: id, code })
							.returning('id')
							.executeTakeFirstOrThrow()
					).id;
				for (const answer of answers) {
					await db
						.deleteFrom('responses')
						.where('student', '=', student)
						.where('position', '=', answer.position)
						.where('part', '=', answer.part ?? 0)
						.execute();
					await insertAnswer(db, student, answer);
				}
				await completeScorings(db, id);
				await noteSitting(db, id, 'responses entered', clock().toISOString());
			});
		},

		places(id) {
			return read(async (db) => {
				const { sitting } = await getEntry(db, id);
				return readPlaces(db, sitting.form, sitting.version);
			});
		},

		scores(id) {
			return read(async (db) => {
				const entry = await getEntry(db, id);
				const places = await readPlaces(db, entry.sitting.form, entry.scoredAs);
				const answers = await readAnswers(db, id, entry.scoring);
				return { entry, places, roster: await readRoster(db, entry.sitting.group), answers };
			});
		},
	};
}

async function readAnswers(db: Kysely<Tables>, id: string, scoring: number) {
	return db
		.selectFrom('sitting_students')
		.innerJoin('responses', 'responses.student', 'sitting_students.id')
		.innerJoin('scores', (join) =>
			join
				.onRef('scores.student', '=', 'responses.student')
				.onRef('scores.position', '=', 'responses.position')
				.onRef('scores.part', '=', 'responses.part')
				.on('scores.scoring', '=', scoring),
		)
		.where('sitting_id', '=', id)
		.select(['code', 'responses.position', 'responses.part', 'raw', 'came_as', 'response'])
		.select(['responses.points as given_points', 'state', 'scores.points', 'maximum', 'reason'])
		.orderBy('code')
		.orderBy('responses.position')
		.orderBy('responses.part')
		.execute();
}

function groupByCode<Row extends { readonly code: string }>(rows: readonly Row[]): ReadonlyMap<string, readonly Row[]> {
	const groups = new Map<string, Row[]>();
	for (const row of rows) {
		const group = groups.get(row.code);
		if (group) group.push(row);
		else groups.set(row.code, [row]);
	}
	return groups;
}

async function readRoster(db: Kysely<Tables>, group: string): Promise<readonly string[]> {
	const rows = await db
		.selectFrom('group_students')
		.select('code')
		.where('group_id', '=', group)
		.orderBy('position')
		.execute();
	return rows.map(({ code }) => code);
}
