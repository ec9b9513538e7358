import type { FormRecord } from '../../../item-bank/items/record.ts';
import type { AnswerSheetGeometry, SheetLayout, SheetPage } from '../../../item-bank/types.ts';
import { textWidth } from '../page/fonts.ts';
import { type Block, fromMm, type Mark, type Page } from '../page/marks.ts';
import { answersAt, type PlacedItem } from '../placed-items.ts';
import { drawCodeField, drawField } from './draw-fields.ts';
import { drawFiducials, fitLine } from './frame-marks.ts';
import { drawHead, labelOf } from './head.ts';
import { measuresFor, sheetFrame } from './measures.ts';
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

function drawFields({ placed, geometry }: SheetContext, page: SheetPage): readonly Block[] {
	const measures = measuresFor(geometry.large);
	const items = new Map(placed.flatMap(answersAt).map((place) => [place.label, place.item]));
	return page.fields.map((field) =>
		field.kind === 'student-code'
			? drawCodeField(field, measures)
			: drawField(field, items.get(labelOf(field)), measures),
	);
}
