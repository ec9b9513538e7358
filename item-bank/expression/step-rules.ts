import { printMathematics } from './print.ts';
import {
	type AbsoluteNode,
	isSumOperator,
	type NumberNode,
	numberNode,
	type OperationNode,
	type OppositeNode,
	operationNode,
} from './tree.ts';

/** One piece of work: an operation on two numbers, or the absolute value or opposite of one. */
export type StepPart =
	| (OperationNode & { readonly left: NumberNode; readonly right: NumberNode })
	| (AbsoluteNode & { readonly of: NumberNode })
	| (OppositeNode & { readonly of: NumberNode });

/** The rules by which one piece of work is done. */
export type StepRule =
	| 'subtraction-as-adding-the-opposite'
	| 'whole-number-subtraction'
	| 'same-signs-sum'
	| 'different-signs-sum'
	| 'opposites-sum'
	| 'adding-zero'
	| 'like-signs-product'
	| 'unlike-signs-product'
	| 'zero-product'
	| 'like-signs-quotient'
	| 'unlike-signs-quotient'
	| 'zero-quotient'
	| 'absolute-value'
	| 'opposite';

/** How one piece of work is done: the rule, and its words without capital and full stop. */
export interface StepReason {
	readonly rule: StepRule;
	/** The rule of the sum that a subtraction turns into. */
	readonly sumRule?: StepRule;
	/** Says that a subtraction becomes a sum. */
	readonly rewriting?: string;
	/** Says how the value comes about. */
	readonly working: string;
}

/** The rule and its words for one piece of work with a known value. */
export function explainPart(part: StepPart, value: number): StepReason {
	if (part.kind === 'absolute') {
		const working = `the absolute value of ${print(part.of.value)} is its distance from 0: ${print(value)}`;
		return { rule: 'absolute-value', working };
	}
	if (part.kind === 'opposite') {
		const where = value === 0 ? 'which has no sign' : 'as far from 0 on the other side';
		return { rule: 'opposite', working: `the opposite of ${print(part.of.value)} is ${print(value)}, ${where}` };
	}
	const { operator } = part;
	const [left, right] = [part.left.value, part.right.value];
	if (operator === 'add') return explainSum(left, right, value);
	if (!isSumOperator(operator)) return explainProduct(operator, left, right, value);
	if (right === 0) return { rule: 'adding-zero', working: `taking away 0 changes nothing: ${print(value)}` };
	if (left >= right && right > 0) {
		const working = `taking ${right} away from ${left} leaves ${value}`;
		return { rule: 'whole-number-subtraction', working };
	}
	const sum = explainSum(left, -right, value);
	const becomes = printMathematics(operationNode('add', numberNode(left), numberNode(-right)));
	const rewriting = `subtracting ${print(right)} is adding its opposite, so ${printMathematics(part)} becomes ${becomes}`;
	return { rule: 'subtraction-as-adding-the-opposite', sumRule: sum.rule, rewriting, working: sum.working };
}

function explainSum(left: number, right: number, value: number): StepReason {
	if (left === 0 || right === 0)
		return { rule: 'adding-zero', working: `0 adds nothing, so the sum is ${print(value)}` };
	const sizes = [Math.abs(left), Math.abs(right)];
	const [larger, smaller] = [Math.max(...sizes), Math.min(...sizes)];
	if (left === -right) {
		const working = `${print(left)} and ${print(right)} have equal sizes and different signs, so they make 0, which has no sign`;
		return { rule: 'opposites-sum', working };
	}
	if (left > 0 === right > 0) {
		const both = left > 0 ? 'positive' : 'negative';
		const sum = `${Math.abs(left)} + ${Math.abs(right)} = ${Math.abs(value)}`;
		const working = `both numbers are ${both}, so add the sizes, ${sum}, and keep the sign: ${print(value)}`;
		return { rule: 'same-signs-sum', working };
	}
	const kept = print(Math.abs(left) > Math.abs(right) ? left : right);
	const difference = `${larger} − ${smaller} = ${Math.abs(value)}`;
	const working = `the signs differ, so subtract the sizes, ${difference}, and keep the sign of ${kept}, the number of larger size: ${print(value)}`;
	return { rule: 'different-signs-sum', working };
}

function explainProduct(operator: 'multiply' | 'divide', left: number, right: number, value: number): StepReason {
	const isProduct = operator === 'multiply';
	if (value === 0) {
		if (isProduct) return { rule: 'zero-product', working: 'a product with the factor 0 is 0, which has no sign' };
		return { rule: 'zero-quotient', working: '0 divided by another number is 0, which has no sign' };
	}
	const sizes = printMathematics(operationNode(operator, numberNode(Math.abs(left)), numberNode(Math.abs(right))));
	const work = `and ${sizes} = ${Math.abs(value)}, so the value is ${print(value)}`;
	const result = isProduct ? 'product' : 'quotient';
	if (value > 0) return { rule: `like-signs-${result}`, working: `like signs make a positive ${result}, ${work}` };
	return { rule: `unlike-signs-${result}`, working: `unlike signs make a negative ${result}, ${work}` };
}

function print(value: number): string {
	return printMathematics(numberNode(value));
}
