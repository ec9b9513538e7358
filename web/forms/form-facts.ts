import { reviewForm } from '../../item-bank/checks/review-form.ts';
import { estimateDifficulty } from '../../item-bank/difficulty/estimate-difficulty.ts';
import { countWords } from '../../item-bank/difficulty/reading.ts';
import { answerOf, keyPlaceOf } from '../../item-bank/forms/asked.ts';
import { checkAgainstBlueprint } from '../../item-bank/forms/check-against-blueprint.ts';
import { maximumOf, positionsOf } from '../../item-bank/forms/check-form.ts';
import type { FindItem } from '../../item-bank/forms/compare-forms.ts';
import { traitsOf } from '../../item-bank/forms/item-traits.ts';
import { type Requirement, requirementsOf } from '../../item-bank/forms/requirements.ts';
import type { Blueprint, Form, Item, Shortfall } from '../../item-bank/types.ts';
import { minutesOfForm } from './time-estimate.ts';

/** One range of a blueprint and what the form has of it. */
export interface PlanLine {
	readonly path: string;
	readonly words: string;
	readonly unit: Requirement['unit'];
	readonly min: number | undefined;
	readonly max: number | undefined;
	readonly found: number;
	readonly isMet: boolean;
}

/** Something a person should look at, with the items it is about. */
export interface FormNote {
	readonly code: string;
	readonly message: string;
	/** Positions on the form, 1 for the first; the item at the end of the note's path. */
	readonly position: number | undefined;
}

/** What can be said of a form while it is put together. Nothing here tells the key of an item. */
export interface FormFacts {
	readonly items: number;
	readonly points: number;
	readonly minutes: { readonly from: number; readonly to: number };
	/** How many keys stand at each option, as far as the longest list of options goes. */
	readonly keyPlaces: readonly { readonly letter: string; readonly count: number }[];
	readonly signs: {
		readonly negative: number;
		readonly zero: number;
		readonly positive: number;
		readonly other: number;
	};
	/** Estimates in form order, 1 to 10. */
	readonly difficulty: readonly number[];
	readonly words: number;
	/** Most words in one item, and where. */
	readonly longest: { readonly words: number; readonly position: number } | undefined;
	readonly plan: readonly PlanLine[];
	/** What falls short of the blueprint beside its ranges: order, sections, exclusions, anchors. */
	readonly breaches: readonly Shortfall[];
	readonly notes: readonly FormNote[];
}

/** Computes the facts of a form. Items that are not found are left out of every sum. */
export function findFacts(form: Form, findItem: FindItem, blueprint?: Blueprint): FormFacts {
	const places = positionsOf(form).flatMap(({ entry, position }) => {
		const item = findItem(entry.item, entry.version);
		return item ? [{ item, position }] : [];
	});
	const items = places.map(({ item }) => item);
	const lengths = places.map(({ item, position }) => ({ words: countWords(item), position }));
	const plan = blueprint ? planLines(form, findItem, blueprint) : [];
	const ranges = new Set(plan.map(({ path }) => path));
	return {
		items: positionsOf(form).length,
		points: maximumOf(form, findItem),
		minutes: minutesOfForm(items),
		keyPlaces: countKeyPlaces(items),
		signs: countSigns(items),
		difficulty: items.map((item) => estimateDifficulty(item).score),
		words: lengths.reduce((sum, { words }) => sum + words, 0),
		longest: lengths.toSorted((a, b) => b.words - a.words)[0],
		plan,
		breaches: blueprint ? checkAgainstBlueprint(form, findItem, blueprint).filter(({ path }) => !ranges.has(path)) : [],
		notes: reviewForm(form, findItem).map(({ code, message, path }) => ({
			code,
			message,
			position: positionAt(form, path),
		})),
	};
}

/** Mean of numbers to tenths; undefined for none. */
export function meanOf(values: readonly number[]): number | undefined {
	if (values.length === 0) return undefined;
	return Math.round((values.reduce((sum, value) => sum + value, 0) / values.length) * 10) / 10;
}

function planLines(form: Form, findItem: FindItem, blueprint: Blueprint): readonly PlanLine[] {
	const placed = positionsOf(form).flatMap(({ entry, sectionIndex }) => {
		const item = findItem(entry.item, entry.version);
		if (!item) return [];
		const record = { id: entry.item, version: entry.version, item };
		const points = entry.points ?? item.points;
		return [{ traits: traitsOf(record, blueprint.framework, blueprint.edition, points), sectionIndex }];
	});
	const lines = requirementsOf(blueprint)
		.filter(({ unit }) => unit !== 'mean')
		.map(({ path, words, unit, min, max, worth }): PlanLine => {
			const found = placed.reduce((sum, { traits, sectionIndex }) => sum + worth(traits, sectionIndex), 0);
			return { path, words, unit, min, max, found, isMet: found >= (min ?? 0) && found <= (max ?? found) };
		});
	const { difficulty } = blueprint;
	if (!difficulty) return lines;
	const exact = placed.reduce((sum, { traits }) => sum + traits.difficulty, 0) / Math.max(1, placed.length);
	const [min, max] = [difficulty.target - difficulty.band, difficulty.target + difficulty.band];
	const mean: PlanLine = {
		path: '/difficulty',
		words: 'mean estimated difficulty',
		unit: 'mean',
		min,
		max,
		found: Math.round(exact * 100) / 100,
		isMet: exact >= min && exact <= max,
	};
	return [...lines, mean];
}

function countKeyPlaces(items: readonly Item[]): FormFacts['keyPlaces'] {
	const most = Math.max(0, ...items.map((item) => (item.kind === 'choice' ? item.options.length : 0)));
	const places = items.map(keyPlaceOf);
	return Array.from({ length: most }, (_unused, index) => ({
		letter: 'ABCDEFGH'.charAt(index),
		count: places.filter((place) => place === index).length,
	}));
}

function countSigns(items: readonly Item[]): FormFacts['signs'] {
	const answers = items.map((item) => answerOf(item)).map((answer) => (isInteger(answer) ? Number(answer) : undefined));
	const count = (test: (value: number | undefined) => boolean): number => answers.filter(test).length;
	return {
		negative: count((value) => value !== undefined && value < 0),
		zero: count((value) => value === 0),
		positive: count((value) => value !== undefined && value > 0),
		other: count((value) => value === undefined),
	};
}

function isInteger(answer: string | undefined): answer is string {
	return answer !== undefined && /^-?\d+$/.test(answer);
}

function positionAt(form: Form, path: string): number | undefined {
	const [, section, index] = /^\/sections\/(\d+)\/items\/(\d+)/.exec(path) ?? [];
	return positionsOf(form).find(
		({ sectionIndex, indexInSection }) => sectionIndex === Number(section) && indexInSection === Number(index),
	)?.position;
}
