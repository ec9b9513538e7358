import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { SittingEntry } from '../../item-bank/types.ts';
import { browserPath } from '../helpers/browser.ts';
import { findBarriers, type Journey, startJourney } from '../helpers/journey.ts';
import { requireOutside } from '../helpers/reference.ts';

const hasBrowser = requireOutside('Chromium (Debian package chromium)', browserPath !== undefined);

describe.skipIf(!hasBrowser)('the page of sittings', () => {
	let journey: Journey;

	beforeAll(async () => {
		journey = await startJourney();
	});

	afterAll(async () => {
		await journey.end();
	});

	test('lists every sitting with its counts and leads to its evidence', async () => {
		const sittings = (await (await fetch(`${journey.url}api/sittings`)).json()) as readonly SittingEntry[];
		const { page, context, complaints } = await journey.open('#/sittings');
		const rows = page.getByRole('row').filter({ has: page.getByRole('rowheader') });
		await rows.first().waitFor();
		expect(await rows.count()).toBe(sittings.length);
		const first = sittings[0];
		const cells = await rows.first().getByRole('cell').allTextContents();
		expect(cells.slice(2, 4)).toEqual([String(first?.students), String(first?.answers)]);
		expect(await findBarriers(page)).toEqual([]);
		await page.emulateMedia({ colorScheme: 'dark' });
		expect(await findBarriers(page, 'inks')).toEqual([]);
		await rows
			.first()
			.getByRole('link', { name: /^On the board/ })
			.click();
		await page.getByRole('radio', { name: 'Evidence' }).and(page.locator(':checked')).waitFor();
		expect(await page.getByLabel('Sittings').inputValue()).toBe(first?.id);
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('a report is chosen, ordered, narrowed to a class and taken along, with its plots told in words', async () => {
		const { page, context, complaints } = await journey.open('#/sittings');
		await page.getByRole('link', { name: 'Meeting pack' }).click();
		await page.getByRole('heading', { name: 'For the meeting' }).waitFor();
		expect(await page.getByRole('img', { name: /students/ }).count()).toBeGreaterThan(2);
		expect(await findBarriers(page)).toEqual([]);
		await page.emulateMedia({ colorScheme: 'dark' });
		expect(await findBarriers(page, 'inks')).toEqual([]);

		await page.getByRole('link', { name: 'Classes' }).click();
		const table = page.getByRole('table').first();
		await table.waitFor();
		expect(await page.getByText('7A-01').count()).toBe(0);
		await page.getByText(/^Sittings: All/).click();
		await page
			.getByRole('checkbox', { name: /Class 7A/ })
			.first()
			.check();
		await page.waitForURL(/reports\/class\?sitting=/);
		await page.getByRole('radio', { name: /^the class teacher/ }).check();
		await page.getByRole('heading', { name: 'Student by student' }).waitFor();
		expect(await page.getByText('7A-01').count()).toBeGreaterThan(0);
		const shares = async (): Promise<readonly number[]> =>
			(await table.locator('tbody tr td:nth-child(3)').allTextContents()).map((text) => Number.parseInt(text, 10));
		await table.getByRole('button', { name: 'Share of points' }).click();
		const falling = [...(await shares())].sort((one, other) => other - one);
		expect(await shares()).toEqual(falling);
		expect(falling.length).toBeGreaterThan(10);
		expect(await findBarriers(page)).toEqual([]);
		const [download] = await Promise.all([
			page.waitForEvent('download'),
			page.getByRole('link', { name: 'PDF' }).click(),
		]);
		expect(download.suggestedFilename()).toBe('class-own.pdf');

		await page.getByRole('link', { name: 'Regrouping' }).click();
		const next = page.getByRole('listitem').getByRole('link', { name: /\S/ }).and(page.locator('[href^="#/items/"]'));
		await next.first().waitFor();
		await next.first().click();
		await page.waitForURL(/#\/items\//);
		await page.goBack();
		await page.getByRole('link', { name: 'One item' }).click();
		await page.getByRole('combobox', { name: /^Item/ }).selectOption({ index: 1 });
		await page.getByRole('heading', { level: 3 }).first().waitFor();
		await page.getByRole('link', { name: 'Forms', exact: true }).last().click();
		await page.getByLabel('Points at which something is decided').fill('fifteen');
		await page.keyboard.press('Tab');
		await page.getByText('expected numbers above 0').waitFor();
		await page.getByLabel('Points at which something is decided').fill('15');
		await page.keyboard.press('Tab');
		await page
			.getByRole('heading', { name: /^Decisions at a cut/ })
			.first()
			.waitFor();
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('a class is typed in: keys move on, faults stay with their reason, a block is pasted, nothing is lost while the bank is away', async () => {
		const { page, context, complaints } = await journey.open('#/sittings');
		await page.getByRole('combobox', { name: 'Form' }).selectOption({ label: 'Unit check: integers, Form A' });
		await page.getByRole('combobox', { name: 'Class' }).selectOption({ index: 0 });
		await page.getByRole('button', { name: 'Start' }).click();
		const cells = page.getByRole('row').nth(1).getByRole('textbox');
		await cells.first().click();
		const code = (await page.getByRole('rowheader').first().textContent()) ?? '';
		const place = (label: number) => page.getByRole('textbox', { name: `${code}, place ${label}`, exact: true });
		await page.keyboard.type('a');
		expect(await place(2).evaluate((field) => field.matches(':focus'))).toBe(true);
		await page.keyboard.type('a c');
		await page.keyboard.press('ArrowRight');
		await page.keyboard.type('q');
		await page.keyboard.press('Enter');
		await page.getByRole('alert').getByText('place 3').waitFor();
		expect(await place(3).getAttribute('aria-invalid')).toBe('true');
		expect(await findBarriers(page)).toEqual([]);
		await place(3).fill('b');
		await page.keyboard.press('Enter');
		await page.getByText('Everything typed is in the bank.').waitFor();
		expect(await page.getByRole('alert').count()).toBe(0);

		await place(14).focus();
		await page.evaluate(() => {
			const data = new DataTransfer();
			data.setData('text/plain', '9\t-7\n8\t//');
			const field = [...document.querySelectorAll('*')].reduce<Element | null>(function find(
				found,
				each,
			): Element | null {
				const inner = each.shadowRoot?.activeElement;
				return inner ? (inner.shadowRoot ? find(found, inner) : inner) : found;
			}, null);
			field?.dispatchEvent(
				new ClipboardEvent('paste', { clipboardData: data, bubbles: true, composed: true, cancelable: true }),
			);
		});
		await page.getByText('Everything typed is in the bank.').waitFor();
		expect(await place(15).inputValue()).toBe('-7');

		await page.route('**/students/*', (route) => route.abort());
		await place(16).fill('65');
		await page.keyboard.press('Enter');
		await page.getByText(/kept in this browser/).waitFor();
		await page.unroute('**/students/*');
		await page.reload();
		await page.getByText('Everything typed is in the bank.').waitFor();
		expect(await place(16).inputValue()).toBe('65');
		await page.reload();
		await place(16).waitFor();
		expect(await place(1).inputValue()).toBe('A');
		expect(await place(16).inputValue()).toBe('65');
		await page.emulateMedia({ colorScheme: 'dark' });
		expect(await findBarriers(page)).toEqual([]);
		expect(complaints.filter((text) => !/Failed to load|422|ERR_FAILED/.test(text))).toEqual([]);
		await context.close();
	});

	test('a sitting is scored anew by another version of its form, with a reason, and what changed is said', async () => {
		const { page, context, complaints } = await journey.open('#/sittings/srm-sitting-6b');
		await page.getByText('Score anew by a corrected key').click();
		await page.getByRole('button', { name: 'Score anew' }).click();
		await page.getByText('expected a reason').waitFor();
		await page.getByLabel('Why').fill('The key was looked at again.');
		await page.getByRole('button', { name: 'Score anew' }).click();
		await page.getByText('No score changed.').waitFor();
		await page.getByText(/^Scored 2 times/).waitFor();
		expect(await findBarriers(page)).toEqual([]);
		expect(complaints).toEqual([]);
		await context.close();
	});
});
