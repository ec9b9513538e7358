import type { Expression, Operator } from '../expression/tree.ts';
import { numberNode, operationNode } from '../expression/tree.ts';
import type { StemBlock } from '../types.ts';

const signs: Readonly<Record<Operator, string>> = { add: '+', subtract: '-', multiply: '×', divide: '÷' };

/** A number as it stands after an operator: negative ones in parentheses. */
export function inner(number: number): string {
	return number < 0 ? `(${number})` : String(number);
}

/** One operation on two numbers, as authors type it. */
export function writeOperation(operator: Operator, left: number, right: number): string {
	return `${left} ${signs[operator]} ${inner(right)}`;
}

/** Operations in a row, worked left to right, as authors type them. */
export function writeChain(first: number, links: readonly Link[]): string {
	return links.reduce((text, { operator, number }) => `${text} ${signs[operator]} ${inner(number)}`, String(first));
}

/** An operator and the number after it. */
export interface Link {
	readonly operator: Operator;
	readonly number: number;
}

/** The tree of {@link writeChain}; no product may follow a sum. */
export function chainTree(first: number, links: readonly Link[]): Expression {
	return links.reduce<Expression>(
		(tree, { operator, number }) => operationNode(operator, tree, numberNode(number)),
		numberNode(first),
	);
}

/** A paragraph of a stem. */
export function paragraph(text: string): StemBlock {
	return { kind: 'paragraph', text };
}
