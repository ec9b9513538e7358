import type { FindItem } from '../../../item-bank/forms/compare-forms.ts';
import type { ItemRecord } from '../../../item-bank/items/record.ts';
import type { Blueprint, Form, Item } from '../../../item-bank/types.ts';
import { readDemo } from '../../../server/demo.ts';

/** A blueprint without problems; give what the test is about. */
export function makeBlueprint(more: Partial<Blueprint> = {}): Blueprint {
	return {
		title: 'Plan',
		framework: 'teks-math',
		edition: '2012',
		gridProfile: 'plain-sign-first',
		items: { min: 1, max: 4 },
		cells: [],
		sections: [{ title: 'All', items: { min: 0, max: 4 } }],
		...more,
	};
}

/** Approved records named item-1, item-2, … */
export function recordsOf(...items: readonly Item[]): readonly ItemRecord[] {
	return items.map((item, index) => ({ id: `item-${index + 1}`, version: 1, status: 'approved', item }));
}

/** Looks items up among records. */
export function finderOf(records: readonly ItemRecord[]): FindItem {
	return (id, version) => records.find((record) => record.id === id && record.version === version)?.item;
}

/** The demo bank as approved records. */
export function demoPool(): readonly ItemRecord[] {
	return readDemo().items.flatMap(({ id, item }) =>
		id === undefined ? [] : [{ id, version: 1, status: 'approved' as const, item }],
	);
}

/** The two demo forms. */
export function demoForms(): readonly [Form, Form] {
	const [a, b] = readDemo().forms;
	if (!a || !b) throw new Error('expected two demo forms');
	return [a.form, b.form];
}
