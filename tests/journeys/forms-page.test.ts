import { mkdtempSync, rmSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { closeCartridges } from '../../server/cartridge/cartridge-pool.ts';
import { validateCartridge } from '../../server/cartridge/validate-bytes.ts';
import { type Service, serve } from '../../server/main.ts';
import { closeValidation } from '../../server/qti/validate/pool.ts';
import { validatePackage } from '../../server/qti/validate-package.ts';
import { browserPath, launchBrowser } from '../helpers/browser.ts';
import { countPages } from '../helpers/pdf-pages.ts';
import { requireOutside } from '../helpers/reference.ts';

const hasBrowser = requireOutside('Chromium (Debian package chromium)', browserPath !== undefined);
const axePath = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

describe.skipIf(!hasBrowser)('the page of a bank that was just started', () => {
	let folder: string;
	let service: Service;
	let browser: Browser;
	let context: BrowserContext;
	let page: Page;
	let complaints: string[];

	beforeAll(async () => {
		folder = mkdtempSync(join(tmpdir(), 'zeropair-journey-'));
		service = await serve({ dataFolder: join(folder, 'data'), port: 0, host: '127.0.0.1' });
		browser = await launchBrowser();
	});

	afterAll(async () => {
		await browser.close();
		await service.stop();
		await closeValidation();
		await closeCartridges();
		rmSync(folder, { recursive: true });
	});

	beforeEach(async () => {
		context = await browser.newContext({
			viewport: { width: 1366, height: 768 },
			acceptDownloads: true,
			bypassCSP: false,
		});
		page = await context.newPage();
		complaints = [];
		page.on('console', (message) => {
			if (message.type() === 'error') complaints.push(message.text());
		});
		page.on('pageerror', (error) => complaints.push(error.message));
		page.on('request', (request) => {
			if (!request.url().startsWith(service.url) && !request.url().startsWith('blob:'))
				complaints.push(`left the machine: ${request.url()}`);
		});
	});

	afterEach(async () => {
		await context.close();
	});

	async function openForm(title: string): Promise<void> {
		await page.goto(`${service.url}#/forms`);
		await page.getByRole('link', { name: title }).click();
		await page.locator('zp-form-outline li').first().waitFor();
		expect(await page.getByLabel('Title of the form').inputValue()).toBe(title);
	}

	test('shows both demo forms, every item with its figures, and no key unless asked', async () => {
		await openForm('Unit check: integers, Form B');
		await page.getByLabel('Show the items in full').check();
		expect(await page.getByRole('article').count()).toBe(20);
		expect(await page.getByRole('img').count()).toBeGreaterThanOrEqual(8);
		expect(await page.getByText(/^Key /).count()).toBe(0);
		await page.getByLabel('Show keys and worked steps').check();
		expect(await page.getByText(/^Key /).count()).toBe(20);
		expect(complaints).toEqual([]);
	});

	test.each(['QTI 2.2', 'QTI 2.1', 'QTI 3.0', 'Common Cartridge 1.1'])(
		'hands over a valid %s package and the answer map',
		async (version) => {
			await openForm('Unit check: integers, Form A');
			await page.getByRole('button', { name: 'Export', exact: true }).click();
			await page.getByLabel(version).check();
			await page.getByRole('button', { name: 'Write the package' }).click();
			const save = async (name: RegExp): Promise<Buffer> => {
				const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('link', { name }).click()]);
				return readFile(await download.path());
			};
			const bytes = await save(/Save .*\.(?:zip|imscc)/);
			expect((await validateCartridge(bytes)) ?? (await validatePackage(bytes))).toEqual([]);
			const answerMap = (await save(/Save .*\.csv/)).toString('utf8');
			expect(answerMap.trim().split(/\r?\n/)).toHaveLength(21);
			await page.getByRole('status').filter({ hasText: 'placement in the grid is not enforced' }).waitFor();
			expect(complaints).toEqual([]);
		},
	);

	test('hands over a package with feedback and grids column by column, and says before and after that it holds keys', async () => {
		await openForm('Unit check: integers, Form A');
		await page.getByRole('button', { name: 'Export', exact: true }).click();
		await page.getByLabel('QTI 3.0').check();
		await page.getByLabel('Column by column').check();
		const feedback = page.getByRole('checkbox', { name: /Tell students what is right/ });
		expect(await feedback.isChecked()).toBe(false);
		expect(await page.getByText('This puts the keys into the package').isVisible()).toBe(true);
		await feedback.check();
		await page.getByRole('button', { name: 'Write the package' }).click();
		const link = page.getByRole('link', { name: /Save .*\.zip/ });
		await link.waitFor();
		const [download] = await Promise.all([page.waitForEvent('download'), link.click()]);
		expect(await validatePackage(await readFile(await download.path()))).toEqual([]);
		expect(await page.getByRole('status').filter({ hasText: 'The package holds the keys' }).count()).toBe(1);
		expect(complaints).toEqual([]);
	});

	test('puts a form on paper for a class', async () => {
		await openForm('Unit check: integers, Form A');
		await page.getByRole('button', { name: 'Print', exact: true }).click();
		await page.getByLabel('A4').check();
		await page.getByLabel('Class').selectOption({ index: 1 });
		await page.getByRole('button', { name: 'Draw the pages' }).click();
		const link = page.getByRole('link', { name: /Save .*-paper\.zip/ });
		await link.waitFor({ timeout: 55_000 });
		const [download] = await Promise.all([page.waitForEvent('download'), link.click()]);
		const files = unzipSync(await readFile(await download.path()));
		expect(countPages(files['answer-sheets.pdf'] ?? new Uint8Array())).toBeGreaterThan(20);
		expect(complaints).toEqual([]);
	});

	test('says so, and loses nothing, when the bank stops answering', async () => {
		await openForm('Unit check: integers, Form A');
		await page.route('**/export', (route) => route.abort());
		await page.getByRole('button', { name: 'Export', exact: true }).click();
		await page.getByRole('button', { name: 'Write the package' }).click();
		await page.locator('zp-export-panel').getByRole('alert').getByText('The bank does not answer').waitFor();
		await page.unroute('**/export');
		await page.getByRole('button', { name: 'Write the package' }).click();
		await page.getByRole('link', { name: /Save .*\.zip/ }).waitFor();
	});

	test('can be used from the keyboard alone', async () => {
		await openForm('Unit check: integers, Form A');
		await page.getByRole('button', { name: 'Export', exact: true }).focus();
		await page.keyboard.press('Enter');
		await page.getByRole('button', { name: 'Write the package' }).waitFor();
		expect(await page.getByRole('button', { name: 'Write the package' }).isVisible()).toBe(true);
		await page.keyboard.press('Tab');
		await page.keyboard.press('Tab');
		await page.keyboard.press('ArrowDown');
		expect(await page.getByLabel('QTI 2.1').isChecked()).toBe(true);
	});

	test.each(['light', 'dark'] as const)('has no accessibility violation in the %s theme', async (colorScheme) => {
		await page.emulateMedia({ colorScheme });
		await openForm('Unit check: integers, Form A');
		await page.getByLabel('Show keys and worked steps').check();
		await page.getByRole('button', { name: 'Export', exact: true }).click();
		await page.getByLabel('Common Cartridge 1.1').check();
		await page.getByText('items are carried as they are').waitFor();
		await page.evaluate(await readFile(axePath, 'utf8'));
		const found = await page.evaluate(async () => {
			const { axe } = window as unknown as {
				axe: {
					run: (
						context: Document,
					) => Promise<{ violations: readonly { id: string; nodes: readonly { html: string }[] }[] }>;
				};
			};
			const { violations } = await axe.run(document);
			return violations.map(
				({ id, nodes }) =>
					`${id}: ${nodes
						.slice(0, 3)
						.map(({ html }) => html.slice(0, 120))
						.join(' | ')}`,
			);
		});
		expect(found).toEqual([]);
	});
});
