import type { Kysely } from 'kysely';
import type { RecordedAnswer, StudentRecord } from '../../item-bank/types.ts';
import { readGiven, readScore } from './response-rows.ts';
import { getEntry } from './sitting-store.ts';
import { NotFoundError } from './store-errors.ts';
import type { Tables } from './tables.ts';

/** Everything the bank holds about one student code. Throws NotFoundError when that is nothing. */
export async function readStudentRecord(kysely: Kysely<Tables>, code: string): Promise<StudentRecord> {
	return kysely
		.transaction()
		.setAccessMode('read only')
		.execute(async (db) => {
			const groups = await db
				.selectFrom('group_students')
				.innerJoin('groups', 'groups.id', 'group_students.group_id')
				.where('code', '=', code)
				.select(['id', 'name'])
				.orderBy('name')
				.execute();
			const sat = await db
				.selectFrom('sitting_students')
				.select(['id', 'sitting_id'])
				.where('code', '=', code)
				.orderBy('sitting_id')
				.execute();
			if (groups.length === 0 && sat.length === 0) throw new NotFoundError('student', code);
			const sittings: StudentRecord['sittings'][number][] = [];
			for (const { id: student, sitting_id: id } of sat) {
				const { sitting } = await getEntry(db, id);
				sittings.push({ id, sitting, answers: await readAnswers(db, student, id) });
			}
			return { code, groups, sittings };
		});
}

async function readAnswers(db: Kysely<Tables>, student: number, sitting: string): Promise<readonly RecordedAnswer[]> {
	const responses = await db
		.selectFrom('responses')
		.selectAll()
		.where('student', '=', student)
		.orderBy('position')
		.orderBy('part')
		.execute();
	const scores = await db
		.selectFrom('scores')
		.innerJoin('scorings', (join) => join.onRef('scorings.number', '=', 'scores.scoring'))
		.where('student', '=', student)
		.where('scorings.sitting_id', '=', sitting)
		.selectAll('scores')
		.select(['scorings.form_version', 'scorings.at'])
		.orderBy('scoring')
		.execute();
	const ratings = await db.selectFrom('ratings').selectAll().where('student', '=', student).orderBy('reader').execute();
	return responses.map((row) => {
		const isHere = (each: { readonly position: number; readonly part: number }): boolean =>
			each.position === row.position && each.part === row.part;
		return {
			position: row.position,
			...(row.part === 0 ? {} : { part: row.part }),
			raw: row.raw,
			given: readGiven(row),
			scores: scores.filter(isHere).map((score) => ({
				scoring: score.scoring,
				scoredAs: score.form_version,
				at: score.at,
				score: readScore(score),
			})),
			ratings: ratings.filter(isHere).map(({ reader, points, at }) => ({ reader, points, at })),
		};
	});
}
