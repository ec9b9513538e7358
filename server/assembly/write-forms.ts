import type { Blueprint, Form } from '../../item-bank/types.ts';
import type { ArrangedForm } from './arrange-items.ts';

/** Arranged items as form documents titled after the blueprint: "…, Form A", "…, Form B". One form has no letter. */
export function writeForms(blueprint: Blueprint, forms: readonly ArrangedForm[]): readonly Form[] {
	return forms.map((sections, index) => ({
		title: forms.length === 1 ? blueprint.title : `${blueprint.title}, Form ${'ABCD'[index] ?? index + 1}`,
		gridProfile: blueprint.gridProfile,
		sections: sections.map((items, section) => ({
			title: blueprint.sections[section]?.title ?? `Section ${section + 1}`,
			items: items.map(({ id, version }) => ({ item: id, version })),
		})),
	}));
}
