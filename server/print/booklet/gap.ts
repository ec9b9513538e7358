import { parseMathematics } from '../../../item-bank/expression/parse.ts';
import { speakMathematics } from '../../../item-bank/expression/speak.ts';
import { gapSides, printSigns } from '../../../item-bank/items/kinds/inline-choice.ts';
import type { InlineChoiceItem } from '../../../item-bank/types.ts';
import { type Box, pad, wrap } from '../page/box.ts';
import { textWidth } from '../page/fonts.ts';
import { black, type Mark } from '../page/marks.ts';
import type { ShownOption } from './options.ts';
import type { ItemRoom } from './stem.ts';

/** How signs that stand alone are read aloud. */
const spokenSigns: Readonly<Record<string, string>> = {
	'<': 'is less than',
	'>': 'is greater than',
	'=': 'is equal to',
	'≤': 'is less than or equal to',
	'≥': 'is greater than or equal to',
	'+': 'plus',
	'−': 'minus',
	'×': 'times',
	'÷': 'divided by',
};

/** A piece of mathematics as it is read aloud; pieces that say nothing alone are spelt as printed. */
export function speakPiece(piece: string): string {
	const known = spokenSigns[printSigns(piece)];
	if (known !== undefined || piece.trim() === '') return known ?? '';
	try {
		return speakMathematics(parseMathematics(piece));
	} catch {
		return printSigns(piece);
	}
}

/** The choices for a gap as options. */
export function gapChoices({ choices }: InlineChoiceItem): readonly ShownOption[] {
	return choices.map(({ id, math }) => ({
		id,
		content: { kind: 'spans', spans: [{ text: printSigns(math), font: 'serif', spoken: speakPiece(math) }] },
	}));
}

/** The statement with an open box at its gap, on one line; smaller where it is too long for one. */
export function layGap(item: InlineChoiceItem, room: ItemRoom): Box {
	const { item: size, leading } = room.style.type;
	const [before, after] = gapSides(item);
	const widest = Math.max(...item.choices.map(({ math }) => textWidth(printSigns(math), 'serif', size)));
	const gap = Math.max(size * 2.4, widest + size);
	const space = size * 0.45;
	const [left, right] = [textWidth(before, 'serif', size), textWidth(after, 'serif', size)];
	const natural = left + right + gap + 2 * space;
	const factor = Math.min(1, (room.width - 18) / natural);
	const height = size * leading + 8;
	const spoken = [...item.statement.split('_').map(speakPiece)].join(' gap ').trim();
	const box: Box = {
		width: natural * factor,
		height,
		place(x, y) {
			const base = y + (height + size * 0.66) / 2;
			const boxLeft = x + (before === '' ? 0 : (left + space) * factor);
			const text = (at: number, piece: string): Mark => ({
				kind: 'text',
				x: at,
				y: base,
				text: piece,
				font: 'serif',
				size: size * factor,
			});
			const frame: Mark = {
				kind: 'rect',
				x: boxLeft,
				y: y + 1,
				width: gap * factor,
				height: height - 2,
				paint: { stroke: black, width: 0.9 },
			};
			const sides = [
				...(before === '' ? [] : [text(x, before)]),
				frame,
				...(after === '' ? [] : [text(boxLeft + (gap + space) * factor, after)]),
			];
			return [{ tag: 'Formula', alt: spoken, children: sides }];
		},
	};
	return pad(wrap(box, { tag: 'P' }), { left: 18, top: 2, bottom: 2 });
}
