import { expect, test } from 'vitest';
import { majorityColourOnly } from '../../../item-bank/patterns/majority-colour-only.ts';
import { findWrongAnswer } from '../../../item-bank/patterns/pattern.ts';
import { type Subject, twoNumbers } from '../../../item-bank/patterns/subject.ts';

// Source of the rule: common practice, no source. Worked example: trade reference, section 5.
test('3 plus and 5 minus counters are taken to be −5', () => {
	expect(findWrongAnswer(majorityColourOnly, { kind: 'counter-set', plus: 3, minus: 5 })).toEqual(-5);
});

test.each<[string, Subject]>([
	['no majority', { kind: 'counter-set', plus: 4, minus: 4 }],
	['minus counters alone', { kind: 'counter-set', plus: 0, minus: 4 }],
	['a sum in symbols', twoNumbers('add', 3, -5)],
])('does not apply to %s', (_, subject) => {
	expect(findWrongAnswer(majorityColourOnly, subject)).toBeUndefined();
});
