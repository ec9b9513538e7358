import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Evidence, ItemPage, Supply } from '../../item-bank/types.ts';
import { browserPath } from '../helpers/browser.ts';
import { findBarriers, focusedName, type Journey, startJourney } from '../helpers/journey.ts';
import { requireOutside } from '../helpers/reference.ts';

const hasBrowser = requireOutside('Chromium (Debian package chromium)', browserPath !== undefined);
const common = 'framework=ccss-m&edition=2010';

describe.skipIf(!hasBrowser)('the board', () => {
	let journey: Journey;

	beforeAll(async () => {
		journey = await startJourney();
	});

	afterAll(async () => {
		await journey.end();
	});

	const read = async <T>(path: string): Promise<T> => (await fetch(journey.url + path)).json() as Promise<T>;
	const row = (page: Page, code: string) =>
		page.getByRole('row').filter({ has: page.getByText(code, { exact: true }) });
	const texts = (page: Page): Promise<readonly string[]> =>
		page
			.getByRole('gridcell')
			.evaluateAll((cells) => cells.map((cell) => cell.querySelector('.spoken')?.textContent ?? ''));

	async function openBoard(query: string) {
		const opened = await journey.open(`#/board?${query}`);
		await opened.page.getByRole('treegrid').waitFor();
		return opened;
	}

	test('counts what the bank counts, row by row', async () => {
		const supply = await read<Supply>('api/standards/ccss-m/2010');
		const { page, complaints, context } = await openBoard(common);
		for (const { code, supply: counts } of supply.standards.filter(({ code }) => /^7\.NS\.A\.1[a-d]$/.test(code))) {
			const said = await row(page, code).getByRole('gridcell').nth(1).locator('.spoken').textContent();
			expect(said).toBe(counts.counters === 0 ? 'none' : `${counts.counters} item${counts.counters === 1 ? '' : 's'}`);
		}
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('is walked by arrow keys; a cell opens its items and gets the focus back', async () => {
		const { page, context } = await openBoard(common);
		await page.getByRole('rowheader').first().focus();
		await page.keyboard.press('ArrowDown');
		await page.keyboard.press('ArrowRight');
		await page.keyboard.press('End');
		await page.keyboard.press('ArrowLeft');
		await page.keyboard.press('ArrowDown');
		const placeOf = () =>
			page.evaluate(() => {
				let active = document.activeElement;
				while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
				const code = active?.closest('tr')?.querySelector('.code')?.textContent;
				return `${code} ${active instanceof HTMLTableCellElement ? active.cellIndex : ''}`;
			});
		expect(await placeOf()).toBe('6.NS.C 5');
		const said = await focusedName(page);
		await page.keyboard.press('Enter');
		const drawer = page.getByRole('dialog', { name: '6.NS.C, table' });
		await drawer.waitFor();
		await expect.poll(() => focusedName(page)).toBe('6.NS.C, table');
		const { total } = await read<ItemPage>(
			`api/items?${common}&code=6.NS.C&below=true&model=table&status=approved&limit=1`,
		);
		await drawer.getByRole('heading', { name: `In the bank: ${total} items` }).waitFor();
		expect(said).toBe(`${total} items`);
		await page.keyboard.press('Escape');
		await expect.poll(placeOf).toBe('6.NS.C 5');
		await page.goBack();
		await drawer.waitFor();
		await context.close();
	});

	test('shows the items of a cell in Find', async () => {
		const { page, context } = await openBoard(`${common}&model=counters&cell=7.NS.A.1c`);
		const heading = page.getByRole('heading', { name: /^In the bank: \d+ items$/ });
		const count = /\d+/.exec((await heading.textContent()) ?? '')?.[0];
		await page.getByRole('link', { name: 'See them in Find' }).click();
		await page.getByRole('main').getByRole('status').getByText(`${count} items`, { exact: true }).waitFor();
		expect(await page.getByRole('checkbox', { name: /^counters/ }).isChecked()).toBe(true);
		expect(await page.getByRole('combobox', { name: 'Standard', exact: true }).inputValue()).toBe('7.NS.A.1c');
		await context.close();
	});

	test('shows the same items through another framework', async () => {
		const { page, context } = await openBoard(common);
		await page.getByLabel('Seen through').selectOption('teks-math');
		await page.getByRole('treegrid', { name: /Texas/ }).waitFor();
		const supply = await read<Supply>('api/standards/teks-math/2012');
		const placed = supply.standards.reduce((sum, { total }) => sum + total, 0);
		const { total } = await read<ItemPage>('api/items?status=approved&limit=1');
		const totals = await page.getByRole('row').last().getByRole('gridcell').last().locator('.spoken').textContent();
		expect(totals).toBe(`${placed} items`);
		const unseen = total - placed;
		expect(await page.getByText(`${unseen} items that fit have no standard in this framework.`).count()).toBe(
			unseen > 1 ? 1 : 0,
		);
		await page.goBack();
		await page.getByRole('treegrid', { name: /Common Core/ }).waitFor();
		await context.close();
	});

	test('keeps its place and its size when the lens changes', async () => {
		const { page, context } = await openBoard(`${common}&form=srm-unit-check-a`);
		await row(page, '7.NS.A.1c').getByRole('gridcell').first().scrollIntoViewIfNeeded();
		const boxes = () =>
			page
				.getByRole('row')
				.evaluateAll((rows) => rows.map((each) => JSON.stringify(each.getBoundingClientRect().toJSON())));
		const before = await boxes();
		const supply = await texts(page);
		await page.getByRole('radio', { name: 'Plan' }).evaluate((radio) => (radio as HTMLElement).click());
		await expect.poll(() => texts(page)).not.toEqual(supply);
		expect(await boxes()).toEqual(before);
		await page.getByRole('radio', { name: 'Evidence' }).evaluate((radio) => (radio as HTMLElement).click());
		await expect.poll(() => texts(page)).toContain('no responses');
		const tops = async () => (await boxes()).map((box) => JSON.parse(box).height);
		expect(await tops()).toEqual(before.map((box) => JSON.parse(box).height));
		await context.close();
	});

	test('shows evidence with its interval and its counts, and never a share alone', async () => {
		const teks = 'framework=teks-math&edition=2012';
		const evidence = await read<Evidence>(`api/evidence?${teks}`);
		const entry = evidence.cells.find(({ standard, model }) => standard === '6.3(C)' && model === 'counters');
		const { page, context, complaints } = await openBoard(`${teks}&lens=evidence`);
		await page.getByText('Simulated: these responses come from no child.').waitFor();
		const said = (await row(page, '6.3(C)').getByRole('gridcell').nth(1).locator('.spoken').textContent()) ?? '';
		expect(said).toContain(`${Math.round((entry?.share ?? 0) * 100)} %, ${entry?.earned} of ${entry?.possible} points`);
		expect(said).toContain(`${entry?.responses} responses of ${entry?.students} students`);
		for (const text of (await texts(page)).filter((each) => each.includes('%'))) {
			expect(text).toMatch(/95 % interval \d+ % to \d+ %; [\d,]+ responses of \d+ students$/);
		}
		await page.getByLabel('Sittings').selectOption('srm-sitting-6b');
		await expect.poll(() => page.getByText(/students in 1 sitting\./).count()).toBe(1);
		const one = await read<Evidence>(`api/evidence?${teks}&sitting=srm-sitting-6b`);
		const responses = one.cells.find(({ standard, model }) => standard === undefined && model === undefined)?.responses;
		const total = page.getByRole('row').last().getByRole('gridcell').last().locator('.spoken');
		await expect.poll(() => total.textContent()).toContain(`${responses} responses`);
		expect(await findBarriers(page)).toEqual([]);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('makes items of a family for a cell, keeps them as drafts and takes that back', async () => {
		const { page, context, complaints } = await openBoard(
			'framework=teks-math&edition=2012&status=draft&model=counters&cell=6.3(C)',
		);
		const drawer = page.getByRole('dialog', { name: '6.3(C), counters' });
		await drawer.getByText('Make some from a family').click();
		await drawer.getByLabel('How many').fill('0');
		await drawer.getByText('Expected a whole number from 1 to 20.').waitFor();
		expect(await drawer.getByRole('button', { name: 'Show them' }).isDisabled()).toBe(true);
		await drawer.getByLabel('How many').fill('3');
		await drawer.getByLabel('Seed').fill('journey');
		await drawer.getByRole('button', { name: 'Show them' }).click();
		await drawer.getByRole('button', { name: 'Keep 3 items as drafts' }).waitFor();
		expect(await findBarriers(page)).toEqual([]);
		const query = 'api/items?status=draft&model=counters&limit=1&facets=false';
		const before = (await read<ItemPage>(query)).total;
		await drawer.getByRole('button', { name: 'Keep 3 items as drafts' }).click();
		await page.getByText(/^3 drafts are in the bank/).waitFor();
		expect((await read<ItemPage>(query)).total).toBe(before + 3);
		await page.getByRole('button', { name: 'Undo' }).click();
		await page.getByText('Taken back.').waitFor();
		expect((await read<ItemPage>(query)).total).toBe(before);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('adds an item to the form and takes it back', async () => {
		const { page, context } = await openBoard(
			'framework=teks-math&edition=2012&lens=plan&form=srm-unit-check-a&model=counters&cell=6.3(C)',
		);
		const drawer = page.getByRole('dialog', { name: '6.3(C), counters' });
		const heading = drawer.getByRole('heading', { name: /^On Unit check: integers, Form A: \d+ items$/ });
		const before = Number(/(\d+) items$/.exec((await heading.textContent()) ?? '')?.[1]);
		await drawer
			.getByRole('button', { name: /^Add to the form: / })
			.first()
			.click();
		await drawer.getByRole('heading', { name: `Form A: ${before + 1} items` }).waitFor();
		await page.getByRole('button', { name: 'Undo' }).click();
		await drawer.getByRole('heading', { name: `Form A: ${before} items` }).waitFor();
		await context.close();
	});

	test('saves what is shown as CSV, and prints the board alone', async () => {
		const { page, context } = await openBoard(`${common}&dok=2`);
		const [download] = await Promise.all([
			page.waitForEvent('download'),
			page.getByRole('button', { name: 'Save as CSV' }).click(),
		]);
		const lines = (await readFile(await download.path(), 'utf8')).trim().split(/\r?\n/);
		const supply = await read<Supply>('api/standards/ccss-m/2010?dok=2');
		const standard = supply.standards.find(({ code }) => code === '7.NS.A.1c');
		expect(standard?.total).toBeGreaterThan(0);
		const line = lines.find((each) => each.includes('7.NS.A.1c')) ?? '';
		expect(line.split(',').slice(-6).map(Number)).toEqual([
			...['symbols', 'counters', 'number-line', 'story', 'table'].map(
				(model) => (standard?.supply as Record<string, number> | undefined)?.[model],
			),
			standard?.total,
		]);
		await page.emulateMedia({ media: 'print' });
		expect(await page.getByRole('treegrid').isVisible()).toBe(true);
		expect(await page.getByRole('button', { name: 'Save as CSV' }).isVisible()).toBe(false);
		expect(await page.getByRole('navigation').isVisible()).toBe(false);
		await context.close();
	});

	test('keeps what it shows while the bank is away and goes on when it is back', async () => {
		const { page, context } = await openBoard(common);
		const shown = await texts(page);
		await page.waitForLoadState('networkidle');
		await journey.stop();
		await page.getByRole('checkbox', { name: '2', exact: true }).first().check();
		await page.getByRole('alert').getByText('The bank does not answer').waitFor();
		expect(await texts(page)).toEqual(shown);
		await journey.restart();
		await expect.poll(() => texts(page), { timeout: 10_000 }).not.toEqual(shown);
		await expect.poll(() => page.getByText('The bank does not answer').count()).toBe(0);
		await context.close();
	});

	test.each(['light', 'dark'] as const)('has no accessibility violation in the %s theme', async (colorScheme) => {
		const { page, context } = await openBoard(`${common}&form=srm-unit-check-a&lens=plan`);
		await page.emulateMedia({ colorScheme });
		expect(await findBarriers(page)).toEqual([]);
		await row(page, '7.NS.A.1c').getByRole('gridcell').nth(1).click();
		await page.getByRole('heading', { name: /^In the bank/ }).waitFor();
		expect(await findBarriers(page)).toEqual([]);
		await context.close();
	});
});
