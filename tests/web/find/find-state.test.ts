import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { doks, kinds, modelColumns, statuses } from '../../../web/board/board-state.ts';
import {
	clearFindState,
	type FindState,
	loosenFindState,
	pageLength,
	parseFindState,
	printFindState,
	queryOf,
	roles,
	sorts,
} from '../../../web/find/find-state.ts';

const frameworkOf = fc.record({ id: fc.constantFrom('ccss-m', 'teks-math'), edition: fc.constantFrom('2010', '2012') });
const id = fc.stringMatching(/^[a-z][a-z0-9-]{1,12}$/);
const states: fc.Arbitrary<FindState> = fc
	.record({
		text: fc.string({ unit: 'grapheme', maxLength: 40 }).map((text) => text.trim()),
		framework: fc.option(frameworkOf, { nil: undefined }),
		code: fc.option(fc.string({ minLength: 1, maxLength: 20 }), { nil: undefined }),
		hasBelow: fc.boolean(),
		hasAny: fc.boolean(),
		model: fc.subarray([...modelColumns]),
		kind: fc.subarray([...kinds]),
		dok: fc.subarray([...doks]),
		status: fc.subarray([...statuses]),
		points: fc.subarray([1, 2, 3, 10]),
		setting: fc.uniqueArray(id, { maxLength: 4 }),
		role: fc.subarray([...roles]),
		sort: fc.constantFrom(...sorts),
		form: fc.option(id, { nil: undefined }),
		shown: fc.integer({ min: pageLength, max: 200 }),
	})
	.map((state) => {
		const code = state.framework === undefined ? undefined : state.code;
		return {
			...state,
			code,
			hasBelow: code !== undefined && state.hasBelow,
			hasAny: code !== undefined && state.hasAny,
		};
	});

const parse = (address: string): FindState => parseFindState(new URLSearchParams(address.split(/\?(.*)/s)[1] ?? ''));

describe('what stands in the address of the page that finds items', () => {
	test('is read back as it was written', () => {
		fc.assert(
			fc.property(states, (state) => {
				expect(parse(printFindState(state))).toEqual(state);
			}),
		);
	});

	test('leaves out what it does not understand, and narrows by the rest', () => {
		const state = parse('#/find?kind=poem&kind=gridded&dok=9&sort=luck&shown=-3&setting=No%20Way&code=7.NS.A.1');
		expect(state).toEqual({ ...parse('#/find'), kind: ['gridded'] });
	});

	test('asks for nothing the bank would refuse: a code only with its framework', () => {
		fc.assert(
			fc.property(states, (state) => {
				const query = queryOf(state);
				expect(query.code === undefined || query.framework !== undefined).toBe(true);
				expect(query.code !== undefined || (query.below === undefined && query.alignment === undefined)).toBe(true);
				expect(query.text).not.toBe('');
			}),
		);
	});

	test('lets one condition go at a time, until nothing narrows', () => {
		fc.assert(
			fc.property(states, (start) => {
				const count = loosenFindState(start).length;
				for (const { state } of loosenFindState(start)) expect(loosenFindState(state)).toHaveLength(count - 1);
				expect(loosenFindState(clearFindState(start))).toEqual([]);
				expect(clearFindState(start).form).toBe(start.form);
			}),
		);
	});
});
