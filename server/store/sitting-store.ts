import type { Kysely } from 'kysely';
import type { Problem } from '../../item-bank/problem.ts';
import type { Sitting, SittingEntry } from '../../item-bank/types.ts';
import { checkShape } from '../json-schemas.ts';
import type { StoreContext } from './store-context.ts';
import { ContentRefusedError, IdTakenError, NotFoundError, StoreError } from './store-errors.ts';
import type { Tables } from './tables.ts';

/** A new sitting, with an id of the caller's choice or one of the bank's. */
export interface NewSitting {
	readonly id?: string;
	readonly sitting: Sitting;
}

/** The group sat the same form version on the same day in the same way already. */
export class SittingPresentError extends StoreError {
	readonly code = 'sitting-present';
	readonly id: string;

	constructor(id: string) {
		super(`expected a new sitting, but "${id}" is of the same form version, group, day and mode`);
		this.id = id;
	}
}

/** Sittings: a form version, a class group, a day, a mode. */
export interface SittingStore {
	/** Keeps a new sitting. Throws ContentRefusedError, NotFoundError, IdTakenError, {@link SittingPresentError}. */
	add(entry: NewSitting): Promise<SittingEntry>;
	/** All sittings, the newest day first. */
	list(): Promise<readonly SittingEntry[]>;
	/** One sitting. Throws NotFoundError. */
	get(id: string): Promise<SittingEntry>;
	/** Whether any sitting is in the bank. */
	hasAny(): Promise<boolean>;
}

/** Sittings kept in the tables of a store. */
export function createSittingStore(context: StoreContext): SittingStore {
	const { kysely } = context;
	const read = <T>(work: (db: Kysely<Tables>) => Promise<T>): Promise<T> =>
		kysely.transaction().setAccessMode('read only').execute(work);

	return {
		add(entry) {
			return kysely.transaction().execute(async (db) => {
				const id = await insertSitting(db, context, entry);
				return getEntry(db, id);
			});
		},
		list() {
			return read((db) => readEntries(db));
		},
		get(id) {
			return read((db) => getEntry(db, id));
		},
		async hasAny() {
			return (await kysely.selectFrom('sittings').select('id').limit(1).executeTakeFirst()) !== undefined;
		},
	};
}

/** Keeps a new sitting with its first scoring. Belongs inside a writing transaction. */
export async function insertSitting(
	db: Kysely<Tables>,
	{ clock, newId }: StoreContext,
	{ id = newId(), sitting }: NewSitting,
): Promise<string> {
	const problems = [...checkShape('sitting.schema.json', sitting), ...checkDays(sitting)];
	if (problems.length > 0) throw new ContentRefusedError('sitting', problems);
	await expectVersion(db, sitting.form, sitting.version);
	const group = await db.selectFrom('groups').select('id').where('id', '=', sitting.group).executeTakeFirst();
	if (!group) throw new NotFoundError('group', sitting.group);
	const taken = await db.selectFrom('sittings').select('id').where('id', '=', id).executeTakeFirst();
	if (taken) throw new IdTakenError('sitting', id);
	const twin = await findSitting(db, sitting);
	if (twin !== undefined) throw new SittingPresentError(twin);
	const now = clock().toISOString();
	const { form, version, date, mode, simulated, keepUntil } = sitting;
	await db
		.insertInto('sittings')
		.values({
			id,
			form_id: form,
			form_version: version,
			group_id: sitting.group,
			sat_on: date,
			mode,
			simulated: simulated === true ? 1 : 0,
			keep_until: keepUntil ?? null,
			created_at: now,
		})
		.execute();
	await db
		.insertInto('scorings')
		.values({ sitting_id: id, number: 1, form_version: version, why: 'first scoring', at: now })
		.execute();
	await noteSitting(db, id, 'created', now);
	return id;
}

/** Id of the sitting of the same form version, group, day and mode. */
export async function findSitting(
	db: Kysely<Tables>,
	{ form, version, group, date, mode }: Sitting,
): Promise<string | undefined> {
	const row = await db
		.selectFrom('sittings')
		.select('id')
		.where('form_id', '=', form)
		.where('form_version', '=', version)
		.where('group_id', '=', group)
		.where('sat_on', '=', date)
		.where('mode', '=', mode)
		.executeTakeFirst();
	return row?.id;
}

