import { stringify } from 'csv-stringify/sync';
import { entryListsOf } from '../../item-bank/items/entries.ts';
import type { FormRecord } from '../../item-bank/items/record.ts';
import { describeKey } from './answer-keys.ts';
import { entryIdentifier, optionIdentifier } from './identifiers.ts';
import type { Placement } from './placement.ts';
import { mostLetters } from './write/point-choice.ts';

/** How every row of an answer map opens. */
export const notice = 'holds keys: keep confidential';

/**
 * The answer map as CSV: one row an item, or a part of a set, so that a platform's results can come back. UTF-8 with a
 * byte-order mark, lines end with CR LF. Every row opens with a notice that the file holds keys.
 */
export function writeAnswerMap(form: FormRecord | undefined, placements: readonly Placement[]): string {
	return [...writeAnswerRuns(form, placements)].join('');
}

/** The answer map in runs of rows, for who has other things to do in between. */
export function* writeAnswerRuns(form: FormRecord | undefined, placements: readonly Placement[]): Generator<string> {
	const shown = listShown(placements);
	const options = { record_delimiter: 'windows' } as const;
	yield stringify([[...columns, ...shown.map((identifier) => `text of ${identifier}`)]], { ...options, bom: true });
	for (let from = 0; from < placements.length; from += 100) {
		const rows = placements.slice(from, from + 100).map((placement) => describeRow(form, placement, shown));
		yield stringify(
			rows.map((row) => row.map(guardFormula)),
			options,
		);
	}
}

const columns: readonly string[] = [
	'notice',
	'position',
	'part',
	'section',
	'item',
	'version',
	'platform item',
	'title',
	'kind',
	'points',
	'key',
	'item score',
	'option identifiers',
	'option ids in the bank',
];

/** The options that any item shows a text for: A, B … then those of matches. */
function listShown(placements: readonly Placement[]): readonly string[] {
	let [letters, left, right] = [0, 0, 0];
	for (const { record, pointStyle } of placements) {
		const { item } = record;
		if (item.kind === 'inline-choice') letters = Math.max(letters, item.choices.length);
		if (item.kind === 'point' && pointStyle === 'choice') letters = Math.max(letters, mostLetters);
		for (const { path, entries } of entryListsOf(item)) {
			if (path === '/left') left = Math.max(left, entries.length);
			else if (path === '/right') right = Math.max(right, entries.length);
			else letters = Math.max(letters, entries.length);
		}
	}
	const count = (length: number, identify: (index: number) => string): readonly string[] =>
		Array.from({ length }, (_, index) => identify(index));
	return [
		...count(letters, optionIdentifier),
		...count(left, (index) => entryIdentifier('left', index)),
		...count(right, (index) => entryIdentifier('right', index)),
	];
}

function describeRow(form: FormRecord | undefined, placement: Placement, shown: readonly string[]): string[] {
	const { record, position, part, section, identifier, title, points } = placement;
	const { right, scoring, options } = describeKey(placement);
	return [
		notice,
		String(position),
		part === undefined ? '' : String(part),
		form?.form.sections[section]?.title ?? '',
		record.id,
		String(record.version),
		identifier,
		title,
		record.item.kind,
		String(points),
		right,
		scoring,
		options.map((option) => option.identifier).join(' '),
		options.map(({ bank }) => bank).join(' '),
		...shown.map((each) => options.find((option) => option.identifier === each)?.text ?? ''),
	];
}

/**
 * Keeps spreadsheets from running a cell as a formula: text that opens with = + - @, a tab or a line end gets an apostrophe
 * in front. Whole numbers such as -5 stay numbers; our own texts write minus as U+2212, which opens no formula.
 */
export function guardFormula(cell: string): string {
	if (/^[+-]?\d+$/.test(cell)) return cell;
	return /^[=+\-@\t\r\n]/.test(cell) ? `'${cell}` : cell;
}
