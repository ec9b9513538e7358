import { printMathematics } from '../../../item-bank/expression/print.ts';
import { numberNode } from '../../../item-bank/expression/tree.ts';
import { computeKey, type PartKey } from '../../../item-bank/items/key.ts';
import type { ExplanationItem, PartItem } from '../../../item-bank/types.ts';
import { listWorkedLines, type WorkedLine } from '../../../item-bank/worked/worked-lines.ts';
import { listWrongNotes, type WrongAnswerNote } from '../../../item-bank/worked/wrong-notes.ts';

/** What a teacher needs of an item, or of a part of a set, besides its text. */
export interface WorkedItem {
	readonly key: string;
	readonly lines: readonly WorkedLine[];
	/** Why, where no computation decides. */
	readonly reason: string | undefined;
	/** How points come about, where they are not all or none; a sentence. */
	readonly scoring: string | undefined;
	/** Levels for a scorer, the most points first. */
	readonly rubric: ExplanationItem['rubric'];
	readonly wrong: readonly WrongAnswerNote[];
}

/** The key, the worked steps two numbers at a time, and what wrong answers are consistent with. Throws ItemKeyError. */
export function workItem(item: PartItem): WorkedItem {
	const key = computeKey(item);
	const isStated = (item.kind === 'choice' || item.kind === 'multiple-choice') && item.rule.kind === 'stated';
	return {
		key: printKey(key),
		lines: listWorkedLines(item, key),
		reason: isStated && item.rule.kind === 'stated' ? item.rule.reason : undefined,
		scoring: sayScoring(item, key),
		rubric: item.kind === 'explanation' ? item.rubric : [],
		wrong: listWrongNotes(item, key),
	};
}

/** A key as a teacher reads it: letters, a number, pairs of letters, or that a scorer decides. */
export function printKey(key: PartKey): string {
	switch (key.kind) {
		case 'options':
			return printLetters(key.options);
		case 'order':
			return printLetters(key.order);
		case 'value':
			return printMathematics(numberNode(key.value));
		case 'pairs':
			return key.pairs.map(({ left, right }) => `${left.toUpperCase()}–${right.toUpperCase()}`).join(', ');
		case 'rubric':
			return 'rubric';
		default:
			return key satisfies never;
	}
}

function printLetters(ids: readonly string[]): string {
	return ids.map((id) => id.toUpperCase()).join(', ');
}

/** As score.ts counts: shares of an item with credit in parts, levels of a rubric. */
function sayScoring(item: PartItem, key: PartKey): string | undefined {
	if (item.kind === 'explanation') return 'A scorer gives the points of the level that fits best and fills its bubble.';
	if (item.kind === 'multiple-choice' && key.kind === 'options') {
		if (item.credit !== 'parts') return 'All right letters and no other earn the points; anything else earns none.';
		const count = key.options.length;
		return `Credit in parts: each right letter earns 1 of ${count} equal shares of the points, each wrong one takes one off, never below 0.`;
	}
	if (item.kind === 'match' && key.kind === 'pairs') {
		if (item.credit !== 'parts') return 'All pairs right earn the points; anything else earns none.';
		return `Credit in parts: each right pair earns 1 of ${key.pairs.length} equal shares of the points.`;
	}
	return item.kind === 'order' ? 'Every entry in its place earns the points; anything else earns none.' : undefined;
}
