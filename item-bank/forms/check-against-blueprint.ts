import type { ItemRecord } from '../items/record.ts';
import type { Blueprint, Form, Shortfall } from '../types.ts';
import { pointsAt, positionsOf } from './check-form.ts';
import { compareForms, type FindItem } from './compare-forms.ts';
import { groupRules, groupsAmong } from './item-groups.ts';
import { type ItemTraits, traitsOf } from './item-traits.ts';
import { orderBreaches } from './order-breaches.ts';
import { requirementsOf, requirementWords, sectionTests } from './requirements.ts';

interface Placed {
	readonly traits: ItemTraits;
	readonly section: number;
}

/**
 * Where one form falls short of a blueprint: every range, section, sharing and order rule, anchors and forbidden items. It
 * counts the form itself and trusts no solver. What depends on use (days since given) or on other forms is not seen here.
 */
export function checkAgainstBlueprint(form: Form, findItem: FindItem, blueprint: Blueprint): readonly Shortfall[] {
	const placed = placedItems(form, findItem, blueprint);
	return [
		...unknownItems(form, findItem),
		...checkRanges(placed, blueprint),
		...checkSections(placed, form, blueprint),
		...checkItems(placed, blueprint),
		...checkGroups(placed, blueprint),
		...checkOrder(placed, blueprint),
	];
}

/**
 * Where forms built together fall short: each by itself, then items on two forms that are no anchors, anchors at different
 * places, differences beyond the bands, and forced items that are missing.
 */
export function checkTogether(forms: readonly Form[], findItem: FindItem, blueprint: Blueprint): readonly Shortfall[] {
	const single = forms.flatMap((form, index) =>
		checkAgainstBlueprint(form, findItem, blueprint).map((shortfall) => ({ form: index + 1, ...shortfall })),
	);
	const report = compareForms(forms, findItem, blueprint, blueprint);
	const anchors = new Set((blueprint.anchors ?? []).map(({ item }) => item));
	const shared = report.shared.filter((id) => !anchors.has(id));
	const uneven = report.rows.filter(({ difference, allowed }) => allowed !== undefined && difference > allowed);
	return [
		...single,
		...shared.map((id) => ({
			path: '',
			requirement: 'no item may stand on two forms',
			found: `"${id}" on more than one`,
		})),
		...[...anchors]
			.filter((id) => !isAtOnePlace(id, forms))
			.map((id) => ({
				path: '/anchors',
				requirement: `anchor "${id}" has to stand at the same place on every form`,
				found: placesOf(id, forms)
					.map((place) => place ?? 'none')
					.join(', '),
			})),
		...uneven.map(({ group, label, values, allowed }) => ({
			path: `/parallel/${group}`,
			requirement: `${label}: forms may differ by at most ${allowed}`,
			found: values.join(' and '),
		})),
		...missingForced(forms, blueprint),
	];
}

function placedItems(form: Form, findItem: FindItem, blueprint: Blueprint): readonly Placed[] {
	return positionsOf(form).flatMap(({ entry, sectionIndex }) => {
		const item: ItemRecord['item'] | undefined = findItem(entry.item, entry.version);
		if (!item) return [];
		const record = { id: entry.item, version: entry.version, item };
		const traits = traitsOf(record, blueprint.framework, blueprint.edition, pointsAt(entry, item));
		return [{ traits, section: sectionIndex }];
	});
}

function unknownItems(form: Form, findItem: FindItem): readonly Shortfall[] {
	return positionsOf(form)
		.filter(({ entry }) => findItem(entry.item, entry.version) === undefined)
		.map(({ entry }) => ({
			path: '',
			requirement: 'every item has to be in the bank',
			found: `"${entry.item}" version ${entry.version} is not`,
		}));
}

function checkRanges(placed: readonly Placed[], blueprint: Blueprint): readonly Shortfall[] {
	return requirementsOf(blueprint).flatMap((requirement) => {
		const sum = placed.reduce((total, { traits, section }) => total + requirement.worth(traits, section), 0);
		if (sum >= (requirement.min ?? -Infinity) && sum <= (requirement.max ?? Infinity)) return [];
		const found = requirement.unit === 'mean' ? meanWords(placed) : `${sum} ${requirement.unit}`;
		return [{ path: requirement.path, requirement: requirementWords(requirement), found }];
	});
}

function meanWords(placed: readonly Placed[]): string {
	const sum = placed.reduce((total, { traits }) => total + traits.difficulty, 0);
	return `a mean of ${placed.length === 0 ? 0 : Math.round((sum / placed.length) * 100) / 100}`;
}

