import { expect, test } from 'vitest';
import { absoluteValueAsOpposite } from '../../../item-bank/patterns/absolute-value-as-opposite.ts';
import { findWrongAnswer } from '../../../item-bank/patterns/pattern.ts';
import type { Subject } from '../../../item-bank/patterns/subject.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: common practice, no source. Worked example: trade reference, section 5.
test('|7| is taken to be −7', () => {
	expect(findWrongAnswer(absoluteValueAsOpposite, { kind: 'absolute-value', of: 7 })).toEqual(-7);
});

test.each<[string, Subject]>([
	['a negative number', { kind: 'absolute-value', of: -7 }],
	['zero', { kind: 'absolute-value', of: 0 }],
	['an opposite', { kind: 'opposite-number', of: 7 }],
])('does not apply to %s', (_, subject) => {
	expect(findWrongAnswer(absoluteValueAsOpposite, subject)).toBeUndefined();
});

test('changes the sign inside longer work (our own derivation)', () => {
	expect(wrongAnswerTo(absoluteValueAsOpposite, '|-3 + 11|')).toBe(-8);
});
