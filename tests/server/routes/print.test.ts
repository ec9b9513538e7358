import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { makeChoice, makeGridded } from '../../helpers/items.ts';
import { countPages } from '../../helpers/pdf-pages.ts';
import { formOf } from '../../helpers/sample-items.ts';
import { openTestApp } from '../../helpers/test-app.ts';

async function openFilledApp() {
	const test = await openTestApp();
	await test.store.items.createMany(
		[
			{ id: 'sum', item: makeChoice() },
			{ id: 'difference', item: makeGridded() },
		],
		'approved',
	);
	await test.store.forms.create({ id: 'form-a', form: formOf(['sum', 'difference']) });
	await test.store.groups.add({ id: 'seven-a', group: { name: '7A', studentCodes: ['7A-01', '7A-02'] } });
	return test;
}

test('a form comes out as an archive of PDF files, for a group when asked', async () => {
	const { send } = await openFilledApp();
	const { status, headers, bytes } = await send('POST', '/api/forms/form-a/print', {
		paper: 'letter',
		group: 'seven-a',
	});
	expect(status).toBe(200);
	expect(headers['content-type']).toBe('application/zip');
	const files = unzipSync(bytes);
	expect(Object.keys(files)).toEqual(expect.arrayContaining(['booklet.pdf', 'answer-sheets.pdf', 'key.pdf']));
	for (const [name, content] of Object.entries(files)) {
		if (name.endsWith('.pdf')) expect(Buffer.from(content).subarray(0, 5).toString()).toBe('%PDF-');
	}
	expect(countPages(files['answer-sheets.pdf'] ?? new Uint8Array())).toBe(3);
});

test('an order that cannot be met is refused', async () => {
	const { send } = await openFilledApp();
	const print = (body: unknown, form = 'form-a') => send('POST', `/api/forms/${form}/print`, body);
	expect(await print({ paper: 'a3' })).toMatchObject({ status: 400 });
	expect(await print({ paper: 'a4', group: 'seven-a', students: ['7A-01'] })).toMatchObject({
		status: 400,
		json: { code: 'order-contradictory' },
	});
	expect(await print({ paper: 'a4', group: 'nobody' })).toMatchObject({ status: 404 });
	expect(await print({ paper: 'a4' }, 'form-b')).toMatchObject({ status: 404 });
});
