import type { TwoNumbers } from './subject.ts';
import { workRight } from './work.ts';

/**
 * Whether signs matter in a sum or difference: a number or the result is negative. Patterns about signs leave the rest
 * alone, because 3 + 8 and 8 − 3 are whole-number arithmetic, which they take for granted (our own derivation).
 */
export function isSignedSum({ operator, left, right }: TwoNumbers): boolean {
	if (operator !== 'add' && operator !== 'subtract') return false;
	return left < 0 || right < 0 || (operator === 'subtract' && left < right);
}

/** Whether signs matter in a product or quotient: one of the numbers is negative and neither is 0. */
export function isSignedProduct({ operator, left, right }: TwoNumbers): boolean {
	if (operator !== 'multiply' && operator !== 'divide') return false;
	return (left < 0 || right < 0) && left !== 0 && right !== 0;
}

/** The result of the operation on the sizes; undefined for a quotient with remainder. */
export function workSizes({ operator, left, right }: TwoNumbers): number | undefined {
	return workRight({ operator, left: Math.abs(left), right: Math.abs(right) });
}
