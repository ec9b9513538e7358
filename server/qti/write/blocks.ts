import { parseMathematics } from '../../../item-bank/expression/parse.ts';
import { printMathematics } from '../../../item-bank/expression/print.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import type { StemBlock, TableBlock } from '../../../item-bank/types.ts';
import { type SupportWriter, writeSpokenMathematics, writeSpokenText } from './catalogs.ts';
import { stemImage } from './images.ts';
import type { WritingDesk } from './interaction.ts';

/** Text of one expression or statement as students read it, minus signs as U+2212. */
export function writeMathematics(text: string): string {
	return printMathematics(parseMathematics(text));
}

/** The blocks of a stem as children of itemBody. Figures are numbered from 1. */
export function writeBlocks(
	stem: readonly StemBlock[],
	{ writeFigure, support }: Pick<WritingDesk, 'writeFigure' | 'support'>,
): readonly MarkupElement[] {
	let figures = 0;
	return stem.map((block) => {
		switch (block.kind) {
			case 'paragraph':
				return element('p', ...writeSpokenText(block.text, support));
			case 'mathematics':
				return element('p', ...writeSpokenMathematics(block.math, support));
			case 'figure':
				figures += 1;
				return element('p', {}, [writeFigure(block.figure, stemImage(figures))]);
			case 'table':
				return writeTable(block, support);
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
export function writeQuestion(desk: WritingDesk): WrittenQuestion {
	const { stem } = desk;
	const last = stem.at(-1);
	if (last?.kind !== 'paragraph') return { above: writeBlocks(stem, desk), prompt: [] };
	const above = writeBlocks(stem.slice(0, -1), desk);
	return { above, prompt: [element('prompt', ...writeSpokenText(last.text, desk.support))] };
}

function writeTable(table: TableBlock, support: SupportWriter): MarkupElement {
	const write = (name: string, text: string, attributes = {}): MarkupElement => {
		const [spoken, content] = writeSpokenText(text, support);
		return element(name, { ...attributes, ...spoken }, content);
	};
	const header = table.header.map((cell) => write('th', cell, { scope: 'col' }));
	const rows = table.rows.map((row) =>
		element(
			'tr',
			{},
			row.map((cell) => write('td', cell)),
		),
	);
	return element('table', {}, [
		...(table.caption === undefined ? [] : [write('caption', table.caption)]),
		element('thead', {}, [element('tr', {}, header)]),
		element('tbody', {}, rows),
	]);
}
