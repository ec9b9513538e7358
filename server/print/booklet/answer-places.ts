import type { Bubble, GridProfile } from '../../../item-bank/types.ts';
import { type Box, wrapFigure } from '../page/box.ts';
import { fromMm, toMm } from '../page/marks.ts';
import type { AnswerPlace } from '../placed-items.ts';
import { drawBubble, drawColumns } from '../sheet/bubbles.ts';
import { drawAnswer, type ItemField } from '../sheet/draw-fields.ts';
import { round, type SheetMeasures } from '../sheet/measures.ts';
import { planBlock } from '../sheet/plan-blocks.ts';
import { fieldOf, gridSize, planGridColumns, rowSymbols } from '../sheet/plan-fields.ts';
import type { OptionLabel } from './options.ts';

/** Answer places beside items: how large they are, and who is told where they came to stand. */
export interface AnswerPlaces {
	readonly profile: GridProfile;
	readonly measures: SheetMeasures;
	onField(field: ItemField): void;
}

/** The grid of an item as a box, told of when it is placed. */
export function besideGrid(place: AnswerPlace, places: AnswerPlaces): Box {
	const { profile, measures } = places;
	const size = gridSize(profile, measures);
	const style = { bubble: measures.bubble, symbolSize: measures.symbolSize };
	const box: Box = {
		width: fromMm(size.width),
		height: fromMm(size.height - measures.heading),
		place(x, y) {
			const columns = planGridColumns(profile, toMm(x), toMm(y), measures);
			places.onField({ kind: 'grid', ...fieldOf(place), columns });
			return drawColumns(columns, style);
		},
	};
	return wrapFigure(box, `Answer grid for item ${place.label}: a row of boxes with bubbles below them.`);
}

/** Bubbles that stand for the letters of options; the field is told of when the last one is placed. */
export function besideBubbles(place: AnswerPlace, places: AnswerPlaces): OptionLabel {
	const { measures } = places;
	const count = rowSymbols(place).length;
	let found: readonly Bubble[] = [];
	const style = { bubble: measures.bubble, symbolSize: measures.symbolSize * 1.15 };
	return ({ id }) => ({
		width: fromMm(measures.bubble),
		height: fromMm(measures.bubble) + 3,
		place(x, y) {
			const bubble = {
				symbol: id,
				x: round(toMm(x) + measures.bubble / 2),
				y: round(toMm(y + 1) + measures.bubble / 2),
			};
			found = [...found, bubble];
			if (found.length === count) {
				const marks = place.item.kind === 'multiple-choice' ? 'several' : 'one';
				places.onField({ kind: 'choice', ...fieldOf(place), marks, columns: [{ bubbles: found }] });
			}
			return drawBubble(bubble.x, bubble.y, id, style);
		},
	});
}

/**
 * The field of an item that is answered neither by letters nor in a grid, as on a sheet; `width`, `height` are the most
 * it may take, points. Undefined for other items. Throws PrintRoomError for a line with too many ticks.
 */
export function besideField(
	place: AnswerPlace,
	{ measures: onSheets, onField }: AnswerPlaces,
	room: { readonly width: number; readonly height: number },
): Box | undefined {
	// The number of the item stands there already.
	const measures = { ...onSheets, heading: 0 };
	const block = planBlock(place, measures, { width: toMm(room.width), height: toMm(room.height) });
	if (!block) return undefined;
	return {
		width: fromMm(block.width),
		height: fromMm(block.height),
		place(x, y) {
			const field = block.plan(toMm(x), toMm(y));
			onField(field);
			return drawAnswer(field, place.item, measures);
		},
	};
}
