import { measureDifficulty } from '../../item-bank/analysis/difficulty.ts';
import { type OptionFlag, tabulateDistractors } from '../../item-bank/analysis/distractors.ts';
import { type Finding, found, foundValue } from '../../item-bank/analysis/finding.ts';
import { listFrequentAnswers } from '../../item-bank/analysis/frequent-answers.ts';
import { measureOmitRates } from '../../item-bank/analysis/omit-rates.ts';
import { measureCorrelations } from '../../item-bank/analysis/point-biserial.ts';
import {
	readCorrelation,
	readDifficulty,
	readDiscrimination,
	readDistractors,
	readOmits,
} from '../../item-bank/analysis/readings/item-readings.ts';
import { keepComplete } from '../../item-bank/analysis/select-students.ts';
import { measureUpperLower, type UpperLower } from '../../item-bank/analysis/upper-lower.ts';
import { printItemName } from '../../item-bank/items/item-name.ts';
import type { Explanation } from '../../item-bank/patterns/explain-answer.ts';
import { getPattern } from '../../item-bank/patterns/index.ts';
import type { Report, ReportSection } from '../../item-bank/types.ts';
import { hideSmall } from './form-sections.ts';
import { figureOf, intervalText, makeSection, percent, type ReportCell, roundTo } from './report-text.ts';
import type { ResultTable } from './result-set.ts';

/** In a shared copy an answer fewer students gave is not listed: it could be told whose it was. */
const leastShared = 3;

/** How each item, option and wrong answer worked. Hidden in a shared copy of fewer than 10 students. */
export function itemSections(result: ResultTable, title: string, copy: Report['copy']): readonly ReportSection[] {
	const hidden = hideSmall(result.table.students.length, copy);
	if (hidden !== undefined) return [{ title: `Items: ${title}`, notes: [hidden] }];
	return [
		itemTable(result, title),
		readingTable(result, title, copy),
		optionTable(result, title, copy),
		answerTable(result, title, copy),
	];
}

function itemTable({ table, places }: ResultTable, title: string): ReportSection {
	const { table: complete, leftOut } = keepComplete(table);
	const correlations = measureCorrelations(complete);
	const upperLower = measureUpperLower(complete);
	const rows = table.columns.map((column, index): readonly ReportCell[] => {
		const place = places[index];
		const difficulty = measureDifficulty(column);
		const rates = foundValue(measureOmitRates(column));
		const value = foundValue(difficulty);
		const discrimination = upperLower[index];
		return [
			place?.label ?? '',
			place === undefined ? column.item.id : printItemName(place.record.item.name),
			place?.item.kind ?? '',
			value === undefined ? null : roundTo(value.share, 2),
			value === undefined ? null : intervalText(value.interval),
			value?.responses ?? 0,
			figureOf(correlations[index]?.corrected ?? { kind: 'refused', reason: 'not-applicable', message: '' }),
			discrimination?.kind === 'found' ? roundTo(discrimination.value.discrimination, 2) : null,
			rates?.omitted.count ?? 0,
			rates?.notReached.count ?? 0,
			rates?.invalid.count ?? 0,
			rates?.unrated.count ?? 0,
		];
	});
	return makeSection(
		`Items: ${title}`,
		[
			'Place',
			'Item',
			'Kind',
			'p',
			'95 % interval',
			'Responses',
			'r with rest',
			'D',
			'Omitted',
			'Not reached',
			'Invalid',
			'Unrated',
		],
		rows,
		[
			'p is the share of the points earned: higher is easier. r is the correlation with the rest of the form, D the difference between the upper and lower 27 %; a low or negative figure says look at key and wording first.',
			`r and D from ${complete.students.length} students with points on every item${leftOut === 0 ? '' : `, ${leftOut} left out`}. Figures from fewer than 100 students swing widely (common practice, no source).`,
		],
	);
}

