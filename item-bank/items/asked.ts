import type { ChoiceRule, Item, Option } from '../types.ts';

/** The expression, or statement with one unknown, whose value is the answer; undefined where the key is found otherwise. */
export function workOf(item: Item): string | undefined {
	if (item.kind === 'gridded' || item.kind === 'point') return item.expression;
	const rule = ruleOf(item);
	return rule !== undefined && 'expression' in rule ? rule.expression : undefined;
}

/** How the key among options is computed; undefined for kinds without options. */
export function ruleOf(item: Item): ChoiceRule | undefined {
	return item.kind === 'choice' || item.kind === 'multiple-choice' ? item.rule : undefined;
}

/** Options to mark; none for kinds answered otherwise. */
export function optionsOf(item: Item): readonly Option[] {
	return item.kind === 'choice' || item.kind === 'multiple-choice' ? item.options : [];
}
