import type { FormRecord } from '../../../item-bank/items/record.ts';
import type { AnswerSheetGeometry, SheetField, SheetLayout, SheetPage } from '../../../item-bank/types.ts';
import { stack, wrap } from '../page/box.ts';
import { textWidth } from '../page/fonts.ts';
import { type Block, black, fromMm, type Mark, type Page } from '../page/marks.ts';
import { layText } from '../page/text.ts';
import type { PlacedItem } from '../placed-items.ts';
import { drawBubble, drawColumns } from './bubbles.ts';
import { drawFiducials, fitLine } from './frame-marks.ts';
import { type SheetMeasures, sheetFrame } from './measures.ts';
import { measuresFor } from './plan-sheet.ts';
import { drawSheetCode } from './sheet-code.ts';

/** What sheets show besides their geometry. */
export interface SheetContext {
	readonly form: FormRecord;
	readonly placed: readonly PlacedItem[];
	readonly geometry: AnswerSheetGeometry;
	/** Student codes of the class; none for a blank sheet alone. */
	readonly students: readonly string[];
}

/** The pages of a class set: a sheet for each student in order, then one blank one. */
export function* drawSheets(context: SheetContext): Generator<Page> {
	const { students, geometry } = context;
	const { layouts } = geometry;
	for (const layout of layouts) {
		const drawn = layout.pages.map((page) => drawFields(context, page));
		for (const student of layout.kind === 'coded' ? students : [undefined]) {
			for (const [index, page] of layout.pages.entries()) {
				yield drawPage(context, layout, page, student, drawn[index] ?? []);
			}
		}
	}
}

function drawPage(
	context: SheetContext,
	layout: SheetLayout,
	page: SheetPage,
	student: string | undefined,
	fields: readonly Block[],
): Page {
	const { geometry, form } = context;
	const { width, height } = geometry.page;
	const code = drawSheetCode(
		{ kind: 'sheet', form: form.id, version: form.version, layout: layout.id, page: page.page, student },
		page.code,
	);
	const { x, y, size } = page.code;
	const bounds = [fromMm(x), fromMm(y), fromMm(x + size), fromMm(y + size)] as const;
	const named = student === undefined ? 'student to be filled in' : `student ${student}`;
	const alt = `Code of this page: form ${form.id}, version ${form.version}, ${named}, page ${page.page}.`;
	return {
		width: fromMm(width),
		height: fromMm(height),
		blocks: [...drawHead(context, page, student), { tag: 'Figure', alt, bounds, children: [code] }, ...fields],
		artifacts: [...drawFiducials(geometry.fiducials), ...drawFoot(context, page.page, layout.pages.length)],
	};
}

function drawFoot({ geometry, form }: SheetContext, page: number, total: number): readonly Mark[] {
	const measures = measuresFor(geometry.large);
	const frame = sheetFrame(geometry.paper);
	const foot = `Page ${page} of ${total} · ${form.id}, version ${form.version} · confidential`;
	const line = fitLine(foot, 'sans', measures.textSize, geometry.large ? 18 : 7, fromMm(frame.width - 36));
	const x = (fromMm(frame.width) - textWidth(line.text, 'sans', line.size)) / 2;
	return [{ kind: 'text', x, y: fromMm(frame.height - 11), font: 'sans', ...line }];
}

function drawHead(context: SheetContext, page: SheetPage, student: string | undefined): readonly Block[] {
	const { geometry, form } = context;
	const measures = measuresFor(geometry.large);
	const frame = sheetFrame(geometry.paper);
	const left = fromMm(frame.left);
	const width = fromMm(page.code.x - 5) - left;
	const top = fitLine(
		`${form.form.title} · answer sheet`,
		'sans-bold',
		measures.titleSize,
		geometry.large ? 18 : 9,
		fromMm(frame.right - frame.left - 4),
	);
	const title: Block = {
		tag: 'H1',
		children: [{ kind: 'text', x: left, y: fromMm(14), font: 'sans-bold', ...top }],
	};
	const style = { size: measures.textSize, leading: measures.textSize * 1.25 };
	const lines = instructions(page, context).map((text) =>
		wrap(layText([{ text, font: 'sans' }], width, style), { tag: 'P' }),
	);
	const below = stack(lines, measures.textSize * 0.25).place(left, fromMm(geometry.large ? 30 : 29));
	const example = page.fields.some(({ kind }) => kind !== 'student-code') ? [drawExample(geometry)] : [];
	return [title, drawStudent(student, measures, left, width), ...(below as readonly Block[]), ...example];
}

