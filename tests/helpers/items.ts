import type { ChoiceItem, GriddedItem, MultipleChoiceItem } from '../../item-bank/types.ts';

const alignments: GriddedItem['alignments'] = [
	{ framework: 'teks-math', edition: '2012', code: '6.3(D)', grade: '6', extent: 'full', primary: true },
];

/** A gridded item that passes every check; give what the test is about. */
export function makeGridded(changes: Partial<GriddedItem> = {}): GriddedItem {
	return {
		kind: 'gridded',
		name: 'A difference of negatives',
		given: 'symbols',
		answerIn: 'number',
		stem: [{ kind: 'paragraph', text: 'What is `-3 - (-8)`?' }],
		expression: '-3 - (-8)',
		grid: 'plain-sign-first',
		points: 1,
		dok: 1,
		alignments,
		...changes,
	};
}

/** A choice item with four numbers that passes every check. */
export function makeChoice(changes: Partial<ChoiceItem> = {}): ChoiceItem {
	return {
		kind: 'choice',
		name: 'A sum of unlike signs',
		given: 'symbols',
		answerIn: 'number',
		stem: [{ kind: 'paragraph', text: 'What is `-9 + 2`?' }],
		options: numberOptions(-11, -7, 7, 11),
		rule: { kind: 'same-value', expression: '-9 + 2' },
		points: 1,
		dok: 1,
		alignments,
		...changes,
	};
}

/** A multiple-choice item with two keys that passes every check. */
export function makeMultipleChoice(changes: Partial<MultipleChoiceItem> = {}): MultipleChoiceItem {
	return {
		kind: 'multiple-choice',
		name: 'True comparisons',
		given: 'symbols',
		answerIn: 'statement',
		stem: [{ kind: 'paragraph', text: 'Which statements are true?' }],
		options: ['-8 < -3', '-8 > -3', '0 > -5', '2 < -7'].map((math, index) => ({
			id: String.fromCharCode(97 + index),
			content: { kind: 'mathematics' as const, math },
		})),
		rule: { kind: 'true-statement' },
		points: 1,
		dok: 1,
		alignments,
		...changes,
	};
}

/** Options a, b, c … showing the numbers. */
export function numberOptions(...values: readonly number[]): ChoiceItem['options'] {
	return values.map((value, index) => ({
		id: String.fromCharCode(97 + index),
		content: { kind: 'mathematics', math: String(value) },
	}));
}
