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
		expect(await findBarriers(page)).toEqual([]);
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
		expect(await findBarriers(page)).toEqual([]);

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

	test('a file of a platform is read: columns are mapped, names discarded, faults listed, and two files make a meeting pack', async () => {
		const { page, context, complaints } = await journey.open('#/sittings');
		await page.getByRole('link', { name: 'Read a file' }).click();
		const rows = Array.from({ length: 12 }, (_, index) => {
			const code = `7A-${String(index + 1).padStart(2, '0')}`;
			return `Ana Person ${index};ana${index}@example.org;${code};${'ABC'[index % 3]};=-${index + 7};${index === 4 ? 'Q' : 'B'}`;
		});
		const content = ['Learner;Mail;Sign-in;First;Place 15;Q3', ...rows].join('\r\n');
		const choose = page.getByLabel('File (CSV)');
		await choose.setInputFiles({ name: 'empty.csv', mimeType: 'text/csv', buffer: Buffer.from('') });
		await page.getByText('expected a file with rows').waitFor();
		await choose.setInputFiles({ name: 'results.csv', mimeType: 'text/csv', buffer: Buffer.from(content) });
		const column = (heading: string) => page.getByRole('combobox', { name: `What column “${heading}” is` });
		await column('Learner').waitFor();
		await page.getByRole('radio', { name: /^a student, with a column/ }).check();
		for (const [heading, choice] of [
			['Learner', 'discarded'],
			['Mail', 'discarded'],
			['Sign-in', 'student'],
			['First', 'item 1'],
			['Place 15', 'item 15'],
			['Q3', 'item 3'],
		] as const) {
			await column(heading).selectOption(choice);
		}
		const shown = page.getByRole('region', { name: 'The first rows, as they would be read' });
		await shown.getByText('found "Q"').waitFor();
		expect(await shown.textContent()).not.toContain('Ana');
		expect(await findBarriers(page)).toEqual([]);
		await page.getByRole('combobox', { name: 'Class' }).selectOption({ label: 'Class 7A' });
		await page.getByLabel('Day').fill('2026-11-20');
		const sittings = async () => (await (await fetch(`${journey.url}api/sittings`)).json()) as readonly SittingEntry[];
		const before = (await sittings()).length;
		await page.getByRole('button', { name: 'Try without keeping' }).click();
		await page.getByText('Tried: nothing was kept.').waitFor();
		expect((await sittings()).length).toBe(before);
		await page.getByText('1 row was not taken:').waitFor();
		const [saved] = await Promise.all([
			page.waitForEvent('download'),
			page.getByRole('button', { name: 'Save this list' }).click(),
		]);
		expect(saved.suggestedFilename()).toBe('rows-not-taken.csv');
		await page.getByRole('button', { name: 'Read into the bank' }).click();
		await page.getByText('Read into the bank.', { exact: true }).waitFor();
		await page.emulateMedia({ colorScheme: 'dark' });
		expect(await findBarriers(page)).toEqual([]);
		await page.emulateMedia({ colorScheme: 'light' });
		const all = await sittings();
		expect(all.length).toBe(before + 1);
		const first = all.find(({ sitting }) => sitting.date === '2026-11-20');
		expect([first?.students, first?.answers]).toEqual([11, 33]);

		// The same file again: nothing is taken twice unasked.
		await page.getByRole('button', { name: 'Read into the bank' }).click();
		await page
			.getByRole('alert')
			.or(page.getByText(/in the bank already/))
			.first()
			.waitFor();
		await page.getByRole('combobox', { name: 'Form' }).selectOption({ label: 'Unit check: integers, Form B' });
		const second = [
			'Student,Q1,Q2',
			...Array.from({ length: 10 }, (_, index) => `8A-${String(index + 1).padStart(2, '0')},A,B`),
		];
		await choose.setInputFiles({ name: 'b.csv', mimeType: 'text/csv', buffer: Buffer.from(second.join('\n')) });
		await column('Q2').waitFor();
		await page.getByRole('combobox', { name: 'Class' }).selectOption({ label: 'Class 8A' });
		await page.getByLabel('Day').fill('2026-11-20');
		await page.getByRole('button', { name: 'Read into the bank' }).click();
		await page.getByRole('link', { name: 'See the responses of Class 8A' }).waitFor();
		const two = (await sittings()).filter(({ sitting }) => sitting.date === '2026-11-20').map(({ id }) => id);
		await page.goto(`${journey.url}#/reports/pack?${two.map((id) => `sitting=${id}`).join('&')}`);
		await page.getByRole('heading', { name: 'For the meeting' }).waitFor();
		expect(two).toHaveLength(2);
		expect(complaints.filter((text) => !/Failed to load|4\d\d/.test(text))).toEqual([]);
		await context.close();
	});
});
