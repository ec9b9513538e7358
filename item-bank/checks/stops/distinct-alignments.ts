import type { Alignment } from '../../types.ts';
import { alignedIn } from '../aligned.ts';
import { commonPractice, type Rule } from '../rule.ts';

/** No standard is named twice. */
export const distinctAlignments: Rule = {
	severity: 'stop',
	guideline: commonPractice,
	find: (facts) =>
		alignedIn(facts).flatMap(({ alignments, path }) => {
			return alignments.flatMap((alignment, index) => {
				if (alignments.findIndex((other) => isSame(other, alignment)) === index) return [];
				const { framework, edition, code } = alignment;
				const message = `expected each standard once, found ${framework} ${edition} ${code} again`;
				return [{ code: 'alignment-repeated', path: `${path}/alignments/${index}`, message }];
			});
		}),
};

function isSame(one: Alignment, other: Alignment): boolean {
	return one.code === other.code && one.framework === other.framework && one.edition === other.edition;
}
