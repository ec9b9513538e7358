import { normaliseMathematics } from './normalise.ts';
import type { Expression, MathematicsNode, Operator, Relation } from './tree.ts';

const operatorWords: Readonly<Record<Operator, string>> = {
	add: 'plus',
	subtract: 'minus',
	multiply: 'times',
	divide: 'divided by',
};

const relationWords: Readonly<Record<Relation, string>> = {
	'=': 'equals',
	'<': 'is less than',
	'>': 'is greater than',
	'≤': 'is less than or equal to',
	'≥': 'is greater than or equal to',
};

/**
 * The words for an expression or statement, so that two different ones never sound alike: a negative number is
 * "negative 3", a minus before anything else "the opposite of", an operation "minus". Parentheses are spoken except
 * around a single opposite or absolute value, and an absolute value of more than a number says where it ends.
 */
export function speakMathematics(mathematics: MathematicsNode): string {
	const normal = normaliseMathematics(mathematics);
	if (normal.kind !== 'statement') return speakSide(normal);
	return normal.sides
		.map((side, index) => {
			const relation = normal.relations[index - 1];
			const link = relation === undefined ? '' : `${index > 1 ? ', which' : ''} ${relationWords[relation]} `;
			return link + speakSide(side);
		})
		.join('');
}

function speakSide(side: Expression): string {
	return speakExpression(side).replaceAll(/,(?=,|$)/g, '');
}

function speakExpression(expression: Expression): string {
	switch (expression.kind) {
		case 'number':
			return expression.value < 0 ? `negative ${-expression.value}` : String(expression.value);
		case 'unknown':
			return 'what number';
		case 'opposite':
			return `the opposite of ${speakExpression(expression.of)}`;
		case 'absolute':
			return `the absolute value of ${speakInBars(expression.of)}`;
		case 'group': {
			const inner = speakExpression(expression.of);
			const isSingle = expression.of.kind === 'opposite' || expression.of.kind === 'absolute';
			return isSingle ? inner : `open parenthesis ${inner} close parenthesis`;
		}
		case 'operation': {
			const { left, operator, right } = expression;
			return `${speakExpression(left)} ${operatorWords[operator]} ${speakExpression(right)}`;
		}
		default:
			return expression satisfies never;
	}
}

function speakInBars(of: Expression): string {
	const inner = speakExpression(of);
	return of.kind === 'number' || of.kind === 'unknown' ? inner : `the quantity ${inner}, end of absolute value,`;
}
