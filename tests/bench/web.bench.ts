import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { serve } from '../../server/main.ts';
import { projectRoot } from '../../server/project-root.ts';
import { openStore } from '../../server/store/open-store.ts';
import { browserPath, launchBrowser } from '../helpers/browser.ts';
import { manyItem } from '../helpers/many-items.ts';

const bank = 'framework=ccss-m&edition=2010';
const words = ['lift', 'gauge falls', 'warehouse', 'battery rises', 'shaft drops', 'fund gains', 'harbour', 'reading'];
const doks = [1, 2, 3];

/** Addresses of the page, and what the page asks the service for there. */
const walks: Readonly<Record<string, readonly { readonly hash: string; readonly calls: readonly string[] }[]>> = {
	board: ['kind=gridded', 'kind=choice', 'points=1', 'points=2', 'status=draft'].flatMap((filter) =>
		doks.map((dok) => {
			const asked = `${filter}&dok=${dok}`;
			const status = filter.startsWith('status') ? '' : '&status=approved';
			return {
				hash: `#/board?${bank}&${asked}`,
				calls: [`/api/standards/ccss-m/2010?${asked}`, `/api/items?${asked}${status}&limit=1&facets=false`],
			};
		}),
	),
	find: words.flatMap((text) =>
		doks.map((dok) => {
			const asked = `${bank}&text=${encodeURIComponent(text)}&dok=${dok}`;
			return { hash: `#/find?${asked}`, calls: [`/api/items?${asked}&sort=added&limit=50`] };
		}),
	),
};

/** Weight and start of the first page, then board and find over 100,000 items against the requests they make. Needs Chromium. */
export async function run(): Promise<void> {
	if (browserPath === undefined) {
		console.log('no Chromium on this machine: nothing measured');
		return;
	}
	spawnSync(process.execPath, [join(projectRoot, 'web/build.mjs')], { stdio: 'inherit' });
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-bench-'));
	const browser = await launchBrowser();
	try {
		const demo = await serve({ dataFolder: join(folder, 'demo'), port: 0, host: '127.0.0.1' });
		await measureStart(browser, demo.url);
		await demo.stop();
		const large = join(folder, 'large');
		await fill(large);
		const service = await serve({ dataFolder: large, port: 0, host: '127.0.0.1' });
		for (const name of Object.keys(walks)) await measureWalk(browser, service.url, name);
		await service.stop();
	} finally {
		await browser.close();
		rmSync(folder, { recursive: true, force: true });
	}
}

async function fill(folder: string): Promise<void> {
	const store = await openStore(folder);
	for (let step = 0; step < 10; step += 1) {
		const entries = Array.from({ length: 10_000 }, (_unused, index) => ({ item: manyItem(step * 10_000 + index) }));
		await store.items.createMany(entries, step % 2 === 0 ? 'approved' : 'draft');
	}
	await store.close();
}

async function measureStart(browser: Browser, url: string): Promise<void> {
	const page = await browser.newPage();
	const scripts: Promise<Buffer>[] = [];
	page.on('response', (response) => {
		if (/\.js$/.test(new URL(response.url()).pathname)) scripts.push(response.body());
	});
	await page.goto(url);
	await page.getByRole('gridcell').first().waitFor();
	await page.waitForLoadState('networkidle');
	const bytes = (await Promise.all(scripts)).reduce((sum, script) => sum + gzipSync(script).length, 0);
	console.log(
		`JavaScript of the first page, ${scripts.length} files: ${(bytes / 1024).toFixed(1)} KB gzipped (at most 120)`,
	);
	await page.close();
	for (const slow of [1, 4]) {
		const times: number[] = [];
		for (let round = 0; round < 7; round += 1) times.push(await timeStart(browser, url, slow));
		times.sort((a, b) => a - b);
		console.log(
			`first page interactive, processor ${slow === 1 ? 'as it is' : `${slow} times slower`}: median ${times[3]?.toFixed(0)} ms, slowest of 7 ${times[6]?.toFixed(0)} ms (at most ${slow === 1 ? 1000 : 2500})`,
		);
	}
}

