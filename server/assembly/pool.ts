import { checkKeyFits } from '../../item-bank/checks/grid.ts';
import { type ItemTraits, traitsOf } from '../../item-bank/forms/item-traits.ts';
import { sectionTests } from '../../item-bank/forms/requirements.ts';
import type { ItemRecord } from '../../item-bank/items/record.ts';
import { findGridProfile } from '../../item-bank/responses/grid-profiles.ts';
import type { Blueprint } from '../../item-bank/types.ts';
import type { BuildRequest } from './build-request.ts';

/** Why an approved item may not be used: the rule of the blueprint and the reason in words. */
export interface Exclusion {
	/** JSON pointer into the blueprint; '/gridProfile' for keys that the form's grid cannot hold. */
	readonly path: string;
	readonly reason: string;
}

/** An approved item as a build sees it. */
export interface PoolItem {
	readonly traits: ItemTraits;
	/** Every reason against it; none for a usable item. */
	readonly exclusions: readonly Exclusion[];
	/** Sections it may stand in, 0-based. */
	readonly sections: readonly number[];
	/** How often it was given before. */
	readonly uses: number;
}

/** The approved items of a request, newest approved version of each id, by id; what is excluded says why. */
export function readPool(request: BuildRequest): readonly PoolItem[] {
	const { blueprint } = request;
	const admits = sectionTests(blueprint);
	const usesByItem = new Map<string, number>();
	for (const { item } of request.uses ?? []) usesByItem.set(item, (usesByItem.get(item) ?? 0) + 1);
	const reasons = exclusionsByItem(request);
	const profile = findGridProfile(blueprint.gridProfile);
	const most = blueprint.readingLoad?.mostPerItem;
	return newestApproved(request.pool).map((record) => {
		const traits = traitsOf(record, blueprint.framework, blueprint.edition);
		const exclusions = [...(reasons.get(record.id) ?? [])];
		if (most !== undefined && traits.reading > most) {
			exclusions.push({ path: '/readingLoad/mostPerItem', reason: `it has ${traits.reading} words to read` });
		}
		if (profile && checkKeyFits(record.item, profile, '').length > 0) {
			exclusions.push({ path: '/gridProfile', reason: `its key does not fit the grid ${profile.id}` });
		}
		const sections = admits.flatMap((isAdmitted, index) => (isAdmitted(traits) ? [index] : []));
		return { traits, exclusions, sections, uses: usesByItem.get(record.id) ?? 0 };
	});
}

function newestApproved(pool: readonly ItemRecord[]): readonly ItemRecord[] {
	const newest = new Map<string, ItemRecord>();
	for (const record of pool) {
		if (record.status !== 'approved') continue;
		const other = newest.get(record.id);
		if (!other || other.version < record.version) newest.set(record.id, record);
	}
	return [...newest.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}

function exclusionsByItem(request: BuildRequest): ReadonlyMap<string, readonly Exclusion[]> {
	const reasons = new Map<string, Exclusion[]>();
	const add = (item: string, path: string, reason: string): void => {
		const list = reasons.get(item);
		if (list) list.push({ path, reason });
		else reasons.set(item, [{ path, reason }]);
	};
	const named = namedItems(request.blueprint);
	for (const { item, form, date } of recentUses(request)) {
		if (!named.has(item)) add(item, '/exclusions/usedWithinDays', `${form} used it on ${dayWords(date)}`);
	}
	const wanted = request.blueprint.exclusions?.notOnForms ?? [];
	for (const form of (request.otherForms ?? []).filter(({ id }) => wanted.includes(id))) {
		for (const item of form.items) if (!named.has(item)) add(item, '/exclusions/notOnForms', `it is on ${form.title}`);
	}
	for (const section of request.like?.sections ?? []) {
		for (const { item } of section.items) if (!named.has(item)) add(item, '/like', `it is on ${request.like?.title}`);
	}
	for (const { item, reason } of request.blueprint.forbidden ?? []) {
		add(item, '/forbidden', reason === undefined ? 'the blueprint forbids it' : `the blueprint forbids it: ${reason}`);
	}
	return reasons;
}

/** Anchors and forced items are wanted by name: former use does not keep them out. */
function namedItems(blueprint: Blueprint): ReadonlySet<string> {
	return new Set([...(blueprint.anchors ?? []), ...(blueprint.forced ?? [])].map(({ item }) => item));
}

function recentUses(
	request: BuildRequest,
): readonly { readonly item: string; readonly form: string; readonly date: string }[] {
	const days = request.blueprint.exclusions?.usedWithinDays;
	if (days === undefined || request.today === undefined) return [];
	const today = Date.parse(request.today);
	return (request.uses ?? []).filter(({ date }) => {
		const since = (today - Date.parse(date)) / 86_400_000;
		return since <= days;
	});
}

const months = 'January February March April May June July August September October November December'.split(' ');

/** A date as people write it: 12 October 2026. */
function dayWords(date: string): string {
	const [year, month, day] = date.split('-');
	return `${Number(day)} ${months[Number(month) - 1]} ${year}`;
}
