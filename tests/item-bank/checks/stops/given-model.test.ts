import { expect, test } from 'vitest';
import { givenModel } from '../../../../item-bank/checks/stops/given-model.ts';
import { makeGridded } from '../../../helpers/items.ts';
import { found } from '../found.ts';

test('an item without the model it says it gives is refused', () => {
	for (const given of ['counters', 'number-line', 'table', 'story'] as const) {
		expect(found(givenModel, makeGridded({ given })), given).toMatchObject([
			{ code: 'given-not-found', path: '/given' },
		]);
	}
});

test('symbols need nothing, a story a context, counters a figure of counters', () => {
	expect(found(givenModel, makeGridded())).toEqual([]);
	expect(found(givenModel, makeGridded({ given: 'story', context: { setting: 'mine-lift', role: 'change' } }))).toEqual(
		[],
	);
	const figure = { kind: 'counter-groups', groups: 2, each: 3, sign: 'plus' } as const;
	const stem = [
		{ kind: 'paragraph', text: 'What do the counters show?' },
		{ kind: 'figure', figure },
	] as const;
	expect(found(givenModel, makeGridded({ given: 'counters', stem }))).toEqual([]);
	expect(found(givenModel, makeGridded({ given: 'number-line', stem }))).toHaveLength(1);
});
