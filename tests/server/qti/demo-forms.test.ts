import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import type { FormRecord, ItemRecord } from '../../../item-bank/items/record.ts';
import { exportForm } from '../../../server/qti/export-form.ts';
import { closeValidation } from '../../../server/qti/validate/pool.ts';
import { validatePackage } from '../../../server/qti/validate-package.ts';
import { qtiVersions } from '../../../server/qti/versions.ts';
import { referenceFolder, requireOutside } from '../../helpers/reference.ts';

requireOutside('the reference folder', referenceFolder !== undefined);
afterAll(closeValidation);

const folder = new URL('../../../item-bank/demo/', import.meta.url);
const items: readonly ItemRecord[] = readdirSync(new URL('items/', folder))
	.flatMap((file) => JSON.parse(readFileSync(new URL(`items/${file}`, folder), 'utf8')))
	.map((record) => ({ version: 1, status: 'approved', ...record }));
const forms: readonly FormRecord[] = JSON.parse(readFileSync(new URL('forms.json', folder), 'utf8')).map(
	(record: object) => ({
		version: 1,
		...record,
	}),
);

describe.each(qtiVersions)('%s', (as) => {
	test.each(forms.map((form) => [form.id, form] as const))(
		'demo form %s is exported and found valid again',
		async (_, form) => {
			const schemasFolder = referenceFolder === undefined ? undefined : join(referenceFolder, 'schemas');
			const options = { as, images: 'png' as const, ...(schemasFolder === undefined ? {} : { schemasFolder }) };
			const { bytes, report } = await exportForm({ form, items }, options);
			expect(report.items).toBe(form.form.sections.flatMap((section) => section.items).length);
			expect(report.validated.at(-1)?.checked).toBe(as === 'qti-2.2' && schemasFolder !== undefined);
			expect(await validatePackage(bytes)).toEqual([]);
			const told = await exportForm({ form, items }, { ...options, images: 'svg', grid: 'columns', hasFeedback: true });
			expect(await validatePackage(told.bytes)).toEqual([]);
		},
	);
});
