import { alignedIn } from '../aligned.ts';
import { haladyna, type Rule } from '../rule.ts';

/** One content, one mental act: exactly one primary standard. */
export const primaryAlignment: Rule = {
	severity: 'stop',
	guideline: haladyna(1),
	find: (facts) =>
		alignedIn(facts).flatMap(({ alignments, path }) => {
			const { length } = alignments.filter(({ primary }) => primary === true);
			if (length === 1) return [];
			const message = `expected exactly one primary alignment, found ${length}`;
			return [{ code: 'primary-alignment-count', path: `${path}/alignments`, message }];
		}),
};
