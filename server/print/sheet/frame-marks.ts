import type { Fiducial } from '../../../item-bank/types.ts';
import { textWidth } from '../page/fonts.ts';
import { black, type FontName, fromMm, type Mark, type Rect, white } from '../page/marks.ts';

/** The fiducial marks: squares, the open one with a white square in its middle. */
export function drawFiducials(fiducials: readonly Fiducial[]): readonly Mark[] {
	const squareAt = ({ x, y }: Fiducial, side: number): Rect => ({
		x: fromMm(x - side / 2),
		y: fromMm(y - side / 2),
		width: fromMm(side),
		height: fromMm(side),
	});
	const whole = fiducials.map((mark) => squareAt(mark, mark.size));
	const open = fiducials.filter(({ isOpen }) => isOpen).map((mark) => squareAt(mark, mark.size / 2));
	return [
		{ kind: 'rects', rects: whole, paint: { fill: black } },
		{ kind: 'rects', rects: open, paint: { fill: white } },
	];
}

/** A line of text made to fit: smaller, down to `least` points, then cut with an ellipsis. */
export function fitLine(
	text: string,
	font: FontName,
	size: number,
	least: number,
	width: number,
): { readonly text: string; readonly size: number } {
	const fitting = Math.min(size, (size * width) / textWidth(text, font, size));
	if (fitting >= least) return { text, size: fitting };
	let cut = text;
	while (cut.length > 1 && textWidth(`${cut}…`, font, least) > width) cut = cut.slice(0, -1).trimEnd();
	return { text: `${cut}…`, size: least };
}
