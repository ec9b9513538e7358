import { describe, expect, test } from 'vitest';
import { checkItem } from '../../../item-bank/checks/check-item.ts';
import type { KindName, ModelType } from '../../../item-bank/types.ts';
import { checkShape } from '../../../server/json-schemas.ts';
import { startItem } from '../../../web/item-draft/fresh-item.ts';

const kinds: readonly KindName[] = [
	'choice',
	'multiple-choice',
	'gridded',
	'point',
	'order',
	'match',
	'inline-choice',
	'explanation',
	'set',
];
const models: readonly ModelType[] = ['symbols', 'counters', 'number-line', 'story', 'table'];
const alignment = { framework: 'teks-math', edition: '2012', code: '6.3(D)', grade: '6', extent: 'partial' } as const;

describe('a new item', () => {
	test.each(kinds)('of kind %s fits the schema and passes every check, whatever it gives', (kind) => {
		for (const given of models) {
			const item = startItem({ kind, given, alignment });
			expect(checkShape('item.schema.json', item), given).toEqual([]);
			expect(checkItem(item), given).toEqual([]);
		}
	});

	test('of kind choice has options that wrong ideas lead to', () => {
		const item = startItem({ kind: 'choice', given: 'symbols', alignment });
		const options = item.kind === 'choice' ? item.options : [];
		expect(options.filter(({ patterns = [] }) => patterns.length > 0)).toHaveLength(3);
	});
});
