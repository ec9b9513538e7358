import fc from 'fast-check';
import { evaluate } from '../../../item-bank/expression/evaluate.ts';
import {
	absoluteNode,
	type Expression,
	groupNode,
	numberNode,
	type Operator,
	operationNode,
	oppositeNode,
	type Relation,
	type Statement,
} from '../../../item-bank/expression/tree.ts';

const operators: readonly Operator[] = ['add', 'subtract', 'multiply', 'divide'];
const relations: readonly Relation[] = ['=', '<', '>', '≤', '≥'];

const numbers = fc.oneof(
	{ weight: 6, arbitrary: fc.integer({ min: -20, max: 20 }) },
	{ weight: 1, arbitrary: fc.integer({ min: -999_999, max: 999_999 }) },
);

/** Any tree of 1 to 8 operands, normalised or not, whether it has a value or not. */
export function anyExpression(unknowns = false): fc.Arbitrary<Expression> {
	const leaf = unknowns
		? fc.oneof(
				{ weight: 5, arbitrary: numbers.map(numberNode) },
				{ weight: 1, arbitrary: fc.constant<Expression>({ kind: 'unknown' }) },
			)
		: numbers.map(numberNode);
	return fc.integer({ min: 1, max: 8 }).chain((operands) => ofSize(operands, leaf));
}

function ofSize(operands: number, leaf: fc.Arbitrary<Expression>): fc.Arbitrary<Expression> {
	const bare =
		operands === 1
			? leaf
			: fc
					.integer({ min: 1, max: operands - 1 })
					.chain((left) =>
						fc
							.tuple(fc.constantFrom(...operators), ofSize(left, leaf), ofSize(operands - left, leaf))
							.map(([operator, first, second]): Expression => operationNode(operator, first, second)),
					);
	return fc
		.tuple(bare, fc.array(fc.constantFrom('absolute', 'group', 'opposite'), { maxLength: 1 }))
		.map(([of, wraps]) =>
			wraps.reduce((inner: Expression, wrap) => {
				if (wrap === 'absolute') return absoluteNode(inner);
				return wrap === 'group' ? groupNode(inner) : oppositeNode(inner);
			}, of),
		);
}

/** Any statement of 2 to 4 sides. */
export function anyStatement(): fc.Arbitrary<Statement> {
	return fc.array(fc.tuple(anyExpression(true), fc.constantFrom(...relations)), { minLength: 2, maxLength: 4 }).map(
		(pairs): Statement => ({
			kind: 'statement',
			sides: pairs.map(([side]) => side),
			relations: pairs.slice(1).map(([, relation]) => relation),
		}),
	);
}

/** A tree with a value: small numbers, and every division made exact by multiplying its dividend up. */
export function valuedExpression(): fc.Arbitrary<Expression> {
	return anyExpression().map((expression) => makeExact(shrinkNumbers(expression)));
}

/** The value, or undefined where there is none. */
export function findValue(expression: Expression): number | undefined {
	try {
		return evaluate(expression);
	} catch {
		return undefined;
	}
}

function shrinkNumbers(expression: Expression): Expression {
	switch (expression.kind) {
		case 'number':
			return numberNode(expression.value % 21);
		case 'unknown':
			return expression;
		case 'operation':
			return operationNode(expression.operator, shrinkNumbers(expression.left), shrinkNumbers(expression.right));
		default:
			return { ...expression, of: shrinkNumbers(expression.of) };
	}
}

/** Replaces what has no value: an inexact quotient a ÷ b becomes r ÷ r-sized number, anything else a sum. */
function makeExact(expression: Expression): Expression {
	if (expression.kind === 'number' || expression.kind === 'unknown') return expression;
	if (expression.kind !== 'operation') return { ...expression, of: makeExact(expression.of) };
	const left = makeExact(expression.left);
	const right = makeExact(expression.right);
	const made = operationNode(expression.operator, left, right);
	if (findValue(made) !== undefined) return made;
	const divisor = findValue(right) ?? 0;
	const multiple = divisor * (((findValue(left) ?? 0) % 9) + 1);
	if (divisor !== 0 && Math.abs(multiple) <= 999_999) return operationNode('divide', numberNode(multiple), right);
	const sum = operationNode('add', left, right);
	return findValue(sum) === undefined ? numberNode(7) : sum;
}
