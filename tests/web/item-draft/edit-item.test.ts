import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeAt, insertAt, moveAt, printPath, removeAt, valueAt } from '../../../web/item-draft/edit-item.ts';
import { makeChoice, makeGridded, makeSet } from '../../helpers/items.ts';

describe('editing an item at a place', () => {
	test('changes that place and leaves the item before as it was', () => {
		const item = makeSet();
		const changed = changeAt(item, ['parts', 1, 'expression'], '-1 + 2');
		expect(valueAt(changed, ['parts', 1, 'expression'])).toBe('-1 + 2');
		expect(changeAt(changed, ['parts', 1, 'expression'], '-3 - (-8)')).toEqual(item);
		expect(item).toEqual(makeSet());
	});

	test('takes a field away with undefined, and nothing else', () => {
		const item = makeGridded({ unit: 'metres' });
		expect(changeAt(item, ['unit'], undefined)).toEqual(makeGridded());
		expect(changeAt(makeGridded(), ['unit'], undefined)).toEqual(makeGridded());
	});

	test('takes out what was put in', () => {
		fc.assert(
			fc.property(fc.nat({ max: 4 }), fc.string(), (index, value) => {
				const item = makeChoice();
				expect(removeAt(insertAt(item, ['options'], index, value), ['options'], index)).toEqual(item);
			}),
		);
	});

	test('moves an entry there and back, and stays as it is beyond the ends', () => {
		fc.assert(
			fc.property(fc.nat({ max: 3 }), fc.nat({ max: 3 }), (from, to) => {
				const item = makeChoice();
				expect(moveAt(moveAt(item, ['options'], from, to), ['options'], to, from)).toEqual(item);
			}),
		);
		expect(moveAt(makeChoice(), ['options'], 0, -1)).toEqual(makeChoice());
		expect(moveAt(makeChoice(), ['options'], 3, 4)).toEqual(makeChoice());
	});

	test('finds nothing where nothing is', () => {
		expect(valueAt(makeGridded(), ['parts', 0, 'stem'])).toBeUndefined();
		expect(printPath(['parts', 0, 'stem'])).toBe('/parts/0/stem');
	});
});
