import { type FormPosition, pointsAt, positionsOf } from '../../item-bank/forms/check-form.ts';
import type { FormRecord, ItemRecord } from '../../item-bank/items/record.ts';
import type { ChoiceItem, GriddedItem, MultipleChoiceItem } from '../../item-bank/types.ts';
import { PrintInputError } from './print-errors.ts';

/** Items that can be answered on paper so far. */
export type PrintableItem = ChoiceItem | MultipleChoiceItem | GriddedItem;

/** A version of an item that can be answered on paper. */
export interface PrintableRecord extends ItemRecord {
	readonly item: PrintableItem;
}

/** An item at its place on the test. */
export interface PlacedItem extends FormPosition {
	readonly record: PrintableRecord;
	readonly points: number;
	readonly sectionTitle: string;
}

/**
 * The items of a form in the order students meet them. Throws PrintInputError for a form without items, and for one
 * that names an item or version that is not given, or an item of a kind that has no place on paper yet.
 */
export function placeItems(form: FormRecord, items: readonly ItemRecord[]): readonly PlacedItem[] {
	const known = new Map(items.map((record) => [`${record.id} ${record.version}`, record]));
	const positions = positionsOf(form.form);
	if (positions.length === 0) {
		const message = `expected at least one item in form "${form.id}" version ${form.version}, found none`;
		throw new PrintInputError({ code: 'print-form-empty', message });
	}
	return positions.map((place) => {
		const { item, version } = place.entry;
		const record = known.get(`${item} ${version}`);
		if (!record) {
			const message = `expected item "${item}" version ${version} at position ${place.position}, found no such item`;
			throw new PrintInputError({ code: 'print-item-missing', message });
		}
		if (!isPrintable(record)) {
			const message = `expected items of kind choice, multiple-choice or gridded, found "${item}" of kind ${record.item.kind} at position ${place.position}`;
			throw new PrintInputError({ code: 'print-kind-unsupported', message });
		}
		const sectionTitle = form.form.sections[place.sectionIndex]?.title ?? '';
		return { ...place, record, points: pointsAt(place.entry, record.item), sectionTitle };
	});
}

function isPrintable(record: ItemRecord): record is PrintableRecord {
	return ['choice', 'multiple-choice', 'gridded'].includes(record.item.kind);
}

/** Student codes as they are, after a look at them. Throws PrintInputError for an empty, repeated or misspelt one. */
export function checkStudents(students: readonly string[]): readonly string[] {
	const seen = new Map<string, number>();
	for (const [index, student] of students.entries()) {
		const place = `entry ${index + 1} of the class list`;
		if (student.trim() === '') {
			const message = `expected a student code at ${place}, found an empty one`;
			throw new PrintInputError({ code: 'print-student-empty', message });
		}
		if (!/^[A-Z0-9][A-Z0-9-]{1,23}$/.test(student)) {
			const message = `expected a student code of 2 to 24 capital letters, digits and hyphens at ${place}, found "${student}"`;
			throw new PrintInputError({ code: 'print-student-spelling', message });
		}
		const before = seen.get(student);
		if (before !== undefined) {
			const message = `expected every student code once, found "${student}" at ${place} and at entry ${before + 1}`;
			throw new PrintInputError({ code: 'print-student-repeated', message });
		}
		seen.set(student, index);
	}
	return students;
}
