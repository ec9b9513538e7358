import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import type { FormDetails } from '../../item-bank/types.ts';
import { closeValidation } from '../../server/qti/validate/pool.ts';
import { browserPath } from '../helpers/browser.ts';
import { makeCommandLine } from '../helpers/command-line.ts';
import { findBarriers, focusedName, type Journey, startJourney } from '../helpers/journey.ts';
import { requireOutside } from '../helpers/reference.ts';

const hasBrowser = requireOutside('Chromium (Debian package chromium)', browserPath !== undefined);

describe.skipIf(!hasBrowser)('the form desk', () => {
	let journey: Journey;

	beforeAll(async () => {
		journey = await startJourney();
	});

	afterEach(() => journey.clear());

	afterAll(async () => {
		await journey.end();
		await closeValidation();
	});

	const rows = (page: Page) => page.locator('zp-form-outline li[data-item] .name');
	const rowNames = async (page: Page): Promise<readonly string[]> =>
		(await rows(page).allTextContents()).map((text) => text.replace(/^\s*\d+\.\s*/, '').trim());
	const readForm = async (id: string): Promise<FormDetails> =>
		(await fetch(`${journey.url}api/forms/${id}`)).json() as Promise<FormDetails>;
	const idOf = (page: Page): string => /#\/forms\/([a-z0-9-]+)/.exec(page.url())?.[1] ?? '';

	/** Copies a demo form under a new id, so that each test has its own. */
	async function copyForm(id: string): Promise<void> {
		const { record } = await readForm('srm-unit-check-a');
		const response = await fetch(`${journey.url}api/forms`, {
			method: 'POST',
			headers: { 'content-type': 'application/json' },
			body: JSON.stringify({ id, form: { ...record.form, title: `Copy ${id}` } }),
		});
		expect(response.status).toBe(201);
	}

	test('a newcomer builds a form of 12 items with 4 gridded ones and exports a package that validates', async () => {
		const { page, complaints } = await journey.open('#/forms');
		await page.getByRole('link', { name: 'New form' }).click();
		await page.getByLabel('Title of the form').fill('Week 3: below zero');
		await page.getByRole('button', { name: 'Add items to' }).click();
		const addNext = async (): Promise<void> => {
			await page
				.getByRole('button', { name: /^Add / })
				.and(page.locator('[aria-disabled=false]'))
				.and(page.locator('.add'))
				.first()
				.click();
		};
		await page.getByLabel('Kind').selectOption('gridded');
		await expect.poll(() => page.locator('zp-item-finder .hit').count()).toBeGreaterThan(3);
		for (let added = 1; added <= 4; added += 1) {
			await addNext();
			await expect.poll(() => rows(page).count()).toBe(added);
		}
		await page.getByLabel('Kind').selectOption('choice');
		await expect.poll(() => page.locator('zp-item-finder .kind').first().textContent()).toBe('choice');
		for (let added = 5; added <= 12; added += 1) {
			await addNext();
			await expect.poll(() => rows(page).count()).toBe(added);
		}
		await page.getByRole('button', { name: 'Done' }).click();
		expect(await focusedName(page)).toContain('Add items to');
		await page.getByRole('button', { name: 'Save', exact: true }).click();
		await page.getByText('saved as version 1', { exact: true }).waitFor();
		await page.getByRole('button', { name: 'Export', exact: true }).click();
		await page.getByLabel('QTI 2.2').check();
		await page.getByRole('button', { name: 'Write the package' }).click();
		const link = page.getByRole('link', { name: /Save .*\.zip/ });
		const [download] = await Promise.all([page.waitForEvent('download'), link.click()]);
		const { folder, run } = makeCommandLine();
		const file = join(folder, 'week-3.zip');
		await writeFile(file, await readFile(await download.path()));
		expect(await run(['validate', file])).toMatchObject({ status: 0, err: '' });
		const { record, items } = await readForm(idOf(page));
		expect(record.form.sections.flatMap((section) => section.items)).toHaveLength(12);
		expect(items.filter(({ item }) => item.kind === 'gridded')).toHaveLength(4);
		expect(complaints).toEqual([]);
	});

	test('items are moved, taken out and put back from the keyboard alone, and every move is said', async () => {
		await copyForm('journey-keys');
		const { page, complaints } = await journey.open('#/forms/journey-keys');
		await rows(page).first().focus();
		const before = await rowNames(page);
		await page.keyboard.press('Alt+ArrowDown');
		await expect.poll(() => rowNames(page)).toEqual([before[1], before[0], ...before.slice(2)]);
		expect(await focusedName(page)).toContain(before[0]);
		await page.getByRole('status').filter({ hasText: 'is item 2 of 20 now, in Meaning and order' }).waitFor();
		for (let step = 0; step < 3; step += 1) await page.keyboard.press('Alt+ArrowDown');
		await page.getByRole('status').filter({ hasText: 'is item 4 of 20 now, in Counters and number lines' }).waitFor();
		expect(await focusedName(page)).toContain(before[0]);
		await page.keyboard.press('ArrowUp');
		await page.keyboard.press('Delete');
		await expect.poll(() => rows(page).count()).toBe(19);
		expect(await focusedName(page)).toContain(before[0]);
		await page.locator('zp-frame .told').getByRole('button', { name: 'Undo' }).press('Enter');
		await expect.poll(() => rows(page).count()).toBe(20);
		await rows(page).first().focus();
		for (let step = 0; step < 6; step += 1) await page.keyboard.press('Control+z');
		await expect.poll(() => rowNames(page)).toEqual(before);
		await rows(page).first().press('Alt+ArrowDown');
		await page.keyboard.press('Control+s');
		await page.getByText('saved as version 2', { exact: true }).waitFor();
		const { record } = await readForm('journey-keys');
		expect(record.form.sections[0]?.items[1]?.item).toBe('srm-ord-005');
		expect(complaints).toEqual([]);
	});

	test('a row is dragged to another section', async () => {
		await copyForm('journey-drag');
		const { page } = await journey.open('#/forms/journey-drag');
		await rows(page).first().waitFor();
		const before = await rowNames(page);
		const boxOf = async (at: number) =>
			(await page.locator('zp-form-outline .grip').nth(at).boundingBox()) ?? { x: 0, y: 0 };
		const [from, to] = [await boxOf(1), await boxOf(5)];
		await page.mouse.move(from.x + 20, from.y + 14);
		await page.mouse.down();
		await page.mouse.move(to.x + 20, to.y - 30, { steps: 4 });
		await page.mouse.move(to.x + 20, to.y + 4, { steps: 4 });
		await page.mouse.up();
		await expect.poll(() => rowNames(page).then((names) => names.indexOf(before[1] ?? ''))).toBe(4);
		await page.getByText('unsaved work since version 1').waitFor();
	});

	test('unsaved work is there again after a reload, and the bank is untouched', async () => {
		await copyForm('journey-reload');
		const { page } = await journey.open('#/forms/journey-reload');
		await rows(page).first().focus();
		await page.keyboard.press('Delete');
		const left = await rowNames(page);
		expect(left).toHaveLength(19);
		await page.reload();
		await expect.poll(() => rowNames(page)).toEqual(left);
		expect((await readForm('journey-reload')).record.version).toBe(1);
		await page.getByRole('link', { name: 'All forms' }).click();
		await page.getByText('unsaved work', { exact: true }).waitFor();
	});

	test('two people edit one form: the second sees both states and loses nothing', async () => {
		await copyForm('journey-two');
		const [one, two] = [await journey.open('#/forms/journey-two'), await journey.open('#/forms/journey-two')];
		for (const { page } of [one, two]) await rows(page).first().waitFor();
		const names = await rowNames(one.page);
		await rows(one.page).nth(0).press('Delete');
		await one.page.getByRole('button', { name: 'Save', exact: true }).click();
		await one.page.getByText('saved as version 2', { exact: true }).waitFor();
		await rows(two.page).nth(1).press('Delete');
		await two.page.getByRole('button', { name: 'Save', exact: true }).click();
		await two.page.getByRole('heading', { name: 'Somebody saved version 2 while you worked on version 1' }).waitFor();
		const conflict = two.page.locator('zp-form-conflict');
		await conflict.getByText(names[0] ?? '').waitFor();
		await conflict.getByText(names[1] ?? '').waitFor();
		expect(await rows(two.page).count()).toBe(19);
		await two.page.getByRole('button', { name: 'Go on with theirs and add my 1 item' }).click();
		await expect.poll(() => rows(two.page).count()).toBe(20);
		await two.page.getByRole('button', { name: 'Save', exact: true }).click();
		await two.page.getByText('saved as version 3', { exact: true }).waitFor();
		expect((await readForm('journey-two')).items).toHaveLength(20);
	});

	test('the bank stops during a save: the work stays, and is saved when the bank is back', async () => {
		await copyForm('journey-stop');
		const { page } = await journey.open('#/forms/journey-stop');
		await rows(page).nth(2).press('Delete');
		const left = await rowNames(page);
		await journey.stop();
		await page.getByRole('button', { name: 'Save', exact: true }).click();
		await page.getByText('Your work is kept in this browser').waitFor();
		expect(await rowNames(page)).toEqual(left);
		await journey.restart();
		await page.getByText('saved as version 2', { exact: true }).waitFor();
		const { record, items } = await readForm('journey-stop');
		expect([record.version, items.length]).toEqual([2, 19]);
	});

	test('a save whose answer was lost on the way is not made twice', async () => {
		await copyForm('journey-lost');
		const { page } = await journey.open('#/forms/journey-lost');
		await rows(page).nth(2).press('Delete');
		let isLost = false;
		await page.route('**/api/forms/journey-lost', async (route) => {
			if (isLost || route.request().method() !== 'PUT') return route.continue();
			isLost = true;
			await route.fetch();
			return route.abort();
		});
		await page.getByRole('button', { name: 'Save', exact: true }).click();
		await page.getByText('saved as version 2', { exact: true }).waitFor();
		expect(await page.locator('zp-form-conflict').count()).toBe(0);
		expect((await readForm('journey-lost')).record.version).toBe(2);
	});

	test('a blueprint says beside the form what is missing, and no key shows unless asked', async () => {
		const { page } = await journey.open('#/forms/srm-unit-check-a');
		await page.getByLabel('Hold it against').selectOption({ label: 'Unit check: integers' });
		await page.getByText(/requirements fall short/).waitFor();
		const facts = page.locator('zp-form-facts');
		expect(await facts.locator('zp-line').count()).toBeGreaterThan(10);
		expect(await facts.getByText(/8 too many/).count()).toBeGreaterThan(0);
		await page.getByLabel('Show the items in full').check();
		expect(await page.getByRole('article').count()).toBe(20);
		expect(await page.getByText(/^Key /).count()).toBe(0);
		await page.getByLabel('Show keys and worked steps').check();
		expect(await page.getByText(/^Key /).count()).toBe(20);
	});

	test('forms are built from a blueprint, kept, and compared', async () => {
		const { page, complaints } = await journey.open('#/forms?view=build&blueprint=srm-unit-check-plan');
		await page.getByRole('button', { name: 'Build', exact: true }).click();
		await page.getByRole('heading', { name: '2 forms meet the plan.' }).waitFor();
		await page.getByText(/^Proved/).waitFor();
		await page.getByRole('button', { name: 'Keep all 2 forms' }).click();
		await page.getByRole('link', { name: 'Unit check: integers, Form B' }).click();
		await expect.poll(() => rows(page).count()).toBe(12);
		await page.getByRole('link', { name: 'Compare' }).click();
		await page.getByLabel('Second form').selectOption({ label: 'Unit check: integers, Form A' });
		await page.getByRole('cell', { name: 'points', exact: true }).waitFor();
		expect(complaints).toEqual([]);
	});

	test('a blueprint that cannot be met is answered in its own words, with the nearest form', async () => {
		const plan = (await (await fetch(`${journey.url}api/blueprints/srm-unit-check-plan`)).json()) as {
			blueprint: object;
		};
		const blueprint = { ...plan.blueprint, title: 'Too much', kinds: [{ kind: 'explanation', items: { min: 9 } }] };
		const made = await fetch(`${journey.url}api/blueprints`, {
			method: 'POST',
			headers: { 'content-type': 'application/json' },
			body: JSON.stringify({ id: 'journey-too-much', blueprint }),
		});
		expect(made.status).toBe(201);
		const { page } = await journey.open('#/forms?view=build&blueprint=journey-too-much');
		await page.getByRole('button', { name: 'Build', exact: true }).click();
		await page.getByRole('heading', { name: 'No form can be built' }).waitFor();
		await page.getByText('needs at least 9 items of kind explanation').first().waitFor();
		await page.getByRole('button', { name: 'Lay the nearest form on the desk' }).click();
		await page.getByText('not in the bank yet').waitFor();
		await page.locator('zp-form-facts').getByText('items of kind explanation').waitFor();
	});

	test('an item is swapped for a like one, and the swap can be taken back', async () => {
		await copyForm('journey-swap');
		const { page } = await journey.open('#/forms/journey-swap');
		const before = await rowNames(page).then(async () => {
			await rows(page).nth(9).click();
			return rowNames(page);
		});
		await page.getByRole('button', { name: 'Swap for a like item' }).click();
		await page
			.getByRole('button', { name: /^Take this one/ })
			.first()
			.click();
		await expect.poll(() => rowNames(page).then((names) => names[9])).not.toBe(before[9]);
		expect(await rows(page).count()).toBe(20);
		await page.locator('zp-frame .told').getByRole('button', { name: 'Undo' }).click();
		await expect.poll(() => rowNames(page)).toEqual(before);
	});

	test('a form is given to a class, and a slip is taken back before it is recorded', async () => {
		await copyForm('journey-give');
		const { page } = await journey.open('#/forms/journey-give');
		await page.clock.install();
		await page.reload();
		await page.getByRole('button', { name: 'Give to a class' }).click();
		await page.getByRole('button', { name: 'Record it' }).click();
		await page.getByText('Choose a class.').waitFor();
		await page.getByRole('combobox', { name: /^Class/ }).selectOption({ index: 1 });
		await page.getByRole('button', { name: 'Record it' }).click();
		await page.getByText(/Will be recorded/).waitFor();
		await page.locator('zp-frame .told').getByRole('button', { name: 'Undo' }).click();
		await page.getByText('Taken back.').waitFor();
		await page.getByRole('button', { name: 'Give to a class' }).click();
		await page.getByRole('combobox', { name: /^Class/ }).selectOption({ index: 1 });
		await page.getByRole('button', { name: 'Record it' }).click();
		await page.getByText(/Will be recorded/).waitFor();
		await page.clock.runFor(10_000);
		await page
			.getByText(/^Given to /)
			.first()
			.waitFor();
		expect((await readForm('journey-give')).givings).toHaveLength(1);
	});

	test('an item is added by address once, however often the page is read again', async () => {
		await copyForm('journey-add');
		const { page } = await journey.open('#/forms/journey-add?add=srm-add-001');
		await expect.poll(() => rows(page).count()).toBe(21);
		expect(page.url()).not.toContain('add=');
		await page.reload();
		await expect.poll(() => rows(page).count()).toBe(21);
	});

	test('a retake gets new numbers, and leaves the first form as it was', async () => {
		await copyForm('journey-retake');
		const { page } = await journey.open('#/forms/journey-retake');
		await rows(page).first().waitFor();
		await page.getByRole('button', { name: 'Make another form' }).click();
		await page.getByRole('button', { name: 'Make it: A retake with new numbers' }).click();
		await expect.poll(() => page.getByLabel('Title of the form').inputValue()).toContain('retake');
		await expect.poll(() => rows(page).count()).toBe(20);
		await page.getByRole('button', { name: 'Save', exact: true }).click();
		await page.getByText('saved as version 1', { exact: true }).waitFor();
		const [first, second] = [await readForm('journey-retake'), await readForm(idOf(page))];
		const kept = new Set(first.items.map(({ id }) => id));
		const fresh = second.items.filter(({ id }) => !kept.has(id));
		expect(fresh.length).toBeGreaterThan(5);
		expect(fresh.every(({ status }) => status === 'draft')).toBe(true);
	});

	const views = [
		'#/forms',
		'#/forms/new',
		'#/forms/srm-unit-check-a',
		'#/forms?view=build',
		'#/forms?view=compare&first=srm-unit-check-a&second=srm-unit-check-b',
	];
	test.each(views)('%s has no accessibility violation in either theme', async (view) => {
		const { page, context } = await journey.open(view);
		await page.locator('zp-forms-page').waitFor();
		await page.waitForLoadState('networkidle');
		if (view.endsWith('-a')) {
			await page.getByLabel('Hold it against').selectOption({ index: 1 });
			await rows(page).first().click();
			await page.getByLabel('Show keys and worked steps').check();
			await page.getByRole('button', { name: 'Add items to' }).first().click();
			await page.locator('zp-item-finder .hit').first().waitFor();
		}
		expect(await findBarriers(page)).toEqual([]);
		await page.emulateMedia({ colorScheme: 'dark' });
		expect(await findBarriers(page, 'inks')).toEqual([]);
		await context.close();
	});

	test('the form is answered as a student does: answers stay from item to item, and nothing tells what is right unless asked', async () => {
		const { page } = await journey.open('#/forms/srm-unit-check-a');
		await page.getByRole('button', { name: 'See it as a student' }).click();
		const sheet = page.locator('zp-student-preview');
		await sheet.getByRole('radio').nth(1).check();
		expect(await sheet.getByRole('button', { name: 'Check the answer' }).count()).toBe(0);
		await sheet.getByRole('button', { name: 'Next' }).click();
		await sheet.getByText('Item 2 of 20').waitFor();
		await sheet.getByRole('button', { name: 'Back' }).click();
		expect(await sheet.getByRole('radio').nth(1).isChecked()).toBe(true);
		await sheet.getByRole('checkbox', { name: /^Let answers be checked/ }).check();
		await sheet.getByRole('button', { name: 'Check the answer' }).click();
		await sheet.getByRole('group', { name: 'What came of it' }).waitFor();
		expect(await findBarriers(page)).toEqual([]);
		await sheet.getByRole('checkbox', { name: /^Let answers be checked/ }).uncheck();
		expect(await sheet.getByRole('group', { name: 'What came of it' }).count()).toBe(0);
	});

	test.each(['See it as a student', 'Print', 'Export', 'Give to a class', 'Make another form'])(
		'the sheet “%s” has no accessibility violation, and closing it gives the focus back',
		async (name) => {
			const { page, context } = await journey.open('#/forms/srm-unit-check-a');
			await page.getByRole('button', { name, exact: true }).click();
			await page.locator('zp-dialog dialog[open]').waitFor();
			await page.waitForLoadState('networkidle');
			expect(await findBarriers(page)).toEqual([]);
			await page.keyboard.press('Escape');
			await expect.poll(() => focusedName(page)).toBe(name);
			await context.close();
		},
	);
});
