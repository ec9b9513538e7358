import { createHash } from 'node:crypto';
import type { FormRecord } from '../../../item-bank/items/record.ts';
import { getGridProfile } from '../../../item-bank/responses/grid-profiles.ts';
import type {
	AnswerSheetGeometry,
	CodePlace,
	GridProfile,
	SheetField,
	SheetLayout,
	SheetPage,
} from '../../../item-bank/types.ts';
import { type PaperName, paperSizes } from '../page/paper.ts';
import type { PlacedItem } from '../placed-items.ts';
import {
	fiducialsOf,
	largeMeasures,
	round,
	type SheetFrame,
	type SheetMeasures,
	sheetFrame,
	standardMeasures,
} from './measures.ts';
import { choiceWidth, codeFieldSize, gridSize, planChoice, planCodeField, planGrid } from './plan-fields.ts';
import { codeSize } from './sheet-code.ts';

/** What a set of sheets is laid out for. */
export interface SheetOrder {
	readonly form: FormRecord;
	readonly placed: readonly PlacedItem[];
	readonly students: readonly string[];
	readonly paper: PaperName;
	readonly large: boolean;
}

/** Millimetres from the top edge of the paper to what stands under the head's first line. */
const codeTop = 20;

/** The measures of standard or large print. */
export function measuresFor(large: boolean): SheetMeasures {
	return large ? largeMeasures : standardMeasures;
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
	const top = Math.max(codeTop + measures.head, code.y + code.size + 6);
	const pages: SheetField[][] = [];
	const codeHeight = characters > 0 ? codeFieldSize(characters, frame.right - frame.left, measures).height : 0;
	// On every page, so that a loose page still names its student, unless it would leave no room for a grid.
	const isRepeated = codeHeight + measures.gap + gridSize(profile, measures).height <= frame.bottom - top;
	let y = top;
	const openPage = (): SheetField[] => {
		const fields: SheetField[] = [];
		const isCodePage = characters > 0 && !isRepeated && pages.length === 0;
		y = isCodePage ? codeTop + measures.codeHead : top;
		if (characters > 0 && (isRepeated || isCodePage)) {
			fields.push(planCodeField(characters, frame.left, y, frame.right - frame.left, measures));
			y += codeHeight + measures.gap;
		}
		pages.push(fields);
		return fields;
	};
	let fields = openPage();
	for (const run of runsOf(order.placed)) {
		let rest = run;
		while (rest.length > 0) {
			const planned = planRun(rest, y, { frame, measures, profile });
			if (planned.fields.length === 0) {
				fields = openPage();
				continue;
			}
			fields.push(...planned.fields);
			y = planned.bottom + measures.gap * 0.6;
			rest = rest.slice(planned.fields.length);
		}
	}
	return pages.map((fields, index) => ({ page: index + 1, code, fields }));
}

/** Neighbouring items that are answered alike. */
function runsOf(placed: readonly PlacedItem[]): readonly (readonly PlacedItem[])[] {
	const runs: PlacedItem[][] = [];
	for (const place of placed) {
		const last = runs.at(-1);
		const isSame = (last?.[0]?.record.item.kind === 'gridded') === (place.record.item.kind === 'gridded');
		if (last && isSame) last.push(place);
		else runs.push([place]);
	}
	return runs;
}

interface RunRoom {
	readonly frame: SheetFrame;
	readonly measures: SheetMeasures;
	readonly profile: GridProfile;
}

/** As many fields of a run as fit below `y`: choice rows down the columns, grids along the rows. */
function planRun(
	run: readonly PlacedItem[],
	y: number,
	room: RunRoom,
): { readonly fields: readonly SheetField[]; readonly bottom: number } {
	const { frame, measures, profile } = room;
	const width = frame.right - frame.left;
	const left = frame.bottom - y;
	if (run[0]?.record.item.kind === 'gridded') {
		const size = gridSize(profile, measures);
		const gap = measures.gap * 0.6;
		const perRow = Math.max(1, Math.floor((width + measures.gap) / (size.width + measures.gap)));
		const rows = Math.max(0, Math.floor((left + gap) / (size.height + gap)));
		const taken = run.slice(0, perRow * rows);
		const step = perRow > 1 ? (width - size.width) / (perRow - 1) : 0;
		const fields = taken.map((place, index) => {
			const [column, row] = [index % perRow, Math.floor(index / perRow)];
			return planGrid(place, profile, frame.left + column * step, y + row * (size.height + gap), measures);
		});
		return { fields, bottom: y + Math.ceil(taken.length / perRow) * (size.height + gap) - gap };
	}
	const options = Math.max(
		...run.map(({ record }) => (record.item.kind === 'gridded' ? 0 : record.item.options.length)),
	);
	const rowWidth = choiceWidth(options, measures);
	const columns = Math.max(1, Math.floor((width + measures.gap) / (rowWidth + measures.gap)));
	const rows = Math.min(Math.ceil(run.length / columns), Math.max(0, Math.floor(left / measures.rowStep)));
	const step = columns > 1 ? (width - rowWidth) / (columns - 1) : 0;
	const fields = run.slice(0, columns * rows).map((place, index) => {
		const [column, row] = [Math.floor(index / rows), index % rows];
		return planChoice(place, frame.left + column * step, y + (row + 0.5) * measures.rowStep, measures);
	});
	return { fields, bottom: y + rows * measures.rowStep };
}
