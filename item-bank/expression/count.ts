import type { Expression, MathematicsNode } from './tree.ts';

/** Numbers written in an expression or statement, signs included; the unknown is not a number. */
export function countNumbers(mathematics: MathematicsNode): number {
	return listNodes(mathematics).filter((node) => node.kind === 'number').length;
}

/** How often the unknown ? stands in an expression or statement. */
export function countUnknowns(mathematics: MathematicsNode): number {
	return listNodes(mathematics).filter((node) => node.kind === 'unknown').length;
}

/** Steps of work in an expression: operations on two numbers, absolute values and opposites. */
export function countOperations(mathematics: MathematicsNode): number {
	const worked = ['operation', 'absolute', 'opposite'];
	return listNodes(mathematics).filter((node) => worked.includes(node.kind)).length;
}

/** Every node of an expression or statement, in reading order of their first sign, outer before inner. */
export function listNodes(mathematics: MathematicsNode): readonly Expression[] {
	const nodes: Expression[] = [];
	addNodes(mathematics, nodes);
	return nodes;
}

/** One list for the whole tree: a list for every node takes longer than walking it. */
function addNodes(mathematics: MathematicsNode, nodes: Expression[]): void {
	if (mathematics.kind === 'statement') {
		for (const side of mathematics.sides) addNodes(side, nodes);
		return;
	}
	nodes.push(mathematics);
	switch (mathematics.kind) {
		case 'opposite':
		case 'absolute':
		case 'group':
			addNodes(mathematics.of, nodes);
			return;
		case 'operation':
			addNodes(mathematics.left, nodes);
			addNodes(mathematics.right, nodes);
	}
}
