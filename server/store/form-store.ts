import type { Kysely } from 'kysely';
import { checkForm } from '../../item-bank/forms/check-form.ts';
import type { FormRecord, ItemRecord } from '../../item-bank/items/record.ts';
import type { Problem } from '../../item-bank/problem.ts';
import type { Form, FormGiving, FormSummary } from '../../item-bank/types.ts';
import { checkShape } from '../json-schemas.ts';
import { checkCharacters } from './content-rules.ts';
import { readRecords } from './item-records.ts';
import { insertInto } from './standing-index.ts';
import type { StoreContext } from './store-context.ts';
import {
	AlreadyGivenError,
	ContentRefusedError,
	IdTakenError,
	NotFoundError,
	VersionConflictError,
} from './store-errors.ts';
import type { Tables } from './tables.ts';

/** A new form, with an id of the caller's choice or one of the bank's. */
export interface NewForm {
	readonly id?: string;
	readonly form: Form;
}

/** A version of a form, its items in form order, and when any version of it was given. */
export interface FormDetails {
	readonly record: FormRecord;
	readonly items: readonly ItemRecord[];
	readonly givings: readonly FormGiving[];
}

/** That an item stood on a form given to students on a day (YYYY-MM-DD). */
export interface ItemUse {
	readonly item: string;
	readonly form: string;
	readonly date: string;
}

/** Forms as immutable versions that name item versions; a form that a check speaks against is not kept. */
export interface FormStore {
	/** Keeps a new form. Throws ContentRefusedError, IdTakenError. */
	create(entry: NewForm): Promise<FormRecord>;
	/** Keeps several new forms, all or none. Throws as create does; paths of refused content begin with the place in the list. */
	createMany(entries: readonly NewForm[]): Promise<readonly FormRecord[]>;
	/** Keeps a new version based on the newest one. Throws NotFoundError, VersionConflictError, ContentRefusedError. */
	revise(id: string, baseVersion: number, form: Form): Promise<FormRecord>;
	/** One version with its items, the newest when none is named. Throws NotFoundError. */
	get(id: string, version?: number): Promise<FormDetails>;
	/** The newest version of every form, by title. */
	list(): Promise<readonly FormSummary[]>;
	/** Every item that stood on a form given to students, with the form's title and the day. */
	uses(): Promise<readonly ItemUse[]>;
	/** Records that a version was given to a group on a day (YYYY-MM-DD). Throws NotFoundError, ContentRefusedError, AlreadyGivenError. */
	give(id: string, giving: FormGiving): Promise<FormGiving>;
}

/** Forms kept in the tables of a store. */
export function createFormStore({ kysely, clock, newId }: StoreContext): FormStore {
	const write = <T>(work: (db: Kysely<Tables>) => Promise<T>): Promise<T> => kysely.transaction().execute(work);
	const read = <T>(work: (db: Kysely<Tables>) => Promise<T>): Promise<T> =>
		kysely.transaction().setAccessMode('read only').execute(work);
	const add = async (db: Kysely<Tables>, { id = newId(), form }: NewForm): Promise<FormRecord> => {
		await refuseUnfit(db, form);
		const taken = await db.selectFrom('forms').select('id').where('id', '=', id).executeTakeFirst();
		if (taken) throw new IdTakenError('form', id);
		const now = clock().toISOString();
		await db.insertInto('forms').values({ id, newest_version: 1, title: form.title, created_at: now }).execute();
		return addVersion(db, { id, version: 1, form }, 'created', now);
	};

	return {
		create(entry) {
			return write((db) => add(db, entry));
		},

		createMany(entries) {
			return write(async (db) => {
				const records: FormRecord[] = [];
				for (const [index, entry] of entries.entries()) records.push(await atPlace(index, add(db, entry)));
				return records;
			});
		},

		revise(id, baseVersion, form) {
			return write(async (db) => {
				const newest = await getNewestVersion(db, id);
				if (newest !== baseVersion) throw new VersionConflictError('form', id, baseVersion, newest);
				await refuseUnfit(db, form);
				const version = newest + 1;
				await db
					.updateTable('forms')
					.set({ newest_version: version, title: form.title })
					.where('id', '=', id)
					.execute();
				return addVersion(db, { id, version, form }, 'revised', clock().toISOString());
			});
		},

		get(id, version) {
			return read(async (db) => {
				const record = await getRecord(db, id, version ?? (await getNewestVersion(db, id)));
				const items = await readRecords(db, entriesOf(record.form));
				const rows = await db
					.selectFrom('givings')
					.selectAll()
					.where('form_id', '=', id)
					.orderBy('given_on')
					.orderBy('group_id')
					.execute();
				const givings = rows.map((row) => ({ version: row.form_version, group: row.group_id, date: row.given_on }));
				return { record, items, givings };
			});
		},

		async list() {
			const rows = await kysely
				.selectFrom('forms')
				.select(['id', 'newest_version', 'title'])
				.select(({ selectFrom, fn }) => [
					selectFrom('form_items')
						.whereRef('form_id', '=', 'forms.id')
						.whereRef('form_version', '=', 'forms.newest_version')
						.select(fn.countAll<number>().as('count'))
						.as('items'),
					selectFrom('givings')
						.whereRef('form_id', '=', 'forms.id')
						.select(fn.countAll<number>().as('count'))
						.as('givings'),
				])
				.orderBy('title')
				.orderBy('id')
				.execute();
			return rows.map(({ id, newest_version, title, items, givings }) => ({
				id,
				version: newest_version,
				title,
				items: items ?? 0,
				givings: givings ?? 0,
			}));
		},

		uses() {
			return kysely
				.selectFrom('givings')
				.innerJoin('form_items', (join) =>
					join
						.onRef('form_items.form_id', '=', 'givings.form_id')
						.onRef('form_items.form_version', '=', 'givings.form_version'),
				)
				.innerJoin('forms', 'forms.id', 'givings.form_id')
				.select(['form_items.item_id as item', 'forms.title as form', 'givings.given_on as date'])
				.distinct()
				.orderBy('item')
				.orderBy('date')
				.execute();
		},

		give(id, giving) {
			return write(async (db) => {
				const { version, group, date } = giving;
				const problems = [...checkShape('form-giving.schema.json', giving), ...checkDate(date)];
				if (problems.length > 0) throw new ContentRefusedError('form', problems);
				await getRecord(db, id, version);
				const known = await db.selectFrom('groups').select('id').where('id', '=', group).executeTakeFirst();
				if (!known) throw new NotFoundError('group', group);
				const row = { form_id: id, form_version: version, group_id: group, given_on: date };
				const before = await db
					.selectFrom('givings')
					.select('form_id')
					.where((build) => build.and(row))
					.executeTakeFirst();
				if (before) throw new AlreadyGivenError(id, version, group, date);
				await db.insertInto('givings').values(row).execute();
				await addHappening(db, id, version, 'given', clock().toISOString());
				return giving;
			});
		},
	};
}

