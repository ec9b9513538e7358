import { expect, test } from 'vitest';
import { findWrongAnswer } from '../../../item-bank/patterns/pattern.ts';
import { zeroSkipped } from '../../../item-bank/patterns/zero-skipped.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: common practice, no source. Worked examples: trade reference, section 5.
test.each([['-3 + 5', 3]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(zeroSkipped, text)).toBe(wrong);
});

test.each([
	['3 + 5', 'one side of zero'],
	['3 - 3', 'an end at zero'],
	['0 - 4', 'a start at zero'],
	['-3 × 5', 'a product'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(zeroSkipped, text)).toBeUndefined();
});

test('ends one tick of the line too far for every crossing (our own derivation)', () => {
	expect(findWrongAnswer(zeroSkipped, { kind: 'walk', start: 4, moves: [-12], tickEvery: 2 })).toBe(-10);
	expect(findWrongAnswer(zeroSkipped, { kind: 'walk', start: 0, moves: [4, 7], tickEvery: 1 })).toBeUndefined();
});
