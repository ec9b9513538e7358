import { expect, test } from 'vitest';
import { oneKindOfOption } from '../../../../item-bank/checks/stops/one-kind-of-option.ts';
import { makeChoice, numberOptions } from '../../../helpers/items.ts';
import { found } from '../found.ts';

test('mathematics and text side by side are refused', () => {
	const options = [
		...numberOptions(-7, 7),
		{ id: 'c', content: { kind: 'text', text: 'eleven', worth: '11' } as const },
	];
	expect(found(oneKindOfOption, makeChoice({ options }))).toMatchObject([
		{ code: 'option-kinds-mixed', path: '/options' },
	]);
});

test('numbers and expressions are both mathematics', () => {
	const options = [...numberOptions(-7, 7), { id: 'c', content: { kind: 'mathematics', math: '9 + 2' } as const }];
	expect(found(oneKindOfOption, makeChoice({ options }))).toEqual([]);
});
