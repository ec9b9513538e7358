import type { AnswerPlace } from '../../item-bank/forms/answer-places.ts';
import { itemIdentifier } from '../qti/identifiers.ts';
import type { AnswerMapRow } from './answer-map-file.ts';

/** A place as a file names it, with what the answer map says of its options. */
export interface NamedPlace {
	/** Index into the places of the form. */
	readonly index: number;
	readonly place: AnswerPlace;
	/** From a platform's identifiers, in capitals, to option ids of the bank or numbers of places on a line. */
	readonly options?: ReadonlyMap<string, string>;
}

/** Finds the place a heading or cell names: a position (7, Q7, Item 7, 7.2, 7b), an item id, or a platform's identifier. */
export type PlaceFinder = (name: string) => NamedPlace | undefined;

/** Names of the places of a form. Where a set's item id stands for several places it names none. */
export function createPlaceFinder(places: readonly AnswerPlace[], map: readonly AnswerMapRow[] = []): PlaceFinder {
	const byName = new Map<string, NamedPlace>();
	for (const [index, place] of places.entries()) {
		const { record, part, label } = place;
		const identifier = itemIdentifier(record.id, record.version, part);
		const row = map.find((each) => each.identifier === identifier);
		const named: NamedPlace = { index, place, ...(row ? { options: row.options } : {}) };
		byName.set(label, named);
		byName.set(identifier, named);
		byName.set(part === undefined ? record.id : `${record.id}.${part}`, named);
		if (part !== undefined) byName.set(`${place.position}${String.fromCharCode(96 + part)}`, named);
	}
	return (name) => {
		const plain = name.trim().toLowerCase();
		const known = byName.get(plain);
		if (known) return known;
		const position = /^(?:q|item|question|no\.?|nr\.?|#)?\s*\.?\s*0*([1-9]\d{0,3}(?:\.[1-9]|[a-f])?)\.?$/.exec(
			plain,
		)?.[1];
		return position === undefined ? undefined : byName.get(position);
	};
}
