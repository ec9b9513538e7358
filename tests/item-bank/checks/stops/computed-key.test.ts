import { expect, test } from 'vitest';
import { computedKey } from '../../../../item-bank/checks/stops/computed-key.ts';
import { makeChoice, makeGridded, makeSet, numberOptions } from '../../../helpers/items.ts';
import { found } from '../found.ts';

test('no right option, two of them and a typed key that differs are refused', () => {
	expect(found(computedKey, makeChoice({ options: numberOptions(-11, 7) }))).toMatchObject([{ code: 'key-missing' }]);
	const twice = makeChoice().options.map((option) =>
		option.id === 'c' ? { ...option, content: { kind: 'mathematics', math: '2 - 9' } as const } : option,
	);
	expect(found(computedKey, makeChoice({ options: twice }))).toMatchObject([{ code: 'key-not-unique' }]);
	expect(found(computedKey, makeGridded({ key: 11 }))).toMatchObject([{ code: 'key-mismatch', path: '/key' }]);
});

test('a part of a set is named', () => {
	const set = makeSet({ parts: [makeChoice(), makeGridded({ key: 11, points: 2 })] });
	expect(found(computedKey, set)).toMatchObject([{ path: '/parts/1/key' }]);
});

test('a typed key that is the computed one is left alone', () => {
	expect(found(computedKey, makeGridded({ key: 5 }))).toEqual([]);
});
