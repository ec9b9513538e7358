import { type Candidate, listCandidates } from '../distractors/candidates.ts';
import { pickDistractors } from '../distractors/choose-distractors.ts';
import type { PatternId } from '../patterns/pattern.ts';
import type { Subject } from '../patterns/subject.ts';
import type { Option, OptionContent } from '../types.ts';
import type { Draw } from './family.ts';

const letters = 'abcdefgh';

/** An option before it has its letter. */
export interface Face {
	readonly content: OptionContent;
	readonly patterns?: readonly PatternId[];
}

/** Mathematics as what an option shows. */
export function mathematics(math: string): OptionContent {
	return { kind: 'mathematics', math };
}

/** Letters options in the order they stand in. */
export function letter(faces: readonly Face[]): readonly Option[] {
	return faces.map(({ content, patterns = [] }, index): Option => {
		const id = letters.charAt(index);
		return patterns.length > 0 ? { id, content, patterns } : { id, content };
	});
}

/** Draws that insist on the key's place before any place will do. */
const insistentAttempts = 3;

/**
 * The key and wrong numbers that error patterns lead to, in increasing order. The first draws of an item insist that the
 * key stands at the place whose turn it is; later ones take the best set. Undefined when there are fewer wrong numbers
 * than asked for, when the key would stand alone by its sign, or when its place is insisted on and cannot be had.
 */
export function numberOptions(
	{ turn, attempt }: Draw,
	subjects: readonly Subject[],
	key: number,
	count = 3,
): readonly Option[] | undefined {
	const wanted = turn % (count + 1);
	const isInsisting = attempt < insistentAttempts;
	const candidates = listCandidates(subjects, key);
	const chosen = pickDistractors(candidates, key, isInsisting ? { count, wanted } : { count });
	if (chosen === undefined || chosen.distractors.length < count || chosen.isKeyLone) return undefined;
	const { distractors, keyPosition } = chosen;
	if (isInsisting && (keyPosition !== wanted || hasTickSlip(distractors, subjects))) return undefined;
	const wrong = distractors.map(({ value, patterns }): Face => ({ content: mathematics(String(value)), patterns }));
	return letter(wrong.toSpliced(keyPosition, 0, { content: mathematics(String(key)) }));
}

/** Whether a wrong number is off by one tick only, though nobody counts ticks here. */
function hasTickSlip(wrong: readonly Candidate[], subjects: readonly Subject[]): boolean {
	if (subjects.some(({ kind }) => kind === 'walk')) return false;
	return wrong.some(({ patterns }) => patterns.every((id) => id === 'start-tick-counted' || id === 'zero-skipped'));
}

/** The key among wrong faces, at the place whose turn it is; the others are shuffled. */
export function placeKey({ random, turn }: Draw, key: Face, wrong: readonly Face[]): readonly Option[] {
	return letter(random.shuffle(wrong).toSpliced(turn % (wrong.length + 1), 0, key));
}
