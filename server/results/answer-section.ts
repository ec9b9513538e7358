import { tabulateDistractors } from '../../item-bank/analysis/distractors.ts';
import { foundValue } from '../../item-bank/analysis/finding.ts';
import { listFrequentAnswers } from '../../item-bank/analysis/frequent-answers.ts';
import { keepComplete } from '../../item-bank/analysis/select-students.ts';
import type { Explanation } from '../../item-bank/patterns/explain-answer.ts';
import { getPattern } from '../../item-bank/patterns/index.ts';
import type { Report, ReportSection } from '../../item-bank/types.ts';
import { listHidden } from './option-sections.ts';
import { intervalText, leastShared, makeSection, percent, type ReportCell } from './report-text.ts';
import type { ResultTable } from './result-set.ts';

/** Wrong ideas named for one answer; beyond that the answer tells little. */
const mostNames = 3;

/** Which answers are listed. */
export interface AnswerChoice {
	/** The most frequent only. */
	readonly atMost?: number;
	/** Of the item at one column only. */
	readonly only?: number;
}

/** The most frequent wrong answers with what each is consistent with. */
export function answerSection(
	{ table, places }: ResultTable,
	title: string,
	copy: Report['copy'],
	{ atMost = Infinity, only }: AnswerChoice = {},
): ReportSection {
	const options = tabulateDistractors(keepComplete(table).table);
	const rows = table.columns.flatMap((column, index): readonly (readonly ReportCell[])[] => {
		if (only !== undefined && index !== only) return [];
		const place = places[index];
		const distractors = options[index];
		// What is hidden among the options is not told here either.
		const hidden: ReadonlySet<string> =
			copy === 'shared' && distractors?.kind === 'found' ? listHidden(distractors.value.options) : new Set();
		const frequent = place && foundValue(listFrequentAnswers(column, place.item));
		return (frequent ?? [])
			.filter(({ answer, count }) => copy === 'own' || (count >= leastShared && !hidden.has(answer)))
			.map(({ answer, count, share, interval, explanation }) => [
				place?.label ?? '',
				place?.item.kind === 'choice' || place?.item.kind === 'inline-choice'
					? answer.toUpperCase()
					: answer.replace(/^-/, '−'),
				count,
				percent(share),
				intervalText(interval),
				describePatterns(explanation),
			]);
	});
	const shown = rows.length <= atMost ? rows : [...rows].sort((a, b) => Number(b[2]) - Number(a[2])).slice(0, atMost);
	const left =
		shown.length === rows.length
			? []
			: [`The ${shown.length} most frequent of ${rows.length}; the item report has all.`];
	const note = copy === 'shared' ? [`Answers of fewer than ${leastShared} students are not listed.`] : [];
	return makeSection(
		`Frequent wrong answers: ${title}`,
		['Place', 'Answer', 'Students', 'Share', '95 % interval', 'Consistent with'],
		shown,
		['“Consistent with” is a hint: one answer can come from several ideas, or from none.', ...left, ...note],
	);
}

/** What an answer is consistent with, in words; never more. */
function describePatterns(explanation: Explanation | undefined): string {
	if (explanation === undefined || explanation.patterns.length === 0) return '';
	const names = explanation.patterns.slice(0, mostNames).map((id) => getPattern(id).name);
	const more = explanation.patterns.length - names.length;
	return `${names.join('; or ')}${more > 0 ? `; or ${more} more` : ''}`;
}
