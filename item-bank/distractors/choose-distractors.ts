import type { PatternId } from '../patterns/pattern.ts';
import type { Subject } from '../patterns/subject.ts';
import { createRandom } from '../random/random.ts';
import { type Candidate, listCandidates } from './candidates.ts';
import { writeFeedback } from './feedback.ts';
import { listOptionSets, type OptionSet } from './option-sets.ts';

/** What is asked for beside the key. */
export interface DistractorOrder {
	/** Distractors, the key not counted; 1 to 7. */
	readonly count: number;
	/** Draws among sets that are about as good; without a seed the best set is taken, always the same. */
	readonly seed?: string | number;
	/** Place of the key among all options in increasing order, 0 is first; kept where patterns allow it. */
	readonly wanted?: number;
}

/** A number to choose, and the patterns behind it. */
export interface NumberOption {
	readonly value: number;
	readonly isKey: boolean;
	/** Every pattern that leads to the number; none for the key. */
	readonly patterns: readonly PatternId[];
	/** What the number is consistent with, for a teacher; '' for the key. */
	readonly feedback: string;
}

/** Options in increasing order, the key among them. */
export interface DistractorChoice {
	readonly options: readonly NumberOption[];
	/** Place of the key, 0 is first. */
	readonly keyPosition: number;
	/** Whether no option is the only negative or the only positive one. */
	readonly isSignBalanced: boolean;
	/** Why there are fewer distractors than asked for. */
	readonly shortfall?: string;
}

/** Share of the best score from which sets count as about as good. */
const aboutAsGood = 0.7;

/**
 * Chooses distractors among the wrong numbers that patterns lead to, never others: distinct, of a believable size, and
 * telling apart as many common patterns as they can. A set in which the key is the only negative or positive number is
 * taken only where there is no other; another lone sign halves what a set counts. A product with one negative factor has
 * only two such numbers at most, and gets no more (trade reference, section 5).
 * @param asked one subject, or all that a student may be working on, such as an expression and the counters beside it.
 */
export function chooseDistractors(
	asked: Subject | readonly Subject[],
	key: number,
	order: DistractorOrder,
): DistractorChoice {
	const candidates = listCandidates('kind' in asked ? [asked] : asked, key);
	return describeChoice(pickDistractors(candidates, key, order), key, order.count, candidates);
}

/** The set of {@link chooseDistractors} before it is described; undefined when there are no candidates to choose from. */
export function pickDistractors(
	candidates: readonly Candidate[],
	key: number,
	{ count, wanted, seed }: DistractorOrder,
): OptionSet | undefined {
	const sets = dropLoneKeys(listOptionSets(candidates, key, count));
	const placed = wanted === undefined ? [] : sets.filter(({ keyPosition }) => keyPosition === wanted);
	return pickSet(placed.length > 0 ? placed : sets, seed);
}

/** The sets in which the key does not stand alone by its sign, or all of them where it always does. */
export function dropLoneKeys(sets: readonly OptionSet[]): readonly OptionSet[] {
	const hidden = sets.filter(({ isKeyLone }) => !isKeyLone);
	return hidden.length > 0 ? hidden : sets;
}

/** The best set, or with a seed one that is about as good; undefined when there are none. */
export function pickSet(sets: readonly OptionSet[], seed: string | number | undefined): OptionSet | undefined {
	const best = Math.max(...sets.map(({ score }) => score));
	if (seed === undefined || sets.length === 0) return sets.find(({ score }) => score === best);
	return createRandom(seed).pick(sets.filter(({ score }) => score >= best * aboutAsGood));
}

/** A set as options with the key in its place. */
export function describeChoice(
	set: OptionSet | undefined,
	key: number,
	count: number,
	candidates: readonly Candidate[],
): DistractorChoice {
	const { distractors, keyPosition, isLone } = set ?? { distractors: [], keyPosition: 0, isLone: key !== 0 };
	const options = distractors.map(({ value, patterns }): NumberOption => {
		return { value, isKey: false, patterns, feedback: writeFeedback(patterns) };
	});
	const keyOption: NumberOption = { value: key, isKey: true, patterns: [], feedback: '' };
	const choice = { options: options.toSpliced(keyPosition, 0, keyOption), keyPosition, isSignBalanced: !isLone };
	if (candidates.length >= count) return choice;
	const found = candidates.length === 0 ? 'none' : candidates.map(({ value }) => value).join(', ');
	return { ...choice, shortfall: `expected ${count} wrong numbers that a pattern leads to, found ${found}` };
}
