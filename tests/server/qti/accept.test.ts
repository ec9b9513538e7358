import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, describe, expect, test } from 'vitest';
import { exportForm } from '../../../server/qti/export-form.ts';
import { closeValidation } from '../../../server/qti/validate/pool.ts';
import { validateDocument } from '../../../server/qti/validate/validate-document.ts';
import { qtiVersions } from '../../../server/qti/versions.ts';
import { schemaOf } from './fixtures.ts';
import { sampleForm, sampleItems } from './sample-form.ts';
import { sampleKinds, sampleKindsForm } from './sample-kinds.ts';
import { unpack } from './unpacked.ts';

afterAll(closeValidation);

const samples = [
	{ name: 'the sample form', place: '', form: sampleForm, items: sampleItems, order: {} },
	{ name: 'the form of further kinds', place: 'kinds-', form: sampleKindsForm, items: sampleKinds, order: {} },
	{
		name: 'the sample form column by column with feedback',
		place: 'answered-',
		form: sampleForm,
		items: sampleItems,
		order: { grid: 'columns', hasFeedback: true },
	},
] as const;

describe.each(qtiVersions)('%s', (version) => {
	describe.each(samples)('$name', ({ place, form, items, order }) => {
		const folder = new URL(`../../fixtures/qti/accept/${place}${version}/`, import.meta.url);

		test('is written exactly as the reviewed files say', async () => {
			const { bytes } = await exportForm({ form, items }, { as: version, images: 'svg', ...order });
			const files = [...unpack(bytes)].filter(([path]) => path.endsWith('.xml'));
			if (process.env.REVIEW_FIXTURES) {
				const { mkdirSync, writeFileSync } = await import('node:fs');
				mkdirSync(new URL('items/', folder), { recursive: true });
				for (const [path, text] of files) writeFileSync(new URL(path, folder), text);
			}
			const reviewed = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((path) =>
				path.endsWith('.xml'),
			);
			expect(files.map(([path]) => path).sort()).toEqual(reviewed.sort());
			for (const [path, text] of files) expect(text, path).toBe(readFileSync(new URL(path, folder), 'utf8'));
		});

		test('every reviewed file is valid', () => {
			for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((each) =>
				each.endsWith('.xml'),
			)) {
				const xml = readFileSync(new URL(path, folder), 'utf8');
				expect(validateDocument({ path, xml, schema: schemaOf(path, version) }).problems).toEqual([]);
			}
		});
	});
});
