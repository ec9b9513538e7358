import { parseMathematics } from '../../../item-bank/expression/parse.ts';
import { printMathematics } from '../../../item-bank/expression/print.ts';
import { speakMathematics } from '../../../item-bank/expression/speak.ts';
import type { Figure, StemBlock } from '../../../item-bank/types.ts';
import { type Box, pad, wrap } from '../page/box.ts';
import { figureSize, layFigure } from '../page/figure.ts';
import type { FontName } from '../page/marks.ts';
import { linesOf } from '../page/prose.ts';
import { layText, richSpans, type Span } from '../page/text.ts';
import { PrintRoomError } from '../print-errors.ts';
import type { BookletStyle } from './styles.ts';
import { layTable } from './table.ts';

/** Where an item is laid out: the widths of its text and of its figures, points, and its id for messages. */
export interface ItemRoom {
	readonly item: string;
	readonly width: number;
	/** Figures may reach further left than text, under the number of the item. */
	readonly figureWidth: number;
	readonly style: BookletStyle;
}

/** One block of a stem. Throws PrintRoomError for a figure wider than the page. */
export function layStemBlock(block: StemBlock, room: ItemRoom): Box {
	const { style, width } = room;
	const text = linesOf(style.type, style.type.item);
	switch (block.kind) {
		case 'paragraph':
			return wrap(layText(richSpans(block.text, 'serif'), width, text), { tag: 'P' });
		case 'mathematics': {
			const line = layText([mathematicsSpan(block.math, 'serif')], width - 18, text);
			return pad(wrap(line, { tag: 'P' }), { left: 18, top: 2, bottom: 2 });
		}
		case 'figure':
			return layScaledFigure(block.figure, room);
		case 'table':
			return layTable(block, room);
		default:
			return block satisfies never;
	}
}

/** Mathematics as a span with its reading. */
export function mathematicsSpan(math: string, font: FontName): Span {
	const mathematics = parseMathematics(math);
	return { text: printMathematics(mathematics), font, spoken: speakMathematics(mathematics) };
}

/** A figure at true scale, in large print half as large again where the page allows. */
export function layScaledFigure(figure: Figure, room: ItemRoom): Box {
	const { figureWidth, item } = room;
	const { width } = figureSize(figure);
	if (width > figureWidth + 0.5) {
		const facts = { item, needed: (width * 25.4) / 72, available: (figureWidth * 25.4) / 72 };
		throw new PrintRoomError({ code: 'print-figure-too-wide', ...facts });
	}
	const scale = Math.min(room.style.type.figure, figureWidth / width);
	const box = layFigure(figure, scale);
	return box.width <= room.width ? box : pad(box, { left: room.width + room.style.frame.bleed - box.width });
}
