import type { Box } from '../page/box.ts';
import { toMm } from '../page/marks.ts';
import { PrintRoomError } from '../print-errors.ts';

/** An item or a piece of one, with its section's heading where it opens one, and the least room for working below it, points. */
export interface FlowUnit {
	/** Id of the item. */
	readonly item: string;
	readonly box: Box;
	/** Instead of the box where it is the first on a page. */
	readonly opening?: Box;
	readonly work: number;
	/** Whether it stands across both columns. */
	readonly isWide: boolean;
}

/** A box at its place in the part of a page that is filled: points from its top left corner. */
export interface PlacedUnit {
	readonly unit: FlowUnit;
	readonly column: 0 | 1;
	readonly y: number;
	/** Room down to the next item, its own height included. */
	readonly room: number;
}

/** Units of one page in reading order. */
export type FlowPage = readonly PlacedUnit[];

/**
 * Deals units out to pages in order, none broken: in one column or down two, wide ones across both. What is left of a
 * page becomes room for working. Throws PrintRoomError for a unit taller than a page.
 */
export function flowUnits(units: readonly FlowUnit[], height: number, columns: 1 | 2): readonly FlowPage[] {
	const pages: PlacedUnit[][] = [];
	let page: PlacedUnit[] = [];
	let y = 0;
	const turn = () => {
		pages.push(page);
		page = [];
		y = 0;
	};
	let rest = units;
	while (rest.length > 0) {
		const [next] = rest;
		if (page.length === 0 && next?.opening) rest = [openPageWith(next, next.opening), ...rest.slice(1)];
		const isWide = columns === 1 || rest[0]?.isWide === true;
		const end = rest.findIndex((unit) => (columns === 1 || unit.isWide) !== isWide);
		const run = end < 0 ? rest : rest.slice(0, end);
		const band = isWide ? fillColumn(run, height - y) : fillColumns(run, height - y, end >= 0);
		if (band.placed.length === 0) {
			const [unit] = run;
			if (page.length === 0 && unit) throw tooTall(unit, height);
			turn();
			continue;
		}
		page.push(...band.placed.map((placed) => ({ ...placed, y: placed.y + y })));
		y += band.height;
		rest = rest.slice(band.placed.length);
		if (band.placed.length < run.length) turn();
	}
	if (page.length > 0) pages.push(page);
	return pages;
}

function openPageWith({ item, work, isWide }: FlowUnit, box: Box): FlowUnit {
	return { item, box, work, isWide };
}

function tooTall(unit: FlowUnit, height: number): PrintRoomError {
	const facts = { item: unit.item, needed: toMm(unit.box.height), available: toMm(height) };
	return new PrintRoomError({ code: 'print-item-too-tall', ...facts });
}

interface Band {
	readonly placed: readonly PlacedUnit[];
	readonly height: number;
}

function fillColumn(run: readonly FlowUnit[], height: number, column: 0 | 1 = 0): Band {
	const taken: FlowUnit[] = [];
	let used = 0;
	for (const unit of run) {
		// The last one on a page may have less room for working than it should, but never less than itself.
		const isFirst = taken.length === 0;
		if (used + unit.box.height + (isFirst ? 0 : unit.work) > height) break;
		taken.push(unit);
		used += unit.box.height + unit.work;
	}
	const isFull = taken.length < run.length;
	// On a full page all items share what is left; at the end of a run they keep to their own room.
	const spare = Math.max(0, height - used) / Math.max(1, taken.length);
	const extra = isFull ? spare : Math.min(spare, 40);
	let y = 0;
	const placed = taken.map((unit): PlacedUnit => {
		const room = unit.box.height + unit.work + extra;
		const at = { unit, column, y, room };
		y += room;
		return at;
	});
	return { placed, height: y };
}

/** Fills the left column, then the right one; evenly when the run ends here and something wide follows. */
function fillColumns(run: readonly FlowUnit[], height: number, isFollowed: boolean): Band {
	const fill = (limit: number): Band => {
		const left = fillColumn(run, limit, 0);
		const right = fillColumn(run.slice(left.placed.length), limit, 1);
		return { placed: [...left.placed, ...right.placed], height: Math.max(left.height, right.height) };
	};
	const whole = fill(height);
	if (whole.placed.length < run.length || !isFollowed) return whole;
	for (let limit = 60; limit < height; limit += 12) {
		const even = fill(limit);
		if (even.placed.length === run.length) return { ...even, height: Math.min(height, even.height) };
	}
	return whole;
}
