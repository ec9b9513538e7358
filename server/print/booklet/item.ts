import type { Figure, StemBlock } from '../../../item-bank/types.ts';
import { type Box, pad, stack } from '../page/box.ts';
import { figureSize } from '../page/figure.ts';
import { type Block, fromMm, type Mark } from '../page/marks.ts';
import type { AnswerPlace } from '../placed-items.ts';
import { type AnswerPlaces, besideGrid } from './answer-places.ts';
import { layAnswer } from './answers.ts';
import { type ItemRoom, layStemBlock } from './stem.ts';
import type { BookletStyle } from './styles.ts';

/** How much room an item has, points, and how it is answered. */
export interface ItemSetting {
	readonly width: number;
	readonly style: BookletStyle;
	/** Left out when answers go on a separate sheet. */
	readonly places?: AnswerPlaces | undefined;
}

/** Width of the margin that holds the number of an item. */
export function numberMargin(style: BookletStyle): number {
	return style.type.item * 2.1;
}

/**
 * An item or a part of a set as it stands in a booklet, in one piece: number, stem with its figures, options or another
 * place for the answer, without work space. Throws PrintRoomError for a figure wider than the page.
 */
export function layItem(place: AnswerPlace, setting: ItemSetting): Box {
	const { style, places } = setting;
	const { item, label } = place;
	const grid = places && item.kind === 'gridded' ? besideGrid(place, places) : undefined;
	const whole = setting.width - numberMargin(style);
	const beside = whole - (grid ? grid.width + fromMm(5) : 0);
	// A figure that leaves no room for the grid beside it has the grid below it.
	const isBelow =
		grid !== undefined && item.stem.some((block) => block.kind === 'figure' && figureSize(block.figure).width > beside);
	const width = isBelow ? whole : beside;
	const content = layContent(place, roomOf(place.id, width, style), places);
	const gridTop = isBelow ? content.height + style.type.item * 0.5 : 0;
	const box: Box = {
		width: whole,
		height: Math.max(content.height, gridTop + (grid?.height ?? 0)),
		place: (x, y) => [...content.place(x, y), ...(grid ? grid.place(x + whole - grid.width, y + gridTop) : [])],
	};
	return layNumbered(label, place.part === undefined ? 'H3' : 'H4', box, setting);
}

/** What the parts of a set share, under the number of the set. */
export function layStimulus(number: number, id: string, stem: readonly StemBlock[], setting: ItemSetting): Box {
	const { style } = setting;
	const room = roomOf(id, setting.width - numberMargin(style), style);
	const boxes = stem.map((block) => layStemBlock(block, room));
	const box = pad(stack(boxes, style.type.item * 0.5), { top: isCrowded(stem, room) ? style.type.item : 0 });
	return layNumbered(String(number), 'H3', box, setting);
}

/** Figures may reach further left than text, under the number. */
function roomOf(item: string, width: number, style: BookletStyle): ItemRoom {
	return { item, width, figureWidth: width + numberMargin(style) + 2 * style.frame.bleed, style };
}

/** A number in the margin, and beside it what it numbers. */
export function layNumbered(text: string, tag: 'H3' | 'H4', content: Box, { style, width }: ItemSetting): Box {
	const { item: size, leading } = style.type;
	const rise = (size * leading + size * 0.66) / 2;
	const margin = numberMargin(style);
	return {
		width,
		height: Math.max(content.height, size * leading),
		place(x, y) {
			const number: Mark = { kind: 'text', x, y: y + rise, text, font: 'sans-bold', size };
			const heading: Block = { tag, children: [number] };
			return [{ tag: 'Sect', children: [heading, ...content.place(x + margin, y)] }];
		},
	};
}

/** A wide figure at the very top would run into the number of the item. */
function isCrowded([first]: readonly StemBlock[], room: ItemRoom): boolean {
	return first?.kind === 'figure' && figureSize(first.figure).width * room.style.type.figure > room.width;
}

function layContent(place: AnswerPlace, room: ItemRoom, places: AnswerPlaces | undefined): Box {
	const { item } = place;
	const gap = room.style.type.item * 0.5;
	const tall = item.stem.findIndex((block) => block.kind === 'figure' && isTall(block.figure, room));
	const blocks = item.stem.map((block) => (own: ItemRoom) => layStemBlock(block, own));
	const answer = (own: ItemRoom) => stack(layAnswer(place, own, places), gap);
	if (tall >= 0) return layBesideTall([...blocks, answer], tall, room, gap);
	// An upright line to mark is tall as well.
	if (item.kind === 'point' && isTall(item.line, room))
		return layBesideTall([...blocks, answer], blocks.length, room, gap);
	const boxes = [...item.stem.map((block) => layStemBlock(block, room)), ...layAnswer(place, room, places)];
	return pad(stack(boxes, gap), { top: isCrowded(item.stem, room) ? room.style.type.item : 0 });
}

function isTall(figure: Figure, room: ItemRoom): boolean {
	const { width, height } = figureSize(figure);
	const scale = room.style.type.figure;
	return height * scale > 170 && width * scale < room.width * 0.4;
}

/** A tall narrow piece stands at the right of the others; it is still read at its place among them. */
function layBesideTall(pieces: readonly ((room: ItemRoom) => Box)[], tall: number, room: ItemRoom, gap: number): Box {
	const figure = pieces[tall]?.({ ...room, width: room.width * 0.4 }) ?? stack([], gap);
	const width = room.width - figure.width - 16;
	const boxes = pieces.map((lay, index) => (index === tall ? undefined : lay({ ...room, width, figureWidth: width })));
	const left = boxes.flatMap((box) => (box ? [box] : []));
	const height = left.reduce((sum, box) => sum + box.height + gap, -gap);
	return {
		width: room.width,
		height: Math.max(height, figure.height),
		place(x, y) {
			let top = y;
			const parts = boxes.map((box) => {
				if (!box) return figure.place(x + room.width - figure.width, y);
				const placed = box.place(x, top);
				top += box.height + gap;
				return placed;
			});
			return parts.flat();
		},
	};
}
