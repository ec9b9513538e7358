import type { StemBlock } from '../../../item-bank/types.ts';
import { type Box, pad, stack, wrap } from '../page/box.ts';
import { figureSize } from '../page/figure.ts';
import { fromMm } from '../page/marks.ts';
import { linesOf } from '../page/prose.ts';
import { layText } from '../page/text.ts';
import { type AnswerPlace, answersAt, type PlacedItem } from '../placed-items.ts';
import { layScorerField, linesPerPiece } from './answers.ts';
import { layRuledLines } from './blanks.ts';
import { type ItemSetting, layItem, layStimulus, numberMargin } from './item.ts';

/** A part of an item that is never broken. */
export interface Piece {
	readonly box: Box;
	/** The same below a line that says what it goes on with: for a page that opens with it. */
	readonly opening: Box;
	/** Least room for working below it, points. */
	readonly work: number;
	/** Width of its widest figure at true scale, points; options' figures may stand below their letters and do not count. */
	readonly widest: number;
}

/** Least room for working, millimetres. Common practice, no source. */
const workRoom = {
	choice: 16,
	'multiple-choice': 12,
	gridded: 32,
	point: 12,
	order: 12,
	match: 12,
	'inline-choice': 12,
	explanation: 6,
} as const;

/**
 * An item in pieces from its start: most are one. What the parts of a set share stands with the first part; an
 * explanation with more lines than a page holds goes on. Throws PrintRoomError for a figure wider than the page.
 */
export function layPieces(place: PlacedItem, setting: ItemSetting): readonly Piece[] {
	const { item, id } = place.record;
	const gap = setting.style.type.item;
	const [first, ...others] = answersAt(place).map((answer) => layAnswerPieces(answer, setting));
	if (!first) return [];
	if (item.kind !== 'set') return first;
	const stimulus = layStimulus(place.position, id, item.stem, setting);
	const [opening, ...more] = first;
	const widest = Math.max(widestOf(item.stem), opening?.widest ?? 0);
	const head = opening ? [{ ...opening, box: stack([stimulus, opening.box], gap), widest }] : [];
	const reminder = `Item ${place.position}, continued: look back at the start of item ${place.position}.`;
	const rest = others.flatMap(([start, ...after]) =>
		start ? [{ ...start, opening: layReminder(reminder, start.box, setting) }, ...after] : [],
	);
	return [...head, ...more, ...rest];
}

function layAnswerPieces(answer: AnswerPlace, setting: ItemSetting): readonly Piece[] {
	const { item, label } = answer;
	const { style, places } = setting;
	const box = layItem(answer, setting);
	const work = fromMm(workRoom[item.kind]);
	const line = item.kind === 'point' && !(places && item.line.arrows === undefined) ? figureSize(item.line).width : 0;
	const start = { box, opening: box, work, widest: Math.max(line, widestOf(item.stem)) };
	const most = linesPerPiece(style.large);
	if (item.kind !== 'explanation' || item.lines <= most) return [start];
	const left = numberMargin(style);
	const room = { item: answer.id, width: setting.width - left, figureWidth: setting.width - left, style };
	const pieces: Piece[] = [{ ...start, work: 0 }];
	for (let done = most; done < item.lines; done += most) {
		const lines = layRuledLines(Math.min(most, item.lines - done), room);
		const field = done + most < item.lines ? [] : layScorerField(answer, room, places);
		const more = pad(stack([lines, ...field], style.type.item * 0.5), { left });
		const opening = layReminder(`Item ${label}, continued`, more, setting);
		pieces.push({ box: more, opening, work: done + most < item.lines ? 0 : work, widest: 0 });
	}
	return pieces;
}

function widestOf(stem: readonly StemBlock[]): number {
	return Math.max(0, ...stem.map((block) => (block.kind === 'figure' ? figureSize(block.figure).width : 0)));
}

function layReminder(text: string, box: Box, setting: ItemSetting): Box {
	const { type } = setting.style;
	const left = numberMargin(setting.style);
	const line = layText([{ text, font: 'sans' }], setting.width - left, linesOf(type, type.text));
	return stack([pad(wrap(line, { tag: 'P' }), { left }), box], type.item * 0.5);
}

/** Pieces under each other with their room for working; that of the last one is left out. */
export function stackPieces(pieces: readonly Piece[], isOpening: boolean): Box {
	const boxes = pieces.map(({ box, opening, work }, index) =>
		pad(index === 0 && isOpening ? opening : box, { bottom: index === pieces.length - 1 ? 0 : work }),
	);
	return stack(boxes, 0);
}
