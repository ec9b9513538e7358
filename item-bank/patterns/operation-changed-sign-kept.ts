import type { ErrorPattern } from './pattern.ts';
import { isSignedSum } from './signed-work.ts';

/** a − b becomes a + b: −6 − 4 as −6 + 4. */
export const operationChangedSignKept: ErrorPattern = {
	id: 'operation-changed-sign-kept',
	name: 'the operation is changed but not the sign',
	sentence: 'Consistent with changing subtraction to addition and leaving the sign of the second number as it is.',
	source: 'common practice, no source',
	evidence: 'practice',
	slips: {
		twoNumbers: (given) =>
			given.operator === 'subtract' && isSignedSum(given)
				? { operator: 'add', left: given.left, right: given.right }
				: undefined,
	},
};
