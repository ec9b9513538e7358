import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { FormDetails, ItemPage } from '../../item-bank/types.ts';
import { browserPath } from '../helpers/browser.ts';
import { findBarriers, focusedName, type Journey, startJourney } from '../helpers/journey.ts';
import { requireOutside } from '../helpers/reference.ts';

const hasBrowser = requireOutside('Chromium (Debian package chromium)', browserPath !== undefined);

describe.skipIf(!hasBrowser)('the page that finds items', () => {
	let journey: Journey;

	beforeAll(async () => {
		journey = await startJourney();
	});

	afterAll(async () => {
		await journey.end();
	});

	const words = (page: Page) => page.getByRole('searchbox', { name: 'Words in the item' });
	const status = (page: Page) => page.getByRole('main').getByRole('status');
	const names = (page: Page): Promise<readonly string[]> => page.locator('zp-hit-table a.name').allTextContents();
	const ask = async (query: string): Promise<ItemPage> =>
		(await fetch(`${journey.url}api/items?${query}`)).json() as Promise<ItemPage>;
	const say = (total: number): string => `${total} item${total === 1 ? '' : 's'}`;

	/** Waits until the page says how many items there are. */
	async function waitForTotal(page: Page, total: number): Promise<void> {
		await status(page)
			.getByText(new RegExp(`(^| of )${say(total)}$`))
			.waitFor();
	}

	test('narrows by words and a value, goes back and forward, and opens the same from a shared link', async () => {
		const [lift, gridded] = await Promise.all([ask('text=lift&limit=1'), ask('text=lift&kind=gridded&limit=200')]);
		expect(lift.total).toBeGreaterThan(gridded.total);
		expect(gridded.total).toBeGreaterThan(0);
		const { page, complaints } = await journey.open('#/find');
		await waitForTotal(page, (await ask('limit=1')).total);
		await words(page).pressSequentially('lift', { delay: 20 });
		await waitForTotal(page, lift.total);
		await page.getByRole('checkbox', { name: /^gridded/ }).check();
		await waitForTotal(page, gridded.total);
		expect(new URL(page.url()).hash).toContain('text=lift');
		expect(new URL(page.url()).hash).toContain('kind=gridded');
		await page.goBack();
		await waitForTotal(page, lift.total);
		expect(await page.getByRole('checkbox', { name: /^gridded/ }).isChecked()).toBe(false);
		await page.goBack();
		await waitForTotal(page, (await ask('limit=1')).total);
		expect(await words(page).inputValue()).toBe('');
		await page.goForward();
		await page.goForward();
		await waitForTotal(page, gridded.total);
		expect(await words(page).inputValue()).toBe('lift');
		const shared = await journey.open(new URL(page.url()).hash);
		await waitForTotal(shared.page, gridded.total);
		expect(await names(shared.page)).toEqual(await names(page));
		expect(complaints).toEqual([]);
		await shared.context.close();
	});

	test('says behind every value how many items it would leave', async () => {
		const { facets } = await ask('text=lift&kind=gridded');
		const { page, context } = await journey.open('#/find?text=lift&kind=gridded');
		await page.locator('zp-find-margin zp-tally').first().waitFor();
		for (const { value, count } of facets?.kind ?? []) {
			const name = new RegExp(`^${String(value).replaceAll('-', ' ')} ${count}$`);
			expect(await page.getByRole('group', { name: 'Kind' }).getByRole('checkbox', { name }).count()).toBe(1);
		}
		await context.close();
	});

	test('drops an answer that comes after the answer to a newer question', async () => {
		const { page, context } = await journey.open('#/find');
		await status(page).waitFor();
		await page.route('**/api/items?*text=counters*', async (route) => {
			await new Promise((resolve) => setTimeout(resolve, 700));
			await route.continue().catch(() => undefined);
		});
		await words(page).fill('counters');
		await page.waitForRequest(/text=counters/);
		await words(page).fill('lift');
		const { total } = await ask('text=lift&limit=1');
		await waitForTotal(page, total);
		await page.waitForTimeout(900);
		await waitForTotal(page, total);
		await context.close();
	});

	test('is walked by keys alone, from the words through the rows, and shows more', async () => {
		const { page, context } = await journey.open('#/find');
		await page.locator('zp-hit-table a.name').first().waitFor();
		const [first, second] = await names(page);
		await words(page).focus();
		await page.keyboard.press('ArrowDown');
		expect(await focusedName(page)).toBe(first);
		await page.keyboard.press('ArrowDown');
		expect(await focusedName(page)).toBe(second);
		await page.keyboard.press('Home');
		await page.keyboard.press('ArrowUp');
		expect(await words(page).evaluate((field) => field.matches(':focus'))).toBe(true);
		await page.keyboard.press('ArrowDown');
		await page.keyboard.press('End');
		await page.keyboard.press('Tab');
		expect(await focusedName(page)).toBe('Show 50 more');
		await page.keyboard.press('Enter');
		await expect.poll(async () => (await names(page)).length).toBe(100);
		expect(await focusedName(page)).toBe((await names(page))[50]);
		expect(
			new Set(
				await page.locator('zp-hit-table a.name').evaluateAll((all) => all.map((each) => each.getAttribute('href'))),
			).size,
		).toBe(100);
		await page.keyboard.press('Enter');
		await page.waitForURL(/#\/items\//);
		await page.goBack();
		await expect.poll(async () => (await names(page)).length).toBe(100);
		await context.close();
	});

	test('adds what is found to a form and takes it back', async () => {
		const countItems = async (): Promise<number> => {
			const form = (await (await fetch(`${journey.url}api/forms/srm-unit-check-a`)).json()) as FormDetails;
			return form.items.length;
		};
		const before = await countItems();
		const { page, context } = await journey.open('#/find?form=srm-unit-check-a&status=approved');
		const add = page.locator('zp-hit-table .add button[aria-disabled=false]').first();
		await add.focus();
		const name = await focusedName(page);
		expect(name).toMatch(/^Add .+ to Unit check: integers, Form A$/);
		await page.keyboard.press('Enter');
		await expect.poll(countItems).toBe(before + 1);
		await expect.poll(() => focusedName(page)).toMatch(/^on it: .+, Unit check: integers, Form A$/);
		await page.getByRole('button', { name: 'Undo' }).click();
		await expect.poll(countItems).toBe(before);
		await page.getByRole('button', { name, exact: true }).waitFor();
		await context.close();
	});

	test('where nothing fits, says which condition to let go of', async () => {
		const { page, context } = await journey.open('#/find?text=zebra&kind=gridded&dok=3');
		const { total } = await ask('kind=gridded&dok=3&limit=1');
		await page.getByRole('link', { name: `${say(total)} without the words` }).click();
		await waitForTotal(page, total);
		await context.close();
	});

	test('keeps what it shows while the bank is away and goes on when it is back', async () => {
		const { page, context } = await journey.open('#/find?text=lift');
		await page.locator('zp-hit-table a.name').first().waitFor();
		const shown = await names(page);
		await page.waitForLoadState('networkidle');
		await journey.stop();
		await words(page).fill('lift gridded');
		await page.getByRole('alert').getByText('The bank does not answer').waitFor();
		expect(await names(page)).toEqual(shown);
		await words(page).fill('tide');
		await journey.restart();
		await waitForTotal(page, (await ask('text=tide&limit=1')).total);
		await expect.poll(() => page.getByText('The bank does not answer').count()).toBe(0);
		await context.close();
	});

	test.each(['light', 'dark'] as const)('has no accessibility violation in the %s theme', async (colorScheme) => {
		const { page, context } = await journey.open();
		await page.emulateMedia({ colorScheme });
		await page.goto(`${journey.url}#/find?text=lift&form=srm-unit-check-a&kind=gridded`);
		await page.locator('zp-hit-table a.name').first().waitFor();
		await page.locator('zp-tally').first().waitFor();
		expect(await findBarriers(page)).toEqual([]);
		await page.goto(`${journey.url}#/find?text=zebra&kind=gridded`);
		await page.getByRole('heading', { name: 'Nothing fits all of this together' }).waitFor();
		expect(await findBarriers(page)).toEqual([]);
		await context.close();
	});
});
