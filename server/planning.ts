import type { FindItem, ReportScope } from '../item-bank/forms/compare-forms.ts';
import { compareForms } from '../item-bank/forms/compare-forms.ts';
import { type SwapOffer, swapItem, withItem } from '../item-bank/forms/swap-item.ts';
import type { FormRecord, ItemRecord } from '../item-bank/items/record.ts';
import type { BalanceReport, Blueprint, BuildAnswer, Form } from '../item-bank/types.ts';
import { buildForms } from './assembly/build-forms.ts';
import type { BuildProgress } from './assembly/build-request.ts';
import { describeBuild } from './assembly/describe-build.ts';
import { makeMissing } from './missing-families.ts';
import {
	BuildCancelledError,
	ItemNotApprovedError,
	OrderContradictoryError,
	PositionUnknownError,
} from './planning-errors.ts';
import type { Store } from './store/open-store.ts';
import { IdTakenError } from './store/store-errors.ts';

/** What forms are wanted of a bank. */
export interface BuildWish {
	readonly blueprint: Blueprint;
	/** 1 to 4. */
	readonly count: number;
	readonly seed: string;
	/** Id of a form the new ones are to be like; its items are not used again. */
	readonly like?: string | undefined;
	/** Whether to keep the forms. */
	readonly keep: boolean;
	/** Ids of the kept forms, one for each; the bank's when left out. */
	readonly ids?: readonly string[] | undefined;
	/** Titles of the forms, one for each; the blueprint's with a letter when left out. */
	readonly titles?: readonly string[] | undefined;
	/** YYYY-MM-DD, for exclusions by days. */
	readonly today: string;
	/** Whether to make what a plan lacks from families, and try again; made items come into the bank with the forms. */
	readonly makeMissing?: boolean | undefined;
}

/** Times that missing items are made: what was made may be excluded by a rule that the count of missing items does not see. */
const mostRounds = 3;

/** What came of a wish. */
export interface BuildOutcome {
	readonly answer: BuildAnswer;
	/** Ids of the forms kept. */
	readonly kept: readonly string[];
	/** Items made because the bank lacked them, approved and in the bank where the forms are kept. */
	readonly made: readonly { readonly id: string; readonly name: string }[];
	/** The answer as plain text. */
	readonly lines: string;
}

/**
 * Builds forms from the approved items of a bank, knowing where each was given. Keeps all forms or none. Throws
 * {@link OrderContradictoryError}, {@link BuildCancelledError} and what buildForms and the store throw.
 */
export async function buildFromBank(
	store: Store,
	wish: BuildWish,
	options: { readonly onProgress?: (progress: BuildProgress) => void; readonly signal?: AbortSignal } = {},
): Promise<BuildOutcome> {
	const { blueprint, count, seed, keep, ids, titles, today } = wish;
	await refuseUnkeepable(store, wish);
	const pool = await store.items.approved();
	const named = await Promise.all((blueprint.exclusions?.notOnForms ?? []).map((id) => store.forms.get(id)));
	const like = wish.like === undefined ? undefined : (await store.forms.get(wish.like)).record.form;
	const otherForms = named.map(({ record, items }) => ({
		id: record.id,
		title: record.form.title,
		items: items.map(({ id }) => id),
	}));
	const uses = await store.forms.uses();
	const request = { blueprint, count, seed, today, uses, otherForms, ...(like ? { like } : {}) };
	const tryBuild = (items: readonly ItemRecord[]): Promise<BuildAnswer> =>
		stopWith(options.signal, buildForms({ ...request, pool: items }, options));
	const made: ItemRecord[] = [];
	let found = await tryBuild(pool);
	for (let round = 0; wish.makeMissing === true && round < mostRounds; round += 1) {
		if (found.kind !== 'impossible' || found.missing.length === 0) break;
		const { records } = makeMissing(found.missing, blueprint, [...pool, ...made], `${seed} ${round}`);
		if (records.length === 0) break;
		made.push(...records);
		found = await tryBuild([...pool, ...made]);
	}
	const answer = giveTitles(found, titles);
	const used = answer.kind === 'built' ? keepUsed(made, answer.forms) : [];
	const forms = keep && answer.kind === 'built' ? answer.forms : [];
	if (options.signal?.aborted) throw new BuildCancelledError(options.signal.reason);
	const known = new Set((await store.items.getMany(used)).map(({ id }) => id));
	const fresh = used.filter(({ id }) => !known.has(id));
	if (forms.length > 0 && fresh.length > 0) await store.items.createMany(fresh, 'approved');
	const kept = await store.forms.createMany(
		forms.map((form, index) => {
			const id = ids?.[index];
			return id === undefined ? { form } : { id, form };
		}),
	);
	return {
		answer,
		kept: kept.map(({ id }) => id),
		made: used.map(({ id, item }) => ({ id, name: item.name })),
		lines: describeBuild(answer, finderOf([...pool, ...made]), scopeOf(blueprint)),
	};
}

/** The made items that stand on the forms. */
function keepUsed(made: readonly ItemRecord[], forms: readonly Form[]): readonly ItemRecord[] {
	const wanted = new Set(
		forms.flatMap(({ sections }) => sections.flatMap(({ items }) => items.map(({ item }) => item))),
	);
	return made.filter(({ id }) => wanted.has(id));
}

