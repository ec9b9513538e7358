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

	test('lists every sitting with its counts and leads to its evidence and its report', async () => {
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
		const [download] = await Promise.all([
			page.waitForEvent('download'),
			rows
				.first()
				.getByRole('link', { name: /^Class report/ })
				.click(),
		]);
		expect(download.suggestedFilename()).toBe('class-shared.pdf');
		await rows
			.first()
			.getByRole('link', { name: /^On the board/ })
			.click();
		await page.getByRole('radio', { name: 'Evidence' }).and(page.locator(':checked')).waitFor();
		expect(await page.getByLabel('Sittings').inputValue()).toBe(first?.id);
		expect(complaints).toEqual([]);
		await context.close();
	});
});
