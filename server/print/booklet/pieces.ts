import { type Box, pad, stack, wrap } from '../page/box.ts';
import { fromMm } from '../page/marks.ts';
import { linesOf } from '../page/prose.ts';
import { layText } from '../page/text.ts';
import { type AnswerPlace, answersAt, type PlacedItem } from '../placed-items.ts';
import { linesPerPiece } from './answers.ts';
import { layRuledLines } from './blanks.ts';
import { type ItemSetting, layItem, layStimulus, numberMargin } from './item.ts';

/** A part of an item that is never broken. */
export interface Piece {
	readonly box: Box;
	/** The same below a line that says what it goes on with: for a page that opens with it. */
	readonly opening: Box;
	/** Least room for working below it, points. */
	readonly work: number;
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
	const head = opening ? [{ ...opening, box: stack([stimulus, opening.box], gap) }] : [];
	const reminder = `Item ${place.position}, continued: look back at the start of item ${place.position}.`;
	const rest = others.flatMap(([start, ...after]) =>
		start ? [{ ...start, opening: layReminder(reminder, start.box, setting) }, ...after] : [],
	);
	return [...head, ...more, ...rest];
}

function layAnswerPieces(answer: AnswerPlace, setting: ItemSetting): readonly Piece[] {
	const { item, label } = answer;
	const { style } = setting;
	const box = layItem(answer, setting);
	const work = fromMm(workRoom[item.kind]);
	const start = { box, opening: box, work };
	const most = linesPerPiece(style.large);
	if (item.kind !== 'explanation' || item.lines <= most) return [start];
	const left = numberMargin(style);
	const room = { item: answer.id, width: setting.width - left, figureWidth: setting.width - left, style };
	const pieces: Piece[] = [{ ...start, work: 0 }];
	for (let done = most; done < item.lines; done += most) {
		const lines = pad(layRuledLines(Math.min(most, item.lines - done), room), { left });
		pieces.push({ box: lines, opening: layReminder(`Item ${label}, continued`, lines, setting), work });
	}
	return pieces;
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
