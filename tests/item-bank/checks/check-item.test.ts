import { describe, expect, test } from 'vitest';
import { checkItem } from '../../../item-bank/checks/check-item.ts';
import type { Item } from '../../../item-bank/types.ts';
import {
	makeChoice,
	makeExplanation,
	makeGridded,
	makeInlineChoice,
	makeMatch,
	makeMultipleChoice,
	makeOrder,
	makePoint,
	makeSet,
	numberOptions,
} from '../../helpers/items.ts';

const codesOf = (item: Item): readonly string[] => checkItem(item).map(({ code }) => code);

test.each([
	makeGridded(),
	makeChoice(),
	makeMultipleChoice(),
	makePoint(),
	makeOrder(),
	makeMatch(),
	makeInlineChoice(),
	makeExplanation(),
	makeSet(),
])('a sound item has no problem: $kind', (item) => {
	expect(checkItem(item)).toEqual([]);
});

describe('an unsound item', () => {
	test('has all its problems told, texts first, then options, key and alignments', () => {
		const options = numberOptions(-6, -11, 7);
		expect(codesOf(makeChoice({ name: ' ', options, alignments: [] }))).toEqual([
			'text-blank',
			'option-number-order',
			'key-missing',
			'primary-alignment-count',
		]);
	});

	test('that cannot be read is told once, at the place where it cannot', () => {
		const stem = [{ kind: 'paragraph', text: 'What is `-3 -`?' }] as const;
		expect(checkItem(makeGridded({ stem }))).toMatchObject([{ code: 'rich-text', path: '/stem/0/text' }]);
		expect(codesOf(makeGridded({ expression: '3 -' }))).toEqual(['expression-syntax']);
	});

	test('has the problems of its parts below them', () => {
		const set = makeSet({ parts: [makeChoice(), makeGridded({ grid: 'no-such-grid', points: 2 })] });
		expect(checkItem(set)).toMatchObject([{ code: 'unknown-grid-profile', path: '/parts/1/grid' }]);
	});
});
