import { expect, test } from 'vitest';
import { repeatedSetting } from '../../../../item-bank/checks/form/repeated-setting.ts';
import { makeGridded } from '../../../helpers/items.ts';
import { foundOn } from '../placed.ts';

const settings = (...names: readonly string[]) =>
	names.map((setting) => makeGridded({ given: 'story', context: { setting, role: 'change' } }));

test('a setting that most stories share is pointed at', () => {
	const told = settings('mine-lift', 'tide-gauge', 'mine-lift', 'mine-lift', 'garden-fund', 'mine-lift', 'mine-lift');
	expect(foundOn(repeatedSetting, [makeGridded(), ...told])).toMatchObject([
		{ code: 'review-form-repeated-setting', message: expect.stringContaining('positions 2, 4, 5, 7 and 8 of 7 items') },
	]);
});

test('a few stories of one setting, and half of many, are left alone', () => {
	expect(foundOn(repeatedSetting, settings('mine-lift', 'mine-lift', 'mine-lift'))).toEqual([]);
	const half = settings('mine-lift', 'mine-lift', 'mine-lift', 'mine-lift', 'a-one', 'b-two', 'c-three', 'd-four');
	expect(foundOn(repeatedSetting, half)).toEqual([]);
});
