import { measureDifficulty } from '../../item-bank/analysis/difficulty.ts';
import { type DistractorTable, type OptionFlag, tabulateDistractors } from '../../item-bank/analysis/distractors.ts';
import { type Finding, found, foundValue } from '../../item-bank/analysis/finding.ts';
import { measureOmitRates } from '../../item-bank/analysis/omit-rates.ts';
import { measureCorrelations } from '../../item-bank/analysis/point-biserial.ts';
import {
	readCorrelation,
	readDifficulty,
	readDiscrimination,
	readDistractors,
	readOmits,
} from '../../item-bank/analysis/readings/item-readings.ts';
import { firmTakers } from '../../item-bank/analysis/readings/reading.ts';
import { measureReliability } from '../../item-bank/analysis/reliability.ts';
import { keepComplete } from '../../item-bank/analysis/select-students.ts';
import { measureUpperLower, type UpperLower } from '../../item-bank/analysis/upper-lower.ts';
import { printItemName } from '../../item-bank/items/item-name.ts';
import type { Report, ReportSection } from '../../item-bank/types.ts';
import { answerSection } from './answer-section.ts';
import { listHidden, optionSections } from './option-sections.ts';
import { figureOf, hideSmall, intervalText, makeSection, type ReportCell, roundTo } from './report-text.ts';
import type { ResultTable } from './result-set.ts';

/** Wrong answers a meeting has time for. */
const mostInMeeting = 12;

/** How each item, option and wrong answer worked; for a meeting without options and with the most frequent answers only. Hidden in a shared copy of fewer than 10 students. */
export function itemSections(
	result: ResultTable,
	title: string,
	copy: Report['copy'],
	depth: 'all' | 'meeting' = 'all',
): readonly ReportSection[] {
	const hidden = hideSmall(result.table.students.length, copy);
	if (hidden !== undefined) return [{ title: `Items: ${title}`, notes: [hidden] }];
	if (depth === 'meeting') {
		return [
			readingTable(result, title, copy, 'meeting'),
			answerSection(result, title, copy, { atMost: mostInMeeting }),
			itemTable(result, title),
		];
	}
	return [
		itemTable(result, title),
		readingTable(result, title, copy),
		...optionSections(result, title, copy),
		answerSection(result, title, copy),
	];
}

function itemTable({ table, places }: ResultTable, title: string): ReportSection {
	const { table: complete, leftOut } = keepComplete(table);
	const correlations = measureCorrelations(complete);
	const upperLower = measureUpperLower(complete);
	const without = foundValue(measureReliability(complete))?.withoutItem ?? [];
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
			without[index] === undefined ? null : figureOf(without[index]),
			rates?.omitted.count ?? 0,
			rates?.notReached.count ?? 0,
			rates?.invalid.count ?? 0,
			rates?.unrated.count ?? 0,
		];
	});
	const spots = table.columns.flatMap((column, index) => {
		const share = foundValue(measureDifficulty(column))?.share;
		const correlation = correlations[index] && foundValue(correlations[index].corrected);
		if (share === undefined || correlation === undefined) return [];
		const look = share < 0.3 || share >= 0.9 || correlation < 0.2;
		return [{ label: places[index]?.label ?? '', share, correlation, look }];
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
			'Reliability without',
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
		spots.length === 0 ? undefined : { kind: 'item-scatter', items: spots },
	);
}

/** What figures say in plain words, of the items that are worth a look: a row an item, for a meeting without the finer figures. */
function readingTable(
	{ table, places }: ResultTable,
	title: string,
	copy: Report['copy'],
	depth: 'all' | 'meeting' = 'all',
): ReportSection {
	const { table: complete } = keepComplete(table);
	const correlations = measureCorrelations(complete);
	const upperLower = measureUpperLower(complete);
	const options = tabulateDistractors(complete);
	const takers = complete.students.length;
	const bases = new Set<string>();
	const rows = table.columns.flatMap((column, index): readonly (readonly ReportCell[])[] => {
		const difficulty = measureDifficulty(column);
		const discrimination = upperLower[index];
		const distractors = options[index];
		const isTold = copy === 'own' || distractors?.kind !== 'found' || listHidden(distractors.value.options).size === 0;
		const readings = [
			readDifficulty(difficulty, foundValue(difficulty)?.responses ?? 0),
			...(correlations[index] ? [readCorrelation(correlations[index].corrected, takers)] : []),
			...(discrimination && depth === 'all' ? [readDiscrimination(separationOf(discrimination), takers)] : []),
			readOmits(measureOmitRates(column)),
			...(distractors && isTold && (depth === 'all' || isKeyInDoubt(distractors))
				? [readDistractors(distractors)]
				: []),
		].filter(({ tone }) => tone === 'look');
		for (const { basis } of readings) bases.add(basis);
		if (readings.length === 0) return [];
		const text = readings.map(({ text: softened, words = softened }) => words).join(' ');
		return [[places[index]?.label ?? '', printItemName(places[index]?.record.item.name ?? ''), text]];
	});
	const notes =
		rows.length === 0
			? ['No item asks for a look by these figures.']
			: [
					...(takers < firmTakers ? [`Hints only, from ${takers} students.`] : [`${takers} students.`]),
					'With so many figures some stand out by chance: look at the item before believing the figure.',
					`Thresholds: ${[...bases].join('; ')}.`,
				];
	return makeSection(`Items worth a look: ${title}`, ['Place', 'Item', 'In words'], rows, notes);
}

function isKeyInDoubt(finding: Finding<DistractorTable>): boolean {
	const doubts: readonly OptionFlag[] = ['key-draws-weak', 'above-key-in-upper'];
	return (
		finding.kind === 'found' && finding.value.options.some(({ flags }) => flags.some((flag) => doubts.includes(flag)))
	);
}

function separationOf(finding: Finding<UpperLower>): Finding<number> {
	return finding.kind === 'found' ? found(finding.value.discrimination) : finding;
}
