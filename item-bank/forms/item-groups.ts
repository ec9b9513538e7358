import type { Blueprint } from '../types.ts';
import type { ItemTraits } from './item-traits.ts';
import { count } from './requirements.ts';

/** A rule of a blueprint about how many items of one form may share something. */
export interface GroupRule {
	/** JSON pointer into the blueprint, and the name of the requirement. */
	readonly path: string;
	/** The rule in words. */
	readonly words: string;
	/** Most items of one group on a form. */
	readonly most: number;
	/** Names of the groups an item is in. */
	readonly groupsOf: (item: ItemTraits) => readonly string[];
	/** A group in words, such as: the answer −8. */
	readonly describe: (group: string) => string;
}

/** The rules a blueprint sets on what items of one form share, in document order. */
export function groupRules({ exclusions = {} }: Blueprint): readonly GroupRule[] {
	const { settingMost, answerMost, numbersMost, keyPlaceMost, likeMost, giveaways } = exclusions;
	return [
		...rule(
			'/exclusions/settingMost',
			settingMost,
			'in one setting',
			({ setting }) => setting,
			(group) => `the setting ${group}`,
		),
		...rule(
			'/exclusions/answerMost',
			answerMost,
			'with the same answer',
			({ answer }) => answer,
			(group) => `the answer ${group}`,
		),
		...rule(
			'/exclusions/numbersMost',
			numbersMost,
			'with the same numbers',
			({ numbers }) => numbers,
			(group) => `the numbers ${group}`,
		),
		...rule(
			'/exclusions/keyPlaceMost',
			keyPlaceMost,
			'with the key at the same option',
			({ keyPlace }) => (keyPlace === undefined ? undefined : 'ABCDEFGH'[keyPlace]),
			(group) => `the key at option ${group}`,
		),
		...rule(
			'/exclusions/likeMost',
			likeMost,
			'of one sort',
			({ standard, model, kind, dok, role, shape }) =>
				[standard, model, kind, `DOK ${dok}`, role, shape].filter(Boolean).join(', '),
			(group) => `the sort ${group}`,
		),
		...(giveaways === true
			? [
					{
						path: '/exclusions/giveaways',
						words: 'no two items of a form may give each other away',
						most: 1,
						groupsOf: ({ facts }: ItemTraits) => facts,
						describe: () => 'the same fact of arithmetic',
					},
				]
			: []),
	];
}

/** A group of items that no form may hold more of than the rule allows. */
export interface ItemGroup {
	readonly rule: GroupRule;
	readonly name: string;
	/** Places in the list of items, ascending. */
	readonly members: readonly number[];
}

/** The groups of a list of items that could be broken: those with more members than their rule allows. */
export function groupsAmong(items: readonly ItemTraits[], rules: readonly GroupRule[]): readonly ItemGroup[] {
	return rules.flatMap((rule) => {
		const groups = new Map<string, number[]>();
		items.forEach((item, index) => {
			for (const name of rule.groupsOf(item)) {
				const members = groups.get(name);
				if (members) members.push(index);
				else groups.set(name, [index]);
			}
		});
		return [...groups]
			.filter(([, members]) => members.length > rule.most)
			.map(([name, members]) => ({ rule, name, members }));
	});
}

function rule(
	path: string,
	most: number | undefined,
	shared: string,
	nameOf: (item: ItemTraits) => string | undefined,
	describe: (group: string) => string,
): readonly GroupRule[] {
	if (most === undefined) return [];
	const groupsOf = (item: ItemTraits): readonly string[] => {
		const name = nameOf(item);
		return name === undefined ? [] : [name];
	};
	return [{ path, words: `at most ${count(most, 'item')} of a form ${shared}`, most, groupsOf, describe }];
}
