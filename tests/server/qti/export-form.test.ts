import { createHash } from 'node:crypto';
import { afterAll, describe, expect, test } from 'vitest';
import type { ItemRecord } from '../../../item-bank/items/record.ts';
import { ExportInputError, ExportRefusedError } from '../../../server/qti/export-errors.ts';
import { exportForm, exportItems } from '../../../server/qti/export-form.ts';
import { closeValidation } from '../../../server/qti/validate/pool.ts';
import { validatePackage } from '../../../server/qti/validate-package.ts';
import { qtiVersions } from '../../../server/qti/versions.ts';
import { randomForm, randomItems } from './random-items.ts';
import { sampleForm, sampleItems } from './sample-form.ts';
import { sampleKinds, sampleKindsForm } from './sample-kinds.ts';
import { fileOf, unpack } from './unpacked.ts';

afterAll(closeValidation);

const sample = { form: sampleForm, items: sampleItems };
const plain = { as: 'qti-2.2', images: 'png' } as const;

function sha256(bytes: Uint8Array): string {
	return createHash('sha256').update(bytes).digest('hex');
}

/** The sample with one item changed. */
function withStem(
	id: string,
	text: string,
): { readonly form: typeof sampleForm; readonly items: readonly ItemRecord[] } {
	const items = sampleItems.map((record) =>
		record.id === id ? { ...record, item: { ...record.item, stem: [{ kind: 'paragraph' as const, text }] } } : record,
	);
	return { form: sampleForm, items };
}

test('a form becomes a package with manifest, test, items and figures, and says how it was checked', async () => {
	const stages: string[] = [];
	const result = await exportForm(sample, { ...plain, onProgress: (stage) => stages.push(stage) });
	expect(result.fileName).toBe('harbour-check-v3-qti-2.2.zip');
	expect(result.report.files).toEqual([
		'imsmanifest.xml',
		'test.xml',
		'items/item-001.xml',
		'items/item-002.xml',
		'items/item-003.xml',
		'items/images/item-002-option-a.png',
		'items/images/item-002-option-b.png',
		'items/images/item-002-option-c.png',
		'items/images/item-003-figure-1.png',
	]);
	expect([...unpack(result.bytes).keys()]).toEqual(result.report.files);
	expect(result.report.validated[0]).toEqual({
		schema: 'export profile QTI 2.2: items, test, manifest',
		checked: true,
	});
	expect(result.report.notes.join(' ')).toContain('placement in the grid is not enforced');
	expect(result.report.warnings).toEqual(['Item 3 ("cold-storage-counters" version 1) is draft, not approved.']);
	expect([...new Set(stages)]).toEqual(['items', 'pictures', 'package']);
});

test('pictures have two pixels to each px that the item names', async () => {
	const files = (await exportForm(sample, plain)).bytes;
	const { unzipSync } = await import('fflate');
	const png = Buffer.from(unzipSync(files)['items/images/item-003-figure-1.png'] ?? []);
	const [, width = 0, height = 0] =
		/width="(\d+)" height="(\d+)"/.exec(fileOf(unpack(files), 'items/item-003.xml')) ?? [];
	expect(png.readUInt32BE(16)).toBe(2 * Number(width));
	expect(png.readUInt32BE(20)).toBe(2 * Number(height));
});

test.each(qtiVersions)(
	'the same form gives the same %s bytes, whatever the clock and however the work is shared out',
	async (as) => {
		const items = randomItems(130, 9);
		const form = randomForm(items, 9);
		const first = await exportForm({ form, items }, { as, images: 'svg' });
		await new Promise((resolve) => setTimeout(resolve, 2100));
		await closeValidation();
		const second = await exportForm({ form, items: [...items].reverse() }, { as, images: 'svg' });
		expect(sha256(second.bytes)).toBe(sha256(first.bytes));
		expect(second.answerMap).toBe(first.answerMap);
		expect(await validatePackage(first.bytes)).toEqual([]);
	},
);

test('items go out without a form, and without a test', async () => {
	const { bytes, report } = await exportItems(randomItems(10, 10), { as: 'qti-2.1', images: 'svg' });
	expect(report.files).not.toContain('test.xml');
	expect(report.items).toBe(10);
	expect(report.notes.join(' ')).toContain('points are not carried');
	expect(await validatePackage(bytes)).toEqual([]);
});

