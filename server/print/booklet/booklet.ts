import type { FormRecord } from '../../../item-bank/items/record.ts';
import { getGridProfile } from '../../../item-bank/responses/grid-profiles.ts';
import type { AnswerSheetGeometry, SheetPage } from '../../../item-bank/types.ts';
import type { Page } from '../page/marks.ts';
import { dealBoxes, drawFoot, makePage, placeBoxes } from '../page/page-boxes.ts';
import { type PageFrame, type PaperName, pageFrame, paperSizes } from '../page/paper.ts';
import type { PlacedItem } from '../placed-items.ts';
import type { ItemField } from '../sheet/draw-fields.ts';
import { fitLine } from '../sheet/frame-marks.ts';
import { fiducialsOf, measuresFor } from '../sheet/measures.ts';
import { layoutId, placeCode } from '../sheet/plan-sheet.ts';
import { codeSize } from '../sheet/sheet-code.ts';
import { besideFrame, drawBesideFrame } from './beside-frame.ts';
import { layCover } from './cover.ts';
import { type ItemPage, layItemPages } from './item-pages.ts';
import { type BookletStyle, bookletStyle } from './styles.ts';

/** What a booklet is made for. */
export interface BookletOrder {
	readonly form: FormRecord;
	readonly placed: readonly PlacedItem[];
	readonly paper: PaperName;
	readonly large: boolean;
	readonly columns: 1 | 2;
	readonly grids: 'separate' | 'beside';
	/** Students to make a booklet for, each; only where answers are marked in it. */
	readonly students: readonly string[];
}

/** A booklet laid out: its pages, how many there are, and where its answer places came to stand. */
export interface Booklet {
	readonly pages: Iterable<Page>;
	readonly pageCount: number;
	/** Only where answers are marked in the booklet. */
	readonly geometry?: AnswerSheetGeometry;
}

/** Lays out a booklet. Throws PrintRoomError for a figure or an item that no page of the paper holds. */
export function layBooklet(order: BookletOrder): Booklet {
	return order.grids === 'separate' ? layPlainBooklet(order) : layAnswerBooklet(order);
}

function layPlainBooklet(order: BookletOrder): Booklet {
	const style = bookletStyle(order.paper, order.large, order.columns);
	const covers = coverPages(order, style, undefined);
	const items = layItemPages(order.placed, style, undefined);
	const total = covers.length + items.length;
	const pages = [
		...covers.map((draw, index) => draw(index + 1, total)),
		...items.map((page, index) => plainPage(order, style, page, covers.length + index + 1, total)),
	];
	return { pages, pageCount: total };
}

function plainPage(order: BookletOrder, style: BookletStyle, page: ItemPage, number: number, total: number): Page {
	const { frame } = page;
	const isLast = number === total;
	const foot = footOf(order, style, frame, number, total, isLast);
	return makePage(frame, page.blocks(), foot);
}

function footOf(
	{ form }: BookletOrder,
	style: BookletStyle,
	frame: PageFrame,
	number: number,
	total: number,
	isLast = false,
): readonly ReturnType<typeof drawFoot>[number][] {
	const { small } = style.type;
	const count = `${isLast ? 'End of the test · ' : ''}${number} of ${total}`;
	const room = frame.right - frame.left - count.length * small * 0.55 - 20;
	const title = fitLine(form.form.title, 'sans', small, style.large ? 18 : 7, room);
	return drawFoot(frame, title.text, count, small);
}

/** The cover, which takes a second page in large print when it must. */
function coverPages(
	order: BookletOrder,
	style: BookletStyle,
	student: string | undefined,
): readonly ((number: number, total: number) => Page)[] {
	const { form, placed, grids } = order;
	const gap = style.type.text * 0.45;
	const boxes = layCover({ form, placed, style, grids, student });
	const frame = style.frame;
	return dealBoxes(boxes, frame.bottom - frame.top, gap).map(
		(page) => (number: number, total: number) =>
			makePage(frame, placeBoxes(page, frame, gap), footOf(order, style, frame, number, total)),
	);
}

/** A booklet to answer in: every page of items carries fiducial marks and a code. One for each student, then a blank one. */
function layAnswerBooklet(order: BookletOrder): Booklet {
	const { form, students, paper, large } = order;
	const style: BookletStyle = { ...bookletStyle(paper, large, order.columns), frame: besideFrame(paper) };
	const found = new Map<number, ItemField[]>();
	let current = 0;
	const places = {
		profile: getGridProfile(form.form.gridProfile),
		measures: measuresFor(large),
		onField: (field: ItemField) => found.set(current, [...(found.get(current) ?? []), field]),
	};
	const items = layItemPages(order.placed, style, places);
	const coverStyle = { ...style, frame: pageFrame(paper) };
	const covers = coverPages(order, coverStyle, undefined).length;
	const total = covers + items.length;
	const drawn = items.map((page, index) => {
		current = covers + index + 1;
		return page.blocks();
	});
	const longest = Math.max(0, ...students.map((student) => student.length));
	const code = placeCode(paper, codeSize(form.id, form.version, longest));
	const pages = drawn.map((_, index): SheetPage => {
		const page = covers + index + 1;
		const fields = [...(found.get(page) ?? [])].sort((a, b) => a.position - b.position);
		return { page, code, fields };
	});
	const id = layoutId(order, 'booklet', pages);
	const { width, height } = paperSizes[paper];
	const geometry: AnswerSheetGeometry = {
		format: 1,
		form: form.id,
		formVersion: form.version,
		paper,
		large,
		gridProfile: form.form.gridProfile,
		page: { width, height },
		bubble: places.measures.bubble,
		fiducials: fiducialsOf(paper),
		layouts: [{ id, kind: 'booklet', pages }],
	};
	function* allPages(): Generator<Page> {
		for (const student of [...students, undefined]) {
			for (const [index, draw] of coverPages(order, coverStyle, student).entries()) yield draw(index + 1, total);
			for (const [index, page] of pages.entries()) {
				const frame = drawBesideFrame({ form, geometry, layout: id, page, student, total, style });
				yield makePage(style.frame, [...frame.blocks, ...(drawn[index] ?? [])], frame.artifacts);
			}
		}
	}
	return { pages: allPages(), pageCount: total * (students.length + 1), geometry };
}
