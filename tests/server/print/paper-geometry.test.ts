import { describe, expect, test } from 'vitest';
import type { AnswerSheetGeometry, PointField, SheetLayout, SheetPage } from '../../../item-bank/types.ts';
import { readSheetCode } from '../../../server/print/sheet/sheet-code.ts';
import { hasCommand, requireOutside } from '../../helpers/reference.ts';
import { printKinds } from './all-kinds.ts';
import { printDemo } from './demo-forms.ts';
import { crop, findInk, photocopy, type Raster, rasterise, readCodes } from './raster.ts';

const hasPoppler = requireOutside('pdftoppm (Debian: poppler-utils)', hasCommand('pdftoppm'));
const tolerance = 0.2;

const settings = [
	{
		name: 'standard sheets on A4',
		print: () => printDemo('a', { paper: 'a4' }, ['6A-01']),
		pdf: 'answer-sheets',
		least: 300,
	},
	{
		name: 'large sheets on letter',
		print: () => printDemo('b', { paper: 'letter', large: true }, ['6A-01']),
		pdf: 'answer-sheets',
		least: 300,
	},
	{
		name: 'a booklet with grids beside items',
		print: () => printDemo('a', { paper: 'letter', grids: 'beside' }, ['6A-01']),
		pdf: 'booklet',
		least: 90,
	},
	{
		name: 'standard sheets with every kind on letter',
		print: () => printKinds({ paper: 'letter', work: 'ruled' }, ['6A-01']),
		pdf: 'answer-sheets',
		least: 200,
		isEveryKind: true,
	},
	{
		name: 'large sheets with every kind on A4',
		print: () => printKinds({ paper: 'a4', large: true, work: 'ruled' }, ['6A-01']),
		pdf: 'answer-sheets',
		least: 150,
		isEveryKind: true,
	},
	{
		name: 'a booklet with every kind answered in it',
		print: () => printKinds({ paper: 'a4', grids: 'beside', work: 'ruled' }, ['6A-01']),
		pdf: 'booklet',
		least: 150,
		isEveryKind: true,
	},
] as const;

describe.skipIf(!hasPoppler).each(settings)('$name', async (setting) => {
	const { print, pdf, least } = setting;
	const isEveryKind = 'isEveryKind' in setting;
	const files = hasPoppler ? await print() : new Map<string, Uint8Array>();
	const geometry = JSON.parse(
		new TextDecoder().decode(files.get(`${pdf}.geometry.json`) ?? new TextEncoder().encode('{"layouts":[]}')),
	) as AnswerSheetGeometry;
	const pages = hasPoppler ? pagesOf(geometry, files.get(`${pdf}.pdf`) ?? new Uint8Array(), isEveryKind) : [];

	test('marks, codes and every bubble stand within 0.2 mm of where the geometry says', () => {
		const faults: string[] = [];
		let bubbles = 0;
		for (const { page, raster } of pages) {
			for (const mark of geometry.fiducials) {
				const half = mark.size / 2;
				faults.push(...compare(`fiducial ${mark.corner}`, raster, mark.x - half, mark.y - half, mark.size, 2));
			}
			const { x, y, size } = page.code;
			faults.push(...compare(`code of page ${page.page}`, raster, x, y, size, 1.5));
			for (const field of page.fields) {
				for (const bubble of field.columns.flatMap((column) => column.bubbles)) {
					const half = geometry.bubble / 2;
					const name = `bubble ${bubble.symbol} of ${'position' in field ? field.position : field.kind}`;
					faults.push(...compare(name, raster, bubble.x - half, bubble.y - half, geometry.bubble, 0.55));
					bubbles += 1;
				}
			}
		}
		expect(faults).toEqual([]);
		expect(bubbles).toBeGreaterThan(least);
	});

	if (isEveryKind) {
		test('lines stand within 0.2 mm of where the geometry says, each bubble at the foot of its tick', () => {
			const faults: string[] = [];
			let lines = 0;
			for (const { page, raster } of pages) {
				for (const field of page.fields) {
					if (field.kind !== 'point') continue;
					lines += 1;
					faults.push(...checkLine(raster, field));
				}
			}
			expect(faults).toEqual([]);
			expect(lines).toBe(4);
		});
		return;
	}

	test('the code of every page is read back, from the page and from a grey photocopy of it', async () => {
		expect(pages.length).toBeGreaterThan(2);
		for (const { page, layout, student, raster } of pages) {
			const expected = {
				kind: pdf === 'booklet' ? 'booklet' : 'sheet',
				form: geometry.form,
				version: geometry.formVersion,
				layout: layout.id,
				page: page.page,
				student,
			};
			const { x, y, size } = page.code;
			const around = crop(raster, x - 14, y - 14, size + 28, size + 28);
			for (const picture of [around, photocopy(around, page.page)]) {
				const codes = await readCodes(picture);
				expect(codes.map(readSheetCode)).toEqual([expected]);
			}
		}
	});

	if (pdf === 'booklet') return;

	test('a reader that looks at a whole photocopied page finds its one code', async () => {
		const [first] = pages;
		const codes = first ? await readCodes(photocopy(first.raster, 7)) : [];
		expect(codes.map(readSheetCode)).toMatchObject([{ form: geometry.form, student: '6A-01' }]);
	});
});

