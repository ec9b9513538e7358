import { expect, test } from 'vitest';
import { allCountersCounted } from '../../../item-bank/patterns/all-counters-counted.ts';
import { findWrongAnswer } from '../../../item-bank/patterns/pattern.ts';
import { type Subject, twoNumbers } from '../../../item-bank/patterns/subject.ts';

// Source of the rule: common practice, no source. Worked example: trade reference, section 5.
test('3 plus and 5 minus counters are taken to be 8', () => {
	expect(findWrongAnswer(allCountersCounted, { kind: 'counter-set', plus: 3, minus: 5 })).toEqual(8);
});

test.each<[string, Subject]>([
	['plus counters alone', { kind: 'counter-set', plus: 3, minus: 0 }],
	['a sum in symbols', twoNumbers('add', 3, -5)],
])('does not apply to %s', (_, subject) => {
	expect(findWrongAnswer(allCountersCounted, subject)).toBeUndefined();
});
