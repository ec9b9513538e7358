import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import { columnCount, columnSymbols, encodeGrid, type GridColumns } from '../../../item-bank/responses/grid.ts';
import type { GriddedItem, GridProfile } from '../../../item-bank/types.ts';
import { columnIdentifier, markIdentifier, symbolIdentifier, variables } from '../identifiers.ts';
import { writeBlocks } from './blocks.ts';
import { KeyTooWideError } from './gridded.ts';
import type { WritingDesk, WrittenInteraction } from './interaction.ts';
import { listUpTo, nameVariable, setOutcome, when, writeValue } from './processing.ts';
import { speakPiece } from './speak-piece.ts';

/**
 * A gridded item as its answer grid: one inlineChoiceInteraction a column in the row of a table, each with its marks and
 * "blank", so that a mark can be taken back. Every gridding that decodeGrid reads as the key is listed and earns the score;
 * MARK-1, MARK-2 … say what each column shows. Throws KeyTooWideError.
 */
export function writeGridColumns(
	item: GriddedItem,
	value: number,
	profile: GridProfile,
	desk: WritingDesk,
): WrittenInteraction {
	const griddings = encodeGrid(value, profile);
	const [plainest] = griddings;
	if (!plainest) throw new KeyTooWideError(value, profile);
	const columns = listUpTo(columnCount(profile));
	const caption = `Answer grid${item.unit === undefined ? '' : ` (${item.unit})`}`;
	const head = columns.map((column) => element('th', { scope: 'col' }, [nameColumn(column, profile)]));
	const row = columns.map((column) => element('td', {}, [writeColumn(column, profile, desk)]));
	const grid = element('table', {}, [
		element('caption', {}, [caption]),
		element('thead', {}, [element('tr', {}, head)]),
		element('tbody', {}, [element('tr', {}, row)]),
	]);
	return {
		declarations: columns.map((column) => declareColumn(column, plainest)),
		body: [...writeBlocks(desk.stem, desk), element('p', {}, [direct(profile)]), grid],
		scoring: {
			outcomes: columns.map((column) => declareMark(column)),
			rules: [...columns.map(readColumn), scoreGriddings(griddings)],
		},
	};
}

function nameColumn(column: number, { signColumn }: GridProfile): string {
	if (signColumn !== 'first') return `Column ${column + 1}`;
	return column === 0 ? 'Sign' : `Digit ${column}`;
}

/** What a student is told of the grid: what the paper tells, without its boxes and bubbles. */
function direct({ signColumn, placement, symbols, zeros }: GridProfile): string {
	const isLeft = placement === 'left-when-negative';
	const first = signColumn === 'first';
	return [
		'Choose one mark in each column you need, with no blank inside the number, and leave the other columns blank.',
		...(first ? ['For a negative number choose the minus sign in the first column.'] : []),
		...(first && isLeft ? ['Start a negative number in the column right after the sign.'] : []),
		...(signColumn === 'floating'
			? ['For a negative number choose the minus sign in the column right before the first digit.']
			: []),
		...(symbols.includes('+') ? ['A plus sign may be left out.'] : []),
		...(zeros === 'strict' ? ['Put no zeros in front of the number.'] : []),
	].join(' ');
}

function writeColumn(column: number, profile: GridProfile, { support }: WritingDesk): MarkupElement {
	const symbols = columnSymbols(profile, column);
	const attributes = { responseIdentifier: columnIdentifier(column), shuffle: 'false' };
	return element('inlineChoiceInteraction', attributes, [
		element('inlineChoice', { identifier: symbolIdentifier(undefined) }, ['blank']),
		...symbols.map((symbol) => {
			const shown = symbol === '-' ? '−' : symbol;
			const spoken = support('spoken', () => speakPiece(shown), shown);
			return element('inlineChoice', { identifier: symbolIdentifier(symbol), ...spoken }, [shown]);
		}),
	]);
}

function declareColumn(column: number, plainest: GridColumns): MarkupElement {
	const attributes = { identifier: columnIdentifier(column), cardinality: 'single', baseType: 'identifier' };
	const correct = element('value', {}, [symbolIdentifier(plainest[column]?.[0])]);
	return element('responseDeclaration', attributes, [element('correctResponse', {}, [correct])]);
}

function declareMark(column: number): MarkupElement {
	const attributes = { identifier: markIdentifier(column), cardinality: 'single', baseType: 'identifier' };
	const blank = element('value', {}, [symbolIdentifier(undefined)]);
	return element('outcomeDeclaration', attributes, [element('defaultValue', {}, [blank])]);
}

/** A column nobody touched shows what "blank" shows. */
function readColumn(column: number): MarkupElement {
	const response = nameVariable(columnIdentifier(column));
	const isMarked = element('not', {}, [element('isNull', {}, [response])]);
	return when(isMarked, [setOutcome(markIdentifier(column), response)]);
}

function scoreGriddings(griddings: readonly GridColumns[]): MarkupElement {
	const ways = griddings.map((columns) =>
		element(
			'and',
			{},
			columns.map(([symbol], column) =>
				element('match', {}, [
					nameVariable(markIdentifier(column)),
					writeValue('identifier', symbolIdentifier(symbol)),
				]),
			),
		),
	);
	const score = (value: string): MarkupElement => setOutcome(variables.score, writeValue('float', value));
	return when(element('or', {}, ways), [score('1')], [score('0')]);
}
