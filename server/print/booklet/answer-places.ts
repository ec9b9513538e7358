import type { ChoiceField, GridField, GridProfile, Option } from '../../../item-bank/types.ts';
import { type Box, wrapFigure } from '../page/box.ts';
import { fromMm, toMm } from '../page/marks.ts';
import type { PlacedItem } from '../placed-items.ts';
import { drawBubble, drawColumns } from '../sheet/bubbles.ts';
import { round, type SheetMeasures } from '../sheet/measures.ts';
import { gridSize, planGridColumns } from '../sheet/plan-fields.ts';

/** Answer places beside items: how large they are, and who is told where they came to stand. */
export interface AnswerPlaces {
	readonly profile: GridProfile;
	readonly measures: SheetMeasures;
	onField(field: ChoiceField | GridField): void;
}

/** The grid of an item as a box, told of when it is placed. */
export function besideGrid(place: PlacedItem, places: AnswerPlaces): Box {
	const { profile, measures } = places;
	const size = gridSize(profile, measures);
	const style = { bubble: measures.bubble, symbolSize: measures.symbolSize };
	const box: Box = {
		width: fromMm(size.width),
		height: fromMm(size.height - measures.heading),
		place(x, y) {
			const columns = planGridColumns(profile, toMm(x), toMm(y), measures);
			const { id: item, version: itemVersion } = place.record;
			places.onField({ kind: 'grid', position: place.position, item, itemVersion, columns });
			return drawColumns(columns, style);
		},
	};
	return wrapFigure(box, `Answer grid for item ${place.position}: a row of boxes with bubbles below them.`);
}

/** Bubbles that stand for the letters of options; the field is told of when the last one is placed. */
export function besideBubbles(place: PlacedItem, places: AnswerPlaces): (option: Option) => Box {
	const { measures } = places;
	const { item } = place.record;
	const options = item.kind === 'gridded' ? [] : item.options;
	const found: ChoiceField['columns'][number]['bubbles'][number][] = [];
	const style = { bubble: measures.bubble, symbolSize: measures.symbolSize * 1.15 };
	return (option) => ({
		width: fromMm(measures.bubble),
		height: fromMm(measures.bubble) + 3,
		place(x, y) {
			const bubble = {
				symbol: option.id,
				x: round(toMm(x) + measures.bubble / 2),
				y: round(toMm(y + 1) + measures.bubble / 2),
			};
			found.push(bubble);
			if (found.length === options.length) {
				const marks = item.kind === 'multiple-choice' ? 'several' : 'one';
				const { id, version } = place.record;
				const columns = [{ bubbles: found }];
				places.onField({ kind: 'choice', position: place.position, item: id, itemVersion: version, marks, columns });
			}
			return drawBubble(bubble.x, bubble.y, option.id, style);
		},
	});
}
