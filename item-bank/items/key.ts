import { EvaluationError, evaluate, isTrue, solveUnknown } from '../expression/evaluate.ts';
import { ExpressionSyntaxError, parseMathematics } from '../expression/parse.ts';
import type { Expression } from '../expression/tree.ts';
import { isShownBy } from '../figures/expressions-shown.ts';
import type { Problem } from '../problem.ts';
import type { ChoiceItem, Figure, GriddedItem, Item, MultipleChoiceItem, Option } from '../types.ts';

/** The right answer of an item: option ids in option order, or a number. */
export type ItemKey =
	| { readonly kind: 'options'; readonly options: readonly string[] }
	| { readonly kind: 'value'; readonly value: number };

/** A key, or why there is none. */
export type KeyFinding = { readonly key: ItemKey } | { readonly problems: readonly Problem[] };

/** Thrown where a key is needed of an item that has none. */
export class ItemKeyError extends Error {
	readonly code = 'item-without-key';
	readonly problems: readonly Problem[];

	constructor(problems: readonly Problem[]) {
		super(`no key can be computed: ${problems.map((problem) => problem.message).join('; ')}`);
		this.problems = problems;
	}
}

/** The computed key. Throws {@link ItemKeyError} for an item that {@link findKey} finds problems with. */
export function computeKey(item: Item): ItemKey {
	const finding = findKey(item);
	if ('problems' in finding) throw new ItemKeyError(finding.problems);
	return finding.key;
}

/** Computes the key from the item's expression or rule, and compares it with the key the author typed, if any. */
export function findKey(item: Item): KeyFinding {
	try {
		return item.kind === 'gridded' ? findValueKey(item) : findOptionKey(item);
	} catch (error) {
		if (error instanceof PathError) return { problems: [error.problem] };
		throw error;
	}
}

function findValueKey(item: GriddedItem): KeyFinding {
	const value = worthOf(item.expression, '/expression');
	if (item.key !== undefined && item.key !== value) {
		return {
			problems: [
				{
					code: 'key-mismatch',
					path: '/key',
					message: `the expression "${item.expression}" is worth ${value}, but the key says ${item.key}`,
				},
			],
		};
	}
	return { key: { kind: 'value', value } };
}

function findOptionKey(item: ChoiceItem | MultipleChoiceItem): KeyFinding {
	const options = item.options.filter((option, index) => isKey(item, option, `/options/${index}`)).map(({ id }) => id);
	const problems = [...checkKeyCount(item, options), ...checkTypedKey(item, options)];
	return problems.length > 0 ? { problems } : { key: { kind: 'options', options } };
}

function checkKeyCount(item: ChoiceItem | MultipleChoiceItem, options: readonly string[]): readonly Problem[] {
	if (item.rule.kind === 'stated') {
		const missing = item.rule.options.filter((id) => !item.options.some((option) => option.id === id));
		if (missing.length > 0) {
			const message = `expected key options among ${item.options.map(({ id }) => id).join(', ')}, found ${missing.join(', ')}`;
			return [{ code: 'key-option-unknown', path: '/rule/options', message }];
		}
	}
	if (options.length === 0) {
		return [
			{ code: 'key-missing', path: '/options', message: 'expected an option that is the key, found none by the rule' },
		];
	}
	if (item.kind === 'choice' && options.length > 1) {
		const message = `expected one key, found ${options.length}: options ${options.join(' and ')}`;
		return [{ code: 'key-not-unique', path: '/options', message }];
	}
	if (item.kind === 'multiple-choice' && options.length === item.options.length) {
		return [{ code: 'key-all-options', path: '/options', message: 'expected at least one wrong option, found none' }];
	}
	return [];
}

function checkTypedKey(item: ChoiceItem | MultipleChoiceItem, options: readonly string[]): readonly Problem[] {
	if (item.key === undefined) return [];
	const typed = item.kind === 'choice' ? [item.key] : item.key;
	const isSame = typed.length === options.length && typed.every((id) => options.includes(id));
	const found = options.length === 0 ? 'no option' : options.join(', ');
	const message = `the rule makes ${found} the key, but the key says ${typed.join(', ')}`;
	return isSame ? [] : [{ code: 'key-mismatch', path: '/key', message }];
}

function isKey(item: ChoiceItem | MultipleChoiceItem, option: Option, path: string): boolean {
	const { rule } = item;
	switch (rule.kind) {
		case 'stated':
			return rule.options.includes(option.id);
		case 'same-value':
			return worthOf(mathematicsOf(option, path), path) === worthOf(rule.expression, '/rule/expression');
		case 'true-statement': {
			const statement = parse(mathematicsOf(option, path), path);
			if (statement.kind !== 'statement')
				throw notComputable(path, 'a statement with =, <, >, ≤ or ≥', 'an expression');
			return compute(path, () => isTrue(statement));
		}
		case 'shows': {
			const { content } = option;
			if (content.kind !== 'figure') throw notComputable(path, 'a figure', content.kind);
			return isShownBy(parseAsExpression(rule.expression, '/rule/expression'), content.figure);
		}
		case 'shown':
			return isShownBy(parseAsExpression(mathematicsOf(option, path), path), stemFigure(item));
	}
}

function stemFigure(item: ChoiceItem | MultipleChoiceItem): Figure {
	const figures = item.stem.flatMap((block) => (block.kind === 'figure' ? [block.figure] : []));
	const [figure] = figures;
	if (figure && figures.length === 1) return figure;
	const message = `the rule "shown" needs exactly one figure in the stem, found ${figures.length}`;
	throw new PathError({ code: 'rule-needs-figure', path: '/stem', message });
}

function mathematicsOf(option: Option, path: string): string {
	const { content } = option;
	if (content.kind === 'mathematics') return content.math;
	if (content.kind === 'text' && content.worth !== undefined) return content.worth;
	throw notComputable(
		path,
		'mathematics, or text with a worth',
		content.kind === 'text' ? 'text without worth' : 'a figure',
	);
}

function notComputable(path: string, expected: string, found: string): PathError {
	return new PathError({
		code: 'option-not-computable',
		path,
		message: `expected ${expected} so that the key can be computed, found ${found}`,
	});
}

function parseAsExpression(text: string, path: string): Expression {
	const mathematics = parse(text, path);
	if (mathematics.kind !== 'statement') return mathematics;
	throw notComputable(path, 'an expression', `the statement "${text}"`);
}

/** The value of an expression, or the unknown of a statement with one ?. */
function worthOf(text: string, path: string): number {
	const mathematics = parse(text, path);
	return compute(path, () => (mathematics.kind === 'statement' ? solveUnknown(mathematics) : evaluate(mathematics)));
}

function parse(text: string, path: string): ReturnType<typeof parseMathematics> {
	return compute(path, () => parseMathematics(text));
}

function compute<T>(path: string, work: () => T): T {
	try {
		return work();
	} catch (error) {
		if (error instanceof ExpressionSyntaxError || error instanceof EvaluationError) {
			throw new PathError({ code: error.code, path, message: error.message });
		}
		throw error;
	}
}

/** Carries one problem out of the computation. */
class PathError extends Error {
	readonly problem: Problem;

	constructor(problem: Problem) {
		super(problem.message);
		this.problem = problem;
	}
}
