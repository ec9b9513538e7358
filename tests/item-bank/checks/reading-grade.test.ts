import { describe, expect, test } from 'vitest';
import { countSyllables, measureReading } from '../../../item-bank/checks/reading-grade.ts';

/**
 * Worked by hand with the published constants, 0.39 · words / sentences + 11.8 · syllables / words − 15.59 (Kincaid and
 * others 1975, as quoted in reference works). Syllables counted with a finger:
 * The (1) wa-ter (2) in (1) the (1) har-bour (2) fell (1) all (1) day (1): 8 words, 10 syllables.
 * We (1) read (1) the (1) gauge (1) at (1) noon (1) and (1) wrote (1) the (1) num-ber (2) down (1): 11 words, 12 syllables.
 */
const passage = 'The water in the harbour fell all day. We read the gauge at noon and wrote the number down. ';

describe('the reading grade', () => {
	test('is the one worked by hand', () => {
		// Six times: 114 words, 12 sentences, 132 syllables. 0.39 · 9.5 + 11.8 · 132 / 114 − 15.59 = 3.705 + 13.663 − 15.59.
		expect(measureReading([passage.repeat(6).trim()])).toBeCloseTo(1.778, 2);
	});

	test('leaves out mathematics and numerals', () => {
		const withNumbers = passage.replace('noon', '12 noon').replace('number', 'number □').repeat(6).trim();
		expect(measureReading([withNumbers])).toBeCloseTo(1.778, 2);
	});

	test('is the same for texts that are pooled', () => {
		expect(measureReading(Array.from({ length: 6 }, () => passage.trim()))).toBeCloseTo(1.778, 2);
	});

	test('says nothing about fewer than 100 words', () => {
		expect(measureReading([passage.repeat(5).trim()])).toBeUndefined();
		expect(measureReading([])).toBeUndefined();
	});
});

test.each([
	['the', 1],
	['lift', 1],
	['table', 2],
	['whole', 1],
	['moved', 1],
	['started', 2],
	['rises', 2],
	['times', 1],
	['changes', 2],
	['degrees', 2],
	['negative', 3],
	['temperature', 4],
	['number', 2],
	['gauge', 1],
	['harbour', 2],
	['zero', 2],
	['made', 1],
])('"%s" has %i syllables', (word, syllables) => {
	expect(countSyllables(word)).toBe(syllables);
});
