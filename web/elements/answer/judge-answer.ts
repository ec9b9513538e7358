import { findKey, type PartKey } from '../../../item-bank/items/key.ts';
import { type Score, score } from '../../../item-bank/items/score.ts';
import { type Explanation, explainAnswer } from '../../../item-bank/patterns/explain-answer.ts';
import { describeExplanation } from '../../../item-bank/patterns/explanation-text.ts';
import { decodeGrid } from '../../../item-bank/responses/grid.ts';
import { findGridProfile, getGridProfile } from '../../../item-bank/responses/grid-profiles.ts';
import type { PartItem, PartResponse } from '../../../item-bank/types.ts';
import { listWorkedLines, type WorkedLine, worthOf } from '../../../item-bank/worked/worked-lines.ts';
import { listWrongNotes } from '../../../item-bank/worked/wrong-notes.ts';

/** What the bank says of one answer. */
export interface Judgement {
	readonly score: Score;
	readonly key: PartKey;
	readonly steps: readonly WorkedLine[];
	/** What a wrong answer is consistent with, a line each; none for right answers and where nothing can be said. */
	readonly consistent: readonly string[];
}

/** Scores an answer and says what it is consistent with; undefined for an item without a key. */
export function judgeAnswer(item: PartItem, response: PartResponse, grid?: string): Judgement | undefined {
	const finding = findKey(item);
	if (!('key' in finding) || finding.key.kind === 'parts') return undefined;
	const { key } = finding;
	const profile = grid === undefined ? undefined : findGridProfile(grid);
	const scored = score(item, response, profile);
	const isWrong = scored.state === 'incorrect' || scored.state === 'partly';
	const consistent = isWrong ? explainResponse(item, key, response, grid) : [];
	return { score: scored, key, steps: listWorkedLines(item, key), consistent };
}

function explainResponse(item: PartItem, key: PartKey, response: PartResponse, grid?: string): readonly string[] {
	switch (response.kind) {
		case 'grid': {
			const profile = item.kind === 'gridded' ? getGridProfile(grid ?? item.grid) : undefined;
			const reading = profile && decodeGrid(response.columns, profile);
			return reading?.kind === 'valid' ? describe(explainAnswer(item, reading.value)) : [];
		}
		case 'point':
			return response.at === undefined ? [] : describe(explainAnswer(item, response.at));
		case 'choice':
			return explainOptions(item, key, response.options);
		case 'order':
			return explainOrder(item, response.order);
		case 'match':
			return pickNotes(
				item,
				key,
				response.pairs.map(({ left, right }) => `${left}–${right}`.toUpperCase()),
			);
		case 'entry':
		case 'explanation':
			return [];
	}
}

function describe(explanation: Explanation): readonly string[] {
	return describeExplanation(explanation);
}

function explainOptions(item: PartItem, key: PartKey, chosen: readonly string[]): readonly string[] {
	if (item.kind === 'choice') return chosen.flatMap((id) => describe(explainAnswer(item, id)));
	const right = key.kind === 'options' ? key.options : [];
	const missed = item.kind === 'multiple-choice' ? right.filter((id) => !chosen.includes(id)) : [];
	return [
		...pickNotes(
			item,
			key,
			chosen.map((id) => id.toUpperCase()),
		),
		...missed.map((id) => `${id.toUpperCase()}: right, and not chosen.`),
	];
}

/** Orders go by their numbers from least to greatest, whichever way the item asks for. */
function explainOrder(item: PartItem, order: readonly string[]): readonly string[] {
	if (item.kind !== 'order') return [];
	const worths = order.flatMap((id) => item.entries.filter((entry) => entry.id === id).map(worthOf));
	const rising = item.direction === 'ascending' ? worths : worths.toReversed();
	return describe(explainAnswer({ kind: 'ordering', numbers: item.entries.map(worthOf) }, rising));
}

function pickNotes(item: PartItem, key: PartKey, answers: readonly string[]): readonly string[] {
	return listWrongNotes(item, key)
		.filter(({ answer }) => answers.includes(answer))
		.map(({ answer, sentence }) => `${answer}: ${sentence}`);
}
