import type { FormRecord } from '../../../item-bank/items/record.ts';
import type { CodePlace } from '../../../item-bank/types.ts';
import { textWidth } from '../page/fonts.ts';
import { type Block, black, fromMm, type Mark, type Page } from '../page/marks.ts';
import { type PaperName, paperSizes } from '../page/paper.ts';
import type { PlacedItem } from '../placed-items.ts';
import { drawFiducials, fitLine } from './frame-marks.ts';
import { fiducialsOf, measuresFor, sheetFrame } from './measures.ts';
import { placeCode } from './plan-sheet.ts';
import { codeSize, drawSheetCode } from './sheet-code.ts';

/** What work pages are made for. */
export interface WorkOrder {
	readonly form: FormRecord;
	readonly placed: readonly PlacedItem[];
	readonly students: readonly string[];
	readonly paper: PaperName;
	readonly large: boolean;
	/** A page for each item, or one ruled page without an item. */
	readonly work: 'items' | 'ruled';
}

/** How many pages {@link drawWorkPages} makes. */
export function countWorkPages({ placed, students, work }: WorkOrder): number {
	return (work === 'items' ? placed.length : 1) * (students.length + 1);
}

/**
 * Pages to work on, each with a code that names form, item and student, so that a photograph needs no name: a set for
 * each student, then a blank set with a line for the student code.
 */
export function* drawWorkPages(order: WorkOrder): Generator<Page> {
	const { form, placed, students, paper } = order;
	const longest = Math.max(0, ...students.map((student) => student.length));
	const code = placeCode(paper, codeSize(form.id, form.version, longest));
	const ground = drawGround(order, code);
	const positions = order.work === 'items' ? placed.map(({ position }) => position) : [0];
	for (const student of [...students, undefined]) {
		for (const position of positions) yield drawWorkPage(order, code, ground, student, position);
	}
}

function drawWorkPage(
	order: WorkOrder,
	place: CodePlace,
	ground: readonly Mark[],
	student: string | undefined,
	position: number,
): Page {
	const { form, paper, large } = order;
	const measures = measuresFor(large);
	const frame = sheetFrame(paper);
	const left = fromMm(frame.left);
	const { id, version } = form;
	const code = drawSheetCode({ kind: 'work', form: id, version, layout: '-', page: position, student }, place);
	const bounds = [
		fromMm(place.x),
		fromMm(place.y),
		fromMm(place.x + place.size),
		fromMm(place.y + place.size),
	] as const;
	const about = position === 0 ? 'any item' : `item ${position}`;
	const alt = `Code of this page: form ${id}, ${student === undefined ? 'student to be filled in' : `student ${student}`}, ${about}.`;
	const heading = position === 0 ? 'Work for item' : `Work for item ${position}`;
	const size = measures.titleSize;
	const title: Mark = { kind: 'text', x: left, y: fromMm(14.2), text: heading, font: 'sans-bold', size };
	const after = left + textWidth(`${heading}  `, 'sans-bold', size);
	const writeIn: readonly Mark[] = position === 0 ? [drawLine(after, after + 60, fromMm(14.2) + 1)] : [];
	const { width, height } = paperSizes[paper];
	return {
		width: fromMm(width),
		height: fromMm(height),
		blocks: [
			{ tag: 'H1', children: [title, ...writeIn] },
			drawStudent(student, measures.labelSize, left, fromMm(place.x - 5)),
			drawFormLine(order, left, fromMm(place.x - 5)),
			{ tag: 'Figure', alt, bounds, children: [code] },
		],
		artifacts: [...drawFiducials(fiducialsOf(paper)), ...ground],
	};
}

function drawStudent(student: string | undefined, size: number, left: number, right: number): Block {
	const y = fromMm(27);
	const label: Mark = { kind: 'text', x: left, y, text: 'Student code ', font: 'sans', size };
	const start = left + textWidth('Student code  ', 'sans', size);
	const value: Mark =
		student === undefined
			? drawLine(start, right, y + 1)
			: { kind: 'text', x: start, y, text: student, font: 'sans-bold', size: size * 1.25 };
	return { tag: 'P', children: [label, value] };
}

function drawFormLine({ form, large }: WorkOrder, left: number, right: number): Block {
	const size = measuresFor(large).textSize;
	const line = fitLine(form.form.title, 'sans', size, large ? 18 : 7, right - left);
	return { tag: 'P', children: [{ kind: 'text', x: left, y: fromMm(36), font: 'sans', ...line }] };
}

function drawLine(x1: number, x2: number, y: number): Mark {
	return { kind: 'line', x1, y1: y, x2, y2: y, paint: { stroke: black, width: 0.75 } };
}

/** Light rules 9 mm apart, 12 in large print; they may fade on a copier. */
function drawGround({ paper, large }: WorkOrder, code: CodePlace): readonly Mark[] {
	const frame = sheetFrame(paper);
	const step = large ? 12 : 9;
	const rules: Mark[] = [];
	for (let y = code.y + code.size + 6 + step; y < frame.bottom; y += step) {
		rules.push({
			kind: 'line',
			x1: fromMm(frame.left),
			y1: fromMm(y),
			x2: fromMm(frame.right),
			y2: fromMm(y),
			paint: { stroke: '#9a9a9a', width: large ? 0.75 : 0.4 },
		});
	}
	return rules;
}
