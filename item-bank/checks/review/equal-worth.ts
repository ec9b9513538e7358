import { evaluate } from '../../expression/evaluate.ts';
import { optionEntries, type ReadEntry } from '../facts.ts';
import { haladyna, type Rule } from '../rule.ts';

/** Two wrong options of a choice that are worth the same: only one answer is right, so both can be struck out. */
export const equalWorth: Rule = {
	severity: 'advise',
	guideline: haladyna(22),
	find: ({ parts }) =>
		parts.flatMap((facts) => {
			if (facts.part.kind !== 'choice' || facts.part.rule.kind !== 'same-value') return [];
			const seen = new Map<number, string>();
			return optionEntries(facts).flatMap((entry) => {
				const worth = worthOf(entry);
				const twin = worth === undefined ? undefined : seen.get(worth);
				if (worth !== undefined) seen.set(worth, twin ?? entry.option.id);
				if (twin === undefined) return [];
				const message = `expected options of different worth, but ${letterOf(entry.option.id)} is worth ${worth} as ${letterOf(twin)} is`;
				return [{ code: 'review-equal-worth', path: entry.path, message }];
			});
		}),
};

function letterOf(id: string): string {
	return id.toUpperCase();
}

function worthOf({ mathematics, number }: ReadEntry): number | undefined {
	if (number !== undefined) return number;
	if (mathematics === undefined || mathematics.kind === 'statement') return undefined;
	try {
		return evaluate(mathematics);
	} catch {
		return undefined;
	}
}
