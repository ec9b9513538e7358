import { alignedIn, findAlignedStandard } from '../aligned.ts';
import { commonPractice, type Rule } from '../rule.ts';

/** A number with a minus of its own: at the start, or after a bracket, a backtick or a relation. */
const negativeNumber = /(?:^|[([`=<>≤≥+×÷*/-])\s*[-−]\s*\d/;

/** No negative number under a standard about positive numbers only. */
export const positiveOnly: Rule = {
	severity: 'stop',
	guideline: commonPractice,
	find: (facts) =>
		alignedIn(facts).flatMap(({ alignments, path, texts }) =>
			alignments.flatMap((alignment, index) => {
				if (findAlignedStandard(alignment)?.isPositiveOnly !== true) return [];
				const signed = texts.find(({ kind, text }) => kind !== 'plain' && negativeNumber.test(text));
				if (!signed) return [];
				const place = signed.path.slice(path.length);
				const message = `expected positive numbers only, as ${alignment.code} asks, found "${signed.text}" at ${place}`;
				return [{ code: 'standard-positive-only', path: `${path}/alignments/${index}/code`, message }];
			}),
		),
};
