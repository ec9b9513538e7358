import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { positionsOf } from '../../../item-bank/forms/check-form.ts';
import type { Form } from '../../../item-bank/types.ts';
import {
	addItem,
	addSection,
	findPlace,
	isSameForm,
	moveItem,
	moveSection,
	nextPlace,
	positionOf,
	removeItem,
	removeSection,
	replaceItem,
	setPoints,
	startForm,
} from '../../../web/forms/form-edits.ts';

/** Forms of one to four sections with items of different ids. */
const forms: fc.Arbitrary<Form> = fc
	.array(fc.array(fc.integer({ min: 1, max: 3 }), { maxLength: 5 }), { minLength: 1, maxLength: 4 })
	.map((sections) => ({
		title: 'Form',
		gridProfile: 'plain-sign-first',
		sections: sections.map((versions, section) => ({
			title: `Section ${section}`,
			items: versions.map((version, index) => ({ item: `item-${section}-${index}`, version })),
		})),
	}));

const idsOf = (form: Form): readonly string[] => positionsOf(form).map(({ entry }) => entry.item);

describe('edits of a form', () => {
	test('whatever is moved where, the same items stand on the form', () => {
		fc.assert(
			fc.property(forms, fc.nat(), fc.nat(), fc.nat(), (form, which, section, index) => {
				const ids = idsOf(form);
				fc.pre(ids.length > 0);
				const place = { section: section % form.sections.length, index: index % 6 };
				const moved = moveItem(form, ids[which % ids.length] ?? '', place);
				expect(idsOf(moved).toSorted()).toEqual(ids.toSorted());
			}),
		);
	});

	test('a step down and a step up lead back, also past the edge of a section', () => {
		fc.assert(
			fc.property(forms, fc.nat(), (form, which) => {
				const ids = idsOf(form);
				fc.pre(ids.length > 0);
				const id = ids[which % ids.length] ?? '';
				const down = nextPlace(form, id, 1);
				fc.pre(down !== undefined);
				const moved = moveItem(form, id, down ?? { section: 0, index: 0 });
				const up = nextPlace(moved, id, -1);
				expect(moveItem(moved, id, up ?? { section: 9, index: 9 })).toEqual(form);
			}),
		);
	});

	test('an item taken out and put back at its place gives the same form', () => {
		fc.assert(
			fc.property(forms, fc.nat(), (form, which) => {
				const places = positionsOf(form);
				const place = places[which % places.length];
				if (!place) return;
				const { entry, sectionIndex, indexInSection } = place;
				const without = removeItem(form, entry.item);
				expect(findPlace(without, entry.item)).toBeUndefined();
				expect(addItem(without, entry, sectionIndex, indexInSection)).toEqual(form);
			}),
		);
	});

	test('removing a section keeps its items in order, and the last section stays', () => {
		fc.assert(
			fc.property(forms, fc.nat(), (form, which) => {
				const without = removeSection(form, which % form.sections.length);
				expect(idsOf(without)).toEqual(idsOf(form));
				expect(without.sections.length).toBe(Math.max(1, form.sections.length - 1));
			}),
		);
	});

	test('an item is never on a form twice', () => {
		const form = addItem(startForm('A', 'plain-sign-first', 'One'), { item: 'srm-1', version: 1 }, 0);
		expect(addItem(form, { item: 'srm-1', version: 2 }, 0)).toBe(form);
	});

	test('there is no step beyond the first and the last place', () => {
		const form = addItem(startForm('A', 'plain-sign-first', 'One'), { item: 'srm-1', version: 1 }, 0);
		expect([nextPlace(form, 'srm-1', -1), nextPlace(form, 'srm-1', 1)]).toEqual([undefined, undefined]);
		expect(nextPlace(form, 'unknown', 1)).toBeUndefined();
		expect(nextPlace(addSection(form, 'Two'), 'srm-1', 1)).toEqual({ section: 1, index: 0 });
	});

	test('a section moves only where there is a place for it', () => {
		const form = addSection(startForm('A', 'plain-sign-first', 'One'), 'Two');
		expect(moveSection(form, 0, 1).sections.map(({ title }) => title)).toEqual(['Two', 'One']);
		expect(moveSection(form, 0, -1)).toBe(form);
		expect(moveSection(form, 1, 1)).toBe(form);
	});

	test('points of the form go when an item takes the place of another, and can be taken away', () => {
		const form = addItem(startForm('A', 'plain-sign-first', 'One'), { item: 'srm-1', version: 1 }, 0);
		const worth = setPoints(form, 'srm-1', 3);
		expect(worth.sections[0]?.items).toEqual([{ item: 'srm-1', version: 1, points: 3 }]);
		expect(setPoints(worth, 'srm-1', undefined)).toEqual(form);
		const swapped = replaceItem(worth, 'srm-1', { item: 'srm-2', version: 4 });
		expect(swapped.sections[0]?.items).toEqual([{ item: 'srm-2', version: 4 }]);
		expect(positionOf(swapped, 'srm-2')).toBe(1);
	});

	test('forms are the same whatever the order of their fields', () => {
		const form = addItem(startForm('A', 'plain-sign-first', 'One'), { item: 'srm-1', version: 1, points: 2 }, 0);
		const other: Form = {
			sections: [{ items: [{ points: 2, version: 1, item: 'srm-1' }], title: 'One' }],
			gridProfile: 'plain-sign-first',
			title: 'A',
		};
		expect(isSameForm(form, other)).toBe(true);
		expect(isSameForm(form, setPoints(other, 'srm-1', 1))).toBe(false);
	});
});
