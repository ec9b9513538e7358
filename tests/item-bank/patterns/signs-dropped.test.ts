import { expect, test } from 'vitest';
import { findWrongAnswer } from '../../../item-bank/patterns/pattern.ts';
import { signsDropped } from '../../../item-bank/patterns/signs-dropped.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: Aqazade and Bofferding 2021. Worked examples: trade reference, section 5.
test.each([['-9 + 2', 11]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(signsDropped, text)).toBe(wrong);
});

test.each([
	['9 - 2', 'no sign to drop'],
	['7', 'a single number'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(signsDropped, text)).toBeUndefined();
});

test('works with sizes in products and quotients, opposites and positions too (our own derivation)', () => {
	expect(wrongAnswerTo(signsDropped, '-6 × 7')).toBe(42);
	expect(wrongAnswerTo(signsDropped, '42 ÷ (-6)')).toBe(7);
	expect(wrongAnswerTo(signsDropped, '-(5)')).toBe(5);
	expect(findWrongAnswer(signsDropped, { kind: 'walk', start: 0, moves: [-6], tickEvery: 1 })).toBe(6);
});
