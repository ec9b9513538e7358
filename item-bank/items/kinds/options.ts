import { isTrue } from '../../expression/evaluate.ts';
import type { Expression } from '../../expression/tree.ts';
import { isShownBy } from '../../figures/expressions-shown.ts';
import type { Problem } from '../../problem.ts';
import type { ChoiceItem, ChoiceResponse, Figure, MultipleChoiceItem, Option } from '../../types.ts';
import { ContentError, computeAt, expressionAt, mathematicsOf, notComputable, parseAt, worthAt } from '../compute.ts';
import type { KeyFinding } from '../item-key.ts';
import type { Outcome } from '../outcome.ts';

type OptionItem = ChoiceItem | MultipleChoiceItem;

/** Key of a choice or multiple-choice item, by its rule. */
export function findOptionKey(item: OptionItem): KeyFinding<{ kind: 'options'; options: readonly string[] }> {
	const isRight = keyTest(item);
	const options = item.options.filter((option, index) => isRight(option, `/options/${index}`)).map(({ id }) => id);
	const problems = [...checkKeyCount(item, options), ...checkTypedKey(item, options)];
	return problems.length > 0 ? { problems } : { key: { kind: 'options', options } };
}

/** Two marks on a choice item are invalid; options of a multiple-choice item earn all or, with credit in parts, a share each. */
export function scoreOptions(item: OptionItem, key: readonly string[], { options }: ChoiceResponse): Outcome {
	if (options.length === 0) return { state: 'omitted' };
	if (options.some((id) => !item.options.some((option) => option.id === id))) {
		return { state: 'invalid', reason: 'option-not-offered' };
	}
	if (item.kind === 'choice' && options.length > 1) return { state: 'invalid', reason: 'double-mark' };
	const right = options.filter((id) => key.includes(id)).length;
	const wrong = options.length - right;
	if (right === key.length && wrong === 0) return { state: 'correct' };
	const share =
		item.kind === 'multiple-choice' && item.credit === 'parts' ? Math.max(0, right - wrong) / key.length : 0;
	return share > 0 ? { state: 'partly', share } : { state: 'incorrect' };
}

function checkKeyCount(item: OptionItem, options: readonly string[]): readonly Problem[] {
	if (item.rule.kind === 'stated') {
		const missing = item.rule.options.filter((id) => !item.options.some((option) => option.id === id));
		if (missing.length > 0) {
			const message = `expected key options among ${item.options.map(({ id }) => id).join(', ')}, found ${missing.join(', ')}`;
			return [{ code: 'key-option-unknown', path: '/rule/options', message }];
		}
	}
	if (options.length === 0) {
		const message = 'expected an option that is the key, found none by the rule';
		return [{ code: 'key-missing', path: '/options', message }];
	}
	if (item.kind === 'choice' && options.length > 1) {
		const message = `expected one key, found ${options.length}: options ${options.join(' and ')}`;
		return [{ code: 'key-not-unique', path: '/options', message }];
	}
	if (item.kind === 'multiple-choice' && options.length === item.options.length) {
		const message = 'expected at least one wrong option, found none';
		return [{ code: 'key-all-options', path: '/options', message }];
	}
	return [];
}

function checkTypedKey(item: OptionItem, options: readonly string[]): readonly Problem[] {
	if (item.key === undefined) return [];
	const typed = item.kind === 'choice' ? [item.key] : item.key;
	const isSame = typed.length === options.length && typed.every((id) => options.includes(id));
	const found = options.length === 0 ? 'no option' : options.join(', ');
	const message = `the rule makes ${found} the key, but the key says ${typed.join(', ')}`;
	return isSame ? [] : [{ code: 'key-mismatch', path: '/key', message }];
}

/** Whether an option is right by the rule of its item. What the rule itself says is worked once, at the first option. */
function keyTest(item: OptionItem): (option: Option, path: string) => boolean {
	const { rule } = item;
	switch (rule.kind) {
		case 'stated':
			return ({ id }) => rule.options.includes(id);
		case 'same-value': {
			let wanted: number | undefined;
			return (option, path) => {
				const worth = worthAt(mathematicsOf(option, path), path);
				wanted ??= worthAt(rule.expression, '/rule/expression');
				return worth === wanted;
			};
		}
		case 'true-statement':
			return (option, path) => {
				const statement = parseAt(mathematicsOf(option, path), path);
				if (statement.kind !== 'statement') {
					throw notComputable(path, 'a statement with =, <, >, ≤ or ≥', 'an expression');
				}
				return computeAt(path, () => isTrue(statement));
			};
		case 'shows': {
			let wanted: Expression | undefined;
			return ({ content }, path) => {
				if (content.kind !== 'figure') throw notComputable(path, 'a figure', content.kind);
				wanted ??= expressionAt(rule.expression, '/rule/expression');
				return isShownBy(wanted, content.figure);
			};
		}
		case 'shown':
			return (option, path) => isShownBy(expressionAt(mathematicsOf(option, path), path), stemFigure(item));
	}
}

function stemFigure(item: OptionItem): Figure {
	const figures = item.stem.flatMap((block) => (block.kind === 'figure' ? [block.figure] : []));
	const [figure] = figures;
	if (figure && figures.length === 1) return figure;
	const message = `the rule "shown" needs exactly one figure in the stem, found ${figures.length}`;
	throw new ContentError({ code: 'rule-needs-figure', path: '/stem', message });
}
