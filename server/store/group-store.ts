import type { Kysely } from 'kysely';
import type { Group, GroupEntry } from '../../item-bank/types.ts';
import { checkShape } from '../json-schemas.ts';
import { checkCharacters } from './content-rules.ts';
import { insertInto } from './standing-index.ts';
import type { StoreContext } from './store-context.ts';
import { ContentRefusedError, GroupNameTakenError, IdTakenError, NotFoundError } from './store-errors.ts';
import type { Tables } from './tables.ts';

/** A new class group, with an id of the caller's choice or one of the bank's. */
export interface NewGroup {
	readonly id?: string;
	readonly group: Group;
}

/** Class groups with student codes; names of students have no place here. */
export interface GroupStore {
	/** Keeps a new group. Throws ContentRefusedError, IdTakenError, GroupNameTakenError. */
	add(entry: NewGroup): Promise<GroupEntry>;
	/** All groups by name. */
	list(): Promise<readonly GroupEntry[]>;
	/** One group. Throws NotFoundError. */
	get(id: string): Promise<GroupEntry>;
}

/** Groups kept in the tables of a store. */
export function createGroupStore({ kysely, clock, newId }: StoreContext): GroupStore {
	const read = <T>(work: (db: Kysely<Tables>) => Promise<T>): Promise<T> =>
		kysely.transaction().setAccessMode('read only').execute(work);

	return {
		async add({ id = newId(), group }) {
			const problems = [...checkShape('group.schema.json', group), ...checkCharacters(group)];
			if (problems.length > 0) throw new ContentRefusedError('group', problems);
			return kysely.transaction().execute(async (db) => {
				const clash = await db
					.selectFrom('groups')
					.select('id')
					.where((build) => build.or([build('id', '=', id), build('name', '=', group.name)]))
					.execute();
				if (clash.some((row) => row.id === id)) throw new IdTakenError('group', id);
				if (clash.length > 0) throw new GroupNameTakenError(group.name);
				const now = clock().toISOString();
				await db
					.insertInto('groups')
					.values({ id, name: group.name, grade: group.grade ?? null, created_at: now })
					.execute();
				await insertInto(
					group.studentCodes.map((code, index) => ({ group_id: id, position: index + 1, code })),
					(values) => db.insertInto('group_students').values(values).execute(),
				);
				await db
					.insertInto('happenings')
					.values({ subject: 'group', subject_id: id, version: null, what: 'created', at: now, by: null })
					.execute();
				return { id, group };
			});
		},

		list() {
			return read((db) => readGroups(db));
		},

		get(id) {
			return read(async (db) => {
				const [entry] = await readGroups(db, id);
				if (!entry) throw new NotFoundError('group', id);
				return entry;
			});
		},
	};
}

async function readGroups(db: Kysely<Tables>, id?: string): Promise<readonly GroupEntry[]> {
	const groups = await db
		.selectFrom('groups')
		.selectAll()
		.$if(id !== undefined, (select) => select.where('id', '=', id ?? ''))
		.orderBy('name')
		.execute();
	const students = await db
		.selectFrom('group_students')
		.selectAll()
		.$if(id !== undefined, (select) => select.where('group_id', '=', id ?? ''))
		.orderBy('group_id')
		.orderBy('position')
		.execute();
	return groups.map(({ id: groupId, name, grade }) => ({
		id: groupId,
		group: {
			name,
			...(grade === null ? {} : { grade }),
			studentCodes: students.filter(({ group_id }) => group_id === groupId).map(({ code }) => code),
		},
	}));
}