/** Milliseconds from the start of loading to a board that moves its focus at an arrow key, nothing cached. */
async function timeStart(browser: Browser, url: string, slow: number): Promise<number> {
	const context = await browser.newContext({ viewport: { width: 1366, height: 768 } });
	const page = await context.newPage();
	const session = await context.newCDPSession(page);
	await session.send('Emulation.setCPUThrottlingRate', { rate: slow });
	await page.goto(url, { waitUntil: 'commit' });
	await page.locator('th[role="rowheader"][tabindex="0"]').first().waitFor();
	const time = await page.evaluate(async () => {
		const find = (root: ParentNode, path: readonly string[]): Element | null => {
			const [name = '', ...rest] = path;
			const found = root.querySelector(name);
			return rest.length === 0 || !found?.shadowRoot ? found : find(found.shadowRoot, rest);
		};
		const cell = find(document, ['zp-frame', 'zp-board-page', 'zp-board-grid', '[tabindex="0"]']) as HTMLElement;
		cell.focus();
		cell.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowDown', bubbles: true, composed: true }));
		await new Promise((resolve) => setTimeout(resolve, 0));
		if (cell.tabIndex === 0) throw new Error('the board did not take the arrow key');
		return performance.now();
	});
	await context.close();
	return time;
}

async function measureWalk(browser: Browser, url: string, name: string): Promise<void> {
	const steps = walks[name] ?? [];
	const page = await browser.newPage({ viewport: { width: 1366, height: 768 } });
	await page.goto(`${url}#/${name}?${bank}`);
	await page.getByRole('row').nth(2).waitFor();
	await page.waitForLoadState('networkidle');
	const times = { page: [] as number[], service: [] as number[] };
	for (let round = 0; round < 6; round += 1) {
		for (const { hash, calls } of steps) {
			const step = await walk(page, `zp-${name}-page`, hash, calls);
			if (round === 0) continue;
			times.page.push(step.page);
			times.service.push(step.service);
		}
	}
	const [shown, asked] = [p95(times.page), p95(times.service)];
	console.log(
		`${name} at 100,000 items: p95 ${shown.toFixed(1)} ms from the address to rows laid out; its requests alone ${asked.toFixed(1)} ms; ratio ${(shown / asked).toFixed(2)} (at most 2); ${times.page.length} steps`,
	);
	await page.close();
}

/** Times the requests alone, read and parsed in the page, then the page going to an address, as its own controls do, until it is laid out. */
async function walk(
	page: Page,
	element: string,
	hash: string,
	calls: readonly string[],
): Promise<{ readonly page: number; readonly service: number }> {
	return page.evaluate(
		async ([element, hash, calls]) => {
			const pause = (): Promise<void> =>
				new Promise((resolve) => {
					const { port1, port2 } = new MessageChannel();
					port1.onmessage = () => {
						port1.close();
						resolve();
					};
					port2.postMessage(0);
				});
			const requests = new Set<string>();
			let open = 0;
			const plain = window.fetch;
			const asked = performance.now();
			for (const call of calls) await (await plain(call)).json();
			const service = performance.now() - asked;
			window.fetch = async (...parts) => {
				open += 1;
				requests.add(String(parts[0]));
				try {
					const response = await plain(...parts);
					const text = await response.text();
					return new Response(text, { status: response.status, headers: response.headers });
				} finally {
					open -= 1;
				}
			};
			const shown = performance.now();
			history.pushState(null, '', hash);
			window.dispatchEvent(new HashChangeEvent('hashchange'));
			const found = document.querySelector('zp-frame')?.shadowRoot?.querySelector(element) as unknown as {
				updateComplete: Promise<unknown>;
				offsetHeight: number;
			};
			// Waits for the requests, then for the page to have nothing left to draw after them.
			for (let quiet = 0; quiet < 3; quiet = requests.size >= calls.length && open === 0 ? quiet + 1 : 0) {
				await pause();
				await found.updateComplete;
			}
			const height = found.offsetHeight;
			const time = performance.now() - shown;
			window.fetch = plain;
			if (height === 0 || requests.size < calls.length) throw new Error(`nothing was drawn at ${hash}`);
			return { page: time, service };
		},
		[element, hash, calls] as const,
	);
}

function p95(times: readonly number[]): number {
	return [...times].sort((a, b) => a - b)[Math.floor(times.length * 0.95)] ?? Number.NaN;
}
