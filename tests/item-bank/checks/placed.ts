import { type FormRule, placeItems } from '../../../item-bank/checks/placed-item.ts';
import type { Problem } from '../../../item-bank/problem.ts';
import type { ChoiceItem, Form, Item } from '../../../item-bank/types.ts';
import { makeChoice, makeGridded, numberOptions } from '../../helpers/items.ts';

/** A form of these items in one section, and the lookup for it. */
export function formOf(items: readonly Item[]): {
	readonly form: Form;
	readonly findItem: (id: string) => Item | undefined;
} {
	const bank = new Map(items.map((item, index) => [`item-${index}`, item]));
	const entries = [...bank.keys()].map((item) => ({ item, version: 1 }));
	const form = { title: 'Unit check', gridProfile: 'plain-sign-first', sections: [{ title: 'One', items: entries }] };
	return { form, findItem: (id) => bank.get(id) };
}

/** What one rule has to say of a form of these items. */
export function foundOn(rule: FormRule, items: readonly Item[]): readonly Problem[] {
	const { form, findItem } = formOf(items);
	return rule.find(placeItems(form, findItem));
}

/** A choice among four numbers with the key at a place, 0 for the first. */
export function keyAt(place: number): ChoiceItem {
	const values = [-9, -4, 3, 8];
	const value = values[place] ?? 0;
	return makeChoice({
		options: numberOptions(...values),
		rule: { kind: 'same-value', expression: `${value - 1} + 1` },
	});
}

/** A gridded item that asks for an expression. */
export function asks(expression: string): Item {
	return makeGridded({ expression, stem: [{ kind: 'paragraph', text: `What is \`${expression}\`?` }] });
}
