import type { OptionContent } from '../../../item-bank/types.ts';
import { type Box, beside, pad, stack, wrap } from '../page/box.ts';
import { figureSize } from '../page/figure.ts';
import { textWidth } from '../page/fonts.ts';
import type { Block } from '../page/marks.ts';
import { linesOf } from '../page/prose.ts';
import { layText, lineOf, richSpans, type Span } from '../page/text.ts';
import { type ItemRoom, layScaledFigure, mathematicsSpan } from './stem.ts';

/** What an option shows: its content, or a line of text. */
export type ShownContent = OptionContent | { readonly kind: 'spans'; readonly spans: readonly Span[] };

/** An option, an entry to order or to match, or a choice for a gap. */
export interface ShownOption {
	readonly id: string;
	readonly content: ShownContent;
}

/** Draws what stands before an option instead of its letter; used for bubbles and blanks. */
export type OptionLabel = (option: Pick<ShownOption, 'id'>) => Box;

/** Room for the letter of an option, points. */
export function optionIndent({ style }: ItemRoom): number {
	return style.type.item * 1.7;
}

/** Options as a list: beside each other when all are short, else in two columns, else under each other. */
export function layOptions(options: readonly ShownOption[], room: ItemRoom, label?: OptionLabel): Box {
	const { type } = room.style;
	const letterWidth = optionIndent(room);
	const natural = Math.max(...options.map(({ content }) => naturalWidth(content, room))) + letterWidth;
	const gap = 14;
	const inRow = [options.length, 2, 1].find(
		(count) => count * natural + (count - 1) * gap <= room.width && count <= options.length && count <= 5,
	);
	const columns = inRow ?? 1;
	const step = (room.width - (columns - 1) * gap) / columns;
	const boxes = options.map((option) =>
		layOption(option, { ...room, width: step, figureWidth: columns === 1 ? room.figureWidth : step }, label),
	);
	const rows: Box[] = [];
	for (let index = 0; index < boxes.length; index += columns) {
		const cells = boxes.slice(index, index + columns).map((box) => ({ ...box, width: step }));
		rows.push(beside(cells, gap));
	}
	return wrap(stack(rows, type.item * 0.45), { tag: 'L' });
}

/** One option with its letter, or what stands for it. */
export function layOption(option: ShownOption, room: ItemRoom, label: OptionLabel | undefined): Box {
	const { type } = room.style;
	const indent = optionIndent(room);
	const letter = label ? label(option) : layLetter(option.id, room);
	const { content } = option;
	// A figure that leaves no room for the letter beside it stands below it.
	const isBelow = content.kind === 'figure' && figureSize(content.figure).width * type.figure > room.width - indent;
	const [left, top] = isBelow ? [0, letter.height] : [indent, 0];
	const body = layContent(content, { ...room, width: room.width - left, figureWidth: room.figureWidth - left });
	return {
		width: room.width,
		height: Math.max(top + body.height, letter.height),
		place: (x, y): readonly Block[] => [
			{
				tag: 'LI',
				children: [
					{ tag: 'Lbl', children: letter.place(x, y) },
					{ tag: 'LBody', children: body.place(x + left, y + top) },
				],
			},
		],
	};
}

/** The letter of an option. */
export function layLetter(id: string, { style }: ItemRoom): Box {
	const { item, leading } = style.type;
	const text = id.toUpperCase();
	return {
		width: textWidth(text, 'sans-bold', item),
		height: item * leading,
		place: (x, y) => [
			{ kind: 'text', x, y: y + (item * leading + item * 0.66) / 2, text, font: 'sans-bold', size: item },
		],
	};
}

function layContent(content: ShownContent, room: ItemRoom): Box {
	if (content.kind === 'figure') return pad(layScaledFigure(content.figure, room), { bottom: 4 });
	const spans = contentSpans(content);
	return layText(spans, room.width, linesOf(room.style.type, room.style.type.item));
}

function contentSpans(content: Exclude<ShownContent, { kind: 'figure' }>): readonly Span[] {
	if (content.kind === 'spans') return content.spans;
	return content.kind === 'text' ? richSpans(content.text, 'serif') : [mathematicsSpan(content.math, 'serif')];
}

function naturalWidth(content: ShownContent, room: ItemRoom): number {
	const { type } = room.style;
	if (content.kind === 'figure') return figureSize(content.figure).width * type.figure;
	return lineOf(contentSpans(content), type.item) + 2;
}
