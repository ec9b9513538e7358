import { describeFigure } from '../../../item-bank/figures/describe-figure.ts';
import { writeNumber } from '../../../item-bank/figures/marks.ts';
import { layScale } from '../../../item-bank/figures/number-line-scale.ts';
import type { PointField, PointItem } from '../../../item-bank/types.ts';
import { capHeight, textWidth } from '../page/fonts.ts';
import { type Block, black, fromMm, type Mark, toMm } from '../page/marks.ts';
import { drawBubble } from './bubbles.ts';
import { labelOf } from './head.ts';
import type { SheetMeasures } from './measures.ts';
import { layLine, numberAway, numberHeight, overhang, tickReach } from './plan-line.ts';

/** Along a line and away from it, millimetres, as points on paper; away is where the bubbles are. */
type Place = (along: number, away: number) => readonly [number, number];

/** The line of a field with its bubbles, and the numbers and points that the item shows, no others. */
export function drawLineField(field: PointField, item: PointItem, measures: SheetMeasures): Block {
	const { line, columns } = field;
	const bubbles = columns[0]?.bubbles ?? [];
	const scale = layScale(item.line);
	const isFlat = scale.orientation === 'horizontal';
	const place: Place = isFlat
		? (along, away) => [fromMm(line.x1 + along), fromMm(line.y1 + away)]
		: (along, away) => [fromMm(line.x1 + away), fromMm(line.y1 - along)];
	const length = isFlat ? line.x2 - line.x1 : line.y1 - line.y2;
	const offset = (value: number) => ((value - scale.from) / (scale.tickEvery * (scale.ticks.length - 1))) * length;
	const straight = (from: readonly [number, number], to: readonly [number, number], width: number): Mark => {
		const [[x1, y1], [x2, y2]] = [place(...from), place(...to)];
		return { kind: 'line', x1, y1, x2, y2, paint: { stroke: black, width } };
	};
	const head = (tip: number, direction: number): Mark => {
		const base = tip - direction * 2.2;
		const points = [place(tip, 0), place(base, 1.1), place(base, -1.1)];
		return { kind: 'polygon', points, paint: { fill: black } };
	};
	const { bubble, symbolSize } = measures;
	const ticks = bubbles.flatMap(({ symbol, x, y }): readonly Mark[] => {
		const at = offset(Number(symbol));
		const away = isFlat ? y - line.y1 : x - line.x1;
		// The stroke leads to the bubble and stops short of it, so that its outline stays whole.
		return [
			straight([at, -tickReach], [at, away - bubble / 2 - 0.9], 0.9),
			...drawBubble(x, y, '', { bubble, symbolSize }),
		];
	});
	const { before, after, ends, levels } = layLine(item, measures, length / Math.max(1, scale.ticks.length - 1));
	const size = measures.textSize;
	const say = (text: string, at: number, away: number, font: 'serif' | 'serif-bold' = 'serif'): Mark => {
		const [x, y] = place(at, away);
		const width = textWidth(text, font, size);
		const [left, base] = isFlat ? [x - width / 2, y] : [x - width, y + (capHeight * size) / 2];
		return { kind: 'text', x: left, y: base, text, font, size };
	};
	const step = numberHeight(measures) + 1;
	const numbers = scale.labelled.map((value, index) =>
		say(writeNumber(value), offset(value), isFlat ? -tickReach - 1 - (index % levels) * step : -tickReach - numberAway),
	);
	const points = (item.line.points ?? []).flatMap(({ at, label }): readonly Mark[] => {
		const [x, y] = place(offset(at), 0);
		const dot: Mark = { kind: 'circle', x, y, radius: fromMm(1.3), paint: { fill: black } };
		if (label === undefined) return [dot];
		const away = isFlat ? -tickReach - 1 - levels * step : -before + toMm(textWidth(label, 'serif-bold', size));
		return [dot, say(label, offset(at), away, 'serif-bold')];
	});
	const { arrows: _arrows, start: _start, arrowLabels: _labels, ...bare } = item.line;
	const alt = `Number line for item ${labelOf(field)} with a bubble at every tick. ${describeFigure({ ...bare, from: scale.from, to: scale.to, tickEvery: scale.tickEvery })}`;
	const [left, right] = isFlat ? [line.x1 - ends, line.x2 + ends] : [line.x1 - before, line.x1 + after];
	const [top, bottom] = isFlat ? [line.y1 - before, line.y1 + after] : [line.y2 - ends, line.y1 + ends];
	return {
		tag: 'Figure',
		alt,
		bounds: [fromMm(left), fromMm(top), fromMm(right), fromMm(bottom)],
		children: [
			straight([-overhang, 0], [length + overhang, 0], 1.1),
			head(length + overhang, 1),
			head(-overhang, -1),
			...ticks,
			...numbers,
			...points,
		],
	};
}
