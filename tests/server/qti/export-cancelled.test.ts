import { afterAll, expect, test } from 'vitest';
import { ExportCancelledError } from '../../../server/qti/export-errors.ts';
import { exportForm } from '../../../server/qti/export-form.ts';
import { closeValidation } from '../../../server/qti/validate/pool.ts';
import { qtiVersions } from '../../../server/qti/versions.ts';
import { randomForm, randomItems } from './random-items.ts';
import { sampleForm, sampleItems } from './sample-form.ts';

afterAll(closeValidation);

const sample = { form: sampleForm, items: sampleItems };
const plain = { as: 'qti-2.2', images: 'png' } as const;

test.each(qtiVersions)(
	'an export as %s given up midway stops, hands over nothing, and the next one works',
	async (as) => {
		const items = randomItems(1500, 11);
		const form = randomForm(items, 11);
		const stop = new AbortController();
		const seen: number[] = [];
		const onProgress = (stage: string, done: number): void => {
			if (stage === 'items') seen.push(done);
			if (done >= 200) stop.abort();
		};
		const order = { as, images: 'svg', grid: 'columns', hasFeedback: as === 'qti-3.0' } as const;
		const given = exportForm({ form, items }, { ...order, onProgress, signal: stop.signal });
		await expect(given).rejects.toBeInstanceOf(ExportCancelledError);
		expect(Math.max(...seen)).toBeLessThan(1500);
		expect((await exportForm(sample, plain)).report.items).toBe(3);
	},
);

test('a signal that is already down stops the export before it begins', async () => {
	await expect(exportForm(sample, { ...plain, signal: AbortSignal.abort() })).rejects.toMatchObject({
		code: 'export-cancelled',
	});
});
