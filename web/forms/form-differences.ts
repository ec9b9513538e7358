import { positionsOf } from '../../item-bank/forms/check-form.ts';
import type { Form, FormItem } from '../../item-bank/types.ts';

/** What one form has and another has not, item by item. */
export interface FormDifferences {
	/** Items that only the second has, in its order. */
	readonly added: readonly FormItem[];
	/** Items that only the first has, in its order. */
	readonly removed: readonly FormItem[];
	/** Ids on both that follow another item or stand in another section. */
	readonly moved: readonly string[];
	/** Ids on both in another version or with other points. */
	readonly changed: readonly string[];
	readonly title: boolean;
	readonly gridProfile: boolean;
	/** Whether titles or order of the sections differ. */
	readonly sections: boolean;
}

/** Compares two states of a form, such as what somebody else saved and what is on the desk. */
export function compareStates(first: Form, second: Form): FormDifferences {
	const before = new Map(positionsOf(first).map((place) => [place.entry.item, place]));
	const after = new Map(positionsOf(second).map((place) => [place.entry.item, place]));
	const both = [...after.keys()].filter((id) => before.has(id));
	const stays = longestKept(
		[...before.keys()].filter((id) => after.has(id)),
		both,
	);
	const sectionOf = (form: Form, index: number | undefined) => form.sections[index ?? -1]?.title;
	return {
		added: [...after.values()].filter(({ entry }) => !before.has(entry.item)).map(({ entry }) => entry),
		removed: [...before.values()].filter(({ entry }) => !after.has(entry.item)).map(({ entry }) => entry),
		moved: both.filter(
			(id) =>
				!stays.has(id) ||
				sectionOf(first, before.get(id)?.sectionIndex) !== sectionOf(second, after.get(id)?.sectionIndex),
		),
		changed: both.filter((id) => {
			const [old, now] = [before.get(id)?.entry, after.get(id)?.entry];
			return old?.version !== now?.version || old?.points !== now?.points;
		}),
		title: first.title !== second.title,
		gridProfile: first.gridProfile !== second.gridProfile,
		sections:
			first.sections.map(({ title }) => title).join('\n') !== second.sections.map(({ title }) => title).join('\n'),
	};
}

/** The most entries that stand in the same order in both lists, so that as few as possible count as moved. */
function longestKept(first: readonly string[], second: readonly string[]): ReadonlySet<string> {
	const at = new Map(first.map((id, index) => [id, index]));
	const chains: (readonly string[])[] = [];
	for (const id of second) {
		const place = at.get(id) ?? -1;
		const best = chains
			.filter((chain) => (at.get(chain.at(-1) ?? '') ?? -1) < place)
			.reduce<readonly string[]>((longest, chain) => (chain.length > longest.length ? chain : longest), []);
		chains.push([...best, id]);
	}
	return new Set(
		chains.reduce<readonly string[]>((longest, chain) => (chain.length > longest.length ? chain : longest), []),
	);
}
