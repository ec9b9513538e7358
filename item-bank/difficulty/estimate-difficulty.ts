import { listNodes } from '../expression/count.ts';
import { askedMathematics, numbersIn } from '../forms/asked.ts';
import { crossesZero, hasUnknown, shapeOf, subtractsNegative } from '../forms/shape.ts';
import type { Item } from '../types.ts';
import { countWords } from './reading.ts';

/** One reason why an item is taken to be harder, and the steps it adds. */
export interface DifficultyFeature {
	readonly name: string;
	/** Steps added, in halves. */
	readonly worth: number;
}

/** How hard an item is taken to be before anybody has answered it. */
export interface DifficultyEstimate {
	/** Whole number from 1 (easiest) to 10. */
	readonly score: number;
	/** What the score is made of, beside the 1 every item starts with. */
	readonly features: readonly DifficultyFeature[];
}

/**
 * An estimate from what an item looks like, never from answers: it starts at 1 and adds for terms, sizes, passing zero,
 * signs, subtracting a negative, reading and the way of answering; rounded, halves up, at most 10. The weights are common
 * practice without a source. Depth of knowledge is left out on purpose, because it is not difficulty.
 */
export function estimateDifficulty(item: Item): DifficultyEstimate {
	const features = [...calculationFeatures(item), ...presentationFeatures(item)].filter(({ worth }) => worth > 0);
	const sum = features.reduce((total, { worth }) => total + worth, 1);
	return { score: Math.min(10, Math.round(sum)), features };
}

function calculationFeatures(item: Item): readonly DifficultyFeature[] {
	const asked = askedMathematics(item);
	if (asked === undefined) return [];
	const nodes = listNodes(asked);
	const operations = nodes.filter(({ kind }) => kind === 'operation').length;
	const signsTaken = nodes.filter(({ kind }) => kind === 'absolute' || kind === 'opposite').length;
	const largest = Math.max(0, ...numbersIn(asked).map(Math.abs));
	const shape = shapeOf(item);
	return [
		{ name: 'more than one operation', worth: Math.min(3, Math.max(0, operations - 1) * 1.5) },
		{ name: 'absolute values and opposites', worth: Math.min(1, signsTaken * 0.5) },
		{ name: 'size of the numbers', worth: largest > 100 ? 1.5 : largest > 20 ? 1 : largest > 10 ? 0.5 : 0 },
		{ name: 'passes zero', worth: crossesZero(asked) ? 1 : 0 },
		{ name: 'subtracts a negative number', worth: subtractsNegative(asked) ? 1.5 : 0 },
		{ name: 'signs to decide on', worth: signWorth(shape) },
		{ name: 'missing number', worth: hasUnknown(item) ? 1 : 0 },
	];
}

function signWorth(shape: ReturnType<typeof shapeOf>): number {
	switch (shape) {
		case 'sum-of-negatives':
		case 'product-unlike-signs':
		case 'quotient-unlike-signs':
		case 'order':
			return 0.5;
		case 'sum-unlike-signs':
		case 'negative-minus-positive':
		case 'positive-minus-greater':
		case 'product-of-negatives':
		case 'quotient-of-negatives':
			return 1;
		case 'minus-negative':
		case 'several-steps':
		case 'size-or-opposite':
		case 'no-negative':
		case 'other':
			return 0;
		default:
			return shape satisfies never;
	}
}

function presentationFeatures(item: Item): readonly DifficultyFeature[] {
	const words = countWords(item);
	const isWrapped = item.given === 'story' || item.given === 'table';
	return [
		{ name: 'reading', worth: words > 60 ? 1.5 : words > 40 ? 1 : words > 20 ? 0.5 : 0 },
		{ name: 'the calculation has to be found in a story or table', worth: isWrapped ? 1 : 0 },
		{ name: 'the way of answering', worth: kindWorth(item.kind) },
	];
}

/** Steps for the way of answering, beside one choice among options. */
function kindWorth(kind: Item['kind']): number {
	switch (kind) {
		case 'choice':
		case 'point':
		case 'set':
			return 0;
		case 'gridded':
		case 'inline-choice':
			return 0.5;
		case 'order':
		case 'match':
			return 1;
		case 'multiple-choice':
			return 1.5;
		case 'explanation':
			return 2;
		default:
			return kind satisfies never;
	}
}