/** The student's code large, or a line to write it on. */
function drawStudent(student: string | undefined, measures: SheetMeasures, left: number, width: number): Block {
	const size = measures.labelSize * 1.25;
	const y = fromMm(26.5);
	const label: Mark = { kind: 'text', x: left, y, text: 'Student code ', font: 'sans', size: measures.labelSize };
	const start = left + textWidth('Student code  ', 'sans', measures.labelSize);
	const code: Mark =
		student === undefined
			? { kind: 'line', x1: start, y1: y + 1, x2: left + width, y2: y + 1, paint: { stroke: black, width: 0.75 } }
			: { kind: 'text', x: start, y, text: student, font: 'sans-bold', size };
	return { tag: 'P', children: [label, code] };
}

function instructions({ fields }: SheetPage, { students }: SheetContext): readonly string[] {
	const characters = fields.find(({ kind }) => kind === 'student-code')?.columns.length ?? 0;
	const isCut = students.some((student) => student.length > characters);
	const which = isCut ? `each of the first ${characters} characters` : 'each character';
	const has = (kind: SheetField['kind']) => fields.some((field) => field.kind === kind);
	const severals = fields.flatMap((field) =>
		field.kind === 'choice' && field.marks === 'several' ? [field.position] : [],
	);
	const some = severals.length > 0 ? ` In ${listNumbers(severals)} fill all that you choose.` : '';
	return [
		...(has('student-code') ? [`Write your student code in the boxes and fill one bubble for ${which}.`] : []),
		...(has('choice') ? [`Fill one bubble in each row.${some}`] : []),
		...(has('grid') ? ['Grids: write the answer in the boxes, then fill the bubbles below.'] : []),
	];
}

