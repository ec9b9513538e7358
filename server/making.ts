import { makeItems } from '../item-bank/families/make-items.ts';
import { variantsLike } from '../item-bank/families/variants.ts';
import type { Problem } from '../item-bank/problem.ts';
import type { Item, MadeItems, MakeOrder, VariantOrder } from '../item-bank/types.ts';
import type { Store } from './store/open-store.ts';

/** An order that a family cannot be asked to fill: nothing was made. */
export class MakingRefusedError extends Error {
	readonly code = 'making-refused';
	readonly problems: readonly Problem[];

	constructor(problems: readonly Problem[]) {
		super(problems[0]?.message ?? 'the order cannot be filled');
		this.name = 'MakingRefusedError';
		this.problems = problems;
	}
}

/**
 * Items of a family, kept in the bank when the order says so: all or none. The id of a kept item is made of its family and
 * seed, so that the same order twice keeps nothing twice. Without a store nothing is kept. Throws {@link MakingRefusedError}.
 */
export async function makeInBank(store: Store | undefined, order: MakeOrder): Promise<MadeItems> {
	const { family, count, seed = '1', parameters, standard } = order;
	const asked = { family, count, seed, ...(parameters ? { parameters } : {}), ...(standard ? { standard } : {}) };
	const { items, problems } = makeItems(asked);
	if (items.length === 0 && problems.length > 0) throw new MakingRefusedError(problems);
	return { family, items: await keepItems(store, items, order), problems };
}

/**
 * Items of the same shape as one of the bank, kept when the order says so. Where no family makes any, the answer has no
 * items and says why. Throws NotFoundError.
 */
export async function makeVariants(store: Store, id: string, order: VariantOrder): Promise<MadeItems> {
	const { item } = await store.items.get(id, order.version);
	const { family, items, reason } = variantsLike(item, order.count, order.seed ?? '1');
	const problems: readonly Problem[] =
		reason === undefined ? [] : [{ code: 'variants-short', path: '/count', message: reason }];
	return { ...(family === undefined ? {} : { family }), items: await keepItems(store, items, order), problems };
}

async function keepItems(
	store: Store | undefined,
	items: readonly Item[],
	{ keep = false, approve = false }: Pick<MakeOrder, 'keep' | 'approve'>,
): Promise<MadeItems['items']> {
	if (!keep || store === undefined) return items.map((item) => ({ item }));
	const named = items.map((item) => ({ id: idOf(item), item }));
	const present = new Set(
		(await store.items.getMany(named.map(({ id }) => ({ id, version: 1 })))).map((record) => record.id),
	);
	const fresh = named.filter(({ id }) => !present.has(id));
	if (fresh.length > 0) await store.items.createMany(fresh, approve ? 'approved' : 'draft');
	return named.map(({ id, item }) => ({ id, isNew: !present.has(id), item }));
}

/** Family, seed and, where the parameters are not the usual ones, a mark of them: the same for the same item. */
export function idOf({ name, origin }: Item): string {
	const { family, version, seed, parameters } = origin ?? { family: 'item', version: 1, seed: name, parameters: {} };
	const mark = hash(JSON.stringify([family, version, seed, parameters]));
	const words = seed.toLowerCase().replace(/[^a-z0-9]+/g, '-');
	return `${family.slice(0, 28)}-${words.slice(0, 20)}-${mark}`.replace(/-{2,}/g, '-');
}

/** FNV-1a over the text, twice with different starts: 13 letters and digits. */
function hash(text: string): string {
	return [0x811c9dc5, 0x050c5d1f].map((start) => fold(text, start).toString(36).padStart(7, '0').slice(-7)).join('');
}

function fold(text: string, start: number): number {
	let value = start;
	for (let index = 0; index < text.length; index += 1) {
		value = Math.imul(value ^ text.charCodeAt(index), 0x01000193) >>> 0;
	}
	return value;
}
