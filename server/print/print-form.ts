import type { FormRecord, ItemRecord } from '../../item-bank/items/record.ts';
import type { AnswerSheetGeometry } from '../../item-bank/types.ts';
import { type BookletOrder, layBooklet } from './booklet/booklet.ts';
import { checkGlyphs } from './check-glyphs.ts';
import { layAdministration } from './guide/administration.ts';
import { layKey } from './guide/key.ts';
import type { Page, PrintDocument } from './page/marks.ts';
import { paintDocument } from './page/paint.ts';
import type { PaperName } from './page/paper.ts';
import { checkStudents, placeItems } from './placed-items.ts';
import { PrintCancelledError } from './print-errors.ts';
import { drawSheets } from './sheet/draw-sheet.ts';
import { planSheets } from './sheet/plan-sheet.ts';
import { countWorkPages, drawWorkPages, type WorkOrder } from './sheet/work-pages.ts';

/** What is printed: a form with all its items, for nobody in particular or for a class. */
export interface PrintInput {
	readonly form: FormRecord;
	readonly items: readonly ItemRecord[];
	/** Student codes; a set is made with one blank spare. */
	readonly students?: readonly string[];
}

/** How it is printed. */
export interface PrintOptions {
	readonly paper: PaperName;
	readonly large?: boolean;
	/** Of the booklet; 1 when left out, always 1 in large print. */
	readonly columns?: 1 | 2;
	/** Where answers are marked: on sheets of their own, or beside each item in the booklet. */
	readonly grids?: 'separate' | 'beside';
	/** A work page for each item, or one ruled page; items when left out. */
	readonly work?: 'items' | 'ruled';
	/** Told of finished pages; `total` is known from the start. */
	readonly onProgress?: (done: number, total: number) => void;
	/** Gives the printing up; it then throws PrintCancelledError. */
	readonly signal?: AbortSignal;
}

/** A file to be written. */
export interface PrintedFile {
	readonly name: string;
	readonly bytes: Uint8Array;
}

/**
 * Prints a form: booklet.pdf; where answers go on sheets answer-sheets.pdf and answer-sheets.geometry.json, else
 * booklet.geometry.json; key.pdf, administration.pdf, work-pages.pdf. Same input, same bytes. Throws PrintInputError,
 * PrintGlyphError, PrintRoomError and PrintCancelledError; then there are no files at all.
 */
export async function printForm(input: PrintInput, options: PrintOptions): Promise<readonly PrintedFile[]> {
	const { form } = input;
	const { paper, large = false, columns = 1, grids = 'separate', work = 'items', onProgress, signal } = options;
	if (signal?.aborted) throw new PrintCancelledError(signal.reason);
	const placed = placeItems(form, input.items);
	const students = checkStudents(input.students ?? []);
	checkGlyphs(form, placed);
	const order = { form, placed, students, paper, large, columns, grids, work };
	const plans = planFiles(order);
	const total = plans.reduce((sum, { count }) => sum + count, 0);
	const source = JSON.stringify([
		form,
		placed.map(({ record }) => record),
		students,
		paper,
		large,
		columns,
		grids,
		work,
	]);
	let done = 0;
	const onPage = () => {
		done += 1;
		onProgress?.(done, total);
	};
	const files: PrintedFile[] = [];
	for (const { name, document, geometry } of plans) {
		files.push({
			name: `${name}.pdf`,
			bytes: await paintDocument(document, { source: `${name} ${source}`, onPage, signal }),
		});
		if (geometry) files.push({ name: `${name}.geometry.json`, bytes: encodeJson(geometry) });
	}
	return files;
}

interface FilePlan {
	readonly name: string;
	readonly document: PrintDocument;
	/** Number of pages. */
	readonly count: number;
	readonly geometry?: AnswerSheetGeometry | undefined;
}

function planFiles(order: WorkOrder & BookletOrder): readonly FilePlan[] {
	const { form, placed, students, paper, grids } = order;
	const { title } = form.form;
	const subject = `Form ${form.id}, version ${form.version}`;
	const plan = (name: string, what: string, pages: readonly Page[]): FilePlan => ({
		name,
		document: { title: `${what}: ${title}`, subject, pages },
		count: pages.length,
	});
	const booklet = layBooklet(order);
	const document = { title, subject, pages: booklet.pages };
	return [
		{ name: 'booklet', document, count: booklet.pageCount, geometry: booklet.geometry },
		...(grids === 'separate' ? [planAnswerSheets(order, subject)] : []),
		plan('key', 'Key', layKey(form, placed, paper)),
		plan('administration', 'Giving the test', layAdministration({ form, placed, paper, grids, students })),
		{
			name: 'work-pages',
			document: { title: `Work pages: ${title}`, subject, pages: drawWorkPages(order) },
			count: countWorkPages(order),
		},
	];
}

function planAnswerSheets(order: WorkOrder, subject: string): FilePlan {
	const { form, placed, students } = order;
	const geometry = planSheets(order);
	const pages = drawSheets({ form, placed, geometry, students });
	const count = geometry.layouts.reduce(
		(sum, { kind, pages: each }) => sum + each.length * (kind === 'coded' ? students.length : 1),
		0,
	);
	const document = { title: `Answer sheets: ${form.form.title}`, subject, pages };
	return { name: 'answer-sheets', document, count, geometry };
}

function encodeJson(geometry: AnswerSheetGeometry): Uint8Array {
	return new TextEncoder().encode(`${JSON.stringify(geometry, null, '\t')}\n`);
}