function listNumbers(numbers: readonly number[]): string {
	if (numbers.length === 1) return `row ${numbers[0]}`;
	return `rows ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
}

/** A filled bubble, and three that do not count, at the lower edge of the head. */
function drawExample(geometry: AnswerSheetGeometry): Block {
	const measures = measuresFor(geometry.large);
	const frame = sheetFrame(geometry.paper);
	const y = exampleLine(geometry);
	const step = measures.pitch;
	const size = measures.textSize;
	const baseline = fromMm(y) + size * 0.33;
	const marks: Mark[] = [];
	let x = frame.left;
	const say = (text: string) => {
		marks.push({ kind: 'text', x: fromMm(x), y: baseline, text, font: 'sans', size });
		x += (textWidth(text, 'sans', size) * 25.4) / 72 + step * 0.8;
	};
	const style = { bubble: measures.bubble, symbolSize: measures.symbolSize };
	say('Like this:');
	marks.push(...drawBubble(x, y, 'A', style, true));
	x += step * 1.2;
	say('Not like this:');
	for (const fault of ['tick', 'cross', 'dot'] as const) {
		marks.push(...drawBubble(x, y, '', style), ...drawFault(fault, x, y, measures.bubble / 2));
		x += step;
	}
	const alt = 'A bubble filled all over counts. A bubble with a tick, a cross or a dot in it does not.';
	const bounds = [
		fromMm(frame.left),
		fromMm(y - measures.bubble / 2),
		fromMm(x),
		fromMm(y + measures.bubble / 2),
	] as const;
	return { tag: 'Figure', alt, bounds, children: marks };
}

function exampleLine(geometry: AnswerSheetGeometry): number {
	const measures = measuresFor(geometry.large);
	return 20 + measures.head - measures.bubble / 2 - 2.5;
}

function drawFault(fault: 'tick' | 'cross' | 'dot', x: number, y: number, reach: number): readonly Mark[] {
	const paint = { stroke: black, width: 1.2 };
	const stroke = (x1: number, y1: number, x2: number, y2: number): Mark => ({
		kind: 'line',
		x1: fromMm(x + x1 * reach),
		y1: fromMm(y + y1 * reach),
		x2: fromMm(x + x2 * reach),
		y2: fromMm(y + y2 * reach),
		paint,
	});
	switch (fault) {
		case 'tick':
			return [stroke(-0.5, 0, -0.1, 0.5), stroke(-0.1, 0.5, 0.6, -0.6)];
		case 'cross':
			return [stroke(-0.5, -0.5, 0.5, 0.5), stroke(-0.5, 0.5, 0.5, -0.5)];
		case 'dot':
			return [{ kind: 'circle', x: fromMm(x), y: fromMm(y), radius: fromMm(reach * 0.25), paint: { fill: black } }];
	}
}

function drawFields(context: SheetContext, page: SheetPage): readonly Block[] {
	const measures = measuresFor(context.geometry.large);
	return page.fields.map((field) => drawField(field, context, measures));
}

function drawField(field: SheetField, context: SheetContext, measures: SheetMeasures): Block {
	const style = { bubble: measures.bubble, symbolSize: measures.symbolSize };
	const marks = drawColumns(field.columns, style);
	const size = measures.labelSize;
	const [first] = field.columns;
	switch (field.kind) {
		case 'choice': {
			const bubble = first?.bubbles[0] ?? { x: 0, y: 0 };
			const text = String(field.position);
			// Numbers end where the bubbles begin, so that tens stand under tens.
			const x = fromMm(bubble.x - measures.bubble / 2 - 1.8) - textWidth(text, 'sans-bold', size);
			const y = fromMm(bubble.y) + size * 0.33;
			return { tag: 'P', children: [{ kind: 'text', x, y, text, font: 'sans-bold', size }, ...marks] };
		}
		case 'grid': {
			const unit = unitOf(context, field.position);
			const heading = drawGridHeading(String(field.position), unit, first?.box, measures);
			const alt = `Answer grid for item ${field.position}: ${field.columns.length} boxes with bubbles below them.`;
			return { tag: 'Sect', children: [heading, figureOf(field, alt, marks, measures)] };
		}
		case 'student-code': {
			const heading = drawGridHeading('Student code', '', first?.box, measures);
			const alt = `Field for a student code: ${field.columns.length} boxes with bubbles for digits, letters and the hyphen.`;
			return { tag: 'Sect', children: [heading, figureOf(field, alt, marks, measures)] };
		}
		default:
			return field satisfies never;
	}
}

function unitOf({ placed }: SheetContext, position: number): string {
	const item = placed[position - 1]?.record.item;
	return item?.kind === 'gridded' ? (item.unit ?? '') : '';
}

function drawGridHeading(
	number: string,
	unit: string,
	box: { readonly x: number; readonly y: number } | undefined,
	measures: SheetMeasures,
): Block {
	const size = measures.labelSize;
	const [x, y] = [fromMm(box?.x ?? 0), fromMm((box?.y ?? 0) - 1.6)];
	const marks: Mark[] = [{ kind: 'text', x, y, text: number, font: 'sans-bold', size }];
	if (unit !== '') {
		const start = x + textWidth(`${number}  `, 'sans-bold', size);
		marks.push({ kind: 'text', x: start, y, text: `in ${unit}`, font: 'sans', size: measures.textSize });
	}
	return { tag: 'P', children: marks };
}

function figureOf(field: SheetField, alt: string, children: readonly Mark[], measures: SheetMeasures): Block {
	const boxes = field.columns.flatMap(({ box }) => (box ? [box] : []));
	const bubbles = field.columns.flatMap((column) => column.bubbles);
	const half = measures.bubble / 2;
	const bounds = [
		fromMm(Math.min(...boxes.map((box) => box.x))),
		fromMm(Math.min(...boxes.map((box) => box.y))),
		fromMm(Math.max(...boxes.map((box) => box.x + box.width))),
		fromMm(Math.max(...bubbles.map((bubble) => bubble.y + half))),
	] as const;
	return { tag: 'Figure', alt, bounds, children };
}
