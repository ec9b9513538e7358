import type { FormRecord } from '../../../item-bank/items/record.ts';
import type { AnswerSheetGeometry, SheetPage } from '../../../item-bank/types.ts';
import { textWidth } from '../page/fonts.ts';
import { type Block, black, fromMm, type Mark } from '../page/marks.ts';
import { type PageFrame, type PaperName, pageFrame, paperSizes } from '../page/paper.ts';
import { drawFiducials, fitLine } from '../sheet/frame-marks.ts';
import { drawSheetCode } from '../sheet/sheet-code.ts';
import type { BookletStyle } from './styles.ts';

/** The part of a page with fiducial marks and a code that items stand on. */
export function besideFrame(paper: PaperName): PageFrame {
	return { ...pageFrame(paper), top: fromMm(45), bottom: fromMm(paperSizes[paper].height - 20) };
}

/** What one page of a booklet to answer in carries besides its items. */
export interface BesideOrder {
	readonly form: FormRecord;
	readonly geometry: AnswerSheetGeometry;
	readonly layout: string;
	readonly page: SheetPage;
	readonly student: string | undefined;
	readonly total: number;
	readonly style: BookletStyle;
}

/** Fiducial marks, title, student, code and page number. */
export function drawBesideFrame(order: BesideOrder): {
	readonly blocks: readonly Block[];
	readonly artifacts: readonly Mark[];
} {
	const { form, geometry, layout, page, student, total, style } = order;
	const { frame, type } = style;
	const { x, y, size } = page.code;
	const left = frame.left + 4;
	const least = style.large ? 18 : 8;
	const title = fitLine(form.form.title, 'sans-bold', type.text, least, frame.right - left - 8);
	const label = 'Student code ';
	const start = left + textWidth(label, 'sans', type.text) + 2;
	const base = fromMm(28);
	const name: Mark =
		student === undefined
			? {
					kind: 'line',
					x1: start,
					y1: base + 1,
					x2: fromMm(x - 6),
					y2: base + 1,
					paint: { stroke: black, width: 0.75 },
				}
			: { kind: 'text', x: start, y: base, text: student, font: 'sans-bold', size: type.text * 1.2 };
	const code = drawSheetCode(
		{ kind: 'booklet', form: form.id, version: form.version, layout, page: page.page, student },
		page.code,
	);
	const bounds = [fromMm(x), fromMm(y), fromMm(x + size), fromMm(y + size)] as const;
	const named = student === undefined ? 'student to be filled in' : `student ${student}`;
	const count = `${page.page} of ${total}`;
	const middle = (frame.width - textWidth(count, 'sans', type.small)) / 2;
	return {
		blocks: [
			{ tag: 'P', children: [{ kind: 'text', x: left, y: fromMm(14), font: 'sans-bold', ...title }] },
			{ tag: 'P', children: [{ kind: 'text', x: left, y: base, text: label, font: 'sans', size: type.text }, name] },
			{
				tag: 'Figure',
				alt: `Code of this page: form ${form.id}, ${named}, page ${page.page}.`,
				bounds,
				children: [code],
			},
		],
		artifacts: [
			...drawFiducials(geometry.fiducials),
			{ kind: 'text', x: middle, y: fromMm(geometry.page.height - 11), text: count, font: 'sans', size: type.small },
		],
	};
}
