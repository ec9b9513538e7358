import { type Box, pad, stack, wrap } from './box.ts';
import type { FlowBox } from './page-boxes.ts';
import type { TypeScale } from './paper.ts';
import { layText, richSpans, type Span, type TextStyle } from './text.ts';

/** Where prose of the bank is set: its width in points and its sizes. */
export interface ProseRoom {
	readonly width: number;
	readonly type: TypeScale;
}

/** Lines of a size with the leading of a scale. */
export function linesOf(type: TypeScale, size: number): TextStyle {
	return { size, leading: size * type.leading };
}

/** The title of a document. */
export function layTitle(text: string, { width, type }: ProseRoom): FlowBox {
	const lines = layText([{ text, font: 'sans-bold' }], width, { size: type.title, leading: type.title * 1.15 });
	return { box: pad(wrap(lines, { tag: 'H1' }), { bottom: type.text * 0.6 }) };
}

/** A heading, kept with what follows it. */
export function layHeading(text: string, { width, type }: ProseRoom): FlowBox {
	const size = type.heading * 1.15;
	const lines = layText([{ text, font: 'sans-bold' }], width, { size, leading: size * 1.3 });
	return { box: pad(wrap(lines, { tag: 'H2' }), { top: type.text * 0.8 }), isHeading: true };
}

/** A paragraph of the bank; mathematics stands between backticks. */
export function layParagraph(text: string, { width, type }: ProseRoom): FlowBox {
	return { box: wrap(layText(richSpans(text, 'sans'), width, linesOf(type, type.text)), { tag: 'P' }) };
}

/** A list with a number or a dash before each entry. */
export function layList(texts: readonly string[], room: ProseRoom, labels: 'numbers' | 'dashes'): Box {
	const entries = texts.map((text, index) => {
		const label = labels === 'numbers' ? `${index + 1}` : '–';
		return layEntry({ text: label, font: 'sans-bold' }, richSpans(text, 'sans'), room);
	});
	return wrap(stack(entries, room.type.text * 0.35), { tag: 'L' });
}

/** One entry of a list: what stands before it, and its text beside that. */
export function layEntry(label: Span, text: readonly Span[], room: ProseRoom, indent = room.type.text * 1.4): Box {
	const lines = linesOf(room.type, room.type.text);
	const mark = layText([label], indent, lines);
	const body = layText(text, room.width - indent, lines);
	return {
		width: room.width,
		height: Math.max(mark.height, body.height),
		place: (x, y) => [
			{
				tag: 'LI',
				children: [
					{ tag: 'Lbl', children: mark.place(x, y) },
					{ tag: 'LBody', children: body.place(x + indent, y) },
				],
			},
		],
	};
}
