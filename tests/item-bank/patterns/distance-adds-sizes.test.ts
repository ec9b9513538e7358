import { expect, test } from 'vitest';
import { distanceAddsSizes } from '../../../item-bank/patterns/distance-adds-sizes.ts';
import { findWrongAnswer } from '../../../item-bank/patterns/pattern.ts';
import { type Subject, twoNumbers } from '../../../item-bank/patterns/subject.ts';

// Source of the rule: common practice, no source. Worked example: trade reference, section 5.
test('from −3 to −8 is taken to be 11', () => {
	expect(findWrongAnswer(distanceAddsSizes, { kind: 'distance', from: -3, to: -8 })).toEqual(11);
});

test.each<[string, Subject]>([
	['points on both sides of zero', { kind: 'distance', from: -3, to: 8 }],
	['a difference', twoNumbers('subtract', -3, -8)],
])('does not apply to %s', (_, subject) => {
	expect(findWrongAnswer(distanceAddsSizes, subject)).toBeUndefined();
});
