import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { positionsOf } from '../../item-bank/forms/check-form.ts';
import type { Form, Item } from '../../item-bank/types.ts';
import { projectRoot } from '../../server/project-root.ts';

const folder = join(projectRoot, 'item-bank/demo');
const read = <T>(path: string): T => JSON.parse(readFileSync(join(folder, path), 'utf8')) as T;

/** The items of the demo department. */
export const demoItems: readonly { readonly id: string; readonly item: Item }[] = readdirSync(join(folder, 'items'))
	.sort()
	.flatMap((name) => read<readonly { readonly id: string; readonly item: Item }[]>(`items/${name}`));

/** The forms of the demo department. */
export const demoForms: readonly { readonly id: string; readonly form: Form }[] = read('forms.json');

/** The items of a demo form in form order, 0 for the first form. */
export function itemsOfDemoForm(place: number): readonly { readonly id: string; readonly item: Item }[] {
	const form = demoForms[place]?.form;
	if (form === undefined) throw new Error(`no demo form ${place}`);
	return positionsOf(form).map(({ entry }) => {
		const found = demoItems.find(({ id }) => id === entry.item);
		if (found === undefined) throw new Error(`no demo item ${entry.item}`);
		return found;
	});
}
