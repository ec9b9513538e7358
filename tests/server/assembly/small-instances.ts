import { checkBlueprint } from '../../../item-bank/forms/check-blueprint.ts';
import { groupRules } from '../../../item-bank/forms/item-groups.ts';
import { type ItemTraits, traitsOf } from '../../../item-bank/forms/item-traits.ts';
import { measuresOf } from '../../../item-bank/forms/measures.ts';
import { requirementsOf, sectionTests } from '../../../item-bank/forms/requirements.ts';
import type { ItemRecord } from '../../../item-bank/items/record.ts';
import { createRandom, type Random } from '../../../item-bank/random/random.ts';
import type { Blueprint, Item, Range } from '../../../item-bank/types.ts';
import type { BuildRequest } from '../../../server/assembly/build-request.ts';
import { alignTo, choiceItem, griddedItem } from '../../helpers/sample-items.ts';

const codes = ['7.NS.A.1b', '7.NS.A.1c', '7.NS.A.2a'];

/** A request over six to eight items with random ranges, bands, rules, anchors and forced items: many cannot be met. */
export function smallRequest(seed: number): BuildRequest {
	const random = createRandom(`small ${seed}`);
	let request = drawRequest(random, seed);
	// Plans that contradict themselves are refused before any search.
	while (checkBlueprint(request.blueprint).length > 0) request = drawRequest(random, seed);
	return request;
}

function drawRequest(random: Random, seed: number): BuildRequest {
	const count = random.nextInteger(1, 2);
	const pool = Array.from({ length: random.nextInteger(6, 8) }, (_, index) =>
		record(`item-${index}`, smallItem(random)),
	);
	const size = random.nextInteger(1, Math.max(1, Math.floor(pool.length / count) - 1));
	const perhaps = <T>(chance: number, make: () => T): T | undefined =>
		random.nextInteger(1, 100) <= chance ? make() : undefined;
	const anchors = perhaps(15, () => [{ item: 'item-0' }]);
	const forced = perhaps(15, () => [{ item: 'item-1', ...(random.nextInteger(0, 1) === 0 ? {} : { form: count }) }]);
	const points = perhaps(30, () => range(random, size, size * 2));
	const dok = perhaps(40, () => [{ dok: 1, items: range(random, 0, size) }]);
	const difficulty = perhaps(40, () => ({
		target: random.nextInteger(20, 60) / 10,
		band: random.nextInteger(5, 20) / 10,
	}));
	const parallel = perhaps(40, () => ({
		points: random.nextInteger(0, 1),
		difficulty: random.nextInteger(0, 3),
		dok: 1,
	}));
	const exclusions = perhaps(50, () => ({
		answerMost: 1,
		numbersMost: random.nextInteger(1, 2),
		giveaways: random.nextInteger(0, 1) === 0,
		settingMost: random.nextInteger(1, 2),
		likeMost: random.nextInteger(1, 2),
	}));
	const sections: Blueprint['sections'] =
		random.nextInteger(0, 2) === 0
			? [
					{ title: 'First', kinds: ['gridded'], items: { min: 0, max: size } },
					{ title: 'Second', items: { min: 0, max: size } },
				]
			: [{ title: 'All', items: { min: 0, max: size } }];
	const blueprint: Blueprint = {
		title: `Small ${seed}`,
		framework: 'ccss-m',
		edition: '2010',
		gridProfile: 'plain-sign-first',
		items: { min: random.nextInteger(Math.max(1, size - 1), size), max: size },
		cells: codes
			.slice(0, random.nextInteger(0, 2))
			.map((standard) => ({ standard, items: range(random, 0, Math.min(2, size)) })),
		sections,
		...(points && { points }),
		...(dok && { dok }),
		...(difficulty && { difficulty }),
		...(parallel && { parallel }),
		...(exclusions && { exclusions }),
		...(anchors && { anchors }),
		...(forced && { forced }),
	};
	return { blueprint, pool, count, seed, limits: { nodes: 20_000, iterations: 2_000_000 } };
}

function record(id: string, item: Item): ItemRecord {
	return { id, version: 1, status: 'approved', item };
}

function range(random: Random, low: number, high: number): Range {
	const min = random.nextInteger(low, high);
	return { min, max: random.nextInteger(min, high) };
}

function smallItem(random: Random): Item {
	const [a, b] = [random.nextInteger(-9, 9), random.nextInteger(-9, -1)];
	const expression = `${a} ${random.pick(['+', '-', '×'])} (${b})`;
	const common = {
		points: random.nextInteger(1, 2),
		dok: random.nextInteger(1, 2),
		alignments: [alignTo(random.pick(codes))],
	};
	const stem = [{ kind: 'paragraph' as const, text: `What is \`${expression}\`?` }];
	return random.nextInteger(0, 2) > 0
		? griddedItem({ ...common, stem, expression })
		: choiceItem({ ...common, stem, rule: { kind: 'same-value', expression: '-4 - 9' } });
}

/**
 * The least unevenness over every way to put the items on the forms and sections, tried one by one; undefined when no way keeps
 * the blueprint. Items named as shared may stand on several forms. It sums worths itself and shares nothing with the programs but the meaning of requirements and measures.
 */
