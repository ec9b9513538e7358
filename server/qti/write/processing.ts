import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';

/** The value of a variable. */
export function nameVariable(identifier: string): MarkupElement {
	return element('variable', { identifier });
}

/** A value written out. */
export function writeValue(baseType: 'identifier' | 'float', value: string): MarkupElement {
	return element('baseValue', { baseType }, [value]);
}

/** A rule that sets an outcome. */
export function setOutcome(identifier: string, expression: MarkupElement): MarkupElement {
	return element('setOutcomeValue', { identifier }, [expression]);
}

/** A rule with a condition: what is done when it holds, and what otherwise. */
export function when(
	condition: MarkupElement,
	rules: readonly MarkupElement[],
	otherwise: readonly MarkupElement[] = [],
): MarkupElement {
	return element('responseCondition', {}, [
		element('responseIf', {}, [condition, ...rules]),
		...(otherwise.length === 0 ? [] : [element('responseElse', {}, otherwise)]),
	]);
}

/** 0, 1, 2 … below a count. */
export function listUpTo(count: number): readonly number[] {
	return Array.from({ length: count }, (_, index) => index);
}
