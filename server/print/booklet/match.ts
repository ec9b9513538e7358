import type { MatchItem, Option } from '../../../item-bank/types.ts';
import { type Box, beside, pad, stack, wrap } from '../page/box.ts';
import { figureSize } from '../page/figure.ts';
import { linesOf } from '../page/prose.ts';
import { layText } from '../page/text.ts';
import { blankWidth, drawBlank } from './blanks.ts';
import { layLetter, layOption, type OptionLabel, optionIndent } from './options.ts';
import type { ItemRoom } from './stem.ts';

/**
 * Two columns of entries with letters: on the left each with a blank for its partner's letter, on the right those to
 * choose from. Figures too wide to stand side by side put the right column below the left one.
 */
export function layMatch(item: MatchItem, room: ItemRoom, hasBlanks: boolean): Box {
	const gap = room.style.type.item * 2;
	const half = (room.width - gap) / 2;
	const blank = hasBlanks ? blankWidth(room) + 8 : 0;
	const isWide = [...item.left, ...item.right].some(
		({ content }) => content.kind === 'figure' && figureSize(content.figure).width > half - optionIndent(room) - blank,
	);
	const width = isWide ? room.width : half;
	const own = { ...room, width, figureWidth: isWide ? room.figureWidth : width };
	const columns = [
		layColumn('Match each of these …', item.left, own, hasBlanks),
		layColumn('… with one of these.', item.right, own, false),
	];
	return isWide ? stack(columns, room.style.type.item * 0.8) : beside(columns, gap);
}

function layColumn(title: string, options: readonly Option[], room: ItemRoom, hasBlanks: boolean): Box {
	const { type } = room.style;
	const heading = wrap(layText([{ text: title, font: 'sans' }], room.width, linesOf(type, type.text)), { tag: 'P' });
	const indent = hasBlanks ? blankWidth(room) + 8 : 0;
	const inner = { ...room, width: room.width - indent, figureWidth: room.figureWidth - indent };
	const label: OptionLabel | undefined = hasBlanks ? ({ id }) => layBlankLetter(id, room) : undefined;
	const entries = options.map((option) => pad(layOption(option, inner, label), { left: indent }));
	const list = wrap(stack(entries, type.item * 0.6), { tag: 'L' });
	return { ...stack([heading, list], type.item * 0.3), width: room.width };
}

/** The blank reaches to the left of the letter. */
function layBlankLetter(id: string, room: ItemRoom): Box {
	const { item, leading } = room.style.type;
	const letter = layLetter(id, room);
	const blank = blankWidth(room);
	return {
		...letter,
		place: (x, y) => [...letter.place(x, y), drawBlank(x - blank - 8, y + (item * leading + item * 0.66) / 2, blank)],
	};
}
