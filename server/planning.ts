import type { FindItem, ReportScope } from '../item-bank/forms/compare-forms.ts';
import { compareForms } from '../item-bank/forms/compare-forms.ts';
import { type SwapOffer, swapItem } from '../item-bank/forms/swap-item.ts';
import type { ItemRecord } from '../item-bank/items/record.ts';
import type { BalanceReport, Blueprint, BuildAnswer } from '../item-bank/types.ts';
import { buildForms } from './assembly/build-forms.ts';
import type { BuildProgress } from './assembly/build-request.ts';
import { describeBuild } from './assembly/describe-build.ts';
import type { Store } from './store/open-store.ts';

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
	/** YYYY-MM-DD, for exclusions by days. */
	readonly today: string;
}

/** What came of a wish. */
export interface BuildOutcome {
	readonly answer: BuildAnswer;
	/** Ids of the forms kept. */
	readonly kept: readonly string[];
	/** The answer as plain text. */
	readonly lines: string;
}

/**
 * Builds forms from the approved items of a bank, knowing where each was given. Throws what buildForms and the store throw;
 * nothing is kept unless all forms are.
 */
export async function buildFromBank(
	store: Store,
	wish: BuildWish,
	options: { readonly onProgress?: (progress: BuildProgress) => void; readonly signal?: AbortSignal } = {},
): Promise<BuildOutcome> {
	const { blueprint, count, seed, keep, today } = wish;
	const pool = await store.items.approved();
	const named = await Promise.all((blueprint.exclusions?.notOnForms ?? []).map((id) => store.forms.get(id)));
	const like = wish.like === undefined ? undefined : (await store.forms.get(wish.like)).record.form;
	const otherForms = named.map(({ record, items }) => ({
		id: record.id,
		title: record.form.title,
		items: items.map(({ id }) => id),
	}));
	const answer = await buildForms(
		{ blueprint, pool, count, seed, today, uses: await store.forms.uses(), otherForms, ...(like ? { like } : {}) },
		options,
	);
	const kept: string[] = [];
	if (keep && answer.kind === 'built') {
		for (const form of answer.forms) kept.push((await store.forms.create({ form })).id);
	}
	return { answer, kept, lines: describeBuild(answer, finderOf(pool), scopeOf(blueprint)) };
}

/** How two forms of the bank compare, standards counted in a framework. Throws NotFoundError. */
export async function compareInBank(store: Store, ids: readonly string[], scope: ReportScope): Promise<BalanceReport> {
	const details = await Promise.all(ids.map((id) => store.forms.get(id)));
	const find = finderOf(details.flatMap(({ items }) => items));
	return compareForms(
		details.map(({ record }) => record.form),
		find,
		scope,
	);
}

/** The best items for one place of a form of the bank. Throws NotFoundError. */
export async function findSwaps(
	store: Store,
	form: string,
	position: number,
	options: {
		readonly version?: number | undefined;
		readonly blueprint?: Blueprint | undefined;
		readonly scope: ReportScope;
	},
): Promise<readonly SwapOffer[]> {
	const { record, items } = await store.forms.get(form, options.version);
	const approved = await store.items.approved();
	const known = new Set(approved.map(({ id, version }) => `${id} ${version}`));
	const pool = [...approved, ...items.filter(({ id, version }) => !known.has(`${id} ${version}`))];
	const { blueprint } = options;
	const scope = blueprint ? scopeOf(blueprint) : options.scope;
	return swapItem({ form: record.form, position, pool, scope, ...(blueprint ? { blueprint } : {}) });
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