interface DrawnPage {
	readonly layout: SheetLayout;
	readonly page: SheetPage;
	readonly student: string | undefined;
	readonly raster: Raster;
}

/** Pages of one student and, unless every page of that one is wanted, of the blank spare, with their pictures. */
function pagesOf(geometry: AnswerSheetGeometry, pdf: Uint8Array, isEveryPage: boolean): readonly DrawnPage[] {
	const found: DrawnPage[] = [];
	let before = 0;
	for (const layout of geometry.layouts) {
		const covers = (layout.pages[0]?.page ?? 1) - 1;
		const copies = layout.kind === 'booklet' ? ['6A-01', undefined] : [layout.kind === 'coded' ? '6A-01' : undefined];
		for (const student of copies) {
			const isTold = isEveryPage ? student !== undefined : layout.kind !== 'booklet' || student !== undefined;
			if (isTold) {
				const taken = layout.pages.filter((_, index) => isEveryPage || index < 2 || index >= layout.pages.length - 2);
				for (const page of taken) {
					const number = before + page.page;
					for (const raster of rasterise(pdf, number, number)) found.push({ layout, page, student, raster });
				}
			}
			before += covers + layout.pages.length;
		}
	}
	return found;
}

/**
 * Looks across a line between its ticks, where there is nothing but the line, and at the end of each tick on the side
 * without bubbles.
 */
function checkLine(raster: Raster, { line, columns, position, part = '' }: PointField): readonly string[] {
	const isFlat = line.y1 === line.y2;
	const bubbles = columns[0]?.bubbles ?? [];
	const faults: string[] = [];
	const axis = isFlat ? line.y1 : line.x1;
	for (const [index, bubble] of bubbles.entries()) {
		const name = `${position}${part} at ${bubble.symbol}`;
		const at = isFlat ? bubble.x : bubble.y;
		// The tick, 0.4 to 1 mm before the line; a mark at a point would hide it.
		const tick = isFlat
			? findInk(raster, { x: at - 1.2, y: axis - 1.1, width: 2.4, height: 0.6 })
			: findInk(raster, { x: axis - 1.1, y: at - 1.2, width: 0.6, height: 2.4 });
		const middle = tick && (isFlat ? (tick.left + tick.right) / 2 : (tick.top + tick.bottom) / 2);
		if (middle === undefined || Math.abs(middle - at) > tolerance) faults.push(`tick of ${name}: ${middle}, not ${at}`);
		const next = bubbles[index + 1];
		if (!next) continue;
		const half = (at + (isFlat ? next.x : next.y)) / 2;
		const ink = isFlat
			? findInk(raster, { x: half - 0.2, y: axis - 1, width: 0.4, height: 1.8 })
			: findInk(raster, { x: axis - 1, y: half - 0.2, width: 1.8, height: 0.4 });
		const across = ink && (isFlat ? (ink.top + ink.bottom) / 2 : (ink.left + ink.right) / 2);
		if (across === undefined || Math.abs(across - axis) > tolerance)
			faults.push(`line of ${name}: ${across}, not ${axis}`);
	}
	return faults;
}

/** Compares the edges of the ink found at a square with the square. */
function compare(name: string, raster: Raster, x: number, y: number, size: number, around: number): readonly string[] {
	const window = { x: x - around, y: y - around, width: size + 2 * around, height: size + 2 * around };
	const ink = findInk(raster, window);
	if (!ink) return [`${name}: no ink at ${x}, ${y}`];
	const off = [ink.left - x, ink.top - y, ink.right - (x + size), ink.bottom - (y + size)];
	return off.some((each) => Math.abs(each) > tolerance)
		? [`${name}: off by ${off.map((each) => each.toFixed(2)).join(', ')}`]
		: [];
}
