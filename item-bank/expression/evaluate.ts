import { countUnknowns } from './count.ts';
import { EvaluationError } from './evaluation-error.ts';
import { printMathematics } from './print.ts';
import {
	type Expression,
	LARGEST_NUMBER,
	numberNode,
	type Operator,
	operationNode,
	type Relation,
	type Statement,
} from './tree.ts';

export { EvaluationError };

/**
 * The value of an expression: exact, an integer from −999,999 to 999,999 at every step, never −0.
 * @throws {EvaluationError} for a division by zero or with a remainder, a number out of range or an unknown.
 */
export function evaluate(expression: Expression): number {
	switch (expression.kind) {
		case 'number':
			return checkRange(expression.value, expression);
		case 'unknown':
			throw new EvaluationError({
				code: 'expression-unknown',
				operands: [],
				printed: '?',
				reason: 'expected numbers only, found an unknown',
			});
		case 'group':
			return evaluate(expression.of);
		case 'absolute':
			return Math.abs(evaluate(expression.of));
		case 'opposite':
			return 0 - evaluate(expression.of);
		case 'operation':
			return operate(expression.operator, evaluate(expression.left), evaluate(expression.right));
		default:
			return expression satisfies never;
	}
}

/**
 * The result of one operation on two integers in range.
 * @throws {EvaluationError} like {@link evaluate}.
 */
export function operate(operator: Operator, left: number, right: number): number {
	const node = operationNode(operator, numberNode(left), numberNode(right));
	switch (operator) {
		case 'add':
			return checkRange(left + right, node);
		case 'subtract':
			return checkRange(left - right, node);
		case 'multiply':
			return checkRange(left * right, node);
		case 'divide': {
			const facts = { operands: [left, right], printed: printMathematics(node) };
			if (right === 0) {
				const reason = 'expected a divisor other than 0, found 0';
				throw new EvaluationError({ code: 'expression-zero-division', ...facts, reason });
			}
			if (left % right !== 0) {
				const reason = `expected a division without remainder, found remainder ${Math.abs(left % right)}`;
				throw new EvaluationError({ code: 'expression-inexact-division', ...facts, reason });
			}
			return checkRange(left / right, node);
		}
		default:
			return operator satisfies never;
	}
}

/**
 * Whether every relation of a statement holds between its neighbouring sides.
 * @throws {EvaluationError} when a side has no value.
 */
export function isTrue(statement: Statement): boolean {
	const values = statement.sides.map(evaluate);
	return statement.relations.every((relation, index) => {
		const left = values[index];
		const right = values[index + 1];
		return left !== undefined && right !== undefined && compare(relation, left, right);
	});
}

function compare(relation: Relation, left: number, right: number): boolean {
	switch (relation) {
		case '=':
			return left === right;
		case '<':
			return left < right;
		case '>':
			return left > right;
		case '≤':
			return left <= right;
		case '≥':
			return left >= right;
		default:
			return relation satisfies never;
	}
}

function checkRange(value: number, node: Expression): number {
	if (Number.isInteger(value) && Math.abs(value) <= LARGEST_NUMBER) return value === 0 ? 0 : value;
	const operands = node.kind === 'operation' ? [evaluate(node.left), evaluate(node.right)] : [value];
	const reason = `expected an integer from −${LARGEST_NUMBER} to ${LARGEST_NUMBER}, found ${value}`;
	throw new EvaluationError({ code: 'expression-out-of-range', operands, printed: printMathematics(node), reason });
}

/**
 * The integer that makes a statement true in place of its only unknown, found by inverse operations: all relations are
 * equals signs, the unknown stands once, and exactly one integer fits.
 * @throws {EvaluationError} with code expression-unsolvable when that is not so, or like {@link evaluate} when a side
 * without the unknown has no value.
 */
export function solveUnknown(statement: Statement): number {
	const printed = printMathematics(statement);
	const unsolvable = (reason: string, operands: readonly number[] = []) =>
		new EvaluationError({ code: 'expression-unsolvable', operands, printed, reason });
	const other = statement.relations.find((relation) => relation !== '=');
	if (other) throw unsolvable(`expected only "=" between the sides, found "${other}"`);
	const unknowns = countUnknowns(statement);
	if (unknowns !== 1) throw unsolvable(`expected the unknown once, found it ${unknowns} times`);
	const known = statement.sides.filter((side) => countUnknowns(side) === 0).map(evaluate);
	const [target] = known;
	if (target === undefined) throw unsolvable('expected a side without the unknown, found none');
	if (known.some((value) => value !== target))
		throw unsolvable('expected sides of one value, found different ones', known);
	const side = statement.sides.find((candidate) => countUnknowns(candidate) === 1);
	const value = side && undo(side, target);
	if (typeof value === 'number') return value;
	throw unsolvable(`expected exactly one fitting integer in range, found ${value ?? 'none'}`);
}

/** The only integer for the unknown that gives the expression the value, or how many there are instead. */
function undo(expression: Expression, value: number): number | 'none' | 'several' {
	if (Math.abs(value) > LARGEST_NUMBER) return 'none';
	switch (expression.kind) {
		case 'number':
			return 'none';
		case 'unknown':
			return value === 0 ? 0 : value;
		case 'group':
			return undo(expression.of, value);
		case 'opposite':
			return undo(expression.of, -value);
		case 'absolute': {
			if (value < 0) return 'none';
			const fits = [undo(expression.of, value), ...(value === 0 ? [] : [undo(expression.of, -value)])];
			if (fits.includes('several')) return 'several';
			const numbers = fits.filter((fit) => fit !== 'none');
			return numbers.length > 1 ? 'several' : (numbers[0] ?? 'none');
		}
		case 'operation': {
			const isLeft = countUnknowns(expression.left) === 1;
			const known = evaluate(isLeft ? expression.right : expression.left);
			const needed = undoOperation(expression.operator, known, isLeft, value);
			return typeof needed === 'number' ? undo(isLeft ? expression.left : expression.right, needed) : needed;
		}
		default:
			return expression satisfies never;
	}
}

function undoOperation(
	operator: Operator,
	known: number,
	isUnknownLeft: boolean,
	value: number,
): number | 'none' | 'several' {
	switch (operator) {
		case 'add':
			return value - known;
		case 'subtract':
			return isUnknownLeft ? value + known : known - value;
		case 'multiply':
			if (known === 0) return value === 0 ? 'several' : 'none';
			return value % known === 0 ? value / known : 'none';
		case 'divide':
			if (isUnknownLeft) return known === 0 ? 'none' : value * known;
			if (known === 0) return value === 0 ? 'several' : 'none';
			return value !== 0 && known % value === 0 ? known / value : 'none';
		default:
			return operator satisfies never;
	}
}
