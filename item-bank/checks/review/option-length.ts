import { printMathematics } from '../../expression/print.ts';
import { findLoneKey, type ReadEntry } from '../facts.ts';
import { haladyna, type Rule } from '../rule.ts';

/** How far a length may be from all others: by half, and by ten characters, since short options differ by a word. */
const ratio = 1.5;
const margin = 10;

/** A key much longer or shorter than every other option is picked for its length. Lengths of numbers follow from the key. */
export const optionLength: Rule = {
	severity: 'advise',
	guideline: haladyna(24),
	find: ({ parts }) =>
		parts.flatMap((facts) => {
			const lone = findLoneKey(facts);
			const length = lone && lengthOf(lone.key);
			const others = lone?.others.flatMap((entry) => lengthOf(entry) ?? []) ?? [];
			if (lone === undefined || length === undefined || others.length < lone.others.length) return [];
			const [shortest, longest] = [Math.min(...others), Math.max(...others)];
			const isLong = length >= longest * ratio + margin;
			if (!isLong && length * ratio + margin > shortest) return [];
			const beside = isLong ? `${longest} at most` : `${shortest} at least`;
			const message = `expected options of like length, found a key of ${length} characters beside ${beside}`;
			return [{ code: 'review-option-length', path: lone.key.path, message }];
		}),
};

function lengthOf({ option: { content }, mathematics, number }: ReadEntry): number | undefined {
	if (content.kind === 'text') return content.text.length;
	return mathematics === undefined || number !== undefined ? undefined : printMathematics(mathematics).length;
}
