import type {
	ChoiceItem,
	ExplanationItem,
	GriddedItem,
	InlineChoiceItem,
	MatchItem,
	MultipleChoiceItem,
	OrderItem,
	PointItem,
	SetItem,
} from '../../item-bank/types.ts';

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

const entries = (...math: readonly string[]): OrderItem['entries'] =>
	math.map((text, index) => ({ id: String.fromCharCode(97 + index), content: { kind: 'mathematics', math: text } }));

/** A point item on a line from -10 to 10 that passes every check. */
export function makePoint(changes: Partial<PointItem> = {}): PointItem {
	return {
		kind: 'point',
		name: 'Mark a sum',
		given: 'number-line',
		answerIn: 'number-line',
		stem: [{ kind: 'paragraph', text: 'Mark the value of `-3 + (-4)`.' }],
		line: { kind: 'number-line', orientation: 'horizontal', from: -10, to: 10, tickEvery: 1, labels: 'ends-and-zero' },
		expression: '-3 + (-4)',
		points: 1,
		dok: 2,
		alignments,
		...changes,
	};
}

/** An order item with four entries that passes every check; its key is c, a, d, b. */
export function makeOrder(changes: Partial<OrderItem> = {}): OrderItem {
	return {
		kind: 'order',
		name: 'Order four numbers',
		given: 'symbols',
		answerIn: 'number',
		stem: [{ kind: 'paragraph', text: 'Put the numbers in order from least to greatest.' }],
		entries: entries('-4', '7', '-9', '2'),
		direction: 'ascending',
		points: 1,
		dok: 1,
		alignments,
		...changes,
	};
}

/** A match item of three sums and four values that passes every check; its key is a-c, b-a, c-d. */
export function makeMatch(changes: Partial<MatchItem> = {}): MatchItem {
	return {
		kind: 'match',
		name: 'Match sums and values',
		given: 'symbols',
		answerIn: 'number',
		stem: [{ kind: 'paragraph', text: 'Match each sum with its value.' }],
		left: entries('-3 + 8', '3 + (-8)', '-3 + (-8)'),
		right: entries('-5', '11', '5', '-11'),
		partners: 'same-value',
		points: 3,
		dok: 2,
		alignments,
		...changes,
	};
}

/** An inline choice of a relation that passes every check; its key is a. */
export function makeInlineChoice(changes: Partial<InlineChoiceItem> = {}): InlineChoiceItem {
	return {
		kind: 'inline-choice',
		name: 'Compare two negatives',
		given: 'symbols',
		answerIn: 'statement',
		stem: [{ kind: 'paragraph', text: 'Choose the sign that makes the statement true.' }],
		statement: '-8 _ -3',
		choices: ['<', '>', '='].map((math, index) => ({ id: 'abc'[index] ?? '', math })),
		points: 1,
		dok: 1,
		alignments,
		...changes,
	};
}

/** An explanation worth two points that passes every check. */
export function makeExplanation(changes: Partial<ExplanationItem> = {}): ExplanationItem {
	return {
		kind: 'explanation',
		name: 'Explain a difference',
		given: 'symbols',
		answerIn: 'words',
		stem: [{ kind: 'paragraph', text: 'Explain why `3 - (-8)` is greater than `3`.' }],
		lines: 6,
		rubric: [
			{ points: 2, descriptor: 'Says that subtracting `-8` is adding `8`, and why that makes the value greater.' },
			{ points: 1, descriptor: 'Finds `11` without a reason.' },
			{ points: 0, descriptor: 'Neither.' },
		],
		points: 2,
		dok: 3,
		alignments,
		...changes,
	};
}

/** A set of a choice and a gridded item over one story that passes every check. */
export function makeSet(changes: Partial<SetItem> = {}): SetItem {
	return {
		kind: 'set',
		name: 'Two questions about a lift',
		given: 'story',
		answerIn: 'number',
		stem: [{ kind: 'paragraph', text: 'A mine lift stops at `-9` metres. Use this for both questions.' }],
		parts: [makeChoice(), makeGridded({ points: 2 })],
		points: 3,
		dok: 2,
		context: { setting: 'mine-lift', role: 'position' },
		alignments,
		...changes,
	};
}
