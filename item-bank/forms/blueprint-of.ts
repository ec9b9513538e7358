import type { Blueprint, Form, ItemShape, KindName } from '../types.ts';
import { positionsOf } from './check-form.ts';
import { type FindItem, formTraits, type ReportScope } from './compare-forms.ts';
import type { ItemTraits } from './item-traits.ts';
import { orderBreaches } from './order-breaches.ts';

/**
 * The plan an existing form follows: its totals, every standard × model type with its count, DOK, kinds, point values, context
 * roles, sections, reading load within a tenth and mean difficulty within 0.5. Items that are not found are left out; a form
 * without any found item gives a plan for nothing.
 */
export function blueprintOf(form: Form, findItem: FindItem, scope: ReportScope): Blueprint {
	const items = formTraits(form, findItem, scope);
	const points = items.reduce((sum, item) => sum + item.points, 0);
	const words = items.reduce((sum, { reading }) => sum + reading, 0);
	const found = new Set(items.map(({ id }) => id));
	return {
		title: `Like ${form.title}`.slice(0, 100),
		framework: scope.framework,
		edition: scope.edition,
		gridProfile: form.gridProfile,
		items: exactly(items.length),
		points: exactly(points),
		cells: tally(items, (item) => cellKey(item)).map(([key, count]) => {
			const at = `${key} `.indexOf(' ');
			const standard = key.slice(at + 1);
			return {
				...(standard === '' ? {} : { standard }),
				model: key.slice(0, at) as ItemTraits['model'],
				items: exactly(count),
			};
		}),
		dok: tally(items, ({ dok }) => dok).map(([dok, count]) => ({ dok, items: exactly(count) })),
		kinds: tally(items, ({ kind }) => kind).map(([kind, count]) => ({ kind, items: exactly(count) })),
		pointValues: tally(items, (item) => item.points).map(([value, count]) => ({
			points: value,
			items: exactly(count),
		})),
		roles: tally(items, ({ role }) => role).map(([role, count]) => ({ role, items: exactly(count) })),
		readingLoad: { words: { min: Math.floor(words * 0.9), max: Math.ceil(words * 1.1) } },
		difficulty: { target: meanTenths(items), band: 0.5 },
		order: { within: isEasierFirst(form, items) ? 'easier-first' : 'free' },
		sections: form.sections.map(({ title }, index) => {
			const inside = positionsOf(form).filter(
				({ sectionIndex, entry }) => sectionIndex === index && found.has(entry.item),
			);
			const kinds = new Set(inside.map(({ entry }) => items.find(({ id }) => id === entry.item)?.kind));
			const only = [...kinds].filter((kind): kind is KindName => kind !== undefined);
			return { title, ...(only.length === 1 ? { kinds: only } : {}), items: exactly(inside.length) };
		}),
	};
}

function isEasierFirst(form: Form, items: readonly ItemTraits[]): boolean {
	const sections = form.sections.map(({ items: entries }) =>
		entries.flatMap(({ item }) => items.find(({ id }) => id === item) ?? []),
	);
	return orderBreaches(sections, { within: 'easier-first' }, new Set()).length === 0;
}

function cellKey({ model, standard }: ItemTraits): string {
	return standard === undefined ? model : `${model} ${standard}`;
}

function exactly(value: number): { readonly min: number; readonly max: number } {
	return { min: value, max: value };
}

function tally<T extends string | number | ItemShape>(
	items: readonly ItemTraits[],
	traitOf: (item: ItemTraits) => T | undefined,
): readonly (readonly [T, number])[] {
	const counts = new Map<T, number>();
	for (const item of items) {
		const value = traitOf(item);
		if (value !== undefined) counts.set(value, (counts.get(value) ?? 0) + 1);
	}
	return [...counts].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
}

function meanTenths(items: readonly ItemTraits[]): number {
	const sum = items.reduce((total, { difficulty }) => total + difficulty, 0);
	return items.length === 0 ? 1 : Math.round((sum / items.length) * 10) / 10;
}
