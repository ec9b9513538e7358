import type { FormRecord, ItemRecord } from '../../../item-bank/items/record.ts';
import { readDemo } from '../../../server/demo.ts';
import { type PrintedFile, type PrintOptions, printForm } from '../../../server/print/print-form.ts';

const demo = readDemo();

/** Items of the demo department as the bank keeps them. */
export const demoItems: readonly ItemRecord[] = demo.items.map(({ id = '', item }) => ({
	id,
	version: 1,
	status: 'approved',
	item,
}));

/** Forms of the demo department as the bank keeps them. */
export const demoForms: readonly FormRecord[] = demo.forms.map(({ id = '', form }) => ({ id, version: 1, form }));

/** The demo form with this letter. */
export function demoForm(letter: 'a' | 'b'): FormRecord {
	const form = demoForms.find(({ id }) => id.endsWith(`-${letter}`));
	if (!form) throw new Error(`expected demo form ${letter}, found ${demoForms.map(({ id }) => id).join(', ')}`);
	return form;
}

/** A form of the items, which are named by their ids, with the plain grid. */
export function formWith(items: readonly ItemRecord[], changes: Partial<FormRecord['form']> = {}): FormRecord {
	const entries = items.map(({ id, version }) => ({ item: id, version }));
	const sections = [{ title: 'All', items: entries }];
	return {
		id: 'made-form',
		version: 1,
		form: { title: 'Made', gridProfile: 'plain-sign-first', sections, ...changes },
	};
}

/** The files of a demo form by their names. */
export async function printDemo(
	letter: 'a' | 'b',
	options: PrintOptions,
	students: readonly string[] = [],
): Promise<ReadonlyMap<string, PrintedFile['bytes']>> {
	const files = await printForm({ form: demoForm(letter), items: demoItems, students }, options);
	return new Map(files.map(({ name, bytes }) => [name, bytes]));
}
