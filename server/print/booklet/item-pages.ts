import { figuresOf } from '../../../item-bank/items/figures.ts';
import { type Box, pad, stack, wrap } from '../page/box.ts';
import { figureSize } from '../page/figure.ts';
import { type Block, grey, type Mark, toMm } from '../page/marks.ts';
import { type PageFrame, pageFrame } from '../page/paper.ts';
import { layText } from '../page/text.ts';
import { answersAt, type PlacedItem } from '../placed-items.ts';
import { PrintRoomError } from '../print-errors.ts';
import type { AnswerPlaces } from './answer-places.ts';
import { type FlowUnit, flowUnits } from './flow.ts';
import { numberMargin } from './item.ts';
import { layPieces, stackPieces } from './pieces.ts';
import type { BookletStyle } from './styles.ts';

/** A page of items: its frame, and its blocks, drawn when asked for. */
export interface ItemPage {
	readonly frame: PageFrame;
	blocks(): readonly Block[];
}

const columnGap = 24;

/** Lays items out on pages, none broken. Throws PrintRoomError when a figure or an item does not fit on a page. */
export function layItemPages(
	placed: readonly PlacedItem[],
	style: BookletStyle,
	places: AnswerPlaces | undefined,
): readonly ItemPage[] {
	return style.large ? placed.flatMap((place) => layLargePages(place, style, places)) : layFlow(placed, style, places);
}

function layFlow(
	placed: readonly PlacedItem[],
	style: BookletStyle,
	places: AnswerPlaces | undefined,
): readonly ItemPage[] {
	const { frame, columns } = style;
	const width = frame.right - frame.left;
	const columnWidth = columns === 1 ? width : (width - columnGap) / 2;
	const height = frame.bottom - frame.top;
	const units = placed.flatMap((place): readonly FlowUnit[] => {
		const isWide = columns === 2 && needsBothColumns(place, columnWidth - numberMargin(style), places);
		const own = isWide ? width : columnWidth;
		const item = place.record.id;
		const pieces = layPieces(place, { width: own, style, places });
		const heading = headingOf(place, style, own);
		const whole = stack([...heading, stackPieces(pieces, false)], style.type.item * 0.5);
		const last = pieces.at(-1);
		// Kept together where a page holds it.
		if (last && whole.height <= height) return [{ item, box: whole, work: last.work, isWide }];
		return pieces.map(({ box, opening, work }, index) =>
			index === 0
				? { item, box: stack([...heading, box], style.type.item * 0.5), work, isWide }
				: { item, box, opening, work, isWide },
		);
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
	const answers = answersAt(place).map((answer) => answer.item.kind);
	if (
		answers.includes('match') ||
		answers.includes('explanation') ||
		(places && answers.some((kind) => kind === 'gridded' || kind === 'point'))
	)
		return true;
	return figuresOf(item).some(({ figure }) => figureSize(figure).width > width - 24);
}

/**
 * One item on a page of its own; an item in pieces on as many as it needs. A figure too wide for its size in large print
 * turns the page; a piece still too tall has its figures set smaller, down to their true scale.
 */
function layLargePages(place: PlacedItem, style: BookletStyle, places: AnswerPlaces | undefined): readonly ItemPage[] {
	const count = layPieces(place, { width: style.frame.right - style.frame.left, style, places }).length;
	const pages: ItemPage[] = [];
	for (let from = 0; from < count; ) {
		let to = count;
		let page = layLargePage(place, style, places, from, to);
		while (!page) {
			to -= 1;
			page = layLargePage(place, style, places, from, to);
		}
		pages.push(page);
		from = to;
	}
	return pages;
}

/** Pieces of an item on one page; undefined where several do not fit. Throws PrintRoomError where a single one does not. */
function layLargePage(
	place: PlacedItem,
	style: BookletStyle,
	places: AnswerPlaces | undefined,
	from: number,
	to: number,
): ItemPage | undefined {
	const wide = pageFrame(style.paper, true);
	const upright = style.frame;
	const isSingle = to - from === 1;
	const natural = layPieces(place, { width: upright.right - upright.left, style, places }).slice(from, to);
	const widest = Math.max(...natural.map((piece) => piece.widest)) * style.type.figure;
	const isTurned = !places && widest > upright.right - upright.left + 0.5;
	const frames = isTurned ? (isSingle ? [wide, upright] : [wide]) : [upright];
	let least = Number.POSITIVE_INFINITY;
	for (const frame of frames) {
		const scales = !isSingle ? [style.type.figure] : frame === wide ? [1.5, 1.4] : [1.5, 1.35, 1.2, 1.1, 1];
		for (const figure of scales) {
			const own = { ...style, frame, type: { ...style.type, figure } };
			const width = frame.right - frame.left;
			const pieces = layPieces(place, { width, style: own, places }).slice(from, to);
			const heading = from === 0 ? headingOf(place, own, width) : [];
			const box = stack([...heading, stackPieces(pieces, from > 0)], 10);
			least = Math.min(least, box.height);
			if (box.height > frame.bottom - frame.top) continue;
			return { frame, blocks: () => box.place(frame.left, frame.top) as readonly Block[] };
		}
	}
	if (!isSingle) return undefined;
	const available = toMm(upright.bottom - upright.top);
	throw new PrintRoomError({ code: 'print-item-too-tall', item: place.record.id, needed: toMm(least), available });
}
