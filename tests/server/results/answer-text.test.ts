import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { listAnswerPlaces, scoreAnswer } from '../../../item-bank/forms/answer-places.ts';
import type { PartResponse } from '../../../item-bank/types.ts';
import { type AnswerReading, readAnswerText } from '../../../server/results/answer-text.ts';
import { everyKind } from '../../helpers/sat-bank.ts';

const places = listAnswerPlaces(
	{
		title: 'All',
		gridProfile: 'plain-sign-first',
		sections: [{ title: 'All', items: everyKind.map((_item, index) => ({ item: `item-${index + 1}`, version: 1 })) }],
	},
	everyKind.map((item, index) => ({ id: `item-${index + 1}`, version: 1, status: 'approved', item })),
);
const at = (label: string) => {
	const place = places.find((each) => each.label === label);
	if (!place) throw new Error(`no place ${label}`);
	return place;
};
const read = (label: string, text: string, reading: AnswerReading = { numbers: 'places' }) =>
	readAnswerText(at(label), text, reading);
const response = (label: string, text: string, reading?: AnswerReading): PartResponse | string => {
	const found = read(label, text, reading);
	return 'fault' in found ? found.fault : found.response;
};
const stateOf = (label: string, text: string, reading?: AnswerReading) => {
	const found = read(label, text, reading);
	return 'fault' in found ? 'fault' : scoreAnswer(at(label), { kind: 'response', response: found.response }).state;
};

test('places of a form are its items and the parts of its sets', () => {
	expect(places.map(({ label }) => label)).toEqual(['1', '2', '3', '4', '5', '6', '7', '8', '9.1', '9.2']);
	expect(places.map(({ points }) => points).slice(-2)).toEqual([1, 2]);
});

describe('right answers in the spellings people and platforms use', () => {
	test.each([
		['1', ['B', 'b', ' b '.trim(), '2', '[B]']],
		['2', ['AC', 'a,c', 'C A', '1;3', 'a|c', '[A, C]']],
		['3', ['5', '+5', '05']],
		['4', ['-7', '−7', 'P4']],
		['5', ['CADB', 'c,a,d,b', '3,1,4,2', 'C A D B']],
		['6', ['a-c b-a c-d', 'AC BA CD', 'CAD', 'C, A, D', 'a:c; b:a; c:d', 'L1 R3; L2 R1; L3 R4', 'a→c, b→a, c→d']],
		['7', ['A', 'a', '<', '1']],
		['9.1', ['B']],
		['9.2', ['5']],
	])('at place %s', (label, texts) => {
		for (const text of texts) expect(stateOf(label, text), text).toBe('correct');
	});
});

test('numbers can be the values shown', () => {
	const values = { numbers: 'values' } as const;
	expect(stateOf('5', '-9, -4, 2, 7', values)).toBe('correct');
	expect(stateOf('5', '−9;−4;7;2', values)).toBe('incorrect');
	expect(stateOf('1', '-7', values)).toBe('correct');
	expect(stateOf('1', '7', values)).toBe('incorrect');
	expect(stateOf('1', '8', values)).toBe('fault');
});

test('identifiers of an answer map come before letters', () => {
	const options = new Map([
		['A', '−7'],
		['B', '-6'],
	]);
	expect(response('4', 'A', { numbers: 'places', options })).toEqual({ kind: 'point', at: -7 });
	expect(response('1', 'X9', { numbers: 'places', options: new Map([['X9', 'b']]) })).toEqual({
		kind: 'choice',
		options: ['b'],
	});
});

test('a blank is an omission of every kind but an explanation without a rating', () => {
	for (const { label, item } of places) expect(stateOf(label, ''), item.kind).toBe('omitted');
});

test('two marks on a choice are invalid and not unreadable', () => {
	expect(stateOf('1', 'BC')).toBe('invalid');
	expect(stateOf('7', 'ab')).toBe('invalid');
});

test.each([
	['1', 'E'],
	['1', 'yes'],
	['1', '0'],
	['1', '5'],
	['2', 'AX'],
	['4', 'left'],
	['4', '5000'],
	['5', 'CADD'],
	['5', '-9,-4,2,7'],
	['6', 'a-z'],
	['6', 'AC B'],
	['6', 'L1 L2'],
	['7', '>>'],
])('at place %s %j is told as unreadable, quoting it', (label, text) => {
	expect(response(label, text)).toContain(`found "${text}"`);
});

test('no text throws, and what is read fits the kind of the item', () => {
	const text = fc.oneof(
		fc.string(),
		fc.string({ unit: fc.constantFrom('a', 'B', 'c', '1', '-', ' ', ',', 'L', 'R', 'P', '−') }),
	);
	fc.assert(
		fc.property(fc.constantFrom(...places), text, fc.constantFrom('places', 'values'), (place, typed, numbers) => {
			const found = readAnswerText(place, typed, { numbers });
			if ('response' in found) scoreAnswer(place, { kind: 'response', response: found.response });
		}),
		{ numRuns: 500 },
	);
});