/** One sitting with its counts. Throws NotFoundError. */
export async function getEntry(db: Kysely<Tables>, id: string): Promise<SittingEntry> {
	const [entry] = await readEntries(db, id);
	if (!entry) throw new NotFoundError('sitting', id);
	return entry;
}

/** Records what was done to a sitting; never with a student code. */
export async function noteSitting(db: Kysely<Tables>, id: string, what: string, at: string): Promise<void> {
	await db
		.insertInto('happenings')
		.values({ subject: 'sitting', subject_id: id, version: null, what, at, by: null })
		.execute();
}

async function readEntries(db: Kysely<Tables>, id?: string): Promise<readonly SittingEntry[]> {
	const rows = await db
		.selectFrom('sittings')
		.selectAll('sittings')
		.select(({ selectFrom, fn }) => [
			selectFrom('sitting_students')
				.whereRef('sitting_id', '=', 'sittings.id')
				.select(fn.countAll<number>().as('count'))
				.as('students'),
			selectFrom('sitting_students')
				.innerJoin('responses', 'responses.student', 'sitting_students.id')
				.whereRef('sitting_id', '=', 'sittings.id')
				.select(fn.countAll<number>().as('count'))
				.as('answers'),
			selectFrom('scorings')
				.whereRef('sitting_id', '=', 'sittings.id')
				.select((inner) => inner.fn.max('number').as('last'))
				.as('scoring'),
		])
		.$if(id !== undefined, (select) => select.where('sittings.id', '=', id ?? ''))
		.orderBy('sat_on', 'desc')
		.orderBy('group_id')
		.orderBy('sittings.id')
		.execute();
	const entries: SittingEntry[] = [];
	for (const row of rows) {
		const scoring = row.scoring ?? 1;
		const { form_version } = await db
			.selectFrom('scorings')
			.select('form_version')
			.where('sitting_id', '=', row.id)
			.where('number', '=', scoring)
			.executeTakeFirstOrThrow();
		const { unrated } = await db
			.selectFrom('sitting_students')
			.innerJoin('scores', 'scores.student', 'sitting_students.id')
			.where('sitting_id', '=', row.id)
			.where('scoring', '=', scoring)
			.where('state', '=', 'unrated')
			.select(({ fn }) => fn.countAll<number>().as('unrated'))
			.executeTakeFirstOrThrow();
		entries.push({
			id: row.id,
			sitting: {
				form: row.form_id,
				version: row.form_version,
				group: row.group_id,
				date: row.sat_on,
				mode: row.mode,
				...(row.simulated === 1 ? { simulated: true } : {}),
				...(row.keep_until === null ? {} : { keepUntil: row.keep_until }),
			},
			students: row.students ?? 0,
			answers: row.answers ?? 0,
			unrated,
			scoring,
			scoredAs: form_version,
		});
	}
	return entries;
}

/** Throws NotFoundError for a version of a form that is not there. */
export async function expectVersion(db: Kysely<Tables>, form: string, version: number): Promise<void> {
	const row = await db
		.selectFrom('form_versions')
		.select('form_id')
		.where('form_id', '=', form)
		.where('version', '=', version)
		.executeTakeFirst();
	if (!row) throw new NotFoundError('form', form, version);
}

/** Days that are no days of the calendar, such as 2026-02-30. */
function checkDays({ date, keepUntil }: Sitting): readonly Problem[] {
	return Object.entries({ date, keepUntil }).flatMap(([field, day]) => {
		if (day === undefined || isDay(day)) return [];
		const message = `expected a day such as 2026-09-14, found "${day}"`;
		return [{ code: 'date-unknown', path: `/${field}`, message }];
	});
}

function isDay(text: string): boolean {
	const time = Date.parse(`${text}T00:00:00Z`);
	return !Number.isNaN(time) && new Date(time).toISOString().startsWith(text);
}
