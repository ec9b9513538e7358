import type { GridProfile, SheetField } from '../../../item-bank/types.ts';
import type { AnswerPlace } from '../placed-items.ts';
import { PrintRoomError } from '../print-errors.ts';
import type { SheetMeasures } from './measures.ts';
import { type FieldBlock, planBlock } from './plan-blocks.ts';
import { choiceWidth, gridSize, planChoice, planGrid, rowSymbols } from './plan-fields.ts';

/** What fields are laid out in: the part of a page left for them, millimetres, and how large they are. */
export interface RunRoom {
	readonly width: number;
	readonly height: number;
	readonly measures: SheetMeasures;
	readonly profile: GridProfile;
}

/** Neighbouring fields that are laid out alike. */
export interface FieldRun {
	readonly count: number;
	/** As many fields from the one numbered `from` as fit between `y` and `bottom`, and where they end. */
	plan(from: number, x: number, y: number, bottom: number): PlannedRun;
}

/** Fields with the lower end of the lowest. */
export interface PlannedRun {
	readonly fields: readonly SheetField[];
	readonly bottom: number;
}

type Sort = 'rows' | 'grids' | 'blocks';

function sortOf({ item }: AnswerPlace): Sort {
	switch (item.kind) {
		case 'choice':
		case 'multiple-choice':
		case 'inline-choice':
			return 'rows';
		case 'gridded':
			return 'grids';
		case 'point':
		case 'order':
		case 'match':
		case 'explanation':
			return 'blocks';
		default:
			return item satisfies never;
	}
}

/** Runs of fields in order. Throws PrintRoomError for a field that an empty page has no room for. */
export function runsOf(places: readonly AnswerPlace[], room: RunRoom): readonly FieldRun[] {
	const runs: { readonly sort: Sort; readonly places: AnswerPlace[] }[] = [];
	for (const place of places) {
		const last = runs.at(-1);
		if (last?.sort === sortOf(place)) last.places.push(place);
		else runs.push({ sort: sortOf(place), places: [place] });
	}
	return runs.map(({ sort, places: own }) => {
		if (sort === 'rows') return rowRun(own, room);
		return sort === 'grids' ? gridRun(own, room) : blockRun(own, room);
	});
}

/** Whether every field fits into a room. */
export function fitsRoom(places: readonly AnswerPlace[], room: RunRoom): boolean {
	if (gridSize(room.profile, room.measures).height > room.height) return false;
	try {
		runsOf(places, room);
		return true;
	} catch (error) {
		if (error instanceof PrintRoomError) return false;
		throw error;
	}
}

/** Rows of letters, down the columns. */
function rowRun(places: readonly AnswerPlace[], { width, measures }: RunRoom): FieldRun {
	return {
		count: places.length,
		plan(from, x, y, bottom) {
			const run = places.slice(from);
			const rowWidth = choiceWidth(Math.max(...run.map((place) => rowSymbols(place).length)), measures);
			const columns = Math.max(1, Math.floor((width + measures.gap) / (rowWidth + measures.gap)));
			const fitting = Math.max(0, Math.floor((bottom - y) / measures.rowStep));
			const rows = Math.min(Math.ceil(run.length / columns), fitting);
			const step = columns > 1 ? (width - rowWidth) / (columns - 1) : 0;
			const fields = run.slice(0, columns * rows).map((place, index) => {
				const [column, row] = [Math.floor(index / rows), index % rows];
				return planChoice(place, x + column * step, y + (row + 0.5) * measures.rowStep, measures);
			});
			return { fields, bottom: y + rows * measures.rowStep };
		},
	};
}

/** Grids, all of one size, along the rows. */
function gridRun(places: readonly AnswerPlace[], { width, measures, profile }: RunRoom): FieldRun {
	const size = gridSize(profile, measures);
	const gap = measures.gap * 0.6;
	const perRow = Math.max(1, Math.floor((width + measures.gap) / (size.width + measures.gap)));
	const step = perRow > 1 ? (width - size.width) / (perRow - 1) : 0;
	return {
		count: places.length,
		plan(from, x, y, bottom) {
			const rows = Math.max(0, Math.floor((bottom - y + gap) / (size.height + gap)));
			const taken = places.slice(from, from + perRow * rows);
			const fields = taken.map((place, index) => {
				const [column, row] = [index % perRow, Math.floor(index / perRow)];
				return planGrid(place, profile, x + column * step, y + row * (size.height + gap), measures);
			});
			return { fields, bottom: y + Math.ceil(taken.length / perRow) * (size.height + gap) - gap };
		},
	};
}

/** Fields of their own sizes, along rows as high as the highest in them. */
function blockRun(places: readonly AnswerPlace[], room: RunRoom): FieldRun {
	const { width, height, measures } = room;
	const blocks = places.flatMap((place) => {
		const block = planBlock(place, measures, room);
		if (block && block.height > height) {
			const facts = { needed: block.height, available: height };
			throw new PrintRoomError({ code: 'print-item-too-tall', item: place.id, ...facts });
		}
		return block ? [block] : [];
	});
	return {
		count: blocks.length,
		plan(from, x, y, bottom) {
			const fields: SheetField[] = [];
			const gap = measures.gap * 0.6;
			let top = y;
			let end = y - gap;
			let rest: readonly FieldBlock[] = blocks.slice(from);
			while (rest.length > 0) {
				const row = takeRow(rest, width, measures.gap);
				const high = Math.max(...row.map((block) => block.height));
				if (top + high > bottom) break;
				let left = x;
				for (const block of row) {
					fields.push(block.plan(left, top));
					left += block.width + measures.gap;
				}
				end = top + high;
				top = end + gap;
				rest = rest.slice(row.length);
			}
			return { fields, bottom: end };
		},
	};
}

function takeRow(blocks: readonly FieldBlock[], width: number, gap: number): readonly FieldBlock[] {
	let used = 0;
	const end = blocks.findIndex((block, index) => {
		used += block.width + (index > 0 ? gap : 0);
		return index > 0 && used > width + 0.01;
	});
	return end < 0 ? blocks : blocks.slice(0, end);
}
