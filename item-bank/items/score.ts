import { readEntry } from '../responses/entry.ts';
import { decodeGrid, type Reading } from '../responses/grid.ts';
import { getGridProfile } from '../responses/grid-profiles.ts';
import type { ChoiceResponse, GridProfile, Item, ItemResponse } from '../types.ts';
import { computeKey, type ItemKey } from './key.ts';

/** What a response earned. Invalid responses (such as two marks in a column) earn nothing and are kept apart from wrong ones. */
export interface Score {
	readonly state: 'correct' | 'incorrect' | 'omitted' | 'invalid';
	/** Points earned, 0 to maximum. */
	readonly points: number;
	/** Points possible. */
	readonly maximum: number;
	/** Why a response is invalid. */
	readonly reason?: string;
}

/** Thrown when an item gets a response of another kind. */
export class ResponseKindError extends Error {
	readonly code = 'response-kind';

	constructor(item: Item, response: ItemResponse) {
		const expected = item.kind === 'gridded' ? 'a grid or an entry' : 'a choice';
		super(`expected ${expected} as the response to a ${item.kind} item, found ${response.kind}`);
	}
}

/**
 * Scores one response. All kinds earn all points or none. A gridded item is read with its own grid profile unless the
 * form's is given. Throws {@link ResponseKindError}, and ItemKeyError for an item without a computable key.
 */
export function score(item: Item, response: ItemResponse, profile?: GridProfile): Score {
	const key = computeKey(item);
	if (key.kind === 'options') {
		if (response.kind !== 'choice') throw new ResponseKindError(item, response);
		return scoreChoice(item, key.options, response);
	}
	if (response.kind === 'choice') throw new ResponseKindError(item, response);
	const rules = profile ?? getGridProfile(item.kind === 'gridded' ? item.grid : '');
	const reading = response.kind === 'grid' ? decodeGrid(response.columns, rules) : readEntry(response.text, rules);
	return scoreReading(item, key, reading);
}

function scoreChoice(item: Item, key: readonly string[], response: ChoiceResponse): Score {
	const { options } = response;
	if (options.length === 0) return outcome(item, 'omitted');
	const offered = item.kind === 'gridded' ? [] : item.options.map(({ id }) => id);
	if (options.some((id) => !offered.includes(id))) return { ...outcome(item, 'invalid'), reason: 'option-not-offered' };
	if (item.kind === 'choice' && options.length > 1) return { ...outcome(item, 'invalid'), reason: 'double-mark' };
	const isCorrect = options.length === key.length && options.every((id) => key.includes(id));
	return outcome(item, isCorrect ? 'correct' : 'incorrect');
}

function scoreReading(item: Item, key: ItemKey, reading: Reading): Score {
	switch (reading.kind) {
		case 'omitted':
			return outcome(item, 'omitted');
		case 'invalid':
			return { ...outcome(item, 'invalid'), reason: reading.reason };
		case 'valid':
			return outcome(item, key.kind === 'value' && reading.value === key.value ? 'correct' : 'incorrect');
	}
}

function outcome(item: Item, state: Score['state']): Score {
	return { state, points: state === 'correct' ? item.points : 0, maximum: item.points };
}
