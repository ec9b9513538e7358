import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { formRules, reviewForm } from '../../../item-bank/checks/review-form.ts';
import type { Form, Item } from '../../../item-bank/types.ts';
import { projectRoot } from '../../../server/project-root.ts';
import { asks, formOf, keyAt } from './placed.ts';

const demo = join(projectRoot, 'item-bank/demo');
const read = <T>(path: string): T => JSON.parse(readFileSync(join(demo, path), 'utf8')) as T;

test('notes are advice, each with its guideline, in the order of the rules', () => {
	const { form, findItem } = formOf([keyAt(0), keyAt(0), keyAt(0), keyAt(0), asks('3 - 8'), asks('3 - 8')]);
	const notes = reviewForm(form, findItem);
	expect(notes[0]).toMatchObject({ severity: 'advise', code: 'review-form-key-places', guideline: { number: 20 } });
	expect(notes.map(({ severity }) => severity)).not.toContain('stop');
	expect(notes.at(-1)).toMatchObject({ code: 'review-form-same-answer', guideline: { number: 4, isFromMemory: true } });
});

test('items that are not in the bank are passed over', () => {
	const { form } = formOf([asks('3 - 8'), asks('3 - 8')]);
	expect(reviewForm(form, () => undefined)).toEqual([]);
});

test('every rule has a file and a test of the same name', () => {
	const files = readdirSync(join(projectRoot, 'item-bank/checks/form')).sort();
	const tests = readdirSync(join(projectRoot, 'tests/item-bank/checks/form')).sort();
	expect(formRules).toHaveLength(files.length);
	expect(tests).toEqual(files.map((file) => file.replace('.ts', '.test.ts')).sort());
});

test('the demo forms get hardly a note', () => {
	const items = new Map(
		readdirSync(join(demo, 'items')).flatMap((name) =>
			read<readonly { readonly id: string; readonly item: Item }[]>(`items/${name}`).map(({ id, item }) => [id, item]),
		),
	);
	const forms = read<readonly { readonly form: Form }[]>('forms.json');
	expect(forms.length).toBeGreaterThan(0);
	for (const { form } of forms) expect(reviewForm(form, (id) => items.get(id)).length).toBeLessThan(3);
});
