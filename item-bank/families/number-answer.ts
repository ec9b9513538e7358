import type { Subject } from '../patterns/subject.ts';
import type { Item } from '../types.ts';
import type { Draw } from './family.ts';
import { numberOptions } from './options.ts';
import { word } from './parameters.ts';

/** The parameter for how an item with a number as its answer is answered. */
export const answeredBy = word('How the answer is given.', ['any', 'choice', 'gridded']);

/** An item with a number as its answer, before it is known how the answer is given. */
export interface NumberQuestion
	extends Pick<Item, 'name' | 'given' | 'stem' | 'dok' | 'points' | 'alignments' | 'tags' | 'context'> {
	/** What the key is worked out from. */
	readonly expression: string;
	readonly key: number;
	/** Everything a student may be working on. */
	readonly subjects: readonly Subject[];
	/** Distractors beside the key; 3 when left out. */
	readonly distractors?: number;
	/** Printed after a gridded answer. */
	readonly unit?: string;
}

/** The item as choice or gridded; undefined where patterns lead to too few wrong numbers. */
export function askNumber(draw: Draw, by: 'any' | 'choice' | 'gridded', question: NumberQuestion): Item | undefined {
	const { expression, key, subjects, distractors, unit, ...shown } = question;
	const kind = by === 'any' ? (draw.lot % 2 === 0 ? 'choice' : 'gridded') : by;
	if (kind === 'gridded') {
		const named = unit === undefined ? {} : { unit };
		return { kind, answerIn: 'number', ...shown, expression, grid: 'plain-sign-first', ...named };
	}
	const options = numberOptions(draw, subjects, key, distractors);
	if (options === undefined) return undefined;
	return { kind, answerIn: 'number', ...shown, options, rule: { kind: 'same-value', expression } };
}
