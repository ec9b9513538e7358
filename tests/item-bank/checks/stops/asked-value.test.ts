import { expect, test } from 'vitest';
import { askedValue } from '../../../../item-bank/checks/stops/asked-value.ts';
import { makeChoice, makeGridded, makePoint, makeSet } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const gridded = (expression: string, ...texts: readonly string[]) =>
	makeGridded({ expression, stem: texts.map((text) => ({ kind: 'paragraph', text })) });

test('a key worked from another value than the one asked for is refused, with both', () => {
	const [problem] = found(askedValue, gridded('-3 - 8', 'What is `-3 - (-8)`?'));
	expect(problem).toMatchObject({ code: 'key-not-asked', path: '/stem' });
	expect(problem?.message).toContain('which is 5');
	expect(problem?.message).toContain('which is -11');
	expect(found(askedValue, gridded('4 + 5', 'Look at the signs. Work out `4 - 5`.'))).toHaveLength(1);
	expect(found(askedValue, makePoint({ stem: [{ kind: 'paragraph', text: 'What is `-3 + 4`?' }] }))).toHaveLength(1);
	expect(found(askedValue, makeChoice({ rule: { kind: 'same-value', expression: '9 + 2' } }))).toHaveLength(1);
	expect(found(askedValue, makeSet({ parts: [makeChoice(), gridded('3', 'What is `4`?')] }))).toMatchObject([
		{ path: '/parts/1/stem' },
	]);
});

test('another form of the value asked for is left alone', () => {
	expect(found(askedValue, gridded('-3 + 8', 'What is `-3 - (-8)`?'))).toEqual([]);
});

test('a stem that asks for more than a value is left alone', () => {
	for (const texts of [
		['What is `-3 - 8` metres below the ground?'],
		['Which number is the opposite of this one? What is `5`?'],
		['What is the opposite of `-3 - 8`?'],
		['What is `-3 - 8`?', 'Write how many metres it is below the ground.'],
		['What is `7 ÷ 2`?'],
		['What is `? + 3 = 5`?'],
	]) {
		expect(found(askedValue, gridded('11', ...texts)), texts[0]).toEqual([]);
	}
});
