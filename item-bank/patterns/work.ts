import { type Expression, LARGEST_NUMBER } from '../expression/tree.ts';
import type { Slips } from './slips.ts';
import type { Answer, Subject, TwoNumbers } from './subject.ts';

/**
 * The answer somebody arrives at who makes the slips, right wherever they do not apply; undefined when the work comes
 * to something that is no integer of the bank: a remainder, a division by zero, an unknown, a number out of range.
 */
export function answerUnder(slips: Slips, subject: Subject): Answer | undefined {
	switch (subject.kind) {
		case 'two-numbers':
			return workTwoNumbers(slips, subject);
		case 'expression':
			return workExpression(slips, slips.regrouping?.(subject.expression) ?? subject.expression);
		case 'ordering':
			return slips.ordering?.(subject.numbers) ?? [...subject.numbers].sort((a, b) => a - b);
		case 'distance':
			return keep(slips.distance?.(subject.from, subject.to) ?? Math.abs(subject.from - subject.to));
		case 'counter-set':
			return keep(slips.counterSet?.(subject) ?? subject.plus - subject.minus);
		case 'walk':
			return keep(slips.walk?.(subject) ?? subject.moves.reduce((at, move) => at + move, subject.start));
		case 'absolute-value':
			return keep(slips.absoluteValue?.(subject.of) ?? Math.abs(subject.of));
		case 'opposite-number':
			return keep(slips.oppositeNumber?.(subject.of) ?? -subject.of);
		case 'grid-entry':
			return keep(slips.gridEntry?.(subject.value) ?? subject.value);
		default:
			return subject satisfies never;
	}
}

/** The value of an expression under slips, made at every step of the work; no regrouping. Undefined as above. */
export function workExpression(slips: Slips, expression: Expression): number | undefined {
	switch (expression.kind) {
		case 'number':
			return keep(expression.value);
		case 'unknown':
			return undefined;
		case 'group':
			return workExpression(slips, expression.of);
		case 'absolute': {
			const of = workExpression(slips, expression.of);
			return of === undefined ? undefined : keep(slips.absoluteValue?.(of) ?? Math.abs(of));
		}
		case 'opposite': {
			const of = workExpression(slips, expression.of);
			return of === undefined ? undefined : keep(slips.oppositeNumber?.(of) ?? -of);
		}
		case 'operation': {
			const left = workExpression(slips, expression.left);
			const right = workExpression(slips, expression.right);
			if (left === undefined || right === undefined) return undefined;
			return workTwoNumbers(slips, { operator: expression.operator, left, right });
		}
		default:
			return expression satisfies never;
	}
}

/** The result of one operation under slips. Undefined as above. */
export function workTwoNumbers(slips: Slips, given: TwoNumbers): number | undefined {
	const slipped = slips.twoNumbers?.(given);
	return typeof slipped === 'number' ? keep(slipped) : workRight(slipped ?? given);
}

/** The right result of one operation. Undefined as above; unlike `operate` it never throws, and patterns miss often. */
export function workRight({ operator, left, right }: TwoNumbers): number | undefined {
	switch (operator) {
		case 'add':
			return keep(left + right);
		case 'subtract':
			return keep(left - right);
		case 'multiply':
			return keep(left * right);
		case 'divide':
			return right === 0 || left % right !== 0 ? undefined : keep(left / right);
		default:
			return operator satisfies never;
	}
}

function keep(value: number): number | undefined {
	if (!Number.isInteger(value) || Math.abs(value) > LARGEST_NUMBER) return undefined;
	return value === 0 ? 0 : value;
}
