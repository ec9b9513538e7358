import { expect, test } from 'vitest';
import { orderBySize } from '../../../item-bank/patterns/order-by-size.ts';
import { findWrongAnswer } from '../../../item-bank/patterns/pattern.ts';
import { type Subject, twoNumbers } from '../../../item-bank/patterns/subject.ts';

// Source of the rule: Bofferding 2014. Worked example: trade reference, section 5.
test('−8 is taken to be greater than −7', () => {
	expect(findWrongAnswer(orderBySize, { kind: 'ordering', numbers: [-8, -7] })).toEqual([-7, -8]);
});

test.each<[string, Subject]>([
	['positive numbers', { kind: 'ordering', numbers: [7, 8] }],
	['equal sizes', { kind: 'ordering', numbers: [-4, 4, 7] }],
	['a difference', twoNumbers('subtract', -6, 4)],
])('does not apply to %s', (_, subject) => {
	expect(findWrongAnswer(orderBySize, subject)).toBeUndefined();
});
