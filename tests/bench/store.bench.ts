import { mkdtempSync, rmSync } from 'node:fs';
import { Agent, get } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { buildApp } from '../../server/app.ts';
import { openStore, type Store } from '../../server/store/open-store.ts';
import { manyItem } from '../helpers/many-items.ts';

interface Statement {
	readonly text: string;
	readonly values: readonly unknown[];
}

const codes = ['7.NS.A.1a', '7.NS.A.1b', '7.NS.A.1c', '7.NS.A.1d', '7.NS.A.2a', '7.NS.A.2b', '7.NS.A.2c', '7.NS.A.3'];
const models = ['symbols', 'story', 'table', 'number-line'];
const statuses = ['approved', 'draft'];
const texts = [
	'lift',
	'gauge falls',
	'warehouse',
	'battery rises',
	'review',
	'shaft drops',
	'fund gains',
	'harbour',
	'platform changes',
	'reading',
];

/** Addresses of each kind of search, all different. */
const searches: Readonly<Record<string, readonly string[]>> = {
	'find by cell': codes.flatMap((code) =>
		models.flatMap((model) =>
			statuses.map(
				(status) => `framework=ccss-m&edition=2010&code=${code}&model=${model}&status=${status}&facets=false`,
			),
		),
	),
	'text search': texts.flatMap((text) =>
		[1, 2, 3, undefined].map(
			(dok) => `text=${encodeURIComponent(text)}${dok === undefined ? '' : `&dok=${dok}`}&facets=false`,
		),
	),
	'cell with facets': codes.flatMap((code) =>
		models.map((model) => `framework=ccss-m&edition=2010&code=${code}&model=${model}`),
	),
	'facets of the whole bank': [
		'',
		...statuses.map((status) => `status=${status}`),
		...models.map((model) => `model=${model}`),
	],
	'text with facets': texts.map((text) => `text=${encodeURIComponent(text)}`),
	'text and DOK in a framework': texts.flatMap((text) =>
		[1, 2, 3].map((dok) => `text=${encodeURIComponent(text)}&dok=${dok}&framework=ccss-m&edition=2010`),
	),
};

/** Loads 100,000 distinct items, then compares searches over a socket with the same bytes from memory plus the bare statements. */
export async function run(): Promise<void> {
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-bench-'));
	try {
		let record: Statement[] | undefined;
		const store = await openStore(folder, { onStatement: (text, values) => record?.push({ text, values }) });
		await load(store);
		await compare(store, folder, async (query) => {
			record = [];
			await query();
			const statements = record;
			record = undefined;
			return statements;
		});
		await store.close();
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
}

async function load(store: Store): Promise<void> {
	const steps: number[] = [];
	for (let step = 0; step < 10; step += 1) {
		const entries = Array.from({ length: 10_000 }, (_unused, index) => ({ item: manyItem(step * 10_000 + index) }));
		const start = performance.now();
		await store.items.createMany(entries, step % 2 === 0 ? 'approved' : 'draft');
		steps.push(performance.now() - start);
	}
	const seconds = steps.map((step) => (step / 1000).toFixed(2));
	const total = steps.reduce((sum, step) => sum + step, 0) / 1000;
	console.log(`loading, checked, 10,000 a transaction: ${seconds.join(' ')} s`);
	console.log(
		`10,000 in ${seconds[0]} s, 100,000 in ${total.toFixed(1)} s; last tenth / first: ${ratio(steps.at(-1), steps[0])} (1.0 is linear)`,
	);
	console.log(`memory after loading: ${rss()} MB`);
}

async function compare(
	store: Store,
	folder: string,
	record: (query: () => Promise<unknown>) => Promise<readonly Statement[]>,
): Promise<void> {
	const app = buildApp({ store });
	const bodies = new Map<string, Buffer>();
	app.get<{ Querystring: { q: string } }>('/api/from-memory', async ({ query }, reply) =>
		reply.type('application/json; charset=utf-8').send(bodies.get(query.q)),
	);
	await app.listen({ port: 0, host: '127.0.0.1' });
	const { port } = app.server.address() as AddressInfo;
	const agent = new Agent({ keepAlive: true, maxSockets: 1 });
	const fetchBody = (path: string): Promise<Buffer> => request(agent, port, path);
	const bare = new Database(join(folder, 'zeropair.db'), { readonly: true });

	for (const [name, queries] of Object.entries(searches)) {
		const statements = new Map<string, readonly Statement[]>();
		for (const query of queries) {
			const path = `/api/items?${query}`;
			statements.set(query, await record(() => fetchBody(path)));
			bodies.set(query, await fetchBody(path));
		}
		const rounds = Math.ceil(400 / queries.length);
		const times = { service: [] as number[], memory: [] as number[], bare: [] as number[] };
		for (let round = 0; round < rounds; round += 1) {
			for (const query of queries) {
				times.service.push(await time(() => fetchBody(`/api/items?${query}`)));
				times.memory.push(await time(() => fetchBody(`/api/from-memory?q=${encodeURIComponent(query)}`)));
				times.bare.push(await time(async () => runBare(bare, statements.get(query) ?? [])));
			}
		}
		const [service, memory, query] = [p95(times.service), p95(times.memory), p95(times.bare)];
		const size = Math.round(
			[...queries].reduce((sum, each) => sum + (bodies.get(each)?.length ?? 0), 0) / queries.length / 1024,
		);
		console.log(
			`${name.padEnd(25)} p95 ${service.toFixed(2)} ms; from memory ${memory.toFixed(2)} + bare query ${query.toFixed(2)} ms; ratio ${(service / (memory + query)).toFixed(2)} (at most 2); ${size} KB`,
		);
	}
	console.log(`memory at the end: ${rss()} MB`);
	bare.close();
	agent.destroy();
	await app.close();
}

const prepared = new Map<string, Database.Statement>();

/** The statements of a search alone, prepared once, their rows read. */
function runBare(database: Database.Database, statements: readonly Statement[]): void {
	for (const { text, values } of statements) {
		if (/^(BEGIN|COMMIT)/.test(text)) continue;
		const statement = prepared.get(text) ?? database.prepare(text);
		prepared.set(text, statement);
		statement.all(values);
	}
}

function request(agent: Agent, port: number, path: string): Promise<Buffer> {
	return new Promise((resolve, reject) => {
		get({ agent, port, host: '127.0.0.1', path }, (response) => {
			const parts: Buffer[] = [];
			response.on('data', (part: Buffer) => parts.push(part));
			response.on('end', () => {
				if (response.statusCode === 200) resolve(Buffer.concat(parts));
				else reject(new Error(`${path}: ${response.statusCode} ${Buffer.concat(parts).toString()}`));
			});
		}).on('error', reject);
	});
}

async function time(work: () => Promise<unknown>): Promise<number> {
	const start = performance.now();
	await work();
	return performance.now() - start;
}

function p95(times: readonly number[]): number {
	return [...times].sort((a, b) => a - b)[Math.floor(times.length * 0.95)] ?? Number.NaN;
}

function ratio(a = Number.NaN, b = Number.NaN): string {
	return (a / b).toFixed(2);
}

function rss(): number {
	return Math.round(process.memoryUsage.rss() / 1_048_576);
}
