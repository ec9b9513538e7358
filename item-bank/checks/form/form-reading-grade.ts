import { textsOf } from '../../items/texts.ts';
import type { FormRule } from '../placed-item.ts';
import { measureReading } from '../reading-grade.ts';
import { haladyna } from '../rule.ts';
import { wordsIn } from '../words.ts';

/** All words of a form together, measured against the lowest grade it tests. */
export const formReadingGrade: FormRule = {
	guideline: haladyna(8),
	find: (placed) => {
		const texts = placed.flatMap(({ item }) => wordsIn(textsOf(item)).map(({ words }) => words));
		const grades = placed.flatMap(({ item }) => item.alignments.filter(({ primary }) => primary === true));
		const tested = Math.min(...grades.map(({ grade }) => Number(grade)).filter((grade) => !Number.isNaN(grade)));
		const grade = measureReading(texts);
		if (grade === undefined || grade <= tested) return [];
		const message = `expected words that read at grade ${tested} or below, found about grade ${grade.toFixed(1)} by the Flesch-Kincaid formula`;
		return [{ code: 'review-form-reading-grade', path: '', message }];
	},
};
