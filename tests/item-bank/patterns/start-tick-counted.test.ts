import { expect, test } from 'vitest';
import { findWrongAnswer } from '../../../item-bank/patterns/pattern.ts';
import { startTickCounted } from '../../../item-bank/patterns/start-tick-counted.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: common practice, no source. Worked examples: trade reference, section 5.
test.each([['-3 + 5', 1]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(startTickCounted, text)).toBe(wrong);
});

test.each([
	['3 + 0', 'no move'],
	['3 × 5', 'a product'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(startTickCounted, text)).toBeUndefined();
});

test('falls one tick of the line short, with every move (our own derivation)', () => {
	expect(findWrongAnswer(startTickCounted, { kind: 'walk', start: 4, moves: [-12], tickEvery: 2 })).toBe(-6);
	expect(findWrongAnswer(startTickCounted, { kind: 'walk', start: 0, moves: [4, 7], tickEvery: 1 })).toBe(9);
});
