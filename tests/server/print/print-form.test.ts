import { describe, expect, test } from 'vitest';
import { findKey } from '../../../item-bank/items/key.ts';
import type { ItemRecord } from '../../../item-bank/items/record.ts';
import type { AnswerSheetGeometry, Item } from '../../../item-bank/types.ts';
import { checkShape } from '../../../server/json-schemas.ts';
import { PrintCancelledError, PrintGlyphError, PrintRoomError } from '../../../server/print/print-errors.ts';
import { printForm } from '../../../server/print/print-form.ts';
import { makeChoice, makeExplanation, makeGridded, makePoint, makeSet } from '../../helpers/items.ts';
import { kindItems, kindLabels, printKinds } from './all-kinds.ts';
import { demoForm, demoForms, demoItems, formWith, printDemo } from './demo-forms.ts';

const recordOf = (item: Item, id = 'made-item'): ItemRecord => ({ id, version: 1, status: 'draft', item });
const printItem = (item: Item) =>
	printForm({ form: formWith([recordOf(item)]), items: [recordOf(item)] }, { paper: 'a4', work: 'ruled' });

describe('the files of a form', () => {
	test.each([
		['separate', ['booklet.pdf', 'answer-sheets.pdf', 'answer-sheets.geometry.json']],
		['beside', ['booklet.pdf', 'booklet.geometry.json']],
	] as const)(
		'with grids %s hold booklet, places to answer, key, administration sheet and work pages',
		async (grids, first) => {
			const files = await printDemo('a', { paper: 'a4', grids, work: 'ruled' });
			expect([...files.keys()]).toEqual([...first, 'key.pdf', 'administration.pdf', 'work-pages.pdf']);
			for (const [name, bytes] of files) {
				if (name.endsWith('.pdf')) expect(Buffer.from(bytes).toString('latin1', 0, 8), name).toBe('%PDF-1.7');
			}
			const geometry: unknown = JSON.parse(new TextDecoder().decode(files.get(first.at(-1) ?? '')));
			expect(checkShape('answer-sheet-geometry.schema.json', geometry)).toEqual([]);
			const layouts = (geometry as AnswerSheetGeometry).layouts;
			const positions = layouts[0]?.pages.flatMap(({ fields }) =>
				fields.flatMap((field) => ('position' in field ? [field.position] : [])),
			);
			expect(positions).toEqual(Array.from({ length: 20 }, (_, index) => index + 1));
		},
	);

	test('are the same bytes every time', async () => {
		const [one, two] = [
			await printDemo('b', { paper: 'letter' }, ['6A-01']),
			await printDemo('b', { paper: 'letter' }, ['6A-01']),
		];
		for (const [name, bytes] of one) expect(Buffer.compare(bytes, two.get(name) ?? new Uint8Array()), name).toBe(0);
	});

	test('say how far they are, page by page to the last', async () => {
		const heard: (readonly [number, number])[] = [];
		await printForm(
			{ form: demoForm('a'), items: demoItems, students: ['6A-01', '6A-02'] },
			{ paper: 'a4', onProgress: (done, total) => heard.push([done, total]) },
		);
		const total = heard[0]?.[1] ?? 0;
		expect(heard).toEqual(Array.from({ length: total }, (_, index) => [index + 1, total]));
		expect(total).toBeGreaterThan(60);
	});
});

describe.each(demoForms.map((form) => [form.id, form] as const))('demo form %s', (_, form) => {
	test.each([
		{ paper: 'a4' },
		{ paper: 'letter', columns: 2 },
		{ paper: 'letter', large: true },
		{ paper: 'a4', large: true, grids: 'beside' },
	] as const)('is printed with %o', async (options) => {
		const files = await printForm({ form, items: demoItems }, { ...options, work: 'ruled' });
		expect(files.every(({ bytes }) => bytes.length > 1000)).toBe(true);
	});
});

describe('a form with every kind of item', () => {
	test.each([
		{ paper: 'letter', columns: 2 },
		{ paper: 'letter', grids: 'beside', large: true },
		{ paper: 'a4', grids: 'beside', columns: 2 },
		{ paper: 'a4', large: true },
	] as const)('has a place for each item and each part once, with %o', async (options) => {
		const files = await printKinds({ ...options, work: 'ruled' }, ['6A-01']);
		const name = 'grids' in options ? 'booklet' : 'answer-sheets';
		const bytes = files.get(`${name}.geometry.json`);
		const geometry = JSON.parse(new TextDecoder().decode(bytes)) as AnswerSheetGeometry;
		expect(checkShape('answer-sheet-geometry.schema.json', geometry)).toEqual([]);
		for (const { pages } of geometry.layouts) {
			const labels = pages.flatMap(({ fields }) =>
				fields.flatMap((field) => (field.kind === 'student-code' ? [] : [`${field.position}${field.part ?? ''}`])),
			);
			expect(labels).toEqual(kindLabels);
		}
	});

	test('consists of sound items', () => {
		for (const { id, item } of kindItems) expect([id, findKey(item)]).toEqual([id, { key: expect.anything() }]);
	});
});