export function tryAll(request: BuildRequest, shared: readonly string[] = []): number | undefined {
	const { blueprint, count } = request;
	const traits = request.pool.map((one) => traitsOf(one, blueprint.framework, blueprint.edition));
	const admits = sectionTests(blueprint);
	const anchors = new Set((blueprint.anchors ?? []).map(({ item }) => item));
	const places: { form: number; section: number }[][] = traits.map(() => []);
	let least: number | undefined;
	const put = (index: number): void => {
		const item = traits[index];
		if (!item) {
			const cost = costOfWay(request, traits, places);
			if (cost !== undefined && (least === undefined || cost < least)) least = cost;
			return;
		}
		const sections = admits.flatMap((test, section) => (test(item) ? [section] : []));
		if (anchors.has(item.id)) {
			places[index] = sections
				.slice(0, 1)
				.flatMap((section) => Array.from({ length: count }, (_, form) => ({ form, section })));
			put(index + 1);
			return;
		}
		if (shared.includes(item.id)) {
			putShared(index, sections, 0, []);
			return;
		}
		places[index] = [];
		put(index + 1);
		for (let form = 0; form < count; form += 1) {
			for (const section of sections) {
				places[index] = [{ form, section }];
				put(index + 1);
			}
		}
		places[index] = [];
	};
	const putShared = (
		index: number,
		sections: readonly number[],
		form: number,
		chosen: (typeof places)[number],
	): void => {
		if (form === count) {
			places[index] = chosen;
			put(index + 1);
			return;
		}
		putShared(index, sections, form + 1, chosen);
		for (const section of sections) putShared(index, sections, form + 1, [...chosen, { form, section }]);
	};
	put(0);
	return least;
}

function costOfWay(
	{ blueprint, count }: BuildRequest,
	traits: readonly ItemTraits[],
	places: readonly (readonly { readonly form: number; readonly section: number }[])[],
): number | undefined {
	const forms = Array.from({ length: count }, (_, form) =>
		traits.flatMap((item, index) =>
			(places[index] ?? []).filter((place) => place.form === form).map(({ section }) => ({ item, section })),
		),
	);
	const most = blueprint.items.max ?? 0;
	if (forms.some((form) => form.length > most || form.length < (blueprint.items.min ?? 0))) return undefined;
	const sums = (worth: (item: ItemTraits, section: number) => number): readonly number[] =>
		forms.map((form) => form.reduce((sum, { item, section }) => sum + worth(item, section), 0));
	for (const { min = -Infinity, max = Infinity, worth } of requirementsOf(blueprint)) {
		if (sums(worth).some((sum) => sum < min || sum > max)) return undefined;
	}
	const sizes = blueprint.sections.map((_, at) => sums((_item, section) => (section === at ? 1 : 0)));
	if (sizes.some((perForm) => new Set(perForm).size > 1)) return undefined;
	for (const rule of groupRules(blueprint)) {
		for (const form of forms) {
			const groups = form.flatMap(({ item }) => rule.groupsOf(item));
			if (groups.some((group) => groups.filter((other) => other === group).length > rule.most)) return undefined;
		}
	}
	for (const { item, form } of blueprint.forced ?? []) {
		const on = forms.flatMap((placed, index) => (placed.some((one) => one.item.id === item) ? [index + 1] : []));
		if (on.length === 0 || (form !== undefined && !on.includes(form))) return undefined;
	}
	let cost = 0;
	if (count > 1) {
		for (const { band = Infinity, weight, worth } of measuresOf(traits, blueprint)) {
			const values = sums(worth);
			const apart = Math.max(...values) - Math.min(...values);
			if (apart > band) return undefined;
			cost += weight * apart;
		}
	}
	const target = blueprint.difficulty && Math.round(blueprint.difficulty.target * 10);
	if (target !== undefined)
		for (const sum of sums(({ difficulty }) => 10 * difficulty - target)) cost += Math.floor(Math.abs(sum) / 10);
	return Math.round(cost);
}

/** The request with only the requirements of these paths: ranges, bands, rules, anchors and forced items of other paths are dropped. */
export function keepOnly(request: BuildRequest, paths: readonly string[]): BuildRequest {
	const { blueprint } = request;
	const isKept = (path: string): boolean => paths.includes(path);
	const { anchors, difficulty, dok, exclusions, forced, parallel, points, ...rest } = blueprint;
	const keptEntries = <T extends object>(name: string, value: T): T =>
		Object.fromEntries(Object.entries(value).filter(([key]) => isKept(`/${name}/${key}`))) as T;
	const huge = { min: 0, max: 99 };
	return {
		...request,
		blueprint: {
			...rest,
			items: isKept('/items') ? blueprint.items : huge,
			cells: blueprint.cells.map((cell, index) => (isKept(`/cells/${index}/items`) ? cell : { ...cell, items: huge })),
			sections: blueprint.sections.map((section, index) =>
				isKept(`/sections/${index}/items`) ? section : { ...section, items: huge },
			),
			...(points && isKept('/points') && { points }),
			...(dok && isKept('/dok/0/items') && { dok }),
			...(difficulty && isKept('/difficulty') && { difficulty }),
			...(parallel && { parallel: keptEntries('parallel', parallel) }),
			...(exclusions && { exclusions: keptEntries('exclusions', exclusions) }),
			...(anchors && isKept('/anchors') && { anchors }),
			...(forced && isKept('/forced/0') && { forced }),
		},
	};
}
