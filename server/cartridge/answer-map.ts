import { stringify } from 'csv-stringify/sync';
import { describeFigure } from '../../item-bank/figures/describe-figure.ts';
import type { FormRecord } from '../../item-bank/items/record.ts';
import { printRichText } from '../../item-bank/markup/rich-text.ts';
import type { OptionContent } from '../../item-bank/types.ts';
import { guardFormula, notice } from '../qti/answer-map.ts';
import { optionIdentifier } from '../qti/identifiers.ts';
import { writeMathematics } from '../qti/write/blocks.ts';
import type { Question } from './question.ts';
import { type Weighing, weightOf } from './weights.ts';
import { wholeScore } from './write/names.ts';

/**
 * The answer map of a cartridge as CSV: one row a question, with what its options mean in the bank. UTF-8 with a byte-order
 * mark, lines end with CR LF. Every row opens with a notice that the file holds keys.
 */
export function writeCartridgeMap(form: FormRecord, questions: readonly Question[], weighing: Weighing): string {
	const most = Math.max(0, ...questions.map((question) => ('options' in question ? question.options.length : 0)));
	const texts = Array.from({ length: most }, (_, index) => `text of ${optionIdentifier(index)}`);
	const rows = questions.map((question) => describeRow(form, question, { most, weighing }).map(guardFormula));
	return stringify([[...columns, ...texts], ...rows], { record_delimiter: 'windows', bom: true });
}

const columns: readonly string[] = [
	'notice',
	'position',
	'part',
	'question',
	'section',
	'item',
	'version',
	'platform item',
	'title',
	'kind',
	'converted to',
	'points',
	'weight',
	'key',
	'item score',
	'option identifiers',
	'meaning in the bank',
];

function describeRow(
	form: FormRecord,
	question: Question,
	{ most, weighing }: { readonly most: number; readonly weighing: Weighing },
): readonly string[] {
	const { record, position, part, index, section, identifier, title, kind, conversion, points } = question;
	const options = 'options' in question ? question.options : [];
	const { key, scoring } = describeKey(question);
	return [
		notice,
		String(position),
		String(part ?? ''),
		String(index ?? ''),
		form.form.sections[section]?.title ?? '',
		record.id,
		String(record.version),
		identifier,
		title,
		kind,
		conversion ?? '',
		String(Math.round(points * 1e6) / 1e6),
		String(weightOf(question, weighing)),
		key,
		scoring,
		options.map((_, at) => optionIdentifier(at)).join(' '),
		options.map(({ bank }) => bank).join('; '),
		...Array.from({ length: most }, (_, at) => describeContent(options[at]?.content)),
	];
}

function describeKey(question: Question): { readonly key: string; readonly scoring: string } {
	switch (question.asks) {
		case 'choice':
			return { key: question.right.map(optionIdentifier).join(' '), scoring: `${wholeScore} for the key, otherwise 0` };
		case 'several':
			return {
				key: question.right.map(optionIdentifier).join(' '),
				scoring: `${wholeScore} for exactly these options, otherwise 0`,
			};
		case 'entry':
			return {
				key: question.spellings[0] ?? '',
				scoring: `${wholeScore} for every spelling of the key, otherwise 0`,
			};
		case 'text': {
			const most = question.levels[0]?.points ?? 1;
			const levels = question.levels.map(({ points, descriptor }) => {
				const percent = Math.round((points / most) * wholeScore * 1e4) / 1e4;
				return `enter ${percent} percent for ${points} of ${most} (${printRichText(descriptor)})`;
			});
			return { key: '', scoring: `rated by a scorer: ${levels.join('; ')}` };
		}
	}
}

function describeContent(content: OptionContent | undefined): string {
	switch (content?.kind) {
		case 'mathematics':
			return writeMathematics(content.math);
		case 'text':
			return printRichText(content.text);
		case 'figure':
			return describeFigure(content.figure);
		case undefined:
			return '';
	}
}
