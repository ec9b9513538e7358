import { createHash } from 'node:crypto';
import { invariant } from '../../../item-bank/invariant.ts';
import type { FormRecord } from '../../../item-bank/items/record.ts';
import { getGridProfile } from '../../../item-bank/responses/grid-profiles.ts';
import type { AnswerSheetGeometry, CodePlace, SheetField, SheetLayout, SheetPage } from '../../../item-bank/types.ts';
import { fromMm } from '../page/marks.ts';
import { type PaperName, paperSizes } from '../page/paper.ts';
import { answersAt, type PlacedItem } from '../placed-items.ts';
import { codeTop, headHeight } from './head.ts';
import { fiducialsOf, measuresFor, round, type SheetMeasures, sheetFrame } from './measures.ts';
import { codeFieldSize, planCodeField } from './plan-fields.ts';
import { fitsRoom, runsOf } from './plan-runs.ts';
import { codeSize } from './sheet-code.ts';

/** What a set of sheets is laid out for. */
export interface SheetOrder {
	readonly form: FormRecord;
	readonly placed: readonly PlacedItem[];
	readonly students: readonly string[];
	readonly paper: PaperName;
	readonly large: boolean;
}

/** Lays out the sheets of a form: one layout with the student in the code (only for a class), one to fill the student in. */
export function planSheets(order: SheetOrder): AnswerSheetGeometry {
	const { form, students, paper, large } = order;
	const longest = Math.max(0, ...students.map((student) => student.length));
	const code = placeCode(paper, codeSize(form.id, form.version, longest));
	const kinds = students.length > 0 ? (['coded', 'blank'] as const) : (['blank'] as const);
	const layouts = kinds.map((kind): SheetLayout => {
		const pages = planPages(order, kind === 'blank' ? codeCharacters(longest, measuresFor(large)) : 0, code);
		return { id: layoutId(order, kind, pages), kind, pages };
	});
	const { width, height } = paperSizes[paper];
	return {
		format: 1,
		form: form.id,
		formVersion: form.version,
		paper,
		large,
		gridProfile: form.form.gridProfile,
		page: { width, height },
		bubble: measuresFor(large).bubble,
		fiducials: fiducialsOf(paper),
		layouts,
	};
}

/** Eight hexadecimal digits that differ between layouts that differ. */
export function layoutId(order: Pick<SheetOrder, 'form' | 'paper'>, kind: string, pages: readonly SheetPage[]): string {
	const { id, version } = order.form;
	return createHash('sha256')
		.update(JSON.stringify([id, version, order.paper, kind, pages]))
		.digest('hex')
		.slice(0, 8);
}

/** The code stands at the right, under the mark in the corner. */
export function placeCode(paper: PaperName, size: Pick<CodePlace, 'size' | 'modules'>): CodePlace {
	return { x: round(sheetFrame(paper).right - size.size), y: codeTop, ...size };
}

/** Six characters, or as many as the longest code of the class has, as far as they go on a page. */
function codeCharacters(longest: number, measures: SheetMeasures): number {
	return Math.min(measures.codeCharacters, longest === 0 ? 6 : longest);
}

function planPages(order: SheetOrder, characters: number, code: CodePlace): readonly SheetPage[] {
	const measures = measuresFor(order.large);
	const frame = sheetFrame(order.paper);
	const profile = getGridProfile(order.form.form.gridProfile);
	const places = order.placed.flatMap(answersAt);
	const width = frame.right - frame.left;
	const topWith = (hasCodeField: boolean) => {
		const head = headHeight(places, order, fromMm(code.x - 5 - frame.left), hasCodeField);
		return Math.max(codeTop + head, code.y + code.size + 6);
	};
	const pages: SheetField[][] = [];
	const codeHeight = characters > 0 ? codeFieldSize(characters, width, measures).height : 0;
	const roomBelow = (y: number) => ({ width, height: frame.bottom - y, measures, profile });
	// On every page, so that a loose page still names its student, unless it would leave no room for a field.
	const rest = roomBelow(topWith(true) + codeHeight + measures.gap);
	const isRepeated = characters > 0 && fitsRoom(places, rest);
	const top = topWith(isRepeated);
	const runs = runsOf(places, isRepeated ? rest : roomBelow(top));
	let y = top;
	const openPage = (): SheetField[] => {
		const fields: SheetField[] = [];
		const isCodePage = characters > 0 && !isRepeated && pages.length === 0;
		y = isCodePage ? codeTop + measures.codeHead : top;
		if (isRepeated || isCodePage) {
			fields.push(planCodeField(characters, frame.left, y, width, measures));
			y += codeHeight + measures.gap;
		}
		pages.push(fields);
		return fields;
	};
	let fields = openPage();
	for (const run of runs) {
		for (let done = 0; done < run.count; ) {
			const planned = run.plan(done, frame.left, y, frame.bottom);
			if (planned.fields.length === 0) {
				invariant(pages.length <= places.length + 1, 'expected a page that holds a field at least');
				fields = openPage();
				continue;
			}
			fields.push(...planned.fields);
			y = planned.bottom + measures.gap * 0.6;
			done += planned.fields.length;
		}
	}
	return pages.map((each, index) => ({ page: index + 1, code, fields: each }));
}
