import type { Kysely } from 'kysely';
import type { ItemStatus } from '../../item-bank/items/record.ts';
import type { Item } from '../../item-bank/types.ts';
import type { Tables } from './tables.ts';

/** The extracted values of one standing version: what a search narrows by and counts. '' where an item has no context. */
export interface Traits {
	readonly given: string;
	readonly kind: string;
	readonly dok: number;
	readonly points: number;
	readonly setting: string;
	readonly role: string;
	readonly status: string;
}

/** The traits of an item in a status. */
export function extractTraits(item: Item, status: ItemStatus): Traits {
	return {
		given: item.given,
		kind: item.kind,
		dok: item.dok,
		points: item.points,
		setting: item.context?.setting ?? '',
		role: item.context?.role ?? '',
		status,
	};
}

/** Numbers of the rows that hold these traits, in the same order; rows that are missing are added. */
export async function keepTraits(db: Kysely<Tables>, wanted: readonly Traits[]): Promise<readonly number[]> {
	const numbers = new Map<string, number>();
	const result: number[] = [];
	for (const traits of wanted) {
		const key = JSON.stringify(traits);
		const id = numbers.get(key) ?? (await findTraits(db, traits)) ?? (await addTraits(db, traits));
		numbers.set(key, id);
		result.push(id);
	}
	return result;
}

async function findTraits(db: Kysely<Tables>, traits: Traits): Promise<number | undefined> {
	const row = await db
		.selectFrom('traits')
		.select('id')
		.where('given', '=', traits.given)
		.where('kind', '=', traits.kind)
		.where('dok', '=', traits.dok)
		.where('points', '=', traits.points)
		.where('setting', '=', traits.setting)
		.where('role', '=', traits.role)
		.where('status', '=', traits.status)
		.executeTakeFirst();
	return row?.id;
}

async function addTraits(db: Kysely<Tables>, traits: Traits): Promise<number> {
	const row = await db.insertInto('traits').values(traits).returning('id').executeTakeFirstOrThrow();
	return row.id;
}

/** Remembers rows of the traits table. They are only ever added and never changed, so what was read once stays true. */
export class TraitsReader {
	readonly #known = new Map<number, Traits>();
	#newest = 0;

	/** All traits in use by number. Must run where only committed rows are seen, outside writing transactions. */
	async read(db: Kysely<Tables>): Promise<ReadonlyMap<number, Traits>> {
		const rows = await db.selectFrom('traits').selectAll().where('id', '>', this.#newest).orderBy('id').execute();
		for (const { id, ...traits } of rows) {
			this.#known.set(id, traits);
			this.#newest = id;
		}
		return this.#known;
	}
}