/** Refuses before the search what could only be refused after it. */
async function refuseUnkeepable(store: Store, { count, keep, ids, titles }: BuildWish): Promise<void> {
	for (const [name, list] of Object.entries({ ids, titles })) {
		if (list && list.length !== count)
			throw new OrderContradictoryError(`expected ${name} for ${count}, the number of forms, found ${list.length}`);
	}
	if (ids && !keep) throw new OrderContradictoryError('expected ids only with keep, found ids for forms not kept');
	if (!ids) return;
	const known = new Set((await store.forms.list()).map(({ id }) => id));
	const taken = ids.find((id) => known.has(id));
	if (taken !== undefined) throw new IdTakenError('form', taken);
}

async function stopWith<T>(signal: AbortSignal | undefined, work: Promise<T>): Promise<T> {
	try {
		return await work;
	} catch (error) {
		throw signal?.aborted && error === signal.reason ? new BuildCancelledError(error) : error;
	}
}

/** The answer with other titles on its forms, also where it compares them. */
function giveTitles(answer: BuildAnswer, titles: readonly string[] | undefined): BuildAnswer {
	if (!titles || answer.kind !== 'built') return answer;
	const given = new Map(answer.forms.map(({ title }, index) => [title, titles[index] ?? title]));
	const forms = answer.forms.map((form) => ({ ...form, title: given.get(form.title) ?? form.title }));
	const balance = { ...answer.balance, forms: answer.balance.forms.map((title) => given.get(title) ?? title) };
	return { ...answer, forms, balance };
}

/** How two forms of the bank compare, standards counted in the main framework of the first. Throws NotFoundError. */
export async function compareInBank(store: Store, first: string, second: string): Promise<BalanceReport> {
	const [one, other] = [await store.forms.get(first), await store.forms.get(second)];
	const find = finderOf([...one.items, ...other.items]);
	return compareForms([one.record.form, other.record.form], find, mainScope(one.items));
}

/** The best items for one place of a form of the bank. Throws NotFoundError, {@link PositionUnknownError}. */
export async function findSwaps(
	store: Store,
	form: string,
	position: number,
	options: {
		readonly version?: number | undefined;
		readonly blueprint?: Blueprint | undefined;
		/** Forms whose items are not offered. */
		readonly notOnForms?: readonly string[] | undefined;
	} = {},
): Promise<readonly SwapOffer[]> {
	const { record, items } = await store.forms.get(form, options.version);
	if (position > items.length) throw new PositionUnknownError(form, position, items.length);
	const others = await Promise.all((options.notOnForms ?? []).map((id) => store.forms.get(id)));
	const avoid = new Set(others.flatMap((other) => other.items.map(({ id }) => id)));
	const approved = await store.items.approved();
	const known = new Set(approved.map(({ id, version }) => `${id} ${version}`));
	const pool = [...approved, ...items.filter(({ id, version }) => !known.has(`${id} ${version}`))];
	const { blueprint } = options;
	const scope = blueprint ? scopeOf(blueprint) : mainScope(items);
	return swapItem({ form: record.form, position, pool, scope, avoid, ...(blueprint ? { blueprint } : {}) });
}

/**
 * Keeps a new version of a form with the approved version of another item at one place. Throws NotFoundError,
 * VersionConflictError, ContentRefusedError, {@link PositionUnknownError}, {@link ItemNotApprovedError}.
 */
export async function takeSwap(
	store: Store,
	wish: {
		readonly form: string;
		/** The newest when left out; another is refused. */
		readonly version: number | undefined;
		readonly position: number;
		readonly item: string;
	},
): Promise<{ readonly record: FormRecord; readonly item: { readonly id: string; readonly version: number } }> {
	const { record, items } = await store.forms.get(wish.form, wish.version);
	if (wish.position > items.length) throw new PositionUnknownError(wish.form, wish.position, items.length);
	const { versions } = await store.items.history(wish.item);
	const approved = versions.find(({ status }) => status === 'approved');
	if (!approved) throw new ItemNotApprovedError(wish.item);
	const { version } = approved;
	const form = withItem(record.form, wish.position, { item: wish.item, version });
	return { record: await store.forms.revise(wish.form, record.version, form), item: { id: wish.item, version } };
}

/** In which framework a blueprint counts. */
export function scopeOf({ framework, edition }: Blueprint): ReportScope {
	return { framework, edition };
}

/** The framework in which most items of a form have their primary alignment; ties in the order of the form. */
export function mainScope(items: readonly ItemRecord[]): ReportScope {
	const counts = new Map<string, { readonly scope: ReportScope; count: number }>();
	for (const { item } of items) {
		const lead = item.alignments.find(({ primary }) => primary === true) ?? item.alignments[0];
		if (!lead) continue;
		const { framework, edition } = lead;
		const entry = counts.get(`${framework} ${edition}`) ?? { scope: { framework, edition }, count: 0 };
		entry.count += 1;
		counts.set(`${framework} ${edition}`, entry);
	}
	const [most] = [...counts.values()].sort((a, b) => b.count - a.count);
	return most?.scope ?? { framework: 'ccss-m', edition: '2010' };
}

/** A lookup over records. */
export function finderOf(records: readonly ItemRecord[]): FindItem {
	const items = new Map(records.map(({ id, version, item }) => [`${id} ${version}`, item]));
	return (id, version) => items.get(`${id} ${version}`);
}
