import { stringify } from 'csv-stringify/sync';
import { describeFigure } from '../../item-bank/figures/describe-figure.ts';
import { invariant } from '../../item-bank/invariant.ts';
import { computeKey } from '../../item-bank/items/key.ts';
import type { FormRecord } from '../../item-bank/items/record.ts';
import { printRichText } from '../../item-bank/markup/rich-text.ts';
import type { OptionContent } from '../../item-bank/types.ts';
import { optionIdentifier } from './identifiers.ts';
import type { Placement } from './placement.ts';
import { writeMathematics } from './write/blocks.ts';

const notice = 'holds keys: keep confidential';

/**
 * The answer map as CSV: one row an item, so that a platform's results can come back. UTF-8 with a byte-order mark, lines
 * end with CR LF. Every row opens with a notice that the file holds keys.
 */
export function writeAnswerMap(form: FormRecord | undefined, placements: readonly Placement[]): string {
	return [...writeAnswerRuns(form, placements)].join('');
}

/** The answer map in runs of rows, for who has other things to do in between. */
export function* writeAnswerRuns(form: FormRecord | undefined, placements: readonly Placement[]): Generator<string> {
	const widest = placements.reduce((most, { record }) => Math.max(most, optionsOf(record.item).length), 0);
	const letters = Array.from({ length: widest }, (_, index) => optionIdentifier(index));
	const options = { record_delimiter: 'windows' } as const;
	yield stringify([[...columns, ...letters.map((letter) => `text of ${letter}`)]], { ...options, bom: true });
	for (let from = 0; from < placements.length; from += 100) {
		const rows = placements.slice(from, from + 100).map((placement) => describeRow(form, placement, letters));
		yield stringify(
			rows.map((row) => row.map(guardFormula)),
			options,
		);
	}
}

const columns: readonly string[] = [
	'notice',
	'position',
	'section',
	'item',
	'version',
	'platform item',
	'title',
	'kind',
	'points',
	'key',
	'option identifiers',
	'option ids in the bank',
];

function describeRow(form: FormRecord | undefined, placement: Placement, letters: readonly string[]): string[] {
	const { record, position, section, identifier, title, points } = placement;
	const { item } = record;
	const options = optionsOf(item);
	const key = computeKey(item);
	invariant(key.kind === 'value' || key.kind === 'options', 'exported items have a number or options as key');
	const right =
		key.kind === 'value'
			? String(key.value)
			: options.flatMap(({ id }, index) => (key.options.includes(id) ? [optionIdentifier(index)] : [])).join(' ');
	return [
		notice,
		String(position),
		form?.form.sections[section]?.title ?? '',
		record.id,
		String(record.version),
		identifier,
		title,
		item.kind,
		String(points),
		right,
		options.map((_, index) => optionIdentifier(index)).join(' '),
		options.map(({ id }) => id).join(' '),
		...letters.map((_, index) => {
			const option = options[index];
			return option ? describeContent(option.content) : '';
		}),
	];
}

function optionsOf(
	item: Placement['record']['item'],
): readonly { readonly id: string; readonly content: OptionContent }[] {
	return item.kind === 'gridded' ? [] : item.options;
}

function describeContent(content: OptionContent): string {
	switch (content.kind) {
		case 'mathematics':
			return writeMathematics(content.math);
		case 'text':
			return printRichText(content.text);
		case 'figure':
			return describeFigure(content.figure);
	}
}

/**
 * Keeps spreadsheets from running a cell as a formula: text that opens with = + - @, a tab or a line end gets an apostrophe
 * in front. Whole numbers such as -5 stay numbers; our own texts write minus as U+2212, which opens no formula.
 */
function guardFormula(cell: string): string {
	if (/^[+-]?\d+$/.test(cell)) return cell;
	return /^[=+\-@\t\r\n]/.test(cell) ? `'${cell}` : cell;
}
