import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { SittingAnswers } from '../../item-bank/types.ts';
import { browserPath } from '../helpers/browser.ts';
import { findBarriers, type Journey, startJourney } from '../helpers/journey.ts';
import { requireOutside } from '../helpers/reference.ts';

const hasBrowser = requireOutside('Chromium (Debian package chromium)', browserPath !== undefined);

describe.skipIf(!hasBrowser)('responses on their way in', () => {
	let journey: Journey;

	beforeAll(async () => {
		journey = await startJourney();
	});

	afterAll(async () => {
		await journey.end();
	});

	test('a file of a spreadsheet with names is mapped, tried, read, told row by row and taken back', async () => {
		const { page, context, complaints } = await journey.open('#/sittings');
		const answers = (await (await fetch(`${journey.url}api/sittings/srm-sitting-7a/answers`)).json()) as SittingAnswers;
		const rows = answers.students
			.slice(0, 12)
			.map(({ code, answers: given }) => ['Low; Ana', code, ...given.map(({ raw }) => raw)]);
		const [, , third, fourth] = rows;
		if (third) third[1] = '9Z-99';
		if (fourth) fourth[2] = '#REF!';
		const lines = [['Surname', 'Student', ...answers.places.map(({ label }) => `Q${label}`)], ...rows];
		const text = lines.map((cells) => cells.map((cell) => `"${cell}"`).join(';')).join('\r\n');
		await page.getByRole('link', { name: 'Read a file of responses' }).click();
		await page.getByRole('combobox', { name: 'Form' }).selectOption('srm-unit-check-a');
		const chooseFile = (name: string, content: string) =>
			page.getByLabel('File of responses').setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(content) });
		await chooseFile('sheet.csv', text);
		await page.getByText('cells parted by semicolons, 22 columns').waitFor();
		expect(await page.getByLabel('Column 1, Surname: used as').inputValue()).toBe('discarded');
		expect(await page.getByText('Low').count()).toBe(0);
		expect(await findBarriers(page)).toEqual([]);
		await page.getByRole('button', { name: /^Try/ }).click();
		await page.getByText('expected a class, found none chosen').waitFor();
		await page.getByRole('combobox', { name: 'Class' }).selectOption('srm-class-7a');
		await page.getByLabel('Day').fill('2026-11-20');
		await page.getByRole('button', { name: /^Try/ }).click();
		await page.getByText('10 students and 200 responses from 12 rows').waitFor();
		await page.getByText('expected a student code of Class 7A, found "9Z-99"').waitFor();
		const [download] = await Promise.all([
			page.waitForEvent('download'),
			page.getByRole('button', { name: 'Rejected rows as CSV' }).click(),
		]);
		expect(download.suggestedFilename()).toBe('rejected-rows.csv');
		const count = async () => ((await (await fetch(`${journey.url}api/sittings`)).json()) as unknown[]).length;
		const before = await count();
		await page.getByRole('button', { name: 'Read', exact: true }).click();
		await page.getByRole('heading', { name: 'What was read' }).waitFor();
		expect(await count()).toBe(before + 1);
		await page.emulateMedia({ colorScheme: 'dark' });
		expect(await findBarriers(page)).toEqual([]);
		await page.getByRole('button', { name: 'Undo' }).click();
		await page.getByText('Taken back.').waitFor();
		expect(await count()).toBe(before);
		expect(complaints).toEqual([]);

		await chooseFile('platform.csv', 'Who,Place,Answer\n"Low, Ana",1,B\nReed,1,A\n');
		await page.getByText('No column holds student codes').waitFor();
		await page.getByRole('radio', { name: 'a row a response' }).check();
		for (const [column, use] of ['student', 'place', 'answer'].entries()) {
			await page.getByRole('combobox', { name: new RegExp(`^Column ${column + 1},`) }).selectOption(use);
		}
		await page.getByRole('textbox', { name: 'Names to codes' }).fill('Low, Ana,7A-01\nReed;7A-02');
		await page.getByRole('button', { name: /^Try/ }).click();
		await page.getByText('2 students and 2 responses from 2 rows').waitFor();
		await context.close();
	});
});
