import { operate } from '../../expression/evaluate.ts';
import type { Operator } from '../../expression/tree.ts';
import { twoNumbers } from '../../patterns/subject.ts';
import type { Alignments, Item } from '../../types.ts';
import type { Draw } from '../family.ts';
import { askNumber } from '../number-answer.ts';
import { paragraph, writeOperation } from '../writing.ts';

/** What is said beside an operation on two numbers. */
export interface OperationFacts {
	readonly name: string;
	readonly alignments: Alignments;
	readonly tags: readonly string[];
}

/** Asks for the value of one operation on two numbers in symbols. */
export function askOperation(
	draw: Draw,
	by: 'any' | 'choice' | 'gridded',
	operator: Operator,
	[left = 0, right = 0]: readonly number[],
	{ name, ...facts }: OperationFacts,
): Item | undefined {
	const expression = writeOperation(operator, left, right);
	return askNumber(draw, by, {
		name: `${name}: ${expression}`,
		given: 'symbols',
		stem: [paragraph(`What is \`${expression}\`?`)],
		expression,
		key: operate(operator, left, right),
		subjects: [twoNumbers(operator, left, right)],
		points: 1,
		dok: 1,
		...facts,
	});
}