test('one item version keeps its identifier on every form, and two versions never share one', async () => {
	const [item] = sampleItems;
	if (!item) throw new Error('no item');
	const alone = unpack((await exportItems([item], { as: 'qti-2.2', images: 'svg' })).bytes);
	const onForm = unpack((await exportForm(sample, { as: 'qti-2.2', images: 'svg' })).bytes);
	const newer = unpack((await exportItems([{ ...item, version: 3 }], { as: 'qti-2.2', images: 'svg' })).bytes);
	const identifier = (files: ReadonlyMap<string, string>): string | undefined =>
		/ identifier="(item-[^"]+)"/.exec(fileOf(files, 'items/item-001.xml'))?.[1];
	expect(identifier(alone)).toBe(identifier(onForm));
	expect(identifier(newer)).not.toBe(identifier(alone));
});

test.each([
	['a control character', 'Tide \u0007 rises', 'U+0007'],
	['a lone surrogate', 'Tide \ud800 rises', 'U+D800'],
	['a character no XML can hold', 'Tide \uffff rises', 'U+FFFF'],
])('%s in a stem is refused, with item and element named, and nothing is handed over', async (_, text, character) => {
	const error = await exportForm(withStem('lift-lines', text), plain).catch((thrown: unknown) => thrown);
	if (!(error instanceof ExportRefusedError)) throw error;
	expect(error.code).toBe('export-invalid');
	expect(error.problems).toEqual([
		expect.objectContaining({
			code: 'xml-illegal-character',
			file: 'items/item-002.xml',
			item: 'lift-lines',
			element: 'prompt',
		}),
	]);
	expect(error.message).toContain(character);
	expect(error.message).toContain('lift-lines');
});

test('an illegal character in the title of a form is refused too', async () => {
	const form = { ...sampleForm, form: { ...sampleForm.form, title: 'Harbour\u0000check' } };
	const error = await exportForm({ form, items: sampleItems }, plain).catch((thrown: unknown) => thrown);
	expect(error).toBeInstanceOf(ExportRefusedError);
	expect(error).toMatchObject({
		problems: [
			{ code: 'xml-illegal-character', file: 'imsmanifest.xml', element: 'lom:string' },
			{ code: 'xml-illegal-character', file: 'test.xml', element: 'assessmentTest' },
		],
	});
});

test('a text the profile does not admit is refused with item, element and line', async () => {
	const error = await exportForm(withStem('tide-gauge-drop', ' '), plain).catch((thrown: unknown) => thrown);
	if (!(error instanceof ExportRefusedError)) throw error;
	const [problem] = error.problems;
	expect(problem).toMatchObject({ item: 'tide-gauge-drop', file: 'items/item-001.xml', element: 'prompt' });
	expect(problem?.line).toBeGreaterThan(1);
});

test('an item without a computable key is refused by name', async () => {
	const items = sampleItems.map((record) =>
		record.id === 'tide-gauge-drop' && record.item.kind === 'choice'
			? { ...record, item: { ...record.item, rule: { kind: 'same-value' as const, expression: '-7 - 99' } } }
			: record,
	);
	const error = await exportForm({ form: sampleForm, items }, plain).catch((thrown: unknown) => thrown);
	expect(error).toMatchObject({
		code: 'export-invalid',
		problems: [{ code: 'item-without-key', item: 'tide-gauge-drop' }],
	});
});

test.each([
	['a backtick without its partner', 'Tide `-3 rises', 'rich-text'],
	['mathematics nobody can read', 'Tide `-3 +` rises', 'rich-text'],
])('%s is refused by item', async (_, text, code) => {
	const error = await exportForm(withStem('lift-lines', text), plain).catch((thrown: unknown) => thrown);
	expect(error).toMatchObject({ code: 'export-invalid', problems: [{ code, item: 'lift-lines' }] });
});

test.each([
	['plain-sign-first', 'number'],
	['left-sign-first', 'number'],
	['left-sign-first', 'columns'],
] as const)(
	'a key wider than the grid %s of the form is refused by item, answered by %s',
	async (gridProfile, grid) => {
		const items = sampleItems.map((record) =>
			record.item.kind === 'gridded' ? { ...record, item: { ...record.item, expression: '99999 + 1' } } : record,
		);
		const form = { ...sampleForm, form: { ...sampleForm.form, gridProfile } };
		const error = await exportForm({ form, items }, { ...plain, grid }).catch((thrown: unknown) => thrown);
		expect(error).toMatchObject({ problems: [{ code: 'export-key-too-wide', item: 'cold-storage-counters' }] });
	},
);

