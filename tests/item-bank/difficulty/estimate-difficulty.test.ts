import { describe, expect, test } from 'vitest';
import { estimateDifficulty } from '../../../item-bank/difficulty/estimate-difficulty.ts';
import { countWords, readingLoadOf } from '../../../item-bank/difficulty/reading.ts';
import { makeChoice, makeGridded, makeMultipleChoice } from '../../helpers/items.ts';

const ask = (expression: string) =>
	makeGridded({ expression, stem: [{ kind: 'paragraph', text: `What is \`${expression}\`?` }] });

describe('the estimate of difficulty', () => {
	test('starts at 1, adds what each feature says and rounds', () => {
		// −3 − (−8): passes zero 1, subtracts a negative 1.5, no options 0.5: 1 + 3 = 4.
		const estimate = estimateDifficulty(ask('-3 - (-8)'));
		expect(estimate.features.map(({ name, worth }) => `${name} ${worth}`)).toEqual([
			'passes zero 1',
			'subtracts a negative number 1.5',
			'the way of answering 0.5',
		]);
		expect(estimate.score).toBe(4);
	});

	test('rises with more operations, larger numbers and a missing number', () => {
		const scores = ['-3 + (-4)', '-30 + (-40)', '-30 + (-40) - 25'].map((text) => estimateDifficulty(ask(text)).score);
		expect(scores).toEqual([...scores].sort((a, b) => a - b));
		expect(new Set(scores).size).toBe(3);
		const missing = makeGridded({ expression: '5 - (-8)', stem: [{ kind: 'mathematics', math: '-8 + ? = 5' }] });
		expect(estimateDifficulty(missing).features.map(({ name }) => name)).toContain('missing number');
	});

	test('counts finding every right option, and finding the calculation in a story', () => {
		expect(estimateDifficulty(makeMultipleChoice()).features.map(({ name }) => name)).toContain('the way of answering');
		const story = makeChoice({ given: 'story', context: { setting: 'mine-lift', role: 'change' } });
		expect(estimateDifficulty(story).score).toBe(estimateDifficulty(makeChoice()).score + 1);
	});

	test('leaves depth of knowledge out and stays between 1 and 10', () => {
		expect(estimateDifficulty({ ...ask('-3 - (-8)'), dok: 3 })).toEqual(estimateDifficulty(ask('-3 - (-8)')));
		const hardest = makeGridded({
			given: 'story',
			expression: '-120 - (-450) - (-30) + (-800)',
			stem: [{ kind: 'paragraph', text: `${'word '.repeat(80)}?` }],
		});
		expect(estimateDifficulty(hardest).score).toBe(10);
	});
});

describe('the reading load', () => {
	test('counts words, with mathematics between backticks as one, in stem, table and options', () => {
		expect(countWords(ask('-3 - (-8)'))).toBe(3);
		const table = makeGridded({
			stem: [
				{ kind: 'table', caption: 'Two readings', header: ['Time', 'Height in metres'], rows: [['noon', '`-5`']] },
			],
		});
		expect(countWords(table)).toBe(2 + 1 + 3 + 1 + 1);
	});

	test('is rounded up to fives', () => {
		expect(readingLoadOf(ask('-3 - (-8)'))).toBe(5);
		expect(readingLoadOf(makeGridded({ stem: [{ kind: 'paragraph', text: 'one two three four five six' }] }))).toBe(10);
	});
});
