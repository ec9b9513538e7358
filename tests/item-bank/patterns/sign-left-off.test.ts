import { expect, test } from 'vitest';
import { findWrongAnswer } from '../../../item-bank/patterns/pattern.ts';
import { signLeftOff } from '../../../item-bank/patterns/sign-left-off.ts';
import { type Subject, twoNumbers } from '../../../item-bank/patterns/subject.ts';

// Source of the rule: gridding directions in Texas: an answer without a marked sign counts as positive. Worked example: trade reference, section 5.
test('-6 − 4 marked without its sign', () => {
	expect(findWrongAnswer(signLeftOff, { kind: 'grid-entry', value: -10 })).toEqual(10);
});

test.each<[string, Subject]>([
	['a positive answer', { kind: 'grid-entry', value: 10 }],
	['work that is not a grid', twoNumbers('subtract', -6, 4)],
])('does not apply to %s', (_, subject) => {
	expect(findWrongAnswer(signLeftOff, subject)).toBeUndefined();
});
