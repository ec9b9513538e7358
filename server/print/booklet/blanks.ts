import type { OrderItem } from '../../../item-bank/types.ts';
import { type Box, wrap } from '../page/box.ts';
import { textWidth } from '../page/fonts.ts';
import { type Block, black, fromMm, grey, type Mark } from '../page/marks.ts';
import { ordinals } from '../sheet/plan-blocks.ts';
import type { ItemRoom } from './stem.ts';

/** A line to write one letter on: 9 mm, half as long again in large print. */
export function blankWidth({ style }: ItemRoom): number {
	return fromMm(style.large ? 15 : 10);
}

/** A line to write on from `x` at a baseline. */
export function drawBlank(x: number, base: number, width: number): Mark {
	return { kind: 'line', x1: x, y1: base + 2, x2: x + width, y2: base + 2, paint: { stroke: black, width: 0.75 } };
}

/** A blank for each place of an order, from the first: "1st ___ 2nd ___", over several lines where they must be. */
export function layOrderBlanks({ entries }: OrderItem, room: ItemRoom): Box {
	const { text: size } = room.style.type;
	const blank = blankWidth(room);
	const cellWidth = Math.max(...ordinals.map((each) => textWidth(`${each} `, 'sans', size))) + blank;
	const names = ordinals.slice(0, entries.length);
	// Closer together where that keeps them on one line.
	const shared = (room.width - names.length * cellWidth) / (names.length - 1);
	const gap = Math.min(size * 1.4, Math.max(size * 0.5, shared));
	const perLine = Math.max(1, Math.floor((room.width + gap + 0.01) / (cellWidth + gap)));
	const step = size * 2.4;
	return wrap(
		{
			width: Math.min(perLine, names.length) * (cellWidth + gap) - gap,
			height: Math.ceil(names.length / perLine) * step,
			place: (x, y) =>
				names.flatMap((text, index): readonly Mark[] => {
					const left = x + (index % perLine) * (cellWidth + gap);
					const base = y + Math.floor(index / perLine) * step + step * 0.72;
					return [
						{ kind: 'text', x: left, y: base, text: `${text} `, font: 'sans', size },
						drawBlank(left + cellWidth - blank, base, blank),
					];
				}),
		},
		{ tag: 'P' },
	);
}

/** Between the lines to write on: 9 mm, 12 in large print; as on work pages. Common practice, no source. */
export function lineStep(large: boolean): number {
	return fromMm(large ? 12 : 9);
}

/** Lines to write on; they are no content, the words before them say what they are for. */
export function layRuledLines(count: number, room: ItemRoom): Box {
	const step = lineStep(room.style.large);
	return {
		width: room.width,
		height: count * step,
		place(x, y) {
			const rules = Array.from({ length: count }, (_, index): Mark => {
				const at = y + (index + 1) * step;
				return { kind: 'line', x1: x, y1: at, x2: x + room.width, y2: at, paint: { stroke: grey, width: 0.75 } };
			});
			const block: Block = { tag: 'Artifact', children: rules };
			return [block];
		},
	};
}
