import { expect, test } from 'vitest';
import { typedOperation } from '../../../../item-bank/checks/review/typed-operation.ts';
import { asking, found } from '../found.ts';

test('an operation outside backticks is pointed at', () => {
	for (const text of ['What is 3 - 8?', 'Why is 4 × (−3) negative?', 'What is 3+5?', 'What is 12 ÷ 4?']) {
		expect(found(typedOperation, asking(text)), text).toMatchObject([
			{ code: 'review-typed-operation', path: '/stem/0/text' },
		]);
	}
});

test('mathematics between backticks, ranges, dates and units are left alone', () => {
	for (const text of ['What is `3 - 8`?', 'See pages 3-8 and 3–8.', 'On 4/5, what fell by 3 - as a whole - metres?']) {
		expect(found(typedOperation, asking(text)), text).toEqual([]);
	}
});
