import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	balanceKeyPositions,
	listKeyPositions,
	type NumberQuestion,
} from '../../../item-bank/distractors/balance-key-positions.ts';
import { evaluate } from '../../../item-bank/expression/evaluate.ts';
import { parseExpression } from '../../../item-bank/expression/parse.ts';
import { subjectOf } from '../../../item-bank/patterns/subject.ts';

function question(text: string, count = 3): NumberQuestion {
	const expression = parseExpression(text);
	return { subjects: [subjectOf(expression)], key: evaluate(expression), order: { count } };
}

function tally(places: readonly number[]): readonly number[] {
	return [0, 1, 2, 3].map((place) => places.filter((other) => other === place).length);
}

/** Sum of squares: the smaller, the more even. */
const unevenness = (places: readonly number[]): number => tally(places).reduce((sum, count) => sum + count * count, 0);

/** The most even choice of places, found by trying all. */
function mostEven(choices: readonly (readonly number[])[], places: readonly number[] = []): number {
	const [first, ...rest] = choices;
	if (first === undefined) return unevenness(places);
	return Math.min(...first.map((place) => mostEven(rest, [...places, place])));
}

const texts = [
	'4 - 11',
	'-5 - (-12)',
	'-9 + 2',
	'3 - (-8)',
	'3 + (-8)',
	'-3 + (-8)',
	'-9 - 4',
	'6 × (-7)',
	'-9 - 4 + 7',
	'5 - (-7 + 15)',
];

describe('balancing the places of keys over a form', () => {
	test('spreads keys that would all stand at one place', () => {
		const questions = ['4 - 11', '5 - 13', '6 - 17', '4 - 13', '5 - 14', '7 - 16'].map((text) => question(text));
		const alone = questions.map((one) => balanceKeyPositions([one])[0]?.keyPosition);
		expect(new Set(alone).size).toBe(1);
		const places = balanceKeyPositions(questions).map(({ keyPosition }) => keyPosition);
		expect(tally(places).filter((count) => count > 0)).toEqual([2, 2, 2]);
	});

	test('is as even as trying every choice, with numbers in increasing order', () => {
		fc.assert(
			fc.property(fc.array(fc.constantFrom(...texts), { minLength: 1, maxLength: 6 }), (chosen) => {
				const questions = chosen.map((text) => question(text));
				const choices = balanceKeyPositions(questions);
				expect(unevenness(choices.map(({ keyPosition }) => keyPosition))).toBe(
					mostEven(questions.map(listKeyPositions)),
				);
				for (const { options } of choices) {
					const values = options.map(({ value }) => value);
					expect(values).toEqual(values.toSorted((a, b) => a - b));
				}
			}),
		);
	});

	test('keeps keys and their places true, and says where options are short', () => {
		const questions = texts.map((text) => question(text));
		const choices = balanceKeyPositions(questions);
		expect(choices.map(({ options, keyPosition }) => options[keyPosition]?.value)).toEqual(
			questions.map(({ key }) => key),
		);
		expect(choices.map(({ shortfall }) => shortfall !== undefined)).toEqual(texts.map((text) => text === '6 × (-7)'));
		expect(balanceKeyPositions(questions)).toEqual(choices);
	});

	test('gives an item without any wrong number its key alone', () => {
		expect(balanceKeyPositions([question('6 × 7')])[0]?.options.map(({ value }) => value)).toEqual([42]);
		expect(balanceKeyPositions([])).toEqual([]);
	});
});
