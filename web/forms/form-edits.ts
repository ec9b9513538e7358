import { positionsOf } from '../../item-bank/forms/check-form.ts';
import type { Form, FormItem, FormSection } from '../../item-bank/types.ts';

/** Where an item stands: section and place in it, both 0-based. */
export interface Place {
	readonly section: number;
	readonly index: number;
}

/** A form without items, ready to be filled. */
export function startForm(title: string, gridProfile: string, section: string): Form {
	return { title, gridProfile, sections: [{ title: section, items: [] }] };
}

/** The place of an item; undefined when the form does not have it. */
export function findPlace(form: Form, item: string): Place | undefined {
	const at = positionsOf(form).find(({ entry }) => entry.item === item);
	return at && { section: at.sectionIndex, index: at.indexInSection };
}

/** The number of an item on the test, 1 for the first; undefined when the form does not have it. */
export function positionOf(form: Form, item: string): number | undefined {
	return positionsOf(form).find(({ entry }) => entry.item === item)?.position;
}

/** The form with an item at a place, at the end of the section when no index is given. An item already there stays. */
export function addItem(form: Form, entry: FormItem, section: number, index?: number): Form {
	if (findPlace(form, entry.item)) return form;
	return withSection(form, section, ({ title, items }) => ({
		title,
		items: items.toSpliced(index ?? items.length, 0, entry),
	}));
}

/** The form without an item. */
export function removeItem(form: Form, item: string): Form {
	return { ...form, sections: form.sections.map((one) => withoutItem(one, item)) };
}

/** The form with an item at another place, counted after it has been taken out. */
export function moveItem(form: Form, item: string, { section, index }: Place): Form {
	const from = findPlace(form, item);
	const entry = from && form.sections[from.section]?.items[from.index];
	return entry ? addItem(removeItem(form, item), entry, section, index) : form;
}

/** Where an item would stand one step up (−1) or down (1), passing into the next section; undefined at the end. */
export function nextPlace(form: Form, item: string, step: -1 | 1): Place | undefined {
	const from = findPlace(form, item);
	if (!from) return undefined;
	const index = from.index + step;
	const length = form.sections[from.section]?.items.length ?? 0;
	if (index >= 0 && index < length) return { section: from.section, index };
	const section = from.section + step;
	const beyond = form.sections[section];
	return beyond && { section, index: step === 1 ? 0 : beyond.items.length };
}

/** The form with another item in the place of one. */
export function replaceItem(form: Form, item: string, entry: FormItem): Form {
	return {
		...form,
		sections: form.sections.map(({ title, items }) => ({
			title,
			items: items.map((one) => (one.item === item ? entry : one)),
		})),
	};
}

/** The form with its own points for an item; undefined gives it the item's. */
export function setPoints(form: Form, item: string, points: number | undefined): Form {
	const place = findPlace(form, item);
	const entry = place && form.sections[place.section]?.items[place.index];
	if (!entry) return form;
	const { points: _before, ...rest } = entry;
	return replaceItem(form, item, points === undefined ? rest : { ...rest, points });
}

/** The form with one more section at the end. */
export function addSection(form: Form, title: string): Form {
	return { ...form, sections: [...form.sections, { title, items: [] }] };
}

/** The form with another title on a section. */
export function retitleSection(form: Form, section: number, title: string): Form {
	return withSection(form, section, ({ items }) => ({ title, items }));
}

/** The form with a section one place up (−1) or down (1). */
export function moveSection(form: Form, section: number, step: -1 | 1): Form {
	const one = form.sections[section];
	if (!one || form.sections[section + step] === undefined) return form;
	return { ...form, sections: form.sections.toSpliced(section, 1).toSpliced(section + step, 0, one) };
}

/** The form without a section; its items go to the one before, or after the first. The last section stays. */
export function removeSection(form: Form, section: number): Form {
	const one = form.sections[section];
	if (!one || form.sections.length === 1) return form;
	const heir = section === 0 ? 1 : section - 1;
	const joined = form.sections.map((other, index) => {
		if (index !== heir) return other;
		const items = heir < section ? [...other.items, ...one.items] : [...one.items, ...other.items];
		return { title: other.title, items };
	});
	return { ...form, sections: joined.toSpliced(section, 1) };
}

/** Whether two forms say the same. */
export function isSameForm(first: Form, second: Form): boolean {
	return JSON.stringify(canonical(first)) === JSON.stringify(canonical(second));
}

function canonical({ title, gridProfile, sections }: Form): unknown {
	return [
		title,
		gridProfile,
		sections.map(({ title: name, items }) => [name, items.map(({ item, version, points }) => [item, version, points])]),
	];
}

function withSection(form: Form, at: number, change: (section: FormSection) => FormSection): Form {
	return { ...form, sections: form.sections.map((section, index) => (index === at ? change(section) : section)) };
}

function withoutItem({ title, items }: FormSection, item: string): FormSection {
	return { title, items: items.filter((entry) => entry.item !== item) };
}
