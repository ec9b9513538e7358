import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import { afterAll, describe, expect, test } from 'vitest';
import type { FormRecord, ItemRecord } from '../../../item-bank/items/record.ts';
import type { PointItem } from '../../../item-bank/types.ts';
import { NotCarriedError } from '../../../server/cartridge/cartridge-errors.ts';
import { closeCartridges } from '../../../server/cartridge/cartridge-pool.ts';
import { exportCartridge } from '../../../server/cartridge/export-cartridge.ts';
import { ExportCancelledError, ExportRefusedError } from '../../../server/qti/export-errors.ts';
import { readZip } from '../../../server/qti/package/read-zip.ts';
import { randomForm, randomItems } from '../qti/random-items.ts';
import { sampleForm, sampleItems } from '../qti/sample-form.ts';
import { fileOf, unpack } from '../qti/unpacked.ts';
import { cartridgeForm, cartridgeItems } from './sample-cartridge.ts';

afterAll(closeCartridges);

const every = { form: cartridgeForm, items: cartridgeItems };
const svg = { images: 'svg' } as const;

function sha256(bytes: Uint8Array): string {
	return createHash('sha256').update(bytes).digest('hex');
}

/** The items alone on a form of their own. */
function formOf(
	items: readonly ItemRecord[],
	points?: number,
): { readonly form: FormRecord; readonly items: typeof items } {
	const entries = items.map(({ id, version }) => ({ item: id, version, ...(points === undefined ? {} : { points }) }));
	const sections = [{ title: 'All', items: entries }];
	return {
		form: { id: 'some-items', version: 1, form: { title: 'Some', gridProfile: 'plain-sign-first', sections } },
		items,
	};
}

function pick(...ids: readonly string[]): readonly ItemRecord[] {
	return ids.map((id) => {
		const record = cartridgeItems.find((each) => each.id === id);
		if (!record) throw new Error(`no item ${id}`);
		return record;
	});
}

async function fail(work: Promise<unknown>): Promise<unknown> {
	return work.then(
		() => new Error('nothing was thrown'),
		(error: unknown) => error,
	);
}

test.each(['imsmanifest.xml', 'assessment.xml'])('the reviewed %s is what is written', async (name) => {
	const { bytes } = await exportCartridge(every, { ...svg, convert: true });
	const path = name === 'assessment.xml' ? 'assessment/assessment.xml' : name;
	const reviewed = readFileSync(new URL(`../../fixtures/cartridge/accept/${name}`, import.meta.url), 'utf8');
	expect(fileOf(unpack(bytes), path)).toBe(reviewed);
});

test('figures are PNG unless SVG is asked for, named in text, and the archive holds what the manifest lists', async () => {
	const stages = new Set<string>();
	const { bytes, report, fileName } = await exportCartridge(
		{ form: sampleForm, items: sampleItems },
		{ images: 'png', onProgress: (stage) => stages.add(stage) },
	);
	expect(fileName).toBe('harbour-check-v3-cc-1.1.imscc');
	const files = await readZip(bytes);
	expect([...files.keys()]).toEqual(report.files);
	const manifest = String(files.get('imsmanifest.xml'));
	const listed = [...manifest.matchAll(/<file href="([^"]+)"/g)].map(([, href]) => href);
	expect(['imsmanifest.xml', ...listed]).toEqual(report.files);
	const pictures = report.files.filter((path) => path.startsWith('images/'));
	expect(pictures).toHaveLength(4);
	const text = String(files.get('assessment/assessment.xml'));
	for (const path of pictures) {
		expect(files.get(path)?.subarray(1, 4).toString()).toBe('PNG');
		expect(text).toContain(`src="$IMS-CC-FILEBASE$/${path}" alt="`);
	}
	expect([...stages]).toEqual(['items', 'pictures', 'package']);
});

