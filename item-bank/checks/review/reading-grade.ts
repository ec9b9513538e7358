import { measureReading } from '../reading-grade.ts';
import { haladyna, type Rule } from '../rule.ts';

/** Long texts that read harder than the grade they test; shorter ones are only measured together, on a form. */
export const readingGrade: Rule = {
	severity: 'advise',
	guideline: haladyna(8),
	find: ({ item, words }) => {
		const grade = measureReading(words.map((text) => text.words));
		const tested = Number(item.alignments.find(({ primary }) => primary === true)?.grade);
		if (grade === undefined || !(grade > tested)) return [];
		const message = `expected words that read at grade ${tested} or below, found about grade ${grade.toFixed(1)} by the Flesch-Kincaid formula`;
		return [{ code: 'review-reading-grade', path: '/stem', message }];
	},
};
