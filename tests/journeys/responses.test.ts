import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { SittingAnswers, StudentRecord } from '../../item-bank/types.ts';
import { browserPath } from '../helpers/browser.ts';
import { keepItem } from '../helpers/desk.ts';
import { makeExplanation } from '../helpers/items.ts';
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
		await page.getByRole('combobox', { name: 'Class' }).selectOption('srm-class-6b');
		await chooseFile('next.csv', 'Student,Q1,Q2,Q99\n6B-01,a,ac,b\n6B-02,b,c,a\n');
		await page.getByText('the form has none of that name: Q99').waitFor();
		await page.getByRole('button', { name: 'Read', exact: true }).click();
		const pack = await page
			.getByRole('link', { name: 'Meeting pack on the 2 sittings read here' })
			.getAttribute('href');
		expect(pack?.match(/sitting=/g)).toHaveLength(2);
		await page.emulateMedia({ colorScheme: 'dark' });
		expect(await findBarriers(page)).toEqual([]);
		await page.getByRole('button', { name: 'Undo' }).click();
		await page.getByText('Taken back.').waitFor();
		expect(await count()).toBe(before + 1);
		expect(complaints).toEqual([]);

		await chooseFile('platform.csv', 'Who,Place,Answer\n"Low, Ana",1,B\nReed,1,A\n');
		await page.getByText('No column holds student codes').waitFor();
		await page.getByRole('radio', { name: 'a row a response' }).check();
		for (const [column, use] of ['student', 'place', 'answer'].entries()) {
			await page.getByRole('combobox', { name: new RegExp(`^Column ${column + 1},`) }).selectOption(use);
		}
		await page.getByRole('textbox', { name: 'Names to codes' }).fill('Low, Ana,6B-01\nReed;6B-02');
		await page.getByRole('button', { name: /^Try/ }).click();
		await page.getByText('2 students and 2 responses from 2 rows').waitFor();
		await context.close();
	});

	test('explanations are scored by keyboard by two readers, the second blind, who then agree', async () => {
		const send = async (method: string, path: string, body: object) => {
			const headers = { 'content-type': 'application/json' };
			const answer = await fetch(`${journey.url}api/${path}`, { method, headers, body: JSON.stringify(body) });
			if (!answer.ok) throw new Error(await answer.text());
		};
		await keepItem(journey.url, 'why-greater', makeExplanation());
		await send('POST', 'items/why-greater/approve', { version: 1 });
		const items = [{ item: 'why-greater', version: 1 }];
		const form = { title: 'Exit slip in words', gridProfile: 'floating-sign', sections: [{ title: 'Words', items }] };
		await send('POST', 'forms', { id: 'in-words', form });
		const sitting = { form: 'in-words', version: 1, group: 'srm-class-6a', date: '2026-11-22', mode: 'hand' };
		await send('POST', 'sittings', { id: 'words-6a', sitting });
		for (const [index, text] of ['Adding 8 goes up.', '11', 'It is less.', 'Minus a minus adds.'].entries()) {
			const answers = [{ position: 1, text }];
			await send('PUT', `sittings/words-6a/students/6A-0${index + 1}`, { answers });
		}
		const { page, context, complaints } = await journey.open('#/sittings');
		await page.getByRole('link', { name: '4 wait for a scorer' }).click();
		const score = async (points: string) => {
			for (const [index, key] of [...points].entries()) {
				await page.getByText(`Response ${index + 1} of 4`).waitFor();
				await page.keyboard.press(key);
			}
			await page.getByText('All 4 have points.').waitFor();
		};
		await score('2102');
		await page.getByRole('radio', { name: 'second reader' }).check();
		await page.getByText('4 without points.').waitFor();
		expect(await page.getByText(/^Given|Kappa/).count()).toBe(0);
		expect(await findBarriers(page)).toEqual([]);
		await page.getByRole('heading', { name: /^Score explanations/ }).click();
		await page.keyboard.press('ArrowRight');
		await page.getByText('Response 2 of 4').waitFor();
		await page.keyboard.press('ArrowLeft');
		await page.getByRole('button', { name: /Finds 11/ }).click();
		await page.getByText('3 without points.').waitFor();
		await page.keyboard.press('1');
		await page.getByText('Response 3 of 4').waitFor();
		await page.keyboard.press('0');
		await page.getByText('Response 4 of 4').waitFor();
		await page.keyboard.press('2');
		await page.getByText('The same points for 75 % of 4 responses read by both.').waitFor();
		// By hand: observed 3/4, expected 5/16 from rows 1, 1, 2 and columns 1, 2, 1 of 4; (3/4 − 5/16) / (1 − 5/16) = 7/11.
		await page.getByText(/^Kappa 0.64: of the agreement/).waitFor();
		await page.getByRole('radio', { name: 'both, where they differ' }).check();
		await page.getByText('First reader 2, second reader 1.').waitFor();
		await page.emulateMedia({ colorScheme: 'dark' });
		expect(await findBarriers(page)).toEqual([]);
		await page.getByRole('button', { name: /^2 Says/ }).click();
		await page.getByText('Given: 2.').waitFor();
		expect(complaints).toEqual([]);
		await context.close();
	});

	test('a student code is looked up, exported and deleted for good once it is typed', async () => {
		const { page, context } = await journey.open('#/sittings');
		await page.getByRole('link', { name: 'One student code' }).click();
		await page.getByRole('textbox', { name: 'Student code' }).fill('7a 20');
		await page.getByRole('button', { name: 'Show' }).click();
		await page.getByText('found "7a 20"').waitFor();
		await page.getByRole('textbox', { name: 'Student code' }).fill('7a-20');
		await page.keyboard.press('Enter');
		await page.getByText('In Class 7A.').waitFor();
		expect(await findBarriers(page)).toEqual([]);
		const [download] = await Promise.all([
			page.waitForEvent('download'),
			page.getByRole('button', { name: 'Everything as JSON' }).click(),
		]);
		const record = JSON.parse(await readFile(await download.path(), 'utf8')) as StudentRecord;
		expect([record.code, record.sittings[0]?.answers.length]).toEqual(['7A-20', 20]);
		await page.locator('summary', { hasText: 'Delete for good' }).click();
		await page.getByLabel('Type 7A-20 to confirm').fill('7A-19');
		await page.getByRole('button', { name: 'Delete 7A-20 for good' }).click();
		await page.getByText('expected "7A-20", found "7A-19"').waitFor();
		await page.emulateMedia({ colorScheme: 'dark' });
		expect(await findBarriers(page)).toEqual([]);
		expect((await fetch(`${journey.url}api/students/7A-20`)).status).toBe(200);
		await page.getByLabel('Type 7A-20 to confirm').fill('7A-20');
		await page.keyboard.press('Enter');
		await page.getByText('Deleted: 20 responses.').waitFor();
		expect(await page.getByRole('button', { name: 'Everything as JSON' }).count()).toBe(0);
		expect(await findBarriers(page)).toEqual([]);
		expect((await fetch(`${journey.url}api/students/7A-20`)).status).toBe(404);
		await context.close();
	});
});
