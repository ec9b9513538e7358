import { expect, test } from 'vitest';
import { detachedMinus } from '../../../item-bank/patterns/detached-minus.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: common practice, no source. Worked examples: trade reference, section 5.
test.each([['8 - 3 + 2', 3]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(detachedMinus, text)).toBe(wrong);
});

test.each([
	['8 + 3 - 2', 'a minus before the last term: trade reference, section 5'],
	['8 - 3', 'two numbers'],
	['8 - (3 + 2)', 'parentheses'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(detachedMinus, text)).toBeUndefined();
});

test('stretches the first minus that has two terms after it (our own derivation)', () => {
	expect(wrongAnswerTo(detachedMinus, '50 - 10 + 10 + 10')).toBe(20);
	expect(wrongAnswerTo(detachedMinus, '8 + 9 - 3 + 2')).toBe(12);
	expect(wrongAnswerTo(detachedMinus, '20 - 5 - 4 - 3')).toBe(22);
	expect(wrongAnswerTo(detachedMinus, '2 × (8 - 3 + 2)')).toBe(6);
});
