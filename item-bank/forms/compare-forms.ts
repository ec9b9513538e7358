import type { ItemRecord } from '../items/record.ts';
import type { BalanceReport, BalanceRow, Blueprint, Form } from '../types.ts';
import { balanceOfRepresentation } from './balance-of-representation.ts';
import { pointsAt, positionsOf } from './check-form.ts';
import { type ItemTraits, traitsOf } from './item-traits.ts';
import { measuresOf } from './measures.ts';

/** Finds a version of an item, or undefined. */
export type FindItem = (id: string, version: number) => ItemRecord['item'] | undefined;

/** In which framework standards are counted. */
export interface ReportScope {
	readonly framework: string;
	readonly edition: string;
}

/**
 * How forms compare, whether built or made by hand: every measure with its value on each form, items they share, and how
 * evenly each represents its standards. Items that are not found are left out of the sums. With a blueprint, its bands stand
 * beside the differences.
 */
export function compareForms(
	forms: readonly Form[],
	findItem: FindItem,
	scope: ReportScope,
	blueprint?: Blueprint,
): BalanceReport {
	const traits = forms.map((form) => formTraits(form, findItem, scope));
	const rows = measuresOf(traits.flat(), blueprint).map((measure): BalanceRow => {
		const values = traits.map((items) => items.reduce((sum, item) => sum + measure.worth(item), 0));
		return {
			group: measure.group,
			label: measure.label,
			values,
			difference: Math.max(...values) - Math.min(...values),
			...(measure.band === undefined ? {} : { allowed: measure.band }),
		};
	});
	return {
		forms: forms.map(({ title }) => title),
		rows: [...rows, ...spreadRows(traits)],
		shared: sharedItems(forms),
		representation: traits.map((items) => balanceOfRepresentation(perStandard(items))),
	};
}

/** The traits of the items of a form in form order, with the points the form gives them. */
export function formTraits(form: Form, findItem: FindItem, scope: ReportScope): readonly ItemTraits[] {
	return positionsOf(form).flatMap(({ entry }) => {
		const item = findItem(entry.item, entry.version);
		if (!item) return [];
		const record = { id: entry.item, version: entry.version, item };
		return [traitsOf(record, scope.framework, scope.edition, pointsAt(entry, item))];
	});
}

/** Mean and standard deviation of the estimates, to hundredths. */
function spreadRows(traits: readonly (readonly ItemTraits[])[]): readonly BalanceRow[] {
	const means = traits.map((items) => mean(items.map(({ difficulty }) => difficulty)));
	const deviations = traits.map((items, form) => {
		const centre = means[form] ?? 0;
		return Math.sqrt(mean(items.map(({ difficulty }) => (difficulty - centre) ** 2)));
	});
	return [
		{ group: 'difficulty', label: 'estimated difficulty, mean', values: means },
		{ group: 'spread', label: 'estimated difficulty, standard deviation', values: deviations },
	].map(
		({ group, label, values }): BalanceRow => ({
			group: group as BalanceRow['group'],
			label,
			values: values.map(hundredths),
			difference: hundredths(Math.max(...values) - Math.min(...values)),
		}),
	);
}

function perStandard(items: readonly ItemTraits[]): readonly number[] {
	const counts = new Map<string, number>();
	for (const { standard } of items) if (standard !== undefined) counts.set(standard, (counts.get(standard) ?? 0) + 1);
	return [...counts.values()];
}

function sharedItems(forms: readonly Form[]): readonly string[] {
	const seen = new Map<string, number>();
	for (const form of forms) {
		for (const id of new Set(positionsOf(form).map(({ entry }) => entry.item))) seen.set(id, (seen.get(id) ?? 0) + 1);
	}
	return [...seen]
		.filter(([, times]) => times > 1)
		.map(([id]) => id)
		.sort();
}

function mean(values: readonly number[]): number {
	return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}

function hundredths(value: number): number {
	return Math.round(value * 100) / 100;
}
