import type { Kysely } from 'kysely';
import type { Sitting } from '../../item-bank/types.ts';
import { completeScorings } from './rescoring.ts';
import { insertAnswer, type NewAnswer } from './response-rows.ts';
import { findSitting, insertSitting, noteSitting } from './sitting-store.ts';
import type { StoreContext } from './store-context.ts';
import { StoreError } from './store-errors.ts';
import type { Tables } from './tables.ts';

/** What one row of a file says of a student. */
export interface NewRow {
	readonly line: number;
	readonly group: string;
	readonly code: string;
	readonly answers: readonly NewAnswer[];
}

/** How rows are to be kept. */
export interface KeepingOrder {
	/** Of every sitting; the group is the row's. */
	readonly sitting: Omit<Sitting, 'group'>;
	/** What may be there already: nothing; other students and places; or responses that are replaced. */
	readonly onto: 'nothing' | 'add' | 'replace';
	/** Told of a row that contradicts what is there; it is left out. */
	readonly refuse: (row: NewRow, place: { readonly position: number; readonly part: number | undefined }) => void;
	/** Called at the end, before anything counts; what it throws undoes everything. */
	readonly settle?: (kept: KeepingReport) => void;
	/** Keep nothing: only say what would be kept. */
	readonly isTrial?: boolean;
}

/** What was kept of rows. */
export interface KeepingReport {
	/** Rows that were there already, exactly like this. */
	readonly unchanged: number;
	readonly sittings: readonly {
		readonly id: string;
		readonly isNew: boolean;
		readonly group: string;
		readonly students: number;
		readonly answers: number;
	}[];
}

/** A sitting has responses, and nobody said what shall become of them. */
export class ResponsesPresentError extends StoreError {
	readonly code = 'responses-present';
	readonly id: string;

	constructor(id: string, students: number) {
		super(
			`expected a sitting without responses, but "${id}" has those of ${students} students: say whether to add to them or to replace them`,
		);
		this.id = id;
	}
}

/** Undoes a trial. */
class TrialEnd extends Error {
	readonly report: KeepingReport;

	constructor(report: KeepingReport) {
		super('a trial keeps nothing');
		this.report = report;
	}
}

interface OpenSitting {
	readonly id: string;
	readonly isNew: boolean;
	/** From code to number of the student. */
	readonly students: Map<string, number>;
	/** Codes that had responses before. */
	readonly before: ReadonlySet<string>;
	readonly touched: Set<string>;
	answers: number;
}

/**
 * Keeps rows of any number of groups in one unit of work; sittings that are not there are made. Throws
 * {@link ResponsesPresentError}, and as insertSitting does.
 */
export async function keepRows(
	context: StoreContext,
	rows: AsyncIterable<readonly NewRow[]>,
	order: KeepingOrder,
): Promise<KeepingReport> {
	try {
		return await context.kysely.transaction().execute(async (db) => {
			const open = new Map<string, OpenSitting>();
			let unchanged = 0;
			for await (const run of rows) {
				for (const row of run) {
					const sitting = open.get(row.group) ?? (await openSitting(db, context, row.group, order));
					open.set(row.group, sitting);
					if (!(await keepRow(db, sitting, row, order))) unchanged += 1;
				}
			}
			const now = context.clock().toISOString();
			for (const { id, isNew } of open.values()) if (!isNew) await completeScorings(db, id);
			for (const { id, touched } of open.values())
				await noteSitting(db, id, `responses of ${touched.size} students`, now);
			const report: KeepingReport = {
				unchanged,
				sittings: [...open.entries()].map(([group, { id, isNew, touched, answers }]) => ({
					id,
					isNew,
					group,
					students: touched.size,
					answers,
				})),
			};
			order.settle?.(report);
			if (order.isTrial === true) throw new TrialEnd(report);
			return report;
		});
	} catch (error) {
		if (error instanceof TrialEnd) return error.report;
		throw error;
	}
}

async function openSitting(
	db: Kysely<Tables>,
	context: StoreContext,
	group: string,
	{ sitting, onto }: KeepingOrder,
): Promise<OpenSitting> {
	const known = await findSitting(db, { ...sitting, group });
	const id = known ?? (await insertSitting(db, context, { sitting: { ...sitting, group } }));
	const rows = await db.selectFrom('sitting_students').select(['id', 'code']).where('sitting_id', '=', id).execute();
	if (rows.length > 0 && onto === 'nothing') throw new ResponsesPresentError(id, rows.length);
	if (onto === 'replace') {
		await db.deleteFrom('sitting_students').where('sitting_id', '=', id).execute();
		await db.deleteFrom('scorings').where('sitting_id', '=', id).where('number', '>', 1).execute();
		rows.length = 0;
	}
	const students = new Map(rows.map((row) => [row.code, row.id]));
	return { id, isNew: known === undefined, students, before: new Set(students.keys()), touched: new Set(), answers: 0 };
}

/** Whether anything of the row was new. */
async function keepRow(db: Kysely<Tables>, sitting: OpenSitting, row: NewRow, order: KeepingOrder): Promise<boolean> {
	let student = sitting.students.get(row.code);
	let answers = row.answers;
	if (student !== undefined && sitting.before.has(row.code)) {
		const there = await db
			.selectFrom('responses')
			.select(['position', 'part', 'raw'])
			.where('student', '=', student)
			.execute();
		const find = ({ position, part = 0 }: NewAnswer) =>
			there.find((each) => each.position === position && each.part === part);
		const clash = answers.find((answer) => (find(answer)?.raw ?? answer.raw) !== answer.raw);
		if (clash) {
			order.refuse(row, clash);
			return true;
		}
		answers = answers.filter((answer) => find(answer) === undefined);
		if (answers.length === 0) return false;
	}
	if (student === undefined) {
		const added = await db
			.insertInto('sitting_students')
			.values({ sitting_id: sitting.id, code: row.code })
			.returning('id')
			.executeTakeFirstOrThrow();
		student = added.id;
		sitting.students.set(row.code, student);
	}
	for (const answer of answers) await insertAnswer(db, student, answer);
	sitting.touched.add(row.code);
	sitting.answers += answers.length;
	return true;
}
