import { printMathematics } from '../../../item-bank/expression/print.ts';
import { speakMathematics } from '../../../item-bank/expression/speak.ts';
import { parseRichText } from '../../../item-bank/markup/rich-text.ts';
import type { Box } from './box.ts';
import { textWidth } from './fonts.ts';
import type { Block, FontName, Mark } from './marks.ts';

/** A stretch of text in one font. Mathematics carries how it is read aloud and is broken over lines only in need. */
export interface Span {
	readonly text: string;
	readonly font: FontName;
	readonly spoken?: string;
}

/** How lines are set: size and line step in points. */
export interface TextStyle {
	readonly size: number;
	readonly leading: number;
	readonly align?: 'left' | 'center' | 'right';
	readonly tone?: string;
}

interface Piece {
	readonly span: Span;
	readonly text: string;
}

/** Pieces that no line break may part, and whether a blank stands before them. */
interface Word {
	readonly pieces: readonly Piece[];
	readonly width: number;
	readonly isSpaced: boolean;
}

/** The spans of a rich text: plain text in one font, mathematics in the same with its reading. */
export function richSpans(text: string, font: FontName): readonly Span[] {
	return parseRichText(text).map((run) =>
		run.kind === 'text'
			? { text: run.text, font }
			: { text: printMathematics(run.mathematics), font, spoken: speakMathematics(run.mathematics) },
	);
}

/** Breaks spans into lines at most `width` points wide; words wider than a line are broken where they must. */
export function layText(spans: readonly Span[], width: number, style: TextStyle): Box {
	const { size, leading, align = 'left' } = style;
	const lines = breakLines(splitWords(spans, size), width, size);
	const widths = lines.map((line) => lineWidth(line, size));
	// The first baseline stands where a line of this leading puts it: centred on the capitals.
	const rise = (leading + size * 0.66) / 2;
	return {
		width: align === 'left' ? Math.max(0, ...widths) : width,
		height: lines.length * leading,
		place(x, y) {
			return lines.flatMap((line, index) => {
				const slack = width - (widths[index] ?? 0);
				const shift = align === 'left' ? 0 : align === 'center' ? slack / 2 : slack;
				// The blank at the end of a line parts its last word from the next one for whoever reads the text out of the page.
				const isLast = index === lines.length - 1;
				return drawLine(line, x + shift, y + index * leading + rise, style, isLast ? '' : ' ');
			});
		},
	};
}

/** The widest that spans become on one line. */
export function lineOf(spans: readonly Span[], size: number): number {
	return spans.reduce((sum, { text, font }) => sum + textWidth(text, font, size), 0);
}

function splitWords(spans: readonly Span[], size: number): readonly Word[] {
	const words: { pieces: Piece[]; isSpaced: boolean }[] = [];
	let isSpaced = true;
	for (const span of spans) {
		const parts = span.spoken === undefined ? span.text.split(/([ \n\t]+)/) : [span.text];
		for (const text of parts) {
			if (text === '') continue;
			if (span.spoken === undefined && /^[ \n\t]/.test(text)) isSpaced = true;
			else {
				const last = words.at(-1);
				// A unit stays with its number.
				const isUnit = last?.pieces.at(-1)?.span.spoken !== undefined && /^°/.test(text);
				if (last && (!isSpaced || isUnit)) last.pieces.push({ span, text: isSpaced ? ` ${text}` : text });
				else words.push({ pieces: [{ span, text }], isSpaced: words.length > 0 });
				isSpaced = false;
			}
		}
	}
	return words.map((word) => ({ ...word, width: piecesWidth(word.pieces, size) }));
}

function breakLines(words: readonly Word[], width: number, size: number): readonly (readonly Word[])[] {
	const lines: Word[][] = [];
	let line: Word[] = [];
	let used = 0;
	for (const word of words.flatMap((word) => (word.width > width ? breakWord(word, width, size) : [word]))) {
		const gap = line.length > 0 && word.isSpaced ? spaceWidth(word, size) : 0;
		if (line.length > 0 && used + gap + word.width > width + 0.01) {
			lines.push(line);
			[line, used] = [[], 0];
		} else used += gap;
		line.push(word);
		used += word.width;
	}
	if (line.length > 0) lines.push(line);
	return lines;
}

/** Breaks an overlong word before the operators of its mathematics, and then between any two characters. */
function breakWord(word: Word, width: number, size: number): readonly Word[] {
	const parts = word.pieces.flatMap(({ span, text }) =>
		text.split(/(?<= )(?=[+−×÷=<>≤≥] )/).map((part) => ({ span, text: part })),
	);
	const fitting = parts.flatMap((piece) =>
		piecesWidth([piece], size) <= width
			? [piece]
			: [...piece.text].map((character) => ({ span: piece.span, text: character })),
	);
	return fitting.map((piece, index) => ({
		pieces: [piece],
		width: piecesWidth([piece], size),
		isSpaced: index === 0 && word.isSpaced,
	}));
}

function piecesWidth(pieces: readonly Piece[], size: number): number {
	return pieces.reduce((sum, { span, text }) => sum + textWidth(text, span.font, size), 0);
}

function spaceWidth(word: Word, size: number): number {
	return textWidth(' ', word.pieces[0]?.span.font ?? 'serif', size);
}

function lineWidth(line: readonly Word[], size: number): number {
	return line.reduce(
		(sum, word, index) => sum + word.width + (index > 0 && word.isSpaced ? spaceWidth(word, size) : 0),
		0,
	);
}

/** Neighbouring pieces of one span are drawn in one call. */
function drawLine(
	line: readonly Word[],
	x: number,
	y: number,
	style: TextStyle,
	ending: string,
): readonly (Block | Mark)[] {
	const runs: { span: Span; text: string }[] = [];
	for (const [index, word] of line.entries()) {
		let blank = index > 0 && word.isSpaced ? ' ' : '';
		for (const { span, text } of word.pieces) {
			const last = runs.at(-1);
			const isSame = last?.span === span || (last?.span.font === span.font && !last.span.spoken && !span.spoken);
			if (last && isSame) last.text += blank + text;
			else if (last && blank !== '' && span.spoken !== undefined) {
				last.text += blank;
				runs.push({ span, text });
			} else runs.push({ span, text: blank + text });
			blank = '';
		}
	}
	const end = runs.at(-1);
	if (end) end.text += ending;
	let left = x;
	return runs.map(({ span, text }) => {
		const mark: Mark = {
			kind: 'text',
			x: left,
			y,
			text,
			font: span.font,
			size: style.size,
			...(style.tone === undefined ? {} : { tone: style.tone }),
		};
		left += textWidth(text, span.font, style.size);
		return span.spoken === undefined ? mark : { tag: 'Formula', alt: span.spoken, children: [mark] };
	});
}
