import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { browserPath } from '../helpers/browser.ts';
import { keepItem, readText } from '../helpers/desk.ts';
import { makeChoice, makeGridded, makeSet } from '../helpers/items.ts';
import { findBarriers, type Journey, startJourney } from '../helpers/journey.ts';
import { requireOutside } from '../helpers/reference.ts';

const hasBrowser = requireOutside('Chromium (Debian package chromium)', browserPath !== undefined);

describe.skipIf(!hasBrowser)('the item desk', () => {
	let journey: Journey;
	const contexts: BrowserContext[] = [];
	let complaints: readonly string[] = [];

	beforeAll(async () => {
		journey = await startJourney();
	});

	afterEach(async () => {
		for (const context of contexts.splice(0)) await context.close();
	});

	afterAll(async () => {
		await journey.end();
	});

	async function open(hash: string, options: Parameters<Journey['open']>[1] = {}): Promise<Page> {
		const opened = await journey.open(hash, options);
		contexts.push(opened.context);
		complaints = opened.complaints;
		return opened.page;
	}

	const save = (page: Page): Promise<void> => page.locator('[data-action=save]').click();
	const expression = (page: Page) => page.getByLabel('Expression the key is worked from');
	const bank = (page: Page) => page.getByRole('region', { name: 'What the bank computes' });

	test('writes an item with a number line, takes computed wrong answers, saves it and finds it again', async () => {
		const page = await open('#/items/new?model=number-line&kind=choice&framework=ccss-m&edition=2010&code=7.NS.A.1b');
		await page.getByRole('button', { name: 'Begin' }).click();
		await page.getByLabel('Arrows, one after the other').fill('-9');
		await page.getByLabel('Arrows start at').fill('4');
		await expression(page).fill('4 + (-9)');
		await expect.poll(() => readText(page.locator('zp-item'))).toContain('4 + (−9)');
		await page.getByText('Wrong answers the bank computes').click();
		await page.getByRole('button', { name: /Take the key and 3 wrong answers/ }).click();
		expect(await page.locator('zp-item ol li').count()).toBe(4);
		await expect.poll(() => readText(bank(page))).toContain('−5');
		await page.getByLabel('Working name').fill('Nine to the left');
		await save(page);
		await page.getByText('version 1, draft').waitFor();
		const address = page.url();
		await page.goto('about:blank');
		await page.goto(address);
		await page.getByRole('heading', { name: 'Nine to the left' }).waitFor();
		const found = await (await fetch(`${journey.url}api/items?text=nine+left`)).json();
		expect(found.items[0].item.options).toHaveLength(4);
		expect(found.items[0].item.options.filter((option: { patterns?: unknown }) => option.patterns)).toHaveLength(3);
	});

	test('shows what a change brings about within 100 ms', async () => {
		await keepItem(journey.url, 'desk-quick', makeChoice());
		const page = await open('#/items/desk-quick');
		await expression(page).waitFor();
		const waits = await page.evaluate(async () => {
			const within = (root: ParentNode, selector: string): HTMLElement | null => {
				for (const node of root.querySelectorAll<HTMLElement>('*')) {
					if (node.matches(selector)) return node;
					const inner = node.shadowRoot && within(node.shadowRoot, selector);
					if (inner) return inner;
				}
				return null;
			};
			const field = within(document, '[id=field-rule-expression]') as HTMLInputElement;
			const waited: number[] = [];
			for (let number = 3; number < 23; number += 1) {
				const start = performance.now();
				field.value = `-9 + ${number}`;
				field.dispatchEvent(new Event('input', { bubbles: true }));
				const wanted = `−9 + ${number}`;
				const shown = (): boolean =>
					(within(document, 'zp-item-reading')?.shadowRoot?.textContent ?? '').includes(wanted) &&
					(within(document, 'zp-item')?.shadowRoot?.textContent ?? '').includes(wanted);
				while (!shown()) await new Promise(requestAnimationFrame);
				waited.push(performance.now() - start);
			}
			return waited.sort((a, b) => a - b);
		});
		expect(waits[Math.floor(waits.length / 2)]).toBeLessThan(100);
	});

	test('keeps unsaved work over a reload, throws it away and brings it back', async () => {
		await keepItem(journey.url, 'desk-reload', makeGridded());
		const page = await open('#/items/desk-reload');
		await expression(page).fill('-5 - (-11)');
		await page.reload();
		expect(await expression(page).inputValue()).toBe('-5 - (-11)');
		await page.getByText('Unsaved work, kept in this browser').waitFor();
		await page.getByRole('button', { name: 'Throw the changes away' }).click();
		expect(await expression(page).inputValue()).toBe('-3 - (-8)');
		await page.getByRole('button', { name: 'Undo' }).click();
		expect(await expression(page).inputValue()).toBe('-5 - (-11)');
	});

	test('lets two browsers edit one item: both versions are shown, and the choice is saved', async () => {
		await keepItem(journey.url, 'desk-two', makeGridded());
		const [first, second] = [await open('#/items/desk-two'), await open('#/items/desk-two')];
		await first.getByLabel('Working name').fill('Named by the first');
		await second.getByLabel('DOK').fill('2');
		await second.getByLabel('Working name').fill('Named by the second');
		await save(first);
		await first.getByText('version 2, draft').waitFor();
		await save(second);
		await second.getByRole('heading', { name: 'Somebody saved version 2 while you worked' }).waitFor();
		await expect.poll(() => readText(second.locator('zp-version-choice'))).toContain('Named by the first');
		await expect.poll(() => readText(second.locator('zp-version-choice'))).toContain('Named by the second');
		expect(await findBarriers(second)).toEqual([]);
		await second.getByLabel('working name: Version 2').check();
		await second.getByRole('button', { name: 'Save the choice as version 3' }).click();
		await second.getByText('version 3, draft').waitFor();
		const { item } = await (await fetch(`${journey.url}api/items/desk-two`)).json();
		expect([item.name, item.dok]).toEqual(['Named by the first', 2]);
	});

	test('loses nothing when the bank stops during a save, and saves once it is back', async () => {
		await keepItem(journey.url, 'desk-stopped', makeGridded());
		const page = await open('#/items/desk-stopped');
		await expression(page).fill('-6 - (-1)');
		await page.waitForLoadState('networkidle');
		await journey.stop();
		await save(page);
		await page.getByText('Your work is kept in this browser.').waitFor();
		expect(await expression(page).inputValue()).toBe('-6 - (-1)');
		await journey.restart();
		await page.getByText('Your work is still here: save it now.').waitFor({ timeout: 20_000 });
		await page.getByRole('button', { name: 'Save again' }).click();
		await page.getByText('version 2, draft').waitFor();
		const { item } = await (await fetch(`${journey.url}api/items/desk-stopped`)).json();
		expect(item.expression).toBe('-6 - (-1)');
	});

	test('saves once when the answer to a save gets lost', async () => {
		await keepItem(journey.url, 'desk-lost', makeGridded());
		const page = await open('#/items/desk-lost');
		await page.getByLabel('Working name').fill('Saved once');
		await page.route('**/api/items/desk-lost', async (route) => {
			if (route.request().method() !== 'PUT') return route.continue();
			await route.fetch();
			await route.abort();
		});
		await save(page);
		await page.getByText('Your work is kept in this browser.').waitFor();
		await page.unroute('**/api/items/desk-lost');
		await page.locator('[data-action=save]').click();
		await page.getByText('version 2, draft').waitFor();
		expect(await (await fetch(`${journey.url}api/items/desk-lost`)).json()).toMatchObject({ version: 2 });
	});

	test('says what stops approval and goes to the field; approves and retires', async () => {
		await keepItem(journey.url, 'desk-approve', makeGridded());
		const page = await open('#/items/desk-approve');
		await page.getByLabel('Model given').selectOption('counters');
		await save(page);
		await page.getByText('version 2, draft').waitFor();
		await page.getByRole('button', { name: 'Approve version 2' }).click();
		await page.getByText('One check stops approval.').waitFor();
		await bank(page)
			.getByRole('button', { name: /^Go there/ })
			.first()
			.click();
		expect(await page.getByLabel('Model given').evaluate((node) => node.matches(':focus'))).toBe(true);
		await page.getByLabel('Model given').selectOption('symbols');
		await save(page);
		await page.getByText('version 3, draft').waitFor();
		await page.getByRole('button', { name: 'Approve version 3' }).click();
		await page.getByText('version 3, approved').waitFor();
		await page.getByRole('button', { name: 'Retire version 3' }).click();
		await page.getByRole('button', { name: 'Retire it' }).click();
		await page.getByText('version 3, retired').waitFor();
		await page.getByText('History', { exact: true }).click();
		await page.getByRole('button', { name: 'What changed since version 2' }).click();
		await expect
			.poll(() => readText(page.locator('zp-item-history')))
			.toMatch(/model given\s*was\s*counters\s*is\s*symbols/);
	});

	test('makes items from a family as its parameters change, and saves the chosen ones', async () => {
		const page = await open('#/items/new?family=sum-of-two');
		const variants = page.getByRole('region', { name: 'Variants' });
		await variants.locator('li.variant').first().waitFor();
		const before = await readText(variants.locator('zp-item'));
		await page.getByLabel('Largest size of a number.').fill('60');
		await expect.poll(() => readText(variants.locator('zp-item'))).not.toBe(before);
		await page.getByLabel('Choose variant 1').check();
		await page.getByLabel('Choose variant 3').check();
		await page.getByRole('button', { name: 'Save 2 items as drafts' }).click();
		await page.getByText('2 items are saved as drafts:').waitFor();
		await page.getByRole('link', { name: /^Sum/ }).first().click();
		await page.getByText('version 1, draft').waitFor();
	});

	test('moves options by keyboard alone and keeps the focus', async () => {
		await keepItem(journey.url, 'desk-keys', makeChoice());
		const page = await open('#/items/desk-keys');
		await page.getByRole('button', { name: 'Move Option A down' }).press('Enter');
		// The focus follows once the moved options are drawn.
		const moved = page.getByRole('button', { name: 'Move Option B down' });
		await expect.poll(() => moved.evaluate((node) => node.matches(':focus'))).toBe(true);
		await page.getByRole('button', { name: 'Take Option D out' }).press('Enter');
		await expect.poll(() => page.evaluate(() => document.activeElement !== document.body)).toBe(true);
		await page.keyboard.press('Control+s');
		await page.getByText('version 2, draft').waitFor();
		const { item } = await (await fetch(`${journey.url}api/items/desk-keys`)).json();
		expect(
			item.options.map(({ id, content }: { id: string; content: { math: string } }) => `${id} ${content.math}`),
		).toEqual(['a -7', 'b -11', 'c 7']);
	});

	test('has no accessibility violation at any width, in either theme', async () => {
		await keepItem(journey.url, 'desk-set', makeSet());
		for (const hash of ['#/items/new', '#/items/new?family=table-total', '#/items/desk-set']) {
			const page = await open(hash, { colorScheme: 'light', viewport: { width: 1366, height: 800 } });
			await page.getByRole('heading', { level: 2 }).first().waitFor();
			for (const width of [1366, 820, 390]) {
				await page.setViewportSize({ width, height: 800 });
				// Inks do not change with the width.
				for (const colorScheme of width === 1366 ? (['light', 'dark'] as const) : (['light'] as const)) {
					await page.emulateMedia({ colorScheme });
					expect(
						await findBarriers(page, colorScheme === 'dark' ? 'inks' : 'everything'),
						`${hash} ${width} ${colorScheme}`,
					).toEqual([]);
				}
				const fits = await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth);
				expect(fits, `${hash} ${width}`).toBe(true);
			}
			expect(complaints, hash).toEqual([]);
		}
	}, 120_000);
});
