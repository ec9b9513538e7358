import { type Expression, numberNode, type Operator, operationNode } from '../expression/tree.ts';
import { numberIn, withoutGroups } from '../figures/terms.ts';
import { answerUnder } from './work.ts';

/** An operation on two integers. */
export interface TwoNumbers {
	readonly operator: Operator;
	readonly left: number;
	readonly right: number;
}

/** Counters that count, those taken away left out. */
export interface CounterSet {
	readonly plus: number;
	readonly minus: number;
}

/** Moves along a number line, one after the other; negative is left or down. Everything stands on ticks. */
export interface Walk {
	readonly start: number;
	readonly moves: readonly number[];
	/** Distance from tick to tick, 1 or more. */
	readonly tickEvery: number;
}

/** What a student works on when a wrong idea shows. */
export type Subject =
	| ({ readonly kind: 'two-numbers' } & TwoNumbers)
	| { readonly kind: 'expression'; readonly expression: Expression }
	/** Different numbers to be put from least to greatest; two of them are a comparison. */
	| { readonly kind: 'ordering'; readonly numbers: readonly number[] }
	| { readonly kind: 'distance'; readonly from: number; readonly to: number }
	| ({ readonly kind: 'counter-set' } & CounterSet)
	| ({ readonly kind: 'walk' } & Walk)
	| { readonly kind: 'absolute-value'; readonly of: number }
	| { readonly kind: 'opposite-number'; readonly of: number }
	/** The right answer, about to be marked on a signed answer grid. */
	| { readonly kind: 'grid-entry'; readonly value: number };

/** A number, or numbers from least to greatest. */
export type Answer = number | readonly number[];

/** An operation on two integers as a subject. */
export function twoNumbers(operator: Operator, left: number, right: number): Extract<Subject, { kind: 'two-numbers' }> {
	return { kind: 'two-numbers', operator, left, right };
}

/** Two numbers as an expression, such as to print a probe. */
export function expressionOf({ operator, left, right }: TwoNumbers): Expression {
	return operationNode(operator, numberNode(left), numberNode(right));
}

/** The plainest subject of an expression: two numbers, an absolute value or an opposite of one number, or else all of it. */
export function subjectOf(expression: Expression): Subject {
	const plain = withoutGroups(expression);
	if (plain.kind === 'operation') {
		const [left, right] = [numberIn(plain.left), numberIn(plain.right)];
		if (left !== undefined && right !== undefined) return twoNumbers(plain.operator, left, right);
	}
	if (plain.kind === 'absolute' || plain.kind === 'opposite') {
		const of = numberIn(plain.of);
		if (of !== undefined) return { kind: plain.kind === 'absolute' ? 'absolute-value' : 'opposite-number', of };
	}
	return { kind: 'expression', expression: plain };
}

/** The right answer; undefined where there is none in the bank, such as for a division with a remainder. */
export function findRightAnswer(subject: Subject): Answer | undefined {
	return answerUnder({}, subject);
}
