import { expect, test } from 'vitest';
import { type NextItem, proposeItems } from '../../../item-bank/analysis/diagnosis/next-items.ts';
import type { PatternId } from '../../../item-bank/patterns/pattern.ts';
import type { ModelType } from '../../../item-bank/types.ts';

/** An item by the patterns behind each of its wrong answers. */
function itemOf(id: string, answers: readonly (readonly PatternId[])[], more: Partial<NextItem> = {}): NextItem {
	const byAnswer = new Map(answers.map((patterns, index) => [String(index), patterns]));
	const patterns = { byAnswer, visible: [...new Set(answers.flat())], chance: 0.05 };
	return { id, version: 1, model: 'symbols', dok: 1, patterns, ...more };
}

const [a, b, c]: readonly [PatternId, PatternId, PatternId] = [
	'signs-dropped',
	'second-minus-lost',
	'subtraction-reversed',
];

test('one idea singled out is asked for again, alone first, in one model type after the other', () => {
	const models: readonly ModelType[] = ['counters', 'counters', 'story'];
	const items = [
		itemOf('shared', [[a, b]]),
		...models.map((model, index) => itemOf(`alone-${index}`, [[a]], { model })),
		itemOf('other', [[b]]),
	];
	const { settled, why, items: next } = proposeItems({ pattern: a, notToldApart: [] }, items);
	expect([settled, why]).toEqual([true, 'like']);
	expect(next.map(({ id }) => id)).toEqual(['alone-0', 'alone-2', 'shared', 'alone-1']);
});

test('ideas not told apart get the fewest items that tell every two of them apart', () => {
	const items = [itemOf('one-pair', [[a], [b, c]]), itemOf('together', [[a, b, c]]), itemOf('all', [[a], [b], [c]])];
	const { settled, why, items: next, left } = proposeItems({ pattern: a, notToldApart: [b, c] }, items);
	expect([settled, why, left]).toEqual([false, 'probe', 0]);
	expect(next.map(({ id }) => id)).toEqual(['all']);
});

test('pairs that no item tells apart are counted, and what can be told is told', () => {
	const items = [itemOf('one-pair', [[a], [b, c]])];
	const { items: next, left } = proposeItems({ pattern: a, notToldApart: [b, c] }, items);
	expect([next.map(({ id }) => id), left]).toEqual([['one-pair'], 1]);
});

test('an answer made freely tells more than one that can be guessed', () => {
	const patterns = { byAnswer: new Map([['0', [a]]]), visible: [a], chance: 0.25 };
	const items = [itemOf('guess', [], { patterns }), itemOf('zfree', [[a]])];
	expect(proposeItems({ pattern: a, notToldApart: [b] }, items).items.map(({ id }) => id)).toEqual(['zfree']);
});
