import { type Expression, operationNode } from '../expression/tree.ts';
import { bindLeft, type Chain, rebind } from './chain.ts';
import type { ErrorPattern } from './pattern.ts';

/** a − b + c becomes a − (b + c): 8 − 3 + 2 as 8 − 5. In a + b − c it does not show. */
export const detachedMinus: ErrorPattern = {
	id: 'detached-minus',
	name: 'the minus is stretched over all that follows',
	sentence: 'Consistent with subtracting everything that follows a minus, as if it stood in parentheses.',
	source: 'common practice, no source',
	evidence: 'practice',
	slips: {
		regrouping: (expression) => rebind(expression, stretchMinus),
	},
};

/** The first minus with more than one term after it takes all of them, worked left to right. */
function stretchMinus({ first, links }: Chain): Expression | undefined {
	const at = links.findIndex(({ operator }, index) => operator === 'subtract' && index < links.length - 1);
	const minus = links[at];
	if (minus === undefined) return undefined;
	const before = bindLeft(first, links.slice(0, at));
	return operationNode('subtract', before, bindLeft(minus.operand, links.slice(at + 1)));
}
