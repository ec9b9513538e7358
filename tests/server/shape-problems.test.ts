import { describe, expect, test } from 'vitest';
import { checkShape } from '../../server/json-schemas.ts';
import { makeBlueprint } from '../helpers/sample-blueprint.ts';
import { choiceItem, griddedItem } from '../helpers/sample-items.ts';

const option = choiceItem().options[0];

describe('what a document has against its schema', () => {
	test.each([
		['list-length', '/options', choiceItem({ options: [] })],
		['list-repeats', '/tags', griddedItem({ tags: ['same-signs', 'same-signs'] })],
		['spelling-wrong', '/tags/0', griddedItem({ tags: ['Same Signs'] })],
		['text-length', '/name', griddedItem({ name: '' })],
		['value-not-allowed', '/given', { ...griddedItem(), given: 'smoke signals' }],
		['value-out-of-range', '/dok', { ...griddedItem(), dok: 5 }],
		['type-wrong', '/points', { ...griddedItem(), points: '1' }],
		['field-unknown', '/colour', { ...griddedItem(), colour: 'red' }],
		['field-missing', '/alignments', { ...griddedItem(), alignments: undefined }],
		['kind-unknown', '/kind', { ...griddedItem(), kind: 'poem' }],
		['type-wrong', '/options/1', choiceItem({ options: [option, 'b'] as never })],
	])('%s at %s, quoting what was found', (code, path, document) => {
		const sent = JSON.parse(JSON.stringify(document));
		expect(checkShape('item.schema.json', sent)).toEqual([
			expect.objectContaining({ code, path, message: expect.stringMatching(/^expected .+/) }),
		]);
	});

	test('shape-wrong for any other fault, such as a range without ends', () => {
		const problems = checkShape('blueprint.schema.json', makeBlueprint({ items: {} }));
		expect(problems).toEqual([expect.objectContaining({ code: 'shape-wrong', path: '/items' })]);
	});

	test('nothing, for a document that fits', () => {
		expect(checkShape('item.schema.json', griddedItem())).toEqual([]);
	});

	test('at most 100 things, each place once', () => {
		const tags = Array.from({ length: 400 }, (_tag, index) => `Not Good ${index}`);
		expect(checkShape('item.schema.json', griddedItem({ tags })).length).toBeLessThanOrEqual(100);
	});
});
