import { type FormPosition, pointsAt, positionsOf } from '../../item-bank/forms/check-form.ts';
import type { FormRecord, ItemRecord } from '../../item-bank/items/record.ts';
import type { PartItem } from '../../item-bank/types.ts';
import { PrintInputError } from './print-errors.ts';

/** An item at its place on the test. */
export interface PlacedItem extends FormPosition {
	readonly record: ItemRecord;
	readonly points: number;
	readonly sectionTitle: string;
}

/** One thing to answer: an item at its place on the test, or a part of a set there. */
export interface AnswerPlace {
	readonly position: number;
	/** Letter of a part of a set. */
	readonly part?: string;
	/** What stands before it: "7", or "7a" for a part. */
	readonly label: string;
	readonly item: PartItem;
	/** Of the whole item. */
	readonly id: string;
	readonly version: number;
	/** Its own points; where a form gives a set other points than its own, the part's share of them. */
	readonly points: number;
}

/** What is answered at a place of the test: the item, or the parts of a set in order. */
export function answersAt({ record, position, points }: PlacedItem): readonly AnswerPlace[] {
	const { item, id, version } = record;
	if (item.kind !== 'set') return [{ position, label: String(position), item, id, version, points }];
	return item.parts.map((each, index) => {
		const part = String.fromCharCode(97 + index);
		const share = Math.round(((each.points * points) / item.points) * 100) / 100;
		return { position, part, label: `${position}${part}`, item: each, id, version, points: share };
	});
}

/**
 * The items of a form in the order students meet them. Throws PrintInputError for a form without items, and for one
 * that names an item or version that is not given.
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
		const sectionTitle = form.form.sections[place.sectionIndex]?.title ?? '';
		return { ...place, record, points: pointsAt(place.entry, record.item), sectionTitle };
	});
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
