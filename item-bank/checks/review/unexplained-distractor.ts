import { findPatternsBehind } from '../../patterns/explain-answer.ts';
import { optionEntries, type ReadEntry } from '../facts.ts';
import { haladyna, type Rule } from '../rule.ts';

/** A wrong option that no error pattern leads to tells nothing when it is chosen. */
export const unexplainedDistractor: Rule = {
	severity: 'advise',
	guideline: haladyna(30),
	find: ({ parts }) =>
		parts.flatMap((facts) => {
			const entries = optionEntries(facts);
			if (!entries.some(({ isKey }) => isKey)) return [];
			return entries.flatMap((entry) => {
				const { isKey, option, path } = entry;
				if (isKey || (option.patterns ?? []).length > 0 || !isComputable(entry)) return [];
				const letter = option.id.toUpperCase();
				const behind = findPatternsBehind(facts.part, option.id);
				const hint = behind.length > 0 ? `none; the bank finds ${behind.join(', ')}` : 'none, and the bank knows none';
				const message = `expected the error patterns that lead to option ${letter}, found ${hint}`;
				return [{ code: 'review-unexplained-distractor', path, message }];
			});
		}),
};

/** Words without a worth are beyond the patterns. */
function isComputable({ option: { content } }: ReadEntry): boolean {
	return content.kind !== 'text' || content.worth !== undefined;
}
