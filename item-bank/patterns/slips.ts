import type { Expression } from '../expression/tree.ts';
import type { CounterSet, TwoNumbers, Walk } from './subject.ts';

/**
 * What a wrong idea does to each piece of work. A slip that is left out, or that answers undefined, does not apply:
 * that piece is done right. Slips are given integers; they never throw.
 */
export interface Slips {
	/** The result, or the two numbers that are worked with instead. */
	readonly twoNumbers?: (given: TwoNumbers) => number | TwoNumbers | undefined;
	readonly oppositeNumber?: (of: number) => number | undefined;
	readonly absoluteValue?: (of: number) => number | undefined;
	/** The expression that is worked out instead, one with the same numbers and operations bound differently. */
	readonly regrouping?: (expression: Expression) => Expression | undefined;
	/** The numbers from least to greatest. */
	readonly ordering?: (numbers: readonly number[]) => readonly number[] | undefined;
	readonly distance?: (from: number, to: number) => number | undefined;
	readonly counterSet?: (set: CounterSet) => number | undefined;
	/** Where the walk ends. */
	readonly walk?: (walk: Walk) => number | undefined;
	readonly gridEntry?: (value: number) => number | undefined;
}
