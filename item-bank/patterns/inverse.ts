import { countUnknowns } from '../expression/count.ts';
import { type Expression, numberNode, type Operator, operationNode, type Statement } from '../expression/tree.ts';
import { withoutGroups } from '../figures/terms.ts';

/**
 * What is worked out to find the unknown of an equation of two sides: −8 + ? = 5 gives 5 − (−8). Undefined unless the
 * unknown is one of the two numbers of a single operation.
 */
export function findInverse({ sides, relations }: Statement): Expression | undefined {
	const [left, right] = sides;
	if (left === undefined || right === undefined || relations.length !== 1 || relations[0] !== '=') return undefined;
	const [holding, other] = countUnknowns(left) === 1 ? [left, right] : [right, left];
	const plain = withoutGroups(holding);
	if (countUnknowns(holding) !== 1 || countUnknowns(other) !== 0 || plain.kind !== 'operation') return undefined;
	const isLeft = withoutGroups(plain.left).kind === 'unknown';
	if (!isLeft && withoutGroups(plain.right).kind !== 'unknown') return undefined;
	return invert(plain.operator, isLeft ? plain.right : plain.left, isLeft, other);
}

function invert(operator: Operator, known: Expression, isUnknownLeft: boolean, result: Expression): Expression {
	const inverse = { add: 'subtract', subtract: 'add', multiply: 'divide', divide: 'multiply' } as const;
	const isTakenFrom = !isUnknownLeft && (operator === 'subtract' || operator === 'divide');
	const [first, second] = isTakenFrom ? [known, result] : [result, known];
	return operationNode(isTakenFrom ? operator : inverse[operator], unwrap(first), unwrap(second));
}

/** Groups around the parts of a new operation would say nothing where they hold one number. */
function unwrap(expression: Expression): Expression {
	const plain = withoutGroups(expression);
	return plain.kind === 'number' ? numberNode(plain.value) : expression;
}