describe('items that a cartridge does not carry', () => {
	test('stop the export with the whole list, each with what it could become', async () => {
		const error = await fail(exportCartridge(every, svg));
		if (!(error instanceof NotCarriedError)) throw error;
		expect(error.code).toBe('export-not-carried');
		expect(error.message).toContain('--convert');
		expect(error.message).toContain('--leave-out');
		expect(error.problems.map(({ path }) => path)).toEqual(
			[0, 1, 2, 3, 4, 7, 8].map((at) => `/sections/1/items/${at}`),
		);
		expect(error.problems[5]?.message).toBe(
			'expected a kind that Common Cartridge 1.1 carries, found item 11 ("warehouse-set" version 4, set): convert it to one item a part, shared text above each (part 2 to choice among lettered points), or leave it out',
		);
	});

	test('are left out when asked, each told, and the others keep their numbers', async () => {
		const { bytes, report, answerMap } = await exportCartridge(every, { ...svg, leaveOut: true });
		const titles = [...fileOf(unpack(bytes), 'assessment/assessment.xml').matchAll(/ title="(Item [^"]+)"/g)];
		expect(titles.map(([, title]) => title)).toEqual(['Item 1', 'Item 2', 'Item 3', 'Item 9', 'Item 10']);
		expect(report.items).toBe(5);
		// Seven items, of which the set has two parts.
		expect(report.warnings.filter((warning) => warning.includes('is left out'))).toHaveLength(8);
		expect(answerMap.split('\r\n').length - 2).toBe(5);
	});

	test('are converted when asked, and what is lost is told', async () => {
		const { report } = await exportCartridge(every, { ...svg, convert: true });
		const notes = report.notes.join('\n');
		for (const words of [
			'Credit in parts is lost',
			'Converted to choice among lettered points: items 4, 11.',
			'Converted to choice among whole orders: item 5.',
			'Converted to choice among whole lists of pairs: item 6.',
			'Converted to one choice for each entry on the left: item 7.',
			'Converted to choice below the statement: item 8.',
			'Converted to two boxes to mark, because a single choice there needs three options: item 12.',
			'not kept together: item 11.',
			'scored by a person',
			'placement in the grid is not enforced',
		]) {
			expect(notes).toContain(words);
		}
	});

	test('make up a whole form: refused with the list, refused as empty, or converted', async () => {
		const only = formOf(pick('mine-lift-mark', 'tide-order', 'line-sums'));
		expect(await fail(exportCartridge(only, svg))).toMatchObject({ code: 'export-not-carried' });
		expect(await fail(exportCartridge(only, { ...svg, leaveOut: true }))).toMatchObject({ code: 'export-empty' });
		expect((await exportCartridge(only, { ...svg, convert: true })).report.items).toBe(3);
	});

	test('and cannot be converted are named, or left out where that is asked too', async () => {
		const [mark] = pick('mine-lift-mark');
		if (mark?.item.kind !== 'point') throw new Error('no point');
		const points = [-6, -4].map((at, index) => ({ at, label: 'AB'.charAt(index) }));
		const line = { kind: 'number-line', orientation: 'horizontal', from: -6, to: -4, tickEvery: 1, points } as const;
		// One place is left to mark: nothing to choose among.
		const full: PointItem = { ...mark.item, line };
		const input = formOf([{ ...mark, item: full }, ...pick('battery-truths')]);
		const error = await fail(exportCartridge(input, { ...svg, convert: true }));
		if (!(error instanceof ExportRefusedError)) throw error;
		expect(error.problems).toMatchObject([{ code: 'export-figure-too-small', item: 'mine-lift-mark' }]);
		const { report } = await exportCartridge(input, { ...svg, convert: true, leaveOut: true });
		expect(report.warnings[0]).toContain('Item 1 ("mine-lift-mark" version 1, point) is left out: ');
	});

	test('and have no key at all are refused with their item, or left out where that is asked', async () => {
		const [truths] = pick('battery-truths');
		if (truths?.item.kind !== 'multiple-choice') throw new Error('no multiple choice');
		const halved = { ...truths, item: { ...truths.item, options: truths.item.options.slice(2, 3) } };
		const input = formOf([halved, ...pick('garden-fund-why')]);
		expect(await fail(exportCartridge(input, svg))).toMatchObject({
			code: 'export-invalid',
			problems: [{ code: 'item-without-key', item: 'battery-truths' }],
		});
		const { report } = await exportCartridge(input, { ...svg, leaveOut: true });
		expect(report.warnings[0]).toContain('is left out: no key can be computed');
	});
});

describe('weights', () => {
	const weights = (bytes: Uint8Array): readonly number[] =>
		[
			...fileOf(unpack(bytes), 'assessment/assessment.xml').matchAll(/cc_weighting<\/fieldlabel><fieldentry>(\d+)/g),
		].map(([, weight]) => Number(weight));

	test('are the points of the form where those are whole', async () => {
		const { bytes } = await exportCartridge(formOf(pick('battery-truths', 'garden-fund-why'), 7), svg);
		expect(weights(bytes)).toEqual([7, 7]);
	});

	test('are multiples of them where a match is shared out among its questions', async () => {
		const { bytes, report } = await exportCartridge(formOf(pick('equal-values', 'battery-truths'), 2), {
			...svg,
			convert: true,
		});
		expect(weights(bytes)).toEqual([2, 2, 2, 6]);
		expect(report.notes.join(' ')).toContain('Weights are 3 times the points');
	});

	test('are rounded, and the report says by how much, where no multiple up to 99 is whole', async () => {
		const items = randomItems(80, 31);
		const { bytes, report } = await exportCartridge(
			{ form: randomForm(items, 31), items },
			{ ...svg, convert: true, leaveOut: true },
		);
		for (const weight of weights(bytes)) expect(weight >= 1 && weight <= 99).toBe(true);
		expect(Math.max(...weights(bytes))).toBe(99);
		const percent = /no question counts for more than (\d+\.\d+) percent/.exec(report.notes.join(' '))?.[1];
		expect(Number(percent)).toBeLessThan(0.1);
	});
});

