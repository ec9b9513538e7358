import { chooseDistractors, type NumberOption } from '../distractors/choose-distractors.ts';
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
	const { options, keyPosition } = chooseDistractors(subjects, key, isInsisting ? { count, wanted } : { count });
	if (options.length < count + 1) return undefined;
	if (isInsisting && (keyPosition !== wanted || hasTickSlip(options, subjects))) return undefined;
	const alike = options.filter(({ value }) => Math.sign(value) === Math.sign(key)).length;
	if (alike === 1 && key !== 0) return undefined;
	return letter(options.map(({ value, patterns }) => ({ content: mathematics(String(value)), patterns })));
}

/** Whether a wrong number is off by one tick only, though nobody counts ticks here. */
function hasTickSlip(options: readonly NumberOption[], subjects: readonly Subject[]): boolean {
	if (subjects.some(({ kind }) => kind === 'walk')) return false;
	return options.some(
		({ isKey, patterns }) => !isKey && patterns.every((id) => id === 'start-tick-counted' || id === 'zero-skipped'),
	);
}

/** The key among wrong faces, at the place whose turn it is; the others are shuffled. */
export function placeKey({ random, turn }: Draw, key: Face, wrong: readonly Face[]): readonly Option[] {
	return letter(random.shuffle(wrong).toSpliced(turn % (wrong.length + 1), 0, key));
}