/** What figures say in plain words, of the items that are worth a look. */
function readingTable({ table, places }: ResultTable, title: string, copy: Report['copy']): ReportSection {
	const { table: complete } = keepComplete(table);
	const correlations = measureCorrelations(complete);
	const upperLower = measureUpperLower(complete);
	const options = tabulateDistractors(complete);
	const takers = complete.students.length;
	const rows = table.columns.flatMap((column, index): readonly (readonly ReportCell[])[] => {
		const difficulty = measureDifficulty(column);
		const discrimination = upperLower[index];
		const distractors = options[index];
		const isTold = copy === 'own' || distractors?.kind !== 'found' || listHidden(distractors.value.options).size === 0;
		const readings = [
			readDifficulty(difficulty, foundValue(difficulty)?.responses ?? 0),
			...(correlations[index] ? [readCorrelation(correlations[index].corrected, takers)] : []),
			...(discrimination ? [readDiscrimination(separationOf(discrimination), takers)] : []),
			readOmits(measureOmitRates(column)),
			...(distractors && isTold ? [readDistractors(distractors)] : []),
		];
		return readings
			.filter(({ tone }) => tone === 'look')
			.map(({ text, basis }) => [
				places[index]?.label ?? '',
				printItemName(places[index]?.record.item.name ?? ''),
				text,
				basis,
			]);
	});
	const calm = rows.length === 0 ? ['No item asks for a look by these figures.'] : [];
	return makeSection(`Items worth a look: ${title}`, ['Place', 'Item', 'In words', 'Threshold from'], rows, calm);
}

function separationOf(finding: Finding<UpperLower>): Finding<number> {
	return finding.kind === 'found' ? found(finding.value.discrimination) : finding;
}

function optionTable({ table, places }: ResultTable, title: string, copy: Report['copy']): ReportSection {
	const { table: complete } = keepComplete(table);
	const rows = tabulateDistractors(complete).flatMap((finding, index): readonly (readonly ReportCell[])[] =>
		finding.kind === 'refused'
			? []
			: finding.value.options.map(({ option, isKey, count, shareOfAll, upper, lower, correlation, flags }) => {
					const isHidden = copy === 'shared' && listHidden(finding.value.options).has(option);
					return [
						places[index]?.label ?? '',
						`${option.toUpperCase()}${isKey ? ' (key)' : ''}`,
						isHidden ? 'hidden' : count,
						isHidden ? null : percent(shareOfAll),
						isHidden ? null : figureOf(upper),
						isHidden ? null : figureOf(lower),
						isHidden ? null : figureOf(correlation),
						isHidden ? '' : flags.map((flag) => flagWords[flag]).join(', '),
					];
				}),
	);
	return makeSection(
		`Options: ${title}`,
		['Place', 'Option', 'Students', 'Share', 'Upper 27 %', 'Lower 27 %', 'r with rest', 'Look at'],
		rows,
		['A distractor works when at least 5 % mark it and those who do score lower on the rest.'],
	);
}

/** What to look at, in words. */
const flagWords: Readonly<Record<OptionFlag, string>> = {
	'rarely-chosen': 'marked by few',
	'draws-strong': 'goes with higher scores',
	'key-draws-weak': 'key goes with lower scores',
	'above-key-in-upper': 'more than the key in the upper group',
};

/** Options fewer students marked than may be told, and where that is one alone the next, which would give it away. */
function listHidden(options: readonly { readonly option: string; readonly count: number }[]): ReadonlySet<string> {
	const marked = options.filter(({ count }) => count > 0).sort((a, b) => a.count - b.count);
	const small = marked.filter(({ count }) => count < leastShared).length;
	const hidden = small === 1 ? marked.slice(0, 2) : marked.slice(0, small);
	return new Set(hidden.map(({ option }) => option));
}

function answerTable({ table, places }: ResultTable, title: string, copy: Report['copy']): ReportSection {
	const rows = table.columns.flatMap((column, index): readonly (readonly ReportCell[])[] => {
		const place = places[index];
		const frequent = place && foundValue(listFrequentAnswers(column, place.item));
		return (frequent ?? [])
			.filter(({ count }) => copy === 'own' || count >= leastShared)
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
	const note = copy === 'shared' ? [`Answers of fewer than ${leastShared} students are not listed.`] : [];
	return makeSection(
		`Frequent wrong answers: ${title}`,
		['Place', 'Answer', 'Students', 'Share', '95 % interval', 'Consistent with'],
		rows,
		['“Consistent with” is a hint: one answer can come from several ideas, or from none.', ...note],
	);
}

/** What an answer is consistent with, in words; never more. */
function describePatterns(explanation: Explanation | undefined): string {
	if (explanation === undefined || explanation.patterns.length === 0) return '';
	return explanation.patterns.map((id) => getPattern(id).name).join('; or ');
}
