import { parseMathematics } from '../../../item-bank/expression/parse.ts';
import { printMathematics } from '../../../item-bank/expression/print.ts';
import { printRichText } from '../../../item-bank/markup/rich-text.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import type { StemBlock, TableBlock } from '../../../item-bank/types.ts';
import { stemImage } from './images.ts';
import type { FigureWriter, WritingDesk } from './interaction.ts';

/** Text of one expression or statement as students read it, minus signs as U+2212. */
export function writeMathematics(text: string): string {
	return printMathematics(parseMathematics(text));
}

/** The blocks of a stem as children of itemBody. Figures are numbered from 1. */
export function writeBlocks(stem: readonly StemBlock[], writeFigure: FigureWriter): readonly MarkupElement[] {
	let figures = 0;
	return stem.map((block) => {
		switch (block.kind) {
			case 'paragraph':
				return element('p', {}, [printRichText(block.text)]);
			case 'mathematics':
				return element('p', {}, [writeMathematics(block.math)]);
			case 'figure':
				figures += 1;
				return element('p', {}, [writeFigure(block.figure, stemImage(figures))]);
			case 'table':
				return writeTable(block);
		}
	});
}

/** A stem above an interaction that has a prompt. */
export interface WrittenQuestion {
	readonly above: readonly MarkupElement[];
	/** The prompt, or nothing. */
	readonly prompt: readonly MarkupElement[];
}

/**
 * A stem that ends with a paragraph ends with its question: that paragraph becomes the prompt, which readers announce
 * together with what there is to answer.
 */
export function writeQuestion({ stem, writeFigure }: WritingDesk): WrittenQuestion {
	const last = stem.at(-1);
	if (last?.kind !== 'paragraph') return { above: writeBlocks(stem, writeFigure), prompt: [] };
	const prompt = element('prompt', {}, [printRichText(last.text)]);
	return { above: writeBlocks(stem.slice(0, -1), writeFigure), prompt: [prompt] };
}

function writeTable(table: TableBlock): MarkupElement {
	const header = table.header.map((cell) => element('th', { scope: 'col' }, [printRichText(cell)]));
	const rows = table.rows.map((row) =>
		element(
			'tr',
			{},
			row.map((cell) => element('td', {}, [printRichText(cell)])),
		),
	);
	return element('table', {}, [
		...(table.caption === undefined ? [] : [element('caption', {}, [printRichText(table.caption)])]),
		element('thead', {}, [element('tr', {}, header)]),
		element('tbody', {}, rows),
	]);
}
