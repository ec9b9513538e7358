import { measureDifficulty } from '../../item-bank/analysis/difficulty.ts';
import { foundValue } from '../../item-bank/analysis/finding.ts';
import { wilsonInterval } from '../../item-bank/analysis/intervals.ts';
import { measureOmitRates } from '../../item-bank/analysis/omit-rates.ts';
import { measureCorrelations } from '../../item-bank/analysis/point-biserial.ts';
import { keepComplete } from '../../item-bank/analysis/select-students.ts';
import { measureUpperLower } from '../../item-bank/analysis/upper-lower.ts';
import { printItemName } from '../../item-bank/items/item-name.ts';
import type { Report, ReportSection } from '../../item-bank/types.ts';
import { answerSection } from './answer-section.ts';
import { optionSections } from './option-sections.ts';
import { figureOf, hideSmall, intervalText, makeSection, type ReportCell, roundTo } from './report-text.ts';
import type { ResultTable } from './result-set.ts';

/** A form with its scores. */
export interface ViewedForm {
	readonly title: string;
	readonly sittings: number;
	readonly result: ResultTable;
}

/** One place of a form where the item stood. */
interface Stand extends ViewedForm {
	readonly column: number;
}

/** One item over every form and sitting it stood in: a row a place, then its options and wrong answers form by form. Nothing where it never stood. */
export function itemViewSections(
	id: string,
	forms: readonly ViewedForm[],
	copy: Report['copy'],
): readonly ReportSection[] {
	const stands = forms.flatMap((form): readonly Stand[] =>
		form.result.places.flatMap(({ record }, column) => (record.id === id ? [{ ...form, column }] : [])),
	);
	const [first] = stands;
	if (first === undefined) return [];
	const name = printItemName(first.result.places[first.column]?.record.item.name ?? id);
	const told = stands.filter(({ result }) => hideSmall(result.table.students.length, copy) === undefined);
	return [
		makeSection(
			`${name} over all its sittings`,
			[
				'Form',
				'Place',
				'Version',
				'Sittings',
				'p',
				'95 % interval',
				'Responses',
				'r with rest',
				'D',
				'Omitted',
				'Invalid',
			],
			[...stands.map((stand) => standRow(stand, copy)), ...totalRows(told)],
			[
				'p is the share of the points earned: higher is easier. Places differ in students, in neighbours and in date, so that a difference between rows need not lie in the item.',
				...(told.length < stands.length ? ['Rows of fewer than 10 students are hidden and not in the total.'] : []),
			],
		),
		...told.flatMap(({ result, title, column }) => [
			...optionSections(result, title, copy, column),
			answerSection(result, title, copy, { only: column }),
		]),
	];
}

function standRow({ title, sittings, result, column }: Stand, copy: Report['copy']): readonly ReportCell[] {
	const place = result.places[column];
	const start = [title, place?.label ?? '', place?.record.version ?? null, sittings];
	const answers = result.table.columns[column];
	if (answers === undefined || hideSmall(result.table.students.length, copy) !== undefined) {
		return [...start, 'hidden', null, 'hidden', null, null, null, null];
	}
	const { table: complete } = keepComplete(result.table);
	const value = foundValue(measureDifficulty(answers));
	const rates = foundValue(measureOmitRates(answers));
	const correlation = measureCorrelations(complete)[column]?.corrected;
	const discrimination = measureUpperLower(complete)[column];
	return [
		...start,
		value === undefined ? null : roundTo(value.share, 2),
		value === undefined ? null : intervalText(value.interval),
		value?.responses ?? 0,
		correlation === undefined ? null : figureOf(correlation),
		discrimination?.kind === 'found' ? roundTo(discrimination.value.discrimination, 2) : null,
		rates?.omitted.count ?? 0,
		rates?.invalid.count ?? 0,
	];
}

/** All places of one version together, where there are several and every response earned all points or none. */
function totalRows(stands: readonly Stand[]): readonly (readonly ReportCell[])[] {
	const versions = [...new Set(stands.map(({ result, column }) => result.places[column]?.record.version ?? 0))];
	return versions.flatMap((version) => {
		const own = stands.filter(({ result, column }) => result.places[column]?.record.version === version);
		const values = own.flatMap(({ result, column }) => {
			const answers = result.table.columns[column];
			return (answers && foundValue(measureDifficulty(answers))) ?? [];
		});
		if (own.length < 2 || values.some(({ isRightOrWrong }) => !isRightOrWrong)) return [];
		const sum = (count: (value: (typeof values)[number]) => number): number =>
			values.reduce((total, value) => total + count(value), 0);
		const [full, responses] = [sum((value) => value.full), sum((value) => value.responses)];
		const sittings = own.reduce((total, stand) => total + stand.sittings, 0);
		return [
			[
				'All of these',
				'',
				version,
				sittings,
				roundTo(full / responses, 2),
				intervalText(wilsonInterval(full, responses)),
				responses,
				null,
				null,
				null,
				null,
			],
		];
	});
}
