import { type Box, pad, stack, wrap } from '../page/box.ts';
import { figureSize } from '../page/figure.ts';
import { type Block, fromMm, grey, type Mark, toMm } from '../page/marks.ts';
import { type PageFrame, pageFrame } from '../page/paper.ts';
import { layText } from '../page/text.ts';
import type { PlacedItem } from '../placed-items.ts';
import { PrintRoomError } from '../print-errors.ts';
import type { AnswerPlaces } from './answer-places.ts';
import { type FlowUnit, flowUnits } from './flow.ts';
import { layItem, numberMargin } from './item.ts';
import type { BookletStyle } from './styles.ts';

/** A page of items: its frame, and its blocks, drawn when asked for. */
export interface ItemPage {
	readonly frame: PageFrame;
	blocks(): readonly Block[];
}

/** Least room for working under an item, millimetres. Common practice, no source. */
const workRoom = { choice: 16, 'multiple-choice': 12, gridded: 32 } as const;
const columnGap = 24;

/** Lays items out on pages, none broken. Throws PrintRoomError when a figure or an item does not fit on a page. */
export function layItemPages(
	placed: readonly PlacedItem[],
	style: BookletStyle,
	places: AnswerPlaces | undefined,
): readonly ItemPage[] {
	return style.large ? placed.map((place) => layLargePage(place, style, places)) : layFlow(placed, style, places);
}

function layFlow(
	placed: readonly PlacedItem[],
	style: BookletStyle,
	places: AnswerPlaces | undefined,
): readonly ItemPage[] {
	const { frame, columns } = style;
	const width = frame.right - frame.left;
	const columnWidth = columns === 1 ? width : (width - columnGap) / 2;
	const units = placed.map((place): FlowUnit => {
		const isWide = columns === 2 && needsBothColumns(place, columnWidth - numberMargin(style), places);
		const own = isWide ? width : columnWidth;
		const item = layItem(place, { width: own, style, places });
		const box = stack([...headingOf(place, style, own), item], style.type.item * 0.5);
		return { item: place.record.id, box, work: fromMm(workRoom[place.record.item.kind]), isWide };
	});
	return flowUnits(units, frame.bottom - frame.top, columns).map((page) => ({
		frame,
		blocks: () =>
			page.flatMap(({ unit, column, y, room }): readonly Block[] => {
				const x = frame.left + column * (columnWidth + columnGap);
				const blocks = unit.box.place(x, frame.top + y) as readonly Block[];
				const end = frame.top + y + room - 9;
				if (end > frame.bottom - 24) return blocks;
				const right = x + (unit.isWide ? width : columnWidth);
				const rule: Mark = { kind: 'line', x1: x, y1: end, x2: right, y2: end, paint: { stroke: grey, width: 0.5 } };
				return [...blocks, { tag: 'Artifact', children: [rule] }];
			}),
	}));
}

/** The section's title above its first item. */
function headingOf(place: PlacedItem, style: BookletStyle, width: number): readonly Box[] {
	if (place.indexInSection !== 0) return [];
	const { heading } = style.type;
	const line = layText([{ text: place.sectionTitle, font: 'sans-bold' }], width, {
		size: heading,
		leading: heading * 1.3,
	});
	return [wrap(pad(line, { bottom: style.large ? 6 : 2 }), { tag: 'H2' })];
}

function needsBothColumns(place: PlacedItem, width: number, places: AnswerPlaces | undefined): boolean {
	const { item } = place.record;
	if (places && item.kind === 'gridded') return true;
	const figures = [
		...item.stem.flatMap((block) => (block.kind === 'figure' ? [block.figure] : [])),
		...(item.kind === 'gridded'
			? []
			: item.options.flatMap(({ content }) => (content.kind === 'figure' ? [content.figure] : []))),
	];
	return figures.some((figure) => figureSize(figure).width > width - 24);
}

/**
 * One item on a page of its own. A figure too wide for its size in large print turns the page; an item still too tall has
 * its figures set smaller, down to their true scale.
 */
function layLargePage(place: PlacedItem, style: BookletStyle, places: AnswerPlaces | undefined): ItemPage {
	const wide = pageFrame(style.paper, true);
	const { item } = place.record;
	const widest = Math.max(
		0,
		...item.stem.map((block) => (block.kind === 'figure' ? figureSize(block.figure).width * style.type.figure : 0)),
	);
	const upright = style.frame;
	const frames = !places && widest > upright.right - upright.left + 0.5 ? [wide, upright] : [upright];
	let least = Number.POSITIVE_INFINITY;
	for (const frame of frames) {
		for (const figure of frame === wide ? [1.5, 1.4] : [1.5, 1.35, 1.2, 1.1, 1]) {
			const own = { ...style, frame, type: { ...style.type, figure } };
			const width = frame.right - frame.left;
			const box = stack([...headingOf(place, own, width), layItem(place, { width, style: own, places })], 10);
			least = Math.min(least, box.height);
			if (box.height > frame.bottom - frame.top) continue;
			return { frame, blocks: () => box.place(frame.left, frame.top) as readonly Block[] };
		}
	}
	const available = toMm(upright.bottom - upright.top);
	throw new PrintRoomError({ code: 'print-item-too-tall', item: place.record.id, needed: toMm(least), available });
}