/** Puts the place in the list before the paths of refused content. */
async function atPlace<T>(index: number, work: Promise<T>): Promise<T> {
	try {
		return await work;
	} catch (error) {
		if (!(error instanceof ContentRefusedError)) throw error;
		throw new ContentRefusedError(
			'form',
			error.problems.map((problem) => ({ ...problem, path: `/${index}/form${problem.path}` })),
		);
	}
}

/** A day that is no day of the calendar, such as 2026-02-30. */
function checkDate(date: string): readonly Problem[] {
	const time = Date.parse(`${date}T00:00:00Z`);
	if (!Number.isNaN(time) && new Date(time).toISOString().startsWith(date)) return [];
	return [{ code: 'date-unknown', path: '/date', message: `expected a day such as 2026-09-14, found "${date}"` }];
}

async function refuseUnfit(db: Kysely<Tables>, form: Form): Promise<void> {
	const shape = [...checkShape('form.schema.json', form), ...checkCharacters(form)];
	if (shape.length > 0) throw new ContentRefusedError('form', shape);
	const records = await readRecords(db, entriesOf(form));
	const items = new Map(records.map(({ id, version, item }) => [`${id} ${version}`, item]));
	const problems = checkForm(form, (id, version) => items.get(`${id} ${version}`));
	if (problems.length > 0) throw new ContentRefusedError('form', problems);
}

function entriesOf(form: Form): readonly { readonly id: string; readonly version: number }[] {
	return form.sections.flatMap(({ items }) => items.map(({ item, version }) => ({ id: item, version })));
}

async function addVersion(db: Kysely<Tables>, record: FormRecord, what: string, now: string): Promise<FormRecord> {
	const { id, version, form } = record;
	const document = JSON.stringify(form);
	await db
		.insertInto('form_versions')
		.values({ form_id: id, version, document, created_at: now, created_by: null })
		.execute();
	await insertInto(
		entriesOf(form).map((entry, index) => ({
			form_id: id,
			form_version: version,
			position: index + 1,
			item_id: entry.id,
			item_version: entry.version,
		})),
		(values) => db.insertInto('form_items').values(values).execute(),
	);
	await addHappening(db, id, version, what, now);
	return record;
}

async function addHappening(db: Kysely<Tables>, id: string, version: number, what: string, at: string): Promise<void> {
	await db.insertInto('happenings').values({ subject: 'form', subject_id: id, version, what, at, by: null }).execute();
}

async function getNewestVersion(db: Kysely<Tables>, id: string): Promise<number> {
	const row = await db.selectFrom('forms').select('newest_version').where('id', '=', id).executeTakeFirst();
	if (!row) throw new NotFoundError('form', id);
	return row.newest_version;
}

async function getRecord(db: Kysely<Tables>, id: string, version: number): Promise<FormRecord> {
	const row = await db
		.selectFrom('form_versions')
		.select('document')
		.where('form_id', '=', id)
		.where('version', '=', version)
		.executeTakeFirst();
	if (!row) throw new NotFoundError('form', id, version);
	return { id, version, form: JSON.parse(row.document) as Form };
}