describe('what cannot be printed', () => {
	test('a form without items is refused', async () => {
		const input = { form: formWith([]), items: [] };
		await expect(printForm(input, { paper: 'a4' })).rejects.toMatchObject({ code: 'print-form-empty' });
	});

	test('an item at another version than the form names is refused', async () => {
		const form = formWith([{ ...recordOf(makeGridded()), version: 2 }]);
		const input = { form, items: [recordOf(makeGridded())] };
		await expect(printForm(input, { paper: 'a4' })).rejects.toMatchObject({
			code: 'print-item-missing',
			message: expect.stringContaining('"made-item" version 2'),
		});
	});

	test('a line with more ticks than bubbles fit under is refused in large print alone', async () => {
		const line = { kind: 'number-line', orientation: 'horizontal', from: -20, to: 20, tickEvery: 1 } as const;
		const record = recordOf(makePoint({ line: { ...line, labels: 'ends-and-zero' } }));
		const input = { form: formWith([record]), items: [record] };
		const error = await printForm(input, { paper: 'a4', large: true }).catch((caught: unknown) => caught);
		expect(error).toBeInstanceOf(PrintRoomError);
		expect(error).toMatchObject({ code: 'print-figure-too-wide', item: 'made-item' });
		await expect(printForm(input, { paper: 'a4', work: 'ruled' })).resolves.toHaveLength(6);
	});

	test.each([
		['print-student-empty', ['6A-01', ' ']],
		['print-student-repeated', ['6A-01', '6A-02', '6A-01']],
		['print-student-spelling', ['6a_01']],
	])('a class list is refused with %s', async (code, students) => {
		const input = { form: demoForm('a'), items: demoItems, students };
		await expect(printForm(input, { paper: 'a4' })).rejects.toMatchObject({ code });
	});

	test('a character that the fonts lack is named with its place', async () => {
		const item = makeGridded({ stem: [{ kind: 'paragraph', text: 'What is ☃ worth when it melts by `-3` 雪?' }] });
		const error = await printItem(item).catch((caught: unknown) => caught);
		expect(error).toBeInstanceOf(PrintGlyphError);
		expect(error).toMatchObject({ characters: ['☃', '雪'], place: 'item "made-item" at /stem/0/text' });
		expect(String(error)).toContain('"☃" (U+2603)');
	});

	test('a character that the fonts lack is found in rubrics and in the parts of a set as well', async () => {
		const rubric = [
			{ points: 2, descriptor: 'Says why.', sample: 'Because of ☃.' },
			{ points: 0, descriptor: 'Does not.' },
		];
		await expect(printItem(makeExplanation({ rubric }))).rejects.toMatchObject({
			characters: ['☃'],
			place: 'item "made-item" at /rubric/0/sample',
		});
		const parts = [makeChoice(), makeGridded({ unit: '☃' })];
		await expect(printItem(makeSet({ parts, points: 2 }))).rejects.toMatchObject({
			place: 'item "made-item" at /parts/1/unit',
		});
	});

	test('a figure wider than the page is refused with both sizes', async () => {
		const figure = { kind: 'number-line', orientation: 'horizontal', from: -200, to: 200, tickEvery: 1 } as const;
		const error = await printItem(makeGridded({ stem: [{ kind: 'figure', figure }] })).catch(
			(caught: unknown) => caught,
		);
		expect(error).toBeInstanceOf(PrintRoomError);
		expect(error).toMatchObject({
			code: 'print-figure-too-wide',
			item: 'made-item',
			available: expect.closeTo(178, 0),
		});
	});

	test('an item taller than a page is refused, not broken', async () => {
		const text = 'The gauge reads lower and lower all day long, and then lower still. '.repeat(25);
		const item = makeChoice({ stem: Array.from({ length: 4 }, () => ({ kind: 'paragraph' as const, text })) });
		await expect(printItem(item)).rejects.toMatchObject({ code: 'print-item-too-tall', item: 'made-item' });
	});

	test('very long words are broken and stay on the page', async () => {
		const text = `Read ${'supercalibrated'.repeat(20)} and answer.`;
		await expect(printItem(makeChoice({ stem: [{ kind: 'paragraph', text }] }))).resolves.toHaveLength(6);
	});
});

describe('giving up', () => {
	test('in the middle leaves nothing and says so', async () => {
		const controller = new AbortController();
		const students = Array.from({ length: 60 }, (_, index) => `ST-${index + 1}`);
		const printing = printForm(
			{ form: demoForm('a'), items: demoItems, students },
			{
				paper: 'a4',
				signal: controller.signal,
				onProgress: (done) => done === 40 && controller.abort('changed my mind'),
			},
		);
		await expect(printing).rejects.toBeInstanceOf(PrintCancelledError);
		await expect(printing).rejects.toMatchObject({ code: 'print-cancelled', cause: 'changed my mind' });
	});

	test('before the beginning prints nothing', async () => {
		const input = { form: demoForm('a'), items: demoItems };
		await expect(printForm(input, { paper: 'a4', signal: AbortSignal.abort() })).rejects.toMatchObject({
			code: 'print-cancelled',
		});
	});
});

test('sheets for 500 students are made, a sheet each and one spare', async () => {
	const students = Array.from({ length: 500 }, (_, index) => `SCHOOL-LONG-CODE-${String(index).padStart(4, '0')}`);
	const [item] = demoItems;
	if (!item) throw new Error('expected items in the demo');
	let pages = 0;
	const options = {
		paper: 'letter',
		work: 'ruled',
		onProgress: () => {
			pages += 1;
		},
	} as const;
	await printForm({ form: formWith([item]), items: [item], students }, options);
	expect(pages).toBeGreaterThanOrEqual(2 * 501);
});
