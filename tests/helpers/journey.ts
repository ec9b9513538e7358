import { mkdtempSync, rmSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { type Service, serve } from '../../server/main.ts';
import { launchBrowser } from './browser.ts';

const axePath = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** A bank with the demo department that is served to a browser. */
export interface Journey {
	readonly url: string;
	/** A page of a person of their own: nothing is shared with other pages. What it complains of is in the list. */
	open(
		hash?: string,
		options?: BrowserContextOptions,
	): Promise<{ readonly page: Page; readonly complaints: string[]; readonly context: BrowserContext }>;
	/** Closes every page that is open. */
	clear(): Promise<void>;
	/** Stops answering, as when the machine is shut down. */
	stop(): Promise<void>;
	/** Answers again at the same address with the same bank. */
	restart(): Promise<void>;
	/** Ends everything and forgets the bank. */
	end(): Promise<void>;
}

/** Starts a bank and a browser. */
export async function startJourney(): Promise<Journey> {
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-journey-'));
	const options = { dataFolder: join(folder, 'data'), host: '127.0.0.1' };
	let service: Service | undefined = await serve({ ...options, port: 0 });
	const { url } = service;
	const browser: Browser = await launchBrowser();
	return {
		url,
		async open(hash = '', settings = {}) {
			const viewport = { width: 1366, height: 768 };
			const context = await browser.newContext({ viewport, acceptDownloads: true, ...settings });
			const page = await context.newPage();
			const complaints: string[] = [];
			page.on('console', (message) => {
				if (message.type() === 'error') complaints.push(message.text());
			});
			page.on('pageerror', (error) => complaints.push(error.message));
			page.on('request', (request) => {
				if (!request.url().startsWith(url) && !request.url().startsWith('blob:'))
					complaints.push(`left the machine: ${request.url()}`);
			});
			await page.goto(url + hash);
			return { page, complaints, context };
		},
		async clear() {
			await Promise.all(browser.contexts().map((context) => context.close()));
		},
		async stop() {
			await service?.stop();
			service = undefined;
		},
		async restart() {
			service = await serve({ ...options, port: Number(new URL(url).port) });
		},
		async end() {
			await browser.close();
			await service?.stop();
			rmSync(folder, { recursive: true });
		},
	};
}

/**
 * What axe finds wrong on a page, one line a rule. A page that was looked at in one theme differs in the other by its inks only:
 * then looking at contrast is enough.
 */
export async function findBarriers(page: Page, look: 'everything' | 'inks' = 'everything'): Promise<readonly string[]> {
	const isThere = await page.evaluate(() => 'axe' in window);
	if (!isThere) await page.evaluate(await readFile(axePath, 'utf8'));
	return page.evaluate(
		async (rules) => {
			const { axe } = window as unknown as {
				axe: {
					run: (
						context: Document,
						options: object,
					) => Promise<{
						violations: readonly { id: string; nodes: readonly { html: string }[] }[];
					}>;
				};
			};
			const { violations } = await axe.run(document, rules === undefined ? {} : { runOnly: rules });
			return violations.map(
				({ id, nodes }) =>
					`${id}: ${nodes
						.slice(0, 3)
						.map(({ html }) => html.slice(0, 160))
						.join(' | ')}`,
			);
		},
		look === 'inks' ? ['color-contrast'] : undefined,
	);
}

/** The text or name of what has the focus, through shadow roots; empty when nothing has it. */
export async function focusedName(page: Page): Promise<string> {
	return page.evaluate(() => {
		let active = document.activeElement;
		while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
		if (!active || active === document.body) return '';
		return (active.getAttribute('aria-label') ?? active.textContent ?? '').replace(/\s+/g, ' ').trim();
	});
}
