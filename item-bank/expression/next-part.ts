import { invariant } from '../invariant.ts';
import type { StepPart } from './step-rules.ts';
import { type Expression, isSumOperator, type Operator } from './tree.ts';

/** The way from an expression down to one of its parts. */
export type PartPath = readonly ('of' | 'left' | 'right')[];

/** The piece of work that comes first, where it stands, and why it comes first. */
export interface NextPart {
	readonly part: StepPart;
	readonly path: PartPath;
	/** Words such as "inside the parentheses, × and ÷ come before + and −"; '' where nothing else could come first. */
	readonly order: string;
}

/**
 * The piece of work that comes first: inside parentheses and absolute values before outside, then opposites, then
 * × and ÷, then + and −, left to right among equals. The expression is normalised and holds no unknown; undefined
 * when it is a single number.
 */
export function findNextPart(expression: Expression): NextPart | undefined {
	return findAt(expression, [], '');
}

/** The expression with the part at the path replaced. */
export function replacePart(expression: Expression, path: PartPath, part: Expression): Expression {
	const [step, ...rest] = path;
	if (step === undefined) return part;
	if (expression.kind === 'operation' && step !== 'of') {
		return { ...expression, [step]: replacePart(expression[step], rest, part) };
	}
	invariant('of' in expression && step === 'of', `no ${step} in ${expression.kind}`);
	return { ...expression, of: replacePart(expression.of, rest, part) };
}

function findAt(expression: Expression, path: PartPath, place: string): NextPart | undefined {
	const fenced = findFenced(expression, path);
	if (fenced) return fenced;
	const order = describeOrder(expression);
	const found =
		findOpposite(expression, path) ??
		findOperation(expression, path, (operator) => !isSumOperator(operator)) ??
		findOperation(expression, path, isSumOperator);
	if (!found) return undefined;
	const reason = found.part.kind === 'operation' ? order(found.part.operator) : '';
	return { ...found, order: [place, reason].filter((words) => words !== '').join(', ') };
}

function findFenced(expression: Expression, path: PartPath): NextPart | undefined {
	switch (expression.kind) {
		case 'number':
		case 'unknown':
			return undefined;
		case 'operation':
			return findFenced(expression.left, [...path, 'left']) ?? findFenced(expression.right, [...path, 'right']);
		case 'opposite':
			return findFenced(expression.of, [...path, 'of']);
		case 'group':
			return findAt(expression.of, [...path, 'of'], 'inside the parentheses');
		case 'absolute': {
			const { of } = expression;
			if (of.kind === 'number') return { part: { kind: 'absolute', of }, path, order: '' };
			return findAt(of, [...path, 'of'], 'inside the absolute value');
		}
		default:
			return expression satisfies never;
	}
}

type Found = Omit<NextPart, 'order'>;

function findOpposite(expression: Expression, path: PartPath): Found | undefined {
	if (expression.kind === 'opposite' && expression.of.kind === 'number') {
		return { part: { kind: 'opposite', of: expression.of }, path };
	}
	if (expression.kind !== 'operation') return undefined;
	return findOpposite(expression.left, [...path, 'left']) ?? findOpposite(expression.right, [...path, 'right']);
}

function findOperation(
	expression: Expression,
	path: PartPath,
	isWanted: (operator: Operator) => boolean,
): Found | undefined {
	if (expression.kind !== 'operation') return undefined;
	const { left, right } = expression;
	const inner = findOperation(left, [...path, 'left'], isWanted) ?? findOperation(right, [...path, 'right'], isWanted);
	if (inner || left.kind !== 'number' || right.kind !== 'number' || !isWanted(expression.operator)) return inner;
	return { part: { ...expression, left, right }, path };
}

function describeOrder(expression: Expression): (operator: Operator) => string {
	const operators = listOperators(expression);
	return (operator) => {
		const isSum = isSumOperator(operator);
		if (!isSum && operators.some(isSumOperator)) return '× and ÷ come before + and −';
		return operators.length > 1 ? 'from left to right' : '';
	};
}

function listOperators(expression: Expression): readonly Operator[] {
	if (expression.kind !== 'operation') return [];
	return [...listOperators(expression.left), expression.operator, ...listOperators(expression.right)];
}
