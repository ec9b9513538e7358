import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { afterAll, describe, expect, test } from 'vitest';
import { closeCartridges } from '../../../server/cartridge/cartridge-pool.ts';
import { readZip } from '../../../server/qti/package/read-zip.ts';
import { makeCommandLine } from '../../helpers/command-line.ts';
import { cartridgeForm, cartridgeItems } from '../cartridge/sample-cartridge.ts';

afterAll(closeCartridges);

/** A bank with an item of every kind and a form of them all. */
async function makeFilled() {
	const line = makeCommandLine();
	const items = cartridgeItems.map(({ id, item }) => ({ id, item }));
	expect((await line.run(['items', 'add', line.write('items.json', items)])).status).toBe(0);
	const sections = cartridgeForm.form.sections.map((section) => ({
		...section,
		items: section.items.map((entry) => ({ ...entry, version: 1 })),
	}));
	const file = line.write('form.json', { id: 'every-way', form: { ...cartridgeForm.form, sections } });
	expect((await line.run(['forms', 'create', file])).status).toBe(0);
	return line;
}

describe('export --as cc-1.1', () => {
	test('stops with the list, then converts, and the cartridge holds what validate expects', async () => {
		const { run, folder } = await makeFilled();
		const to = join(folder, 'unit.imscc');
		const words = ['export', 'every-way', '--as', 'cc-1.1', '--to', to];
		const before = readdirSync(folder).sort();
		const stopped = await run([...words, '--json']);
		expect([stopped.status, stopped.json.code, stopped.json.problems.length]).toEqual([1, 'export-not-carried', 7]);
		const told = await run(words);
		expect(told.err).toContain('convert it to choice among whole orders, or leave it out');
		expect(readdirSync(folder).sort()).toEqual(before);
		const written = await run([...words, '--convert', '--images', 'svg']);
		expect(written.out).toContain(`${to}: 12 items as cc-1.1`);
		expect(readFileSync(join(folder, 'unit-answer-map.csv'), 'utf8')).toContain('choice among lettered points');
		expect((await run(['validate', to])).out).toContain('nothing to mend');
		const left = await run([...words, '--leave-out', '--replace', '--json']);
		expect(left.json.report.items).toBe(5);
	});

	test('validate names what is wrong with a cartridge', async () => {
		const { run, folder } = await makeFilled();
		const to = join(folder, 'unit.imscc');
		await run(['export', 'every-way', '--as', 'cc-1.1', '--to', to, '--convert', '--images', 'svg']);
		const files = Object.fromEntries(await readZip(readFileSync(to)));
		const spoil = async (change: Record<string, Buffer>, without?: string): Promise<string> => {
			const kept = Object.entries({ ...files, ...change }).filter(([path]) => path !== without);
			writeFileSync(to, zipSync(Object.fromEntries(kept)));
			return (await run(['validate', to])).out;
		};
		expect(await spoil({}, 'images/item-003-figure-1.svg')).toContain('package-file-missing');
		expect(await spoil({ 'notes.txt': Buffer.from('key: A') })).toContain('package-stray-file');
		expect(await spoil({ 'images/item-003-figure-1.svg': Buffer.from('no picture') })).toContain('package-stray-file');
		expect(await spoil({}, 'assessment/assessment.xml')).toContain('package-file-missing');
		const text = String(files['assessment/assessment.xml']);
		const wrong = Buffer.from(text.replace('cc.multiple_choice.v0p1', 'cc.fib.v0p1'));
		expect(await spoil({ 'assessment/assessment.xml': wrong })).toContain('cartridge-question-type');
	});
});

describe('export --check', () => {
	test('shows every item in every version, writes nothing, and tells what would stop the version named', async () => {
		const { run, folder } = await makeFilled();
		const before = readdirSync(folder).sort();
		const plain = await run(['export', 'every-way', '--check']);
		expect(plain.status).toBe(0);
		const [head, ...rows] = plain.out.split('\n');
		expect(head).toMatch(/item +kind +QTI 2\.1 +QTI 2\.2 +QTI 3\.0 +Common Cartridge 1\.1/);
		expect(rows[4]).toMatch(/^5 +tide-order v1 +order +carried +carried +carried +converted\*$/);
		expect(plain.out).toContain(
			'Common Cartridge 1.1: converted as choice among whole orders; loses putting in order: at most four orders are offered (item 5)',
		);
		const stopped = await run(['export', 'every-way', '--check', '--as', 'cc-1.1']);
		expect([stopped.status, stopped.out.split('\n').at(-1)]).toEqual([
			1,
			'Common Cartridge 1.1: stopped by item 4, 5, 6, 7, 8, 11, 12; choose --convert or --leave-out',
		]);
		expect((await run(['export', 'every-way', '--check', '--as', 'cc-1.1', '--convert'])).status).toBe(0);
		expect((await run(['export', 'every-way', '--check', '--as', 'qti-3.0', '--json'])).json.stopping).toEqual([]);
		expect(readdirSync(folder).sort()).toEqual(before);
	});

	test('refuses a version nobody knows', async () => {
		const { run, folder } = await makeFilled();
		const { status, err } = await run(['export', 'every-way', '--check', '--as', 'cc-1.2']);
		expect([status, err.includes('did you mean cc-1.1')]).toEqual([2, true]);
		expect(existsSync(join(folder, 'unit.imscc'))).toBe(false);
	});
});