function checkSections(placed: readonly Placed[], form: Form, blueprint: Blueprint): readonly Shortfall[] {
	const admits = sectionTests(blueprint);
	const titles = form.sections.map(({ title }) => title);
	const planned = blueprint.sections.map(({ title }) => title);
	const isAsPlanned = titles.length === planned.length && titles.every((title, index) => title === planned[index]);
	const wrong: readonly Shortfall[] = isAsPlanned
		? []
		: [
				{
					path: '/sections',
					requirement: `needs the sections ${planned.join(', ')} in this order`,
					found: titles.join(', '),
				},
			];
	const misplaced = placed.flatMap(({ traits, section }) => {
		const title = blueprint.sections[section]?.title;
		if (title === undefined || admits[section]?.(traits)) return [];
		const requirement = `section "${title}" takes only what its standards, models, kinds and shapes admit`;
		return [{ path: `/sections/${section}`, requirement, found: `"${traits.id}"` }];
	});
	return [...wrong, ...misplaced];
}

function checkItems(placed: readonly Placed[], blueprint: Blueprint): readonly Shortfall[] {
	const ids = new Set(placed.map(({ traits }) => traits.id));
	const missing = (blueprint.anchors ?? []).flatMap(({ item, section }, index) => {
		const at = placed.find(({ traits }) => traits.id === item);
		if (at && (section === undefined || at.section === section - 1)) return [];
		const where = section === undefined ? 'on the form' : `in section ${section}`;
		return [
			{
				path: `/anchors/${index}`,
				requirement: `anchor "${item}" has to be ${where}`,
				found: at ? `in section ${at.section + 1}` : 'it is not',
			},
		];
	});
	const forbidden = (blueprint.forbidden ?? []).flatMap(({ item }, index) =>
		ids.has(item)
			? [{ path: `/forbidden/${index}`, requirement: `"${item}" is forbidden`, found: 'it is on the form' }]
			: [],
	);
	const most = blueprint.readingLoad?.mostPerItem;
	const long = placed.flatMap(({ traits }) =>
		most !== undefined && traits.reading > most
			? [
					{
						path: '/readingLoad/mostPerItem',
						requirement: `at most ${most} words in one item`,
						found: `${traits.reading} in "${traits.id}"`,
					},
				]
			: [],
	);
	return [...missing, ...forbidden, ...long];
}

function checkGroups(placed: readonly Placed[], blueprint: Blueprint): readonly Shortfall[] {
	const items = placed.map(({ traits }) => traits);
	return groupsAmong(items, groupRules(blueprint)).map(({ rule, name, members }) => ({
		path: rule.path,
		requirement: rule.words,
		found: `${members.length} share ${rule.describe(name)}: ${members.map((at) => items[at]?.id).join(', ')}`,
	}));
}

function checkOrder(placed: readonly Placed[], blueprint: Blueprint): readonly Shortfall[] {
	const sections = blueprint.sections.map((_, index) =>
		placed.filter(({ section }) => section === index).map(({ traits }) => traits),
	);
	const anchors = new Set((blueprint.anchors ?? []).map(({ item }) => item));
	return orderBreaches(sections, blueprint.order ?? {}, anchors).map(({ rule, position }) =>
		rule === 'within'
			? {
					path: '/order/within',
					requirement: 'easier items stand before harder ones in each section',
					found: `the item at place ${position} is easier than one before it`,
				}
			: {
					path: '/order/sameAnswerInARow',
					requirement: `at most ${blueprint.order?.sameAnswerInARow} in a row may have the same answer`,
					found: `one more at place ${position}`,
				},
	);
}

function placesOf(id: string, forms: readonly Form[]): readonly (number | undefined)[] {
	return forms.map((form) => positionsOf(form).find(({ entry }) => entry.item === id)?.position);
}

function isAtOnePlace(id: string, forms: readonly Form[]): boolean {
	const [first, ...others] = placesOf(id, forms);
	return others.every((place) => place === first);
}

function missingForced(forms: readonly Form[], blueprint: Blueprint): readonly Shortfall[] {
	const holds = forms.map((form) => new Set(positionsOf(form).map(({ entry }) => entry.item)));
	return (blueprint.forced ?? []).flatMap(({ item, form }, index) => {
		const isThere = form === undefined ? holds.some((ids) => ids.has(item)) : holds[form - 1]?.has(item);
		if (isThere) return [];
		const where = form === undefined ? 'one of the forms' : `form ${form}`;
		return [{ path: `/forced/${index}`, requirement: `"${item}" has to be on ${where}`, found: 'it is not' }];
	});
}
