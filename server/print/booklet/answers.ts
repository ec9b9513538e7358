import { type Box, pad, wrap } from '../page/box.ts';
import { textWidth } from '../page/fonts.ts';
import { black, fromMm, type Mark } from '../page/marks.ts';
import type { AnswerPlace } from '../placed-items.ts';
import { type AnswerPlaces, besideBubbles, besideField } from './answer-places.ts';
import { layOrderBlanks, layRuledLines } from './blanks.ts';
import { gapChoices, layGap } from './gap.ts';
import { layMatch } from './match.ts';
import { layOptions } from './options.ts';
import { type ItemRoom, layScaledFigure } from './stem.ts';

/** What stands below a stem to answer on: letters, blanks, a line, or the field itself where answers go beside items. */
export function layAnswer(place: AnswerPlace, room: ItemRoom, places: AnswerPlaces | undefined): readonly Box[] {
	const { item } = place;
	const gap = room.style.type.item;
	const bubbles = places ? besideBubbles(place, places) : undefined;
	const field = () => (places ? besideField(place, places, fieldRoom(room)) : undefined);
	switch (item.kind) {
		case 'choice':
		case 'multiple-choice':
			return [layOptions(item.options, room, bubbles)];
		case 'inline-choice':
			return [layGap(item, room), layOptions(gapChoices(item), room, bubbles)];
		case 'gridded':
			if (places) return item.unit === undefined ? [] : [layUnit(item.unit, room)];
			return [pad(layAnswerLine(place, item.unit, room), { top: gap * 0.4 })];
		case 'point': {
			const below = field();
			// The field is a line itself; the item's own is needed beside it only for its arrows.
			if (below && item.line.arrows === undefined) return [pad(below, { top: gap * 0.5 })];
			// Room around the line to draw a mark.
			const line = pad(layScaledFigure(item.line, room), { top: gap * 0.5, bottom: gap * 0.5 });
			return below ? [line, below] : [line];
		}
		case 'order':
			return [layOptions(item.entries, room), pad(field() ?? layOrderBlanks(item, room), { top: gap * 0.4 })];
		case 'match': {
			const below = field();
			const columns = layMatch(item, room, below === undefined);
			return below ? [columns, pad(below, { top: gap * 0.4 })] : [columns];
		}
		case 'explanation': {
			const most = linesPerPiece(room.style.large);
			const lines = layRuledLines(Math.min(item.lines, most), room);
			// Where more lines are to come, the scorer's field waits for the last of them.
			return item.lines > most ? [lines] : [lines, ...layScorerField(place, room, places)];
		}
		default:
			return item satisfies never;
	}
}

/** The field of a scorer, where answers go beside items. */
export function layScorerField(place: AnswerPlace, room: ItemRoom, places: AnswerPlaces | undefined): readonly Box[] {
	const field = places ? besideField(place, places, fieldRoom(room)) : undefined;
	return field ? [pad(field, { top: room.style.type.item * 0.3 })] : [];
}

/** The most lines to write on that stand together; more go on in a piece of their own. */
export function linesPerPiece(large: boolean): number {
	return large ? 8 : 15;
}

function fieldRoom(room: ItemRoom): { readonly width: number; readonly height: number } {
	const { frame } = room.style;
	return { width: room.width, height: (frame.bottom - frame.top) * 0.8 };
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
function layAnswerLine(place: AnswerPlace, unit: string | undefined, room: ItemRoom): Box {
	const { text: size, item: unitSize } = room.style.type;
	const target = `grid ${place.label}`;
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
