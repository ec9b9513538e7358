import { describe, expect, test } from 'vitest';
import type { AnswerSheetGeometry, SheetLayout, SheetPage } from '../../../item-bank/types.ts';
import { readSheetCode } from '../../../server/print/sheet/sheet-code.ts';
import { hasCommand, requireOutside } from '../../helpers/reference.ts';
import { printDemo } from './demo-forms.ts';
import { crop, findInk, photocopy, type Raster, rasterise, readCodes } from './raster.ts';

const hasPoppler = requireOutside('pdftoppm (Debian: poppler-utils)', hasCommand('pdftoppm'));
const tolerance = 0.2;

const settings = [
	{ name: 'standard sheets on A4', letter: 'a', options: { paper: 'a4' }, pdf: 'answer-sheets' },
	{ name: 'large sheets on letter', letter: 'b', options: { paper: 'letter', large: true }, pdf: 'answer-sheets' },
	{
		name: 'a booklet with grids beside items',
		letter: 'a',
		options: { paper: 'letter', grids: 'beside' },
		pdf: 'booklet',
	},
] as const;

describe.skipIf(!hasPoppler).each(settings)('$name', async ({ letter, options, pdf }) => {
	const files = hasPoppler ? await printDemo(letter, options, ['6A-01']) : new Map<string, Uint8Array>();
	const geometry = JSON.parse(
		new TextDecoder().decode(files.get(`${pdf}.geometry.json`) ?? new TextEncoder().encode('{"layouts":[]}')),
	) as AnswerSheetGeometry;
	const pages = hasPoppler ? pagesOf(geometry, files.get(`${pdf}.pdf`) ?? new Uint8Array()) : [];

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
		expect(bubbles).toBeGreaterThan(pdf === 'booklet' ? 90 : 300);
	});

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

/** Pages of one student and of the blank spare, as many of each as tell something new, with their pictures. */
function pagesOf(geometry: AnswerSheetGeometry, pdf: Uint8Array): readonly DrawnPage[] {
	const found: DrawnPage[] = [];
	let before = 0;
	for (const layout of geometry.layouts) {
		const covers = (layout.pages[0]?.page ?? 1) - 1;
		const copies = layout.kind === 'booklet' ? ['6A-01', undefined] : [layout.kind === 'coded' ? '6A-01' : undefined];
		for (const student of copies) {
			const isTold = layout.kind !== 'booklet' || student !== undefined;
			if (isTold) {
				const taken = layout.pages.filter((_, index) => index < 2 || index >= layout.pages.length - 2);
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
