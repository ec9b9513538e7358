import { type Expression, operationNode } from '../expression/tree.ts';
import { bindLeft, type Chain, rebind } from './chain.ts';
import type { ErrorPattern } from './pattern.ts';

/** a − b − c becomes a − (b − c): 10 − 4 − 3 as 10 − 1. × and ÷ still come before + and −. */
export const rightToLeft: ErrorPattern = {
	id: 'right-to-left',
	name: 'equals are worked right to left',
	sentence: 'Consistent with working from right to left among + and −, or among × and ÷.',
	source: 'Gumpo 2014 (abstract)',
	evidence: 'study',
	slips: {
		regrouping: (expression) => rebind(expression, bindRight),
	},
};

/** Every operation takes the result of all that follows it. */
function bindRight({ first, links }: Chain): Expression | undefined {
	const [next, ...later] = links;
	if (next === undefined || later.length === 0) return undefined;
	const rest = bindRight({ first: next.operand, links: later }) ?? bindLeft(next.operand, later);
	return operationNode(next.operator, first, rest);
}
