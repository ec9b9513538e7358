import { type ReviewNote, reviewItem } from '../../item-bank/checks/review-item.ts';
import { type DifficultyEstimate, estimateDifficulty } from '../../item-bank/difficulty/estimate-difficulty.ts';
import { findKey, type PartKey } from '../../item-bank/items/key.ts';
import { partsOf } from '../../item-bank/items/parts.ts';
import type { Problem } from '../../item-bank/problem.ts';
import type { Item, PartItem } from '../../item-bank/types.ts';
import { listWorkedLines, type WorkedLine } from '../../item-bank/worked/worked-lines.ts';
import { listWrongNotes, type WrongAnswerNote } from '../../item-bank/worked/wrong-notes.ts';

/** What the bank computes of one thing to answer. */
export interface PartReading {
	readonly key: PartKey | undefined;
	/** Why there is no key. */
	readonly problems: readonly Problem[];
	readonly steps: readonly WorkedLine[];
	readonly wrong: readonly WrongAnswerNote[];
}

/** What the bank computes of an item while it is being written. */
export interface ItemReading {
	readonly parts: readonly PartReading[];
	/** What stops approval first, then advice. */
	readonly notes: readonly ReviewNote[];
	readonly difficulty: DifficultyEstimate | undefined;
}

/** Reads an item that may be half written: what cannot be computed yet is left out, and nothing is thrown. */
export function readItem(item: Item): ItemReading {
	return {
		parts: partsOf(item).map(readPart),
		notes: attempt(() => reviewItem(item)) ?? [],
		difficulty: attempt(() => estimateDifficulty(item)),
	};
}

function readPart(part: PartItem): PartReading {
	const finding = attempt(() => findKey(part));
	const key = finding && 'key' in finding && finding.key.kind !== 'parts' ? finding.key : undefined;
	const problems = finding && 'problems' in finding ? finding.problems : [];
	// An expression is worked also where no option has its value yet: that shows what is missing.
	const steps = attempt(() => listWorkedLines(part, key ?? { kind: 'options', options: [] }));
	const wrong = key && attempt(() => listWrongNotes(part, key));
	return { key, problems, steps: steps ?? [], wrong: wrong ?? [] };
}

/** Half-written mathematics makes computations throw; the checks say what is wrong with it. */
function attempt<Result>(work: () => Result): Result | undefined {
	try {
		return work();
	} catch {
		return undefined;
	}
}
