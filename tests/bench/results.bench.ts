import { once } from 'node:events';
import { createReadStream, createWriteStream, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { ResponseMapping } from '../../item-bank/types.ts';
import { readResponses } from '../../server/response-reading.ts';
import { openStore, type Store } from '../../server/store/open-store.ts';
import { manyItem } from '../helpers/many-items.ts';

const itemCount = 40;
const sizes = [64_000, 256_000, 1_000_000];

/** Reads wide and long files of up to 1,000,000 responses, and compares the time with that of reading the same bytes. */
export async function run(): Promise<void> {
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-bench-'));
	try {
		for (const layout of ['wide', 'long'] as const) {
			const times: number[] = [];
			for (const responses of sizes) times.push(await readOnce(folder, layout, responses));
			const exponent = Math.log((times[2] ?? 1) / (times[0] ?? 1)) / Math.log((sizes[2] ?? 1) / (sizes[0] ?? 1));
			console.log(`${layout}: time grows with the number of responses to the power ${exponent.toFixed(2)}`);
		}
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
}

async function readOnce(folder: string, layout: 'wide' | 'long', responses: number): Promise<number> {
	const data = join(folder, `${layout}-${responses}`);
	const store = await openStore(data);
	const students = responses / itemCount;
	await fill(store, students);
	const file = join(folder, `${layout}-${responses}.csv`);
	await writeFile(file, layout, students);
	const source = () => createReadStream(file, { highWaterMark: 262_144 });
	const bare = performance.now();
	for await (const _bytes of source());
	const bareTime = performance.now() - bare;
	const mapping: ResponseMapping =
		layout === 'wide'
			? { student: 'code', group: 'class' }
			: { layout, student: 'code', group: 'class', place: 'item', answer: 'response' };
	const reading = { form: 'bench-form', date: '2026-09-14', mode: 'platform', mapping } as const;
	global.gc?.();
	let most = 0;
	const watch = setInterval(() => {
		most = Math.max(most, process.memoryUsage().rss);
	}, 20);
	const before = process.memoryUsage().rss;
	const start = performance.now();
	const report = await readResponses(store, source, reading);
	const time = performance.now() - start;
	clearInterval(watch);
	if (report.answers !== responses) throw new Error(`expected ${responses} responses, found ${report.answers}`);
	const megabytes = (bytes: number) => (bytes / 1_048_576).toFixed(0);
	console.log(
		`${layout}, ${responses} responses, ${megabytes(statSync(file).size)} MB: ${(time / 1000).toFixed(1)} s, ${Math.round(responses / (time / 1000))} a second, ${(time / bareTime).toFixed(0)} times reading the bytes; resident ${megabytes(before)} MB before, ${megabytes(Math.max(most, before))} MB at most`,
	);
	await store.close();
	rmSync(data, { recursive: true });
	return time;
}

async function fill(store: Store, students: number): Promise<void> {
	const entries = Array.from({ length: itemCount }, (_unused, index) => ({
		id: `bench-${index}`,
		item: manyItem(index),
	}));
	await store.items.createMany(entries, 'approved');
	await store.forms.create({
		id: 'bench-form',
		form: {
			title: 'Bench',
			gridProfile: 'plain-sign-first',
			sections: [{ title: 'All', items: entries.map(({ id }) => ({ item: id, version: 1 })) }],
		},
	});
	for (let group = 0; group * 500 < students; group += 1) {
		const studentCodes = Array.from({ length: Math.min(500, students - group * 500) }, (_unused, index) =>
			codeOf(group * 500 + index),
		);
		await store.groups.add({ id: `group-${group}`, group: { name: `Group ${group}`, studentCodes } });
	}
}

function codeOf(student: number): string {
	return `S-${String(student).padStart(6, '0')}`;
}

/** Any answers do: numbers, and letters where an item has options. */
async function writeFile(file: string, layout: 'wide' | 'long', students: number): Promise<void> {
	const out = createWriteStream(file);
	const kinds = Array.from({ length: itemCount }, (_unused, index) => manyItem(index).kind);
	const answer = (student: number, item: number): string => {
		const draw = (student * 31 + item * 17) % 41;
		return kinds[item] === 'gridded' ? String(draw - 20) : ('ABCD'[draw % 4] ?? 'A');
	};
	const personal = 'Somebody Somewhere,1 Some Street';
	out.write(
		layout === 'wide'
			? `name,address,class,code,${kinds.map((_unused, index) => index + 1).join(',')}\n`
			: 'name,address,class,code,item,response\n',
	);
	for (let student = 0; student < students; student += 1) {
		const head = `${personal},group-${Math.floor(student / 500)},${codeOf(student)}`;
		const cells = kinds.map((_unused, item) => answer(student, item));
		const text =
			layout === 'wide'
				? `${head},${cells.join(',')}\n`
				: cells.map((cell, item) => `${head},${item + 1},${cell}\n`).join('');
		if (!out.write(text)) await once(out, 'drain');
	}
	out.end();
	await once(out, 'finish');
}
