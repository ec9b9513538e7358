import { execFileSync } from 'node:child_process';
import type { FormRecord, ItemRecord } from '../../item-bank/items/record.ts';
import { readDemo } from '../../server/demo.ts';
import { layBooklet } from '../../server/print/booklet/booklet.ts';
import { type Block, isMark, type Mark, type Page } from '../../server/print/page/marks.ts';
import { openPdf, paintDocument, paintMark } from '../../server/print/page/paint.ts';
import { placeItems } from '../../server/print/placed-items.ts';

const booklets = 30;
const rounds = 3;
const mostMegabytes = 300;

/** A class of 150 printed in a process of its own, so that the largest memory it ever held is its own too. */
const classSet = `
	import { readDemo } from './server/demo.js';
	import { printForm } from './server/print/print-form.js';
	const demo = readDemo();
	const items = demo.items.map((item) => ({ version: 1, status: 'approved', ...item }));
	const form = { version: 1, ...demo.forms[0] };
	const students = Array.from({ length: 150 }, (_, index) => 'ST-' + String(index + 1).padStart(3, '0'));
	const start = performance.now();
	const files = await printForm({ form, items, students }, { paper: 'a4', work: process.env.WORK });
	const seconds = (performance.now() - start) / 1000;
	const bytes = files.reduce((sum, file) => sum + file.bytes.length, 0);
	console.log(JSON.stringify({ seconds, bytes, kilobytes: process.resourceUsage().maxRSS }));
`;

/** Prints how booklets compare with the same drawing calls straight on the PDF library, and what a class set takes. */
export async function run(): Promise<void> {
	const { form, items } = readDemoForm();
	const pages = [...layPages(form, items)];
	const calls = pages.map((page) => ({ page, marks: marksOf(page) }));
	const count = calls.reduce((sum, { marks }) => sum + marks.length, 0);
	console.log(`a booklet of ${pages.length} pages, ${count} drawing calls`);
	const ratios: number[] = [];
	await timeOurs(form, items);
	await timeBare(calls);
	for (let round = 0; round < rounds; round += 1) {
		const bare = await timeBare(calls);
		const ours = await timeOurs(form, items);
		ratios.push(ours / bare);
		const each = (time: number) => `${Math.round(time / booklets)} ms`;
		console.log(
			`${booklets} booklets: ${each(ours)} each, the calls alone ${each(bare)}, ratio ${(ours / bare).toFixed(2)}`,
		);
	}
	const median = [...ratios].sort((a, b) => a - b)[1] ?? 0;
	console.log(`print ratio, median of ${rounds}: ${median.toFixed(2)} (at most 2)`);
	for (const work of ['ruled', 'items']) printClassSet(work);
}

function printClassSet(work: string): void {
	const out = execFileSync(process.execPath, ['--input-type=module', '-e', classSet], {
		cwd: new URL('../../', import.meta.url),
		env: { ...process.env, WORK: work },
		encoding: 'utf8',
	});
	const { seconds, bytes, kilobytes } = JSON.parse(out) as Record<string, number>;
	const megabytes = Math.round((kilobytes ?? 0) / 1024);
	console.log(
		`class set of 150, work pages ${work}: ${seconds?.toFixed(1)} s, ${((bytes ?? 0) / 1e6).toFixed(1)} MB of files, rss at most ${megabytes} MB (under ${mostMegabytes})`,
	);
}

function readDemoForm(): { readonly form: FormRecord; readonly items: readonly ItemRecord[] } {
	const demo = readDemo();
	const [form] = demo.forms;
	if (!form) throw new Error('expected a form in the demo department, found none');
	const items = demo.items.map(({ id = '', item }): ItemRecord => ({ id, version: 1, status: 'approved', item }));
	return { form: { id: form.id ?? '', version: 1, form: form.form }, items };
}

function layPages(form: FormRecord, items: readonly ItemRecord[]): Iterable<Page> {
	const placed = placeItems(form, items);
	return layBooklet({ form, placed, paper: 'a4', large: false, columns: 1, grids: 'separate', students: [] }).pages;
}

async function timeOurs(form: FormRecord, items: readonly ItemRecord[]): Promise<number> {
	const start = performance.now();
	for (let index = 0; index < booklets; index += 1) {
		const pages = layPages(form, items);
		const bytes = await paintDocument({ title: 'Bench', subject: 'Bench', pages }, { source: String(index) });
		if (bytes.length < 10_000) throw new Error(`expected a booklet, found ${bytes.length} bytes`);
	}
	return performance.now() - start;
}

/** The same calls without layout, structure or descriptions. */
async function timeBare(calls: readonly { readonly page: Page; readonly marks: readonly Mark[] }[]): Promise<number> {
	const start = performance.now();
	for (let index = 0; index < booklets; index += 1) {
		const pdf = openPdf({ Title: String(index) });
		const chunks: Buffer[] = [];
		pdf.on('data', (chunk: Buffer) => chunks.push(chunk));
		const ended = new Promise((resolve) => pdf.once('end', resolve));
		for (const { page, marks } of calls) {
			pdf.addPage({ size: [page.width, page.height], margin: 0 });
			for (const mark of marks) paintMark(pdf, mark);
		}
		pdf.end();
		await ended;
		Buffer.concat(chunks);
	}
	return performance.now() - start;
}

function marksOf({ blocks, artifacts }: Page): readonly Mark[] {
	const below = (block: Block): readonly Mark[] =>
		block.children.flatMap((child) => (isMark(child) ? [child] : below(child)));
	return [...blocks.flatMap(below), ...artifacts];
}
