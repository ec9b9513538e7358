import bwip from 'bwip-js/node';
import { invariant } from '../../../item-bank/invariant.ts';
import type { CodePlace } from '../../../item-bank/types.ts';
import { black, fromMm, type Mark, type Rect } from '../page/marks.ts';

/** What the code of a page says. No part holds a blank. */
export interface SheetCode {
	/** sheet: answers; work: working for one item, or for any; booklet: items with answer places. */
	readonly kind: 'sheet' | 'work' | 'booklet';
	readonly form: string;
	readonly version: number;
	/** Id of the layout in the geometry; '-' on work pages. */
	readonly layout: string;
	/** Page of the layout, or the number of the item on the test for work pages, 0 for a ruled one. */
	readonly page: number;
	/** Undefined on blank pages. */
	readonly student: string | undefined;
}

const letters = { sheet: 'S', work: 'W', booklet: 'B' } as const;
const opening = 'ZP1';

/** The code as text, such as "ZP1S spring-form-a 3 1f4a09c2 1 6A-01". */
export function writeSheetCode(code: SheetCode): string {
	const { kind, form, version, layout, page, student } = code;
	return [`${opening}${letters[kind]}`, form, version, layout, page, student ?? '-'].join(' ');
}

/** Reads what {@link writeSheetCode} wrote; undefined for any other text. */
export function readSheetCode(text: string): SheetCode | undefined {
	const found = /^ZP1([SWB]) ([a-z0-9-]+) (\d+) ([0-9a-f]{8}|-) (\d+) ([A-Z0-9][A-Z0-9-]*|-)$/.exec(text);
	if (!found) return undefined;
	const [, letter, form = '', version, layout = '', page, student] = found;
	const kind = letter === 'S' ? 'sheet' : letter === 'W' ? 'work' : 'booklet';
	const named = student === '-' ? undefined : student;
	return { kind, form, version: Number(version), layout, page: Number(page), student: named };
}

/** Largest side of a module and of a whole code, millimetres: 0.8 mm is about 9 dots of a 300 dpi scan. Common practice, no source. */
const widestModule = 0.8;
const widestCode = 22;

/** How large the code of a set must be so that every page of it fits: modules to the side, and millimetres. */
export function codeSize(form: string, version: number, longestStudent: number): Pick<CodePlace, 'size' | 'modules'> {
	// A dash costs a whole codeword in every mode, and no character costs more; the rest is for changes of mode.
	const [layout, page, student] = [8, 3, Math.max(1, longestStudent) + 4].map((length) => '-'.repeat(length));
	const text = [`${opening}${letters.sheet}`, form, version, layout, page, student].join(' ');
	const { modules } = encode(text, undefined);
	const size = Math.round(Math.min(widestModule * modules, widestCode) * 100) / 100;
	return { modules, size };
}

/** The Data Matrix of a code as one drawing call: dark modules side by side make one rectangle. */
export function drawSheetCode(code: SheetCode, place: CodePlace): Mark {
	const { modules } = place;
	const { dark } = encode(writeSheetCode(code), modules);
	const side = fromMm(place.size) / modules;
	const rects: Rect[] = [];
	let from = 0;
	for (const [at, index] of dark.entries()) {
		if (dark[at + 1] === index + 1 && (index + 1) % modules !== 0) continue;
		const first = dark[from] ?? index;
		rects.push({
			x: fromMm(place.x) + (first % modules) * side,
			y: fromMm(place.y) + Math.floor(first / modules) * side,
			width: (index - first + 1) * side,
			height: side,
		});
		from = at + 1;
	}
	return { kind: 'rects', rects, paint: { fill: black } };
}

/** Dark modules by their index, row by row from the top. */
function encode(
	text: string,
	modules: number | undefined,
): { readonly modules: number; readonly dark: readonly number[] } {
	const options = { bcid: 'datamatrix', text, ...(modules === undefined ? {} : { version: `${modules}x${modules}` }) };
	const [symbol] = bwip.raw(options);
	invariant(symbol && 'pixs' in symbol && symbol.pixx === symbol.pixy, 'expected a square Data Matrix');
	const { pixs, pixx } = symbol;
	return { modules: pixx, dark: pixs.flatMap((pixel, index) => (pixel ? [index] : [])) };
}
