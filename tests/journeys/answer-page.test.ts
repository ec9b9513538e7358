import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import type { Item } from '../../item-bank/types.ts';
import { browserPath } from '../helpers/browser.ts';
import { keepItem, readText } from '../helpers/desk.ts';
import {
	makeChoice,
	makeExplanation,
	makeGridded,
	makeInlineChoice,
	makeMatch,
	makeMultipleChoice,
	makeOrder,
	makePoint,
	makeSet,
} from '../helpers/items.ts';
import { findBarriers, type Journey, startJourney } from '../helpers/journey.ts';
import { requireOutside } from '../helpers/reference.ts';

const hasBrowser = requireOutside('Chromium (Debian package chromium)', browserPath !== undefined);

const items: Readonly<Record<string, Item>> = {
	'try-choice': makeChoice(),
	'try-several': makeMultipleChoice(),
	'try-grid': makeGridded(),
	'try-point': makePoint(),
	'try-order': makeOrder(),
	'try-match': makeMatch(),
	'try-gap': makeInlineChoice(),
	'try-words': makeExplanation(),
	'try-set': makeSet(),
};

describe.skipIf(!hasBrowser)('the answer page', () => {
	let journey: Journey;
	let context: BrowserContext | undefined;
	let complaints: readonly string[] = [];

	beforeAll(async () => {
		journey = await startJourney();
		for (const [id, item] of Object.entries(items)) await keepItem(journey.url, id, item);
	});

	afterEach(async () => {
		await context?.close();
	});

	afterAll(async () => {
		await journey.end();
	});

	async function answer(id: string, options: Parameters<Journey['open']>[1] = {}): Promise<Page> {
		const opened = await journey.open(`#/items/${id}?try=yes`, options);
		context = opened.context;
		complaints = opened.complaints;
		await opened.page.getByRole('button', { name: 'Check the answer' }).waitFor();
		return opened.page;
	}

	const check = (page: Page): Promise<void> => page.getByRole('button', { name: 'Check the answer' }).click();

	test('fills the signed grid by keyboard alone and says what is marked', async () => {
		const page = await answer('try-grid');
		await page.getByLabel('Sign column, box to write in').focus();
		await page.keyboard.type('-12');
		expect(await page.getByRole('radio', { name: 'minus' }).isChecked()).toBe(true);
		expect(await page.locator('[data-column="2"] input:checked').getAttribute('value')).toBe('2');
		await page.keyboard.press('Backspace');
		await page.keyboard.press('Backspace');
		expect(await page.locator('[data-column="1"] input:checked').count()).toBe(0);
		expect(await page.locator('zp-grid-answer [aria-live]').textContent()).toBe(
			'Digit column 1 of 4: erased. The grid shows minus, blank, blank, blank, blank.',
		);
		// Down from the box into the bubbles, and along them with the arrow keys.
		await page.keyboard.press('ArrowDown');
		await page.keyboard.type('5');
		await page.getByRole('radio', { name: 'minus' }).focus();
		await page.keyboard.press('Delete');
		expect(await page.locator('zp-grid-answer [aria-live]').textContent()).toContain('The grid shows blank, 5, blank');
		while (!(await page.getByRole('button', { name: 'Check the answer' }).evaluate((node) => node.matches(':focus')))) {
			await page.keyboard.press('Tab');
		}
		await page.keyboard.press('Enter');
		await page.getByText('Right.', { exact: true }).waitFor();
		expect(await page.locator('.outcome').evaluate((node) => node.matches(':focus'))).toBe(true);
	});

	test('fills the signed grid by pointer, one mark a column, and erases a mark pressed again', async () => {
		const page = await answer('try-grid');
		const bubble = (column: number, symbol: string) =>
			page.locator(`[data-column="${column}"] input[value="${symbol}"]`);
		await bubble(0, '-').click();
		await bubble(1, '4').click();
		await bubble(1, '5').click();
		expect(await page.locator('[data-column="1"] input:checked').count()).toBe(1);
		expect(await page.locator('[data-column="1"] .box').inputValue()).toBe('5');
		await bubble(0, '-').click();
		expect(await page.locator('[data-column="0"] .box').inputValue()).toBe('');
		await bubble(0, '-').click();
		await check(page);
		await page.getByText('Not right.').waitFor();
		await expect.poll(() => readText(page.locator('zp-outcome'))).toContain('Consistent with');
	});

	test('fills the signed grid by touch, with targets of 44 px', async () => {
		const page = await answer('try-grid', { hasTouch: true, viewport: { width: 390, height: 844 } });
		await page.locator('[data-column="3"] input[value="5"]').tap();
		const sizes = await page
			.locator('.bubble')
			.evaluateAll((nodes) => nodes.map((node) => node.getBoundingClientRect().height));
		expect(Math.min(...sizes)).toBeGreaterThanOrEqual(44);
		expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
		await page.getByRole('button', { name: 'Check the answer' }).tap();
		await page.getByText('Right.', { exact: true }).waitFor();
	});

	test('says why a grid cannot be read', async () => {
		const page = await answer('try-grid');
		await page.locator('[data-column="1"] input[value="5"]').click();
		await page.locator('[data-column="3"] input[value="5"]').click();
		await check(page);
		await page.getByText('a blank column between digits').waitFor();
	});

	test('places a point by arrow keys and by pointer, and names no number that is not printed', async () => {
		const page = await answer('try-point');
		const line = page.getByRole('slider', { name: 'Place on the number line' });
		expect(await line.getAttribute('aria-valuetext')).toBe('nothing marked');
		await line.focus();
		for (let step = 0; step <= 3; step += 1) await page.keyboard.press('ArrowLeft');
		expect(await line.getAttribute('aria-valuetext')).toBe('the 3rd tick left of 0');
		const box = await line.boundingBox();
		if (!box) throw new Error('the line has no place on the page');
		// Ticks run from 30 px to 30 px before the end of the drawing.
		const scale = 18 / 16;
		const width = box.width / scale - 60;
		await page.mouse.click(box.x + (30 + (3 / 20) * width) * scale, box.y + box.height / 2);
		await check(page);
		await page.getByText('Right.', { exact: true }).waitFor();
	});

	test('orders entries by pressing, moving and dragging, and never loses the keyboard', async () => {
		const page = await answer('try-order');
		for (const letter of ['a', 'b', 'c', 'd']) await page.locator(`button[data-id=${letter}]`).press('Enter');
		expect(await page.evaluate(() => document.activeElement !== document.body)).toBe(true);
		await page.getByRole('button', { name: 'Move C up' }).press('Enter');
		await page.keyboard.press('Enter');
		expect(await page.getByRole('button', { name: 'Move C up' }).evaluate((node) => node.matches(':focus'))).toBe(true);
		await page.locator('[data-placed=b] .face').dragTo(page.locator('[data-placed=d]'));
		expect(
			await page.locator('[data-placed]').evaluateAll((nodes) => nodes.map((node) => node.getAttribute('data-placed'))),
		).toEqual(['c', 'a', 'd', 'b']);
		await check(page);
		await page.getByText('Right.', { exact: true }).waitFor();
	});

	test('joins partners, frees them again, and gives a right entry to one left entry only', async () => {
		const page = await answer('try-match');
		const press = (side: string, id: string) => page.locator(`[data-side=${side}][data-id=${id}]`).press('Enter');
		const join = async (left: string, right: string): Promise<void> => {
			await press('left', left);
			await press('right', right);
		};
		await join('a', 'c');
		await join('b', 'c');
		expect(await page.locator('[data-side=left][data-id=a]').textContent()).toContain('no partner yet');
		await join('b', 'c');
		await join('a', 'c');
		await join('b', 'a');
		await join('c', 'd');
		expect(await page.locator('svg.joins line').count()).toBe(3);
		await check(page);
		await page.getByText('Right.', { exact: true }).waitFor();
	});

	test('writes the choice into the gap, and says what a wrong one is consistent with', async () => {
		const page = await answer('try-gap');
		await page.getByRole('radio').nth(1).check();
		expect(await page.locator('.gap').textContent()).toBe('>');
		await check(page);
		await expect.poll(() => readText(page.locator('zp-outcome'))).toContain('Consistent with');
	});

	test('takes one choice, or several', async () => {
		const one = await answer('try-choice');
		await one.getByText('−7').click();
		await check(one);
		await one.getByText('Right.', { exact: true }).waitFor();
		await context?.close();
		const several = await answer('try-several');
		await several.getByRole('checkbox').nth(0).check();
		await check(several);
		await expect.poll(() => readText(several.locator('zp-outcome'))).toContain('C: right, and not chosen.');
	});

	test('rates an explanation by its rubric', async () => {
		const page = await answer('try-words');
		await page.getByRole('textbox').fill('Taking away −8 is adding 8.');
		await check(page);
		await page.getByText('Not rated yet').waitFor();
		await page.getByRole('radio').first().check();
		await page.getByText('2 of 2 points').waitFor();
	});

	test('answers the parts of a set apart', async () => {
		const page = await answer('try-set');
		const part = page.getByRole('region', { name: 'Part 2' });
		await part.locator('[data-column="1"] input[value="5"]').click();
		await check(page);
		await part.getByText('2 of 2 points').waitFor();
		await page.getByRole('region', { name: 'Part 1' }).getByText('Nothing was answered.').waitFor();
		await page.getByRole('button', { name: 'Start over' }).click();
		expect(await page.locator('input:checked').count()).toBe(0);
	});

	test('has no accessibility violation in any kind, in either theme', async () => {
		for (const id of Object.keys(items)) {
			const page = await answer(id, { colorScheme: 'light' });
			await check(page);
			expect(await findBarriers(page), id).toEqual([]);
			await page.emulateMedia({ colorScheme: 'dark' });
			expect(await findBarriers(page, 'inks'), `${id}, dark`).toEqual([]);
			expect(complaints, id).toEqual([]);
			await context?.close();
		}
	}, 120_000);
});
