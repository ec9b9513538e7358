import { alignedIn } from '../aligned.ts';
import { commonPractice, type Rule } from '../rule.ts';

/** No standard is named twice. */
export const distinctAlignments: Rule = {
	severity: 'stop',
	guideline: commonPractice,
	find: (facts) =>
		alignedIn(facts).flatMap(({ alignments, path }) => {
			const keys = alignments.map(({ framework, edition, code }) => `${framework} ${edition} ${code}`);
			return keys.flatMap((key, index) => {
				if (keys.indexOf(key) === index) return [];
				const message = `expected each standard once, found ${key} again`;
				return [{ code: 'alignment-repeated', path: `${path}/alignments/${index}`, message }];
			});
		}),
};
