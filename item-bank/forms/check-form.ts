import { checkKeyFits } from '../checks/grid.ts';
import type { Problem } from '../problem.ts';
import { findGridProfile, gridProfiles } from '../responses/grid-profiles.ts';
import type { Form, FormItem, Item } from '../types.ts';

/** One place of a form: its number on the test, its section and what stands there. */
export interface FormPosition {
	/** 1 for the first item of the test. */
	readonly position: number;
	readonly sectionIndex: number;
	readonly indexInSection: number;
	readonly entry: FormItem;
}

/** The items of a form in the order students meet them. */
export function positionsOf(form: Form): readonly FormPosition[] {
	let position = 0;
	return form.sections.flatMap((section, sectionIndex) =>
		section.items.map((entry, indexInSection) => {
			position += 1;
			return { position, sectionIndex, indexInSection, entry };
		}),
	);
}

/** Points of one place: the form's own figure, or the item's. */
export function pointsAt(entry: FormItem, item: Item): number {
	return entry.points ?? item.points;
}

/**
 * What keeps a form from being used: an unknown grid profile, unknown items, an item twice, a gridded key that the
 * form's grid cannot hold, no items at all.
 */
export function checkForm(form: Form, findItem: (id: string, version: number) => Item | undefined): readonly Problem[] {
	const positions = positionsOf(form);
	const profile = findGridProfile(form.gridProfile);
	const problems: Problem[] = [];
	if (!profile) {
		const known = gridProfiles.map(({ id }) => id).join(', ');
		const message = `expected a grid profile among ${known}, found "${form.gridProfile}"`;
		problems.push({ code: 'unknown-grid-profile', path: '/gridProfile', message });
	}
	if (positions.length === 0) {
		problems.push({ code: 'form-empty', path: '/sections', message: 'expected at least one item, found none' });
	}
	const seen = new Set<string>();
	for (const { entry, sectionIndex, indexInSection } of positions) {
		const path = `/sections/${sectionIndex}/items/${indexInSection}`;
		if (seen.has(entry.item)) {
			problems.push({
				code: 'form-item-repeated',
				path,
				message: `expected each item once, found "${entry.item}" again`,
			});
		}
		seen.add(entry.item);
		const item = findItem(entry.item, entry.version);
		if (!item) {
			const message = `expected an item of the bank, found "${entry.item}" version ${entry.version}`;
			problems.push({ code: 'form-item-unknown', path, message });
		} else if (profile) problems.push(...checkKeyFits(item, profile, path));
	}
	return problems;
}

/** The most points a form can earn. Items the lookup does not know count as their form points, or 0. */
export function maximumOf(form: Form, findItem: (id: string, version: number) => Item | undefined): number {
	return positionsOf(form).reduce((sum, { entry }) => {
		const item = findItem(entry.item, entry.version);
		return sum + (item ? pointsAt(entry, item) : (entry.points ?? 0));
	}, 0);
}