describe('a form of every kind', () => {
	const every = { form: sampleKindsForm, items: sampleKinds };

	test.each(qtiVersions)('leaves as a %s package that is found valid again, pictures as PNG', async (as) => {
		const { bytes, report } = await exportForm(every, { as, images: 'png' });
		expect(report.items).toBe(8);
		const shared = as === 'qti-3.0';
		expect(report.files).toEqual([
			'imsmanifest.xml',
			'test.xml',
			...[1, 2, 3, 4, 5, 6, 7].map((position) => `items/item-00${position}.xml`),
			...(shared ? ['items/item-008-stimulus.xml'] : []),
			'items/item-008-part-1.xml',
			'items/item-008-part-2.xml',
			'items/images/item-001-line.png',
			'items/images/item-003-left-1.png',
			'items/images/item-003-left-2.png',
			...(shared
				? ['items/images/item-008-stimulus-figure-1.png']
				: ['items/images/item-008-part-1-figure-1.png', 'items/images/item-008-part-2-figure-1.png']),
			'items/images/item-008-part-2-line.png',
		]);
		expect(await validatePackage(bytes)).toEqual([]);
	});

	test('says what becomes of each kind, and warns of a draft once', async () => {
		const { report } = await exportForm(every, plain);
		const notes = report.notes.join(' ');
		for (const part of ['areas to click on', 'order nobody touched', 'Credit in parts', 'kept together in the test']) {
			expect(notes).toContain(part);
		}
		expect(notes).toContain('scored by a person');
		expect(notes).not.toContain('all points or none');
		expect(report.warnings).toEqual(['Item 7 ("garden-fund-why" version 1) is draft, not approved.']);
		const set = sampleKinds.map((record) =>
			record.item.kind === 'set' ? { ...record, status: 'retired' as const } : record,
		);
		const retired = await exportForm({ form: sampleKindsForm, items: set }, plain);
		expect(retired.report.warnings.slice(1)).toEqual(['Item 8 ("warehouse-set" version 4) is retired, not approved.']);
	});

	test('tells neither names of items, nor rubrics, nor ids of the bank to who reads its items', async () => {
		const records = [...sampleKinds, ...randomItems(200, 66)];
		const { bytes } = await exportItems(records, { as: 'qti-2.2', images: 'svg' });
		for (const [path, text] of unpack(bytes)) {
			if (!path.startsWith('items/')) continue;
			expect(text).not.toMatch(/Level \d: secret|Says that adding|Compares|random-66|warehouse-set|Random /);
		}
	});

	test('keeps the parts of sets together, each part once', async () => {
		const files = unpack((await exportForm(every, plain)).bytes);
		const test = fileOf(files, 'test.xml');
		const set = /<assessmentSection identifier="set-8"[^>]*>([\s\S]*?)<\/assessmentSection>/.exec(test)?.[1] ?? '';
		expect([...set.matchAll(/href="([^"]+)"/g)].map(([, href]) => href)).toEqual([
			'items/item-008-part-1.xml',
			'items/item-008-part-2.xml',
		]);
		expect(test.match(/item-008-part/g)?.length).toBe(2);
	});

	test('an item worth more than ten points keeps its weight', async () => {
		const items = sampleItems.map((record) =>
			record.item.kind === 'multiple-choice' ? { ...record, item: { ...record.item, points: 20 } } : record,
		);
		const { bytes } = await exportForm({ form: sampleForm, items }, plain);
		expect(fileOf(unpack(bytes), 'test.xml')).toContain('value="20"');
	});

	test('points that parts share without an end add up to whole ones', async () => {
		const [set] = sampleKinds.filter(({ item }) => item.kind === 'set');
		if (set?.item.kind !== 'set') throw new Error('no set');
		const parts = [1, 1, 1].flatMap((points) => (set.item.kind === 'set' ? [{ ...set.item.parts[0], points }] : []));
		const three = { ...set, item: { ...set.item, parts: parts as typeof set.item.parts } };
		const form = {
			...sampleKindsForm,
			form: {
				...sampleKindsForm.form,
				sections: [{ title: 'One', items: [{ item: set.id, version: set.version, points: 2 }] }],
			},
		};
		const { bytes } = await exportForm({ form, items: [three] }, { ...plain, images: 'svg' });
		expect(fileOf(unpack(bytes), 'test.xml')).toContain('<value>2</value>');
		expect(await validatePackage(bytes)).toEqual([]);
	});
});

test('a form that names an item nobody gave is refused', async () => {
	const error = await exportForm({ form: sampleForm, items: sampleItems.slice(1) }, plain).catch(
		(thrown: unknown) => thrown,
	);
	expect(error).toBeInstanceOf(ExportInputError);
	expect(error).toMatchObject({ code: 'export-item-missing' });
	expect(String(error)).toContain('version 2 of item "tide-gauge-drop"');
});

test('the same item twice is refused, and so is nothing at all', async () => {
	const [first] = sampleItems;
	if (!first) throw new Error('no item');
	await expect(exportItems([first, first], plain)).rejects.toMatchObject({ code: 'export-item-repeated' });
	await expect(exportItems([], plain)).rejects.toMatchObject({ code: 'export-empty' });
});
