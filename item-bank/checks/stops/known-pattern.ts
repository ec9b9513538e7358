import { findPattern } from '../../patterns/index.ts';
import type { Problem } from '../../problem.ts';
import type { PartFacts } from '../facts.ts';
import { commonPractice, type Rule } from '../rule.ts';

/** Every error pattern an option names exists, or it could not be reported. */
export const knownPattern: Rule = {
	severity: 'stop',
	guideline: commonPractice,
	find: ({ parts }) => parts.flatMap(checkPart),
};

function checkPart({ part, path, lists }: PartFacts): readonly Problem[] {
	if (part.kind === 'inline-choice') {
		return part.choices.flatMap(({ patterns }, index) => checkIds(patterns, `${path}/choices/${index}`));
	}
	return lists.flatMap(({ entries }) => entries.flatMap(({ option, path: at }) => checkIds(option.patterns, at)));
}

function checkIds(ids: readonly string[] | undefined, path: string): readonly Problem[] {
	if (ids === undefined) return [];
	return ids.flatMap((id, index) => {
		if (findPattern(id)) return [];
		const message = `expected the id of an error pattern, found "${id}"`;
		return [{ code: 'option-pattern-unknown', path: `${path}/patterns/${index}`, message }];
	});
}
