import { readEntry } from '../responses/entry.ts';
import { decodeGrid } from '../responses/grid.ts';
import { getGridProfile } from '../responses/grid-profiles.ts';
import type { GridProfile, Item, ItemResponse, PartItem, PartResponse, SetItem } from '../types.ts';
import { computeKey, type PartKey } from './key.ts';
import { scoreExplanation } from './kinds/explanation.ts';
import { scoreReading } from './kinds/gridded.ts';
import { scoreInline } from './kinds/inline-choice.ts';
import { scoreMatch } from './kinds/match.ts';
import { scoreOptions } from './kinds/options.ts';
import { scoreOrder } from './kinds/order.ts';
import { scorePoint } from './kinds/point.ts';
import type { Outcome } from './outcome.ts';

/** What a response earned. Invalid responses (such as two marks in a column) earn nothing and are kept apart from wrong ones. */
export interface Score {
	readonly state: 'correct' | 'partly' | 'incorrect' | 'omitted' | 'invalid' | 'unrated';
	/** Points earned, 0 to maximum; a fraction where an item gives credit in parts. */
	readonly points: number;
	/** Points possible. */
	readonly maximum: number;
	/** Why a response is invalid. */
	readonly reason?: string;
	/** Scores of the parts of a set, in order. */
	readonly parts?: readonly Score[];
}

/** Thrown when an item gets a response of another kind. */
export class ResponseKindError extends Error {
	readonly code = 'response-kind';

	constructor(item: Item, response: ItemResponse) {
		super(`expected ${expectedResponse(item)} as the response to a ${item.kind} item, found ${response.kind}`);
	}
}

/**
 * Scores one response. A gridded item is read with its own grid profile unless the form's is given. Throws
 * {@link ResponseKindError}, and ItemKeyError for an item without a computable key.
 */
export function score(item: Item, response: ItemResponse, profile?: GridProfile): Score {
	if (item.kind === 'set') return scoreSet(item, response, profile);
	if (response.kind === 'set') throw new ResponseKindError(item, response);
	return award(item, decide(item, computeKey(item), response, profile));
}

function scoreSet(item: SetItem, response: ItemResponse, profile: GridProfile | undefined): Score {
	if (response.kind !== 'set' || response.parts.length !== item.parts.length)
		throw new ResponseKindError(item, response);
	const parts = item.parts.flatMap((part, index) => {
		const answer = response.parts[index];
		return answer ? [score(part, answer, profile)] : [];
	});
	const points = parts.reduce((sum, part) => sum + part.points, 0);
	const maximum = item.points;
	const only = parts.every(({ state }) => state === parts[0]?.state) ? parts[0]?.state : undefined;
	const state = parts.some((part) => part.state === 'unrated') ? 'unrated' : points > 0 ? 'partly' : 'incorrect';
	return { state: only ?? state, points, maximum, parts };
}

function decide(item: PartItem, key: PartKey, response: PartResponse, profile: GridProfile | undefined): Outcome {
	if (
		(item.kind === 'choice' || item.kind === 'multiple-choice') &&
		key.kind === 'options' &&
		response.kind === 'choice'
	) {
		return scoreOptions(item, key.options, response);
	}
	if (item.kind === 'inline-choice' && key.kind === 'options' && response.kind === 'choice') {
		return scoreInline(item, key.options, response);
	}
	if (item.kind === 'point' && key.kind === 'value' && response.kind === 'point') {
		return scorePoint(item, key.value, response);
	}
	if (item.kind === 'order' && key.kind === 'order' && response.kind === 'order')
		return scoreOrder(item, key.order, response);
	if (item.kind === 'match' && key.kind === 'pairs' && response.kind === 'match')
		return scoreMatch(item, key.pairs, response);
	if (item.kind === 'explanation' && response.kind === 'explanation') return scoreExplanation(item, response);
	if (item.kind === 'gridded' && key.kind === 'value') {
		const rules = profile ?? getGridProfile(item.grid);
		if (response.kind === 'grid') return scoreReading(key.value, decodeGrid(response.columns, rules));
		if (response.kind === 'entry') return scoreReading(key.value, readEntry(response.text, rules));
	}
	throw new ResponseKindError(item, response);
}

function award(item: PartItem, outcome: Outcome): Score {
	const maximum = item.points;
	switch (outcome.state) {
		case 'correct':
			return { state: 'correct', points: maximum, maximum };
		case 'partly':
			return { state: 'partly', points: maximum * outcome.share, maximum };
		case 'invalid':
			return { state: 'invalid', points: 0, maximum, reason: outcome.reason };
		case 'incorrect':
		case 'omitted':
		case 'unrated':
			return { state: outcome.state, points: 0, maximum };
	}
}

function expectedResponse(item: Item): string {
	switch (item.kind) {
		case 'choice':
		case 'multiple-choice':
		case 'inline-choice':
			return 'a choice';
		case 'gridded':
			return 'a grid or an entry';
		case 'point':
			return 'a point';
		case 'order':
			return 'an order';
		case 'match':
			return 'a match';
		case 'explanation':
			return 'an explanation';
		case 'set':
			return `${item.parts.length} responses`;
	}
}
