import { mkdtempSync, rmSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Locator, Page } from 'playwright-core';
import type { Item } from '../../item-bank/types.ts';
import { type Service, serve } from '../../server/main.ts';
import { launchBrowser } from './browser.ts';

const axePath = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** A bank with the demo department and a browser beside it. */
export interface Desk {
	readonly browser: Browser;
	/** Changes when the service is started again. */
	readonly url: () => string;
	/** Stops answering, as when the program is closed. */
	readonly stopBank: () => Promise<void>;
	/** Starts again over the same bank, at the same address. */
	readonly startBank: () => Promise<void>;
	/** Keeps an item under an id. */
	readonly keep: (id: string, item: Item) => Promise<void>;
	readonly close: () => Promise<void>;
}

/** Opens a bank in a fresh folder and a browser. */
export async function openDesk(): Promise<Desk> {
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-desk-'));
	const start = (port: number): Promise<Service> =>
		serve({ dataFolder: join(folder, 'data'), port, host: '127.0.0.1' });
	let service: Service | undefined = await start(0);
	const { url } = service;
	const browser = await launchBrowser();
	return {
		browser,
		url: () => url,
		async stopBank() {
			await service?.stop();
			service = undefined;
		},
		async startBank() {
			service ??= await start(Number(new URL(url).port));
		},
		async keep(id, item) {
			const body = JSON.stringify({ id, item });
			const headers = { 'content-type': 'application/json' };
			const answer = await fetch(`${url}api/items`, { method: 'POST', headers, body });
			if (!answer.ok) throw new Error(await answer.text());
		},
		async close() {
			await browser.close();
			await service?.stop();
			rmSync(folder, { recursive: true });
		},
	};
}

/** A page of its own browser profile at an address behind the #. */
export async function openPage(
	desk: Desk,
	hash: string,
	options: Parameters<Browser['newContext']>[0] = {},
): Promise<{ readonly page: Page; readonly context: BrowserContext; readonly complaints: readonly string[] }> {
	const context = await desk.browser.newContext({ viewport: { width: 1366, height: 768 }, ...options });
	const page = await context.newPage();
	const complaints: string[] = [];
	page.on('console', (message) => {
		if (message.type() === 'error') complaints.push(message.text());
	});
	page.on('pageerror', (error) => complaints.push(error.message));
	await page.goto(`${desk.url()}${hash}`);
	return { page, context, complaints };
}

/** What axe has to say against the page, a line a rule. */
export async function findViolations(page: Page): Promise<readonly string[]> {
	await page.evaluate(await readFile(axePath, 'utf8'));
	return page.evaluate(async () => {
		const { axe } = window as unknown as {
			axe: {
				run: (
					context: Document,
				) => Promise<{ violations: readonly { id: string; nodes: readonly { html: string }[] }[] }>;
			};
		};
		const { violations } = await axe.run(document);
		return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160) ?? ''}`);
	});
}

/** Everything an element says, shadow roots included. */
export function readText(locator: Locator): Promise<string> {
	return locator.first().evaluate((element) => {
		const textOf = (node: Node): string => {
			if (node instanceof Text) return node.data;
			if (node instanceof HTMLStyleElement) return '';
			const inner = node instanceof Element && node.shadowRoot ? node.shadowRoot : node;
			return [...inner.childNodes].map(textOf).join('');
		};
		return textOf(element).replace(/\s+/g, ' ');
	});
}
