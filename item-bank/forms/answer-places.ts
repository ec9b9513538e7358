import { partsOf } from '../items/parts.ts';
import type { ItemRecord } from '../items/record.ts';
import { score } from '../items/score.ts';
import { getGridProfile } from '../responses/grid-profiles.ts';
import type { AnswerGiven, AnswerScore, Form, GridProfile, PartItem } from '../types.ts';
import { pointsAt, positionsOf } from './check-form.ts';

/** One thing a student answers on a form: an item, or a part of a set. */
export interface AnswerPlace {
	/** Place of the item on the form, 1 for the first. */
	readonly position: number;
	/** Part of a set, 1 for the first; undefined for an item by itself. */
	readonly part: number | undefined;
	/** Such as 7, or 7.2 for the second part of a set. */
	readonly label: string;
	readonly record: ItemRecord;
	readonly item: PartItem;
	/** Points possible here; where a form gives a set other points than its own, the part's share of them. */
	readonly points: number;
	/** The form's grid. */
	readonly profile: GridProfile;
}

/** Everything a student answers on a form, in form order. Items the form names and nobody gives are left out. */
export function listAnswerPlaces(form: Form, items: readonly ItemRecord[]): readonly AnswerPlace[] {
	const records = new Map(items.map((record) => [`${record.id} ${record.version}`, record]));
	const profile = getGridProfile(form.gridProfile);
	return positionsOf(form).flatMap(({ position, entry }) => {
		const record = records.get(`${entry.item} ${entry.version}`);
		if (record === undefined) return [];
		const share = pointsAt(entry, record.item) / record.item.points;
		return partsOf(record.item).map((item, index): AnswerPlace => {
			const part = record.item.kind === 'set' ? index + 1 : undefined;
			return { position, part, label: labelPlace(position, part), record, item, points: item.points * share, profile };
		});
	});
}

/** How a place is named to people: 7, or 7.2 for the second part of a set. */
export function labelPlace(position: number, part: number | undefined): string {
	return part === undefined ? String(position) : `${position}.${part}`;
}

/** Points are kept to a millionth, so that thirds add up alike everywhere. */
const grain = 1e6;

/**
 * Scores what is known of a student at a place. Points somebody else gave stand as they are, up to what is possible; marks
 * earn nothing. Throws ResponseKindError for a response of another kind than the item takes, ItemKeyError.
 */
export function scoreAnswer(place: AnswerPlace, given: AnswerGiven): AnswerScore {
	const maximum = round(place.points);
	switch (given.kind) {
		case 'mark':
			return { state: given.mark, points: 0, maximum };
		case 'points': {
			const points = round(Math.min(given.points, place.points));
			return { state: points === maximum ? 'correct' : points === 0 ? 'incorrect' : 'partly', points, maximum };
		}
		case 'response': {
			const { state, points, reason } = score(place.item, given.response, place.profile);
			const earned = round((points / place.item.points) * place.points);
			return { state, points: earned, maximum, ...(reason === undefined ? {} : { reason }) };
		}
		default:
			return given satisfies never;
	}
}

function round(points: number): number {
	return Math.round(points * grain) / grain;
}