test('no text tells a key, a rubric, a name or an id of the bank', async () => {
	const { bytes } = await exportCartridge(every, { ...svg, convert: true });
	const text = fileOf(unpack(bytes), 'assessment/assessment.xml');
	expect(text).not.toMatch(/Says that adding|Compares|warehouse-set|mountain-rail-sign|battery-truths|higher or lower/);
});

test('the same form gives the same bytes, whatever the clock and whoever does the work', async () => {
	const items = randomItems(130, 9);
	const form = randomForm(items, 9);
	const options = { ...svg, convert: true, leaveOut: true };
	const first = await exportCartridge({ form, items }, options);
	await closeCartridges();
	const second = await exportCartridge({ form, items: [...items].reverse() }, options);
	expect(sha256(second.bytes)).toBe(sha256(first.bytes));
	expect(second.answerMap).toBe(first.answerMap);
});

test('ids that differ in nothing but capitals stay two items, and nothing collides where case does not count', async () => {
	const [choice] = sampleItems;
	if (!choice) throw new Error('no item');
	const twins = ['tide-gauge', 'Tide-Gauge', 'TIDE-GAUGE'].map((id) => ({ ...choice, id }));
	const { bytes } = await exportCartridge(formOf(twins), svg);
	const idents = [...fileOf(unpack(bytes), 'assessment/assessment.xml').matchAll(/<item ident="([^"]+)"/g)];
	expect(new Set(idents.map(([, ident]) => ident?.toLowerCase())).size).toBe(3);
	const all = Object.keys(unzipSync((await exportCartridge(every, { ...svg, convert: true })).bytes));
	expect(new Set(all.map((path) => path.toLowerCase())).size).toBe(all.length);
});

test('a character that XML cannot hold is refused with its item, and nothing is handed over', async () => {
	const [choice, ...others] = sampleItems;
	if (!choice) throw new Error('no item');
	const stem = [{ kind: 'paragraph' as const, text: 'Tide \u0007 rises' }];
	const items = [{ ...choice, item: { ...choice.item, stem } }, ...others];
	const error = await fail(exportCartridge({ form: sampleForm, items }, svg));
	expect(error).toMatchObject({
		code: 'export-invalid',
		problems: [{ code: 'xml-illegal-character', item: 'tide-gauge-drop', file: 'assessment/assessment.xml' }],
	});
});

test('a title the profile does not admit is refused', async () => {
	const form = { ...sampleForm, form: { ...sampleForm.form, title: 'x'.repeat(121) } };
	const error = await fail(exportCartridge({ form, items: sampleItems }, svg));
	expect(error).toMatchObject({
		code: 'export-invalid',
		problems: [{ code: 'qti-not-in-profile', element: 'assessment' }],
	});
});

test('a form that names an item nobody gave is refused', async () => {
	const error = await fail(exportCartridge({ form: sampleForm, items: sampleItems.slice(1) }, svg));
	expect(error).toMatchObject({ code: 'export-item-missing' });
});

test('a form of 1,000 items is written; given up midway it hands over nothing, and the next one works', async () => {
	const items = randomItems(1000, 12);
	const form = randomForm(items, 12);
	const stop = new AbortController();
	const seen: number[] = [];
	const onProgress = (stage: string, done: number): void => {
		if (stage === 'items') seen.push(done);
		if (done >= 200) stop.abort();
	};
	const options = { ...svg, convert: true, leaveOut: true };
	const given = await fail(exportCartridge({ form, items }, { ...options, onProgress, signal: stop.signal }));
	expect(given).toBeInstanceOf(ExportCancelledError);
	expect(seen.length).toBeGreaterThan(0);
	expect(Math.max(...seen)).toBeLessThan(1000);
	const { report } = await exportCartridge({ form, items }, options);
	expect(report.items).toBeGreaterThan(950);
	expect(await fail(exportCartridge(every, { ...svg, signal: AbortSignal.abort() }))).toMatchObject({
		code: 'export-cancelled',
	});
});
