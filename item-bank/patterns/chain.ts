import { type Expression, isSumOperator, type Operator, operationNode } from '../expression/tree.ts';

/** Operations of one rank in writing order, worked left to right: + and −, or × and ÷. */
export interface Chain {
	readonly first: Expression;
	readonly links: readonly { readonly operator: Operator; readonly operand: Expression }[];
}

/** Rebuilds every chain of an expression, inner ones too; undefined from the callback leaves a chain as it is. */
export function rebind(expression: Expression, bind: (chain: Chain) => Expression | undefined): Expression {
	switch (expression.kind) {
		case 'number':
		case 'unknown':
			return expression;
		case 'group':
		case 'absolute':
		case 'opposite':
			return { ...expression, of: rebind(expression.of, bind) };
		case 'operation': {
			const { first, links } = readChain(expression, isSumOperator(expression.operator));
			const chain = {
				first: rebind(first, bind),
				links: links.map(({ operator, operand }) => ({ operator, operand: rebind(operand, bind) })),
			};
			return bind(chain) ?? bindLeft(chain.first, chain.links);
		}
		default:
			return expression satisfies never;
	}
}

/** The operations worked left to right. */
export function bindLeft(first: Expression, links: Chain['links']): Expression {
	return links.reduce((left, { operator, operand }) => operationNode(operator, left, operand), first);
}

function readChain(expression: Expression, isSum: boolean): Chain {
	if (expression.kind !== 'operation' || isSumOperator(expression.operator) !== isSum) {
		return { first: expression, links: [] };
	}
	const { first, links } = readChain(expression.left, isSum);
	return { first, links: [...links, { operator: expression.operator, operand: expression.right }] };
}
