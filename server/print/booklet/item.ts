import { type Box, pad, stack, wrap } from '../page/box.ts';
import { figureSize } from '../page/figure.ts';
import { textWidth } from '../page/fonts.ts';
import { type Block, black, fromMm, type Mark } from '../page/marks.ts';
import type { PlacedItem } from '../placed-items.ts';
import { type AnswerPlaces, besideBubbles, besideGrid } from './answer-places.ts';
import { layOptions } from './options.ts';
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
 * An item as it stands in a booklet, in one piece: number, stem with its figures, options or a line for the answer, without
 * work space. Throws PrintRoomError for a figure wider than the page.
 */
export function layItem(place: PlacedItem, setting: ItemSetting): Box {
	const { style, places } = setting;
	const { item } = place.record;
	const margin = numberMargin(style);
	const grid = places && item.kind === 'gridded' ? besideGrid(place, places) : undefined;
	const whole = setting.width - margin;
	const beside = whole - (grid ? grid.width + fromMm(5) : 0);
	// A figure that leaves no room for the grid beside it has the grid below it.
	const isBelow =
		grid !== undefined && item.stem.some((block) => block.kind === 'figure' && figureSize(block.figure).width > beside);
	const width = isBelow ? whole : beside;
	const content = layContent(
		place,
		{ item: place.record.id, width, figureWidth: width + margin + 2 * style.frame.bleed, style },
		places,
	);
	const gridTop = isBelow ? content.height + style.type.item * 0.5 : 0;
	const number: Mark = {
		kind: 'text',
		x: 0,
		y: 0,
		text: String(place.position),
		font: 'sans-bold',
		size: style.type.item,
	};
	const rise = (style.type.item * style.type.leading + style.type.item * 0.66) / 2;
	return {
		width: setting.width,
		height: Math.max(content.height, gridTop + (grid?.height ?? 0)),
		place(x, y) {
			const heading: Block = { tag: 'H3', children: [{ ...number, x, y: y + rise }] };
			const children = [heading, ...content.place(x + margin, y)];
			if (grid) children.push(...grid.place(x + setting.width - grid.width, y + gridTop));
			return [{ tag: 'Sect', children }];
		},
	};
}

function layContent(place: PlacedItem, room: ItemRoom, places: AnswerPlaces | undefined): Box {
	const { item } = place.record;
	const gap = room.style.type.item * 0.5;
	const tall = item.stem.findIndex((block) => block.kind === 'figure' && isTall(block.figure, room));
	if (tall >= 0) return layBesideTall(place, room, places, tall, gap);
	const boxes = [...item.stem.map((block) => layStemBlock(block, room)), ...layAnswer(place, room, places)];
	const [first] = item.stem;
	// A wide figure at the very top would run into the number of the item.
	const isCrowded = first?.kind === 'figure' && figureSize(first.figure).width * room.style.type.figure > room.width;
	return pad(stack(boxes, gap), { top: isCrowded ? room.style.type.item : 0 });
}

function isTall(figure: Parameters<typeof figureSize>[0], room: ItemRoom): boolean {
	const { width, height } = figureSize(figure);
	const scale = room.style.type.figure;
	return height * scale > 170 && width * scale < room.width * 0.4;
}

/** A tall narrow figure stands at the right of the text; it is still read at its place in the stem. */
function layBesideTall(
	place: PlacedItem,
	room: ItemRoom,
	places: AnswerPlaces | undefined,
	tall: number,
	gap: number,
): Box {
	const { stem } = place.record.item;
	const [block] = stem.slice(tall, tall + 1);
	if (block === undefined) return stack([], gap);
	const figure = layStemBlock(block, room);
	const narrow = { ...room, width: room.width - figure.width - 16, figureWidth: room.width - figure.width - 16 };
	const texts = stem.map((each, index) => (index === tall ? undefined : layStemBlock(each, narrow)));
	const answers = layAnswer(place, narrow, places);
	const left = [...texts.flatMap((box) => (box ? [box] : [])), ...answers];
	const height = left.reduce((sum, box) => sum + box.height + gap, -gap);
	return {
		width: room.width,
		height: Math.max(height, figure.height),
		place(x, y) {
			let top = y;
			const parts = [...texts, ...answers].map((box) => {
				if (!box) return figure.place(x + room.width - figure.width, y);
				const placed = box.place(x, top);
				top += box.height + gap;
				return placed;
			});
			return parts.flat();
		},
	};
}

function layAnswer(place: PlacedItem, room: ItemRoom, places: AnswerPlaces | undefined): readonly Box[] {
	const { item } = place.record;
	if (item.kind !== 'gridded') {
		return [layOptions(item.options, room, places ? besideBubbles(place, places) : undefined)];
	}
	if (places) return item.unit === undefined ? [] : [layUnit(item.unit, room)];
	return [pad(layAnswerLine(place, item.unit, room), { top: room.style.type.item * 0.4 })];
}

function layUnit(unit: string, room: ItemRoom): Box {
	const { text: size, leading } = room.style.type;
	const line = `Answer in ${unit}`;
	return wrap(
		{
			width: textWidth(line, 'sans', size),
			height: size * leading,
			place: (x, y) => [{ kind: 'text', x, y: y + size, text: line, font: 'sans', size }],
		},
		{ tag: 'P' },
	);
}

/** "Answer ____ metres", and which grid it goes to. */
function layAnswerLine(place: PlacedItem, unit: string | undefined, room: ItemRoom): Box {
	const { text: size, item: unitSize } = room.style.type;
	const target = `grid ${place.position}`;
	const around = textWidth(`Answer  ${target}    `, 'sans', size) + textWidth(`${unit ?? ''}  `, 'serif', unitSize);
	const line = Math.min(fromMm(room.style.large ? 55 : 34), room.width - around);
	const box: Box = {
		width: room.width,
		height: size * 1.7,
		place(x, y) {
			const base = y + size * 1.2;
			const start = x + textWidth('Answer  ', 'sans', size);
			const marks: Mark[] = [
				{ kind: 'text', x, y: base, text: 'Answer', font: 'sans', size },
				{
					kind: 'line',
					x1: start,
					y1: base + 1,
					x2: start + line,
					y2: base + 1,
					paint: { stroke: black, width: 0.75 },
				},
			];
			if (unit !== undefined) {
				marks.push({ kind: 'text', x: start + line + 5, y: base, text: unit, font: 'serif', size: unitSize });
			}
			const right = x + room.width - textWidth(target, 'sans', size);
			marks.push({ kind: 'text', x: right, y: base, text: target, font: 'sans', size });
			return marks;
		},
	};
	return wrap(box, { tag: 'P' });
}
