import { describe, expect, test } from 'vitest';
import type { ChoiceItem, Item } from '../../../item-bank/types.ts';
import { changeAt, moveAt, type Path, removeAt } from '../../../web/item-draft/edit-item.ts';
import { fitPatterns, offerDistractors, takeDistractors } from '../../../web/item-draft/fit-options.ts';
import { settleChange } from '../../../web/item-draft/settle-change.ts';
import { makeChoice, makeGridded, makeSet } from '../../helpers/items.ts';

function change(item: Item, path: Path, value: unknown): Item {
	return settleChange(item, changeAt(item, path, value), path);
}

describe('a change of an item', () => {
	test('of its expression is written into the stem that showed the one before', () => {
		const item = change(makeGridded(), ['expression'], '-4 - (-9)');
		expect(item.stem).toEqual([{ kind: 'paragraph', text: 'What is `-4 - (-9)`?' }]);
	});

	test('of its expression leaves a stem alone that shows something else', () => {
		const item = change(makeGridded({ stem: [{ kind: 'paragraph', text: 'Work it out.' }] }), ['expression'], '2 - 3');
		expect(item.stem).toEqual([{ kind: 'paragraph', text: 'Work it out.' }]);
	});

	test('of its expression brings the patterns of its options up to date', () => {
		const before = fitPatterns(makeChoice());
		const after = change(before, ['rule', 'expression'], '-9 - 2') as ChoiceItem;
		expect(after.options.map(({ patterns }) => patterns)).toEqual(
			fitPatterns(after).options.map(({ patterns }) => patterns),
		);
		expect(after.options[0]?.patterns).toBeUndefined();
		expect(after.options[1]?.patterns?.length).toBeGreaterThan(0);
	});

	test('of one option leaves a tag alone that somebody set at another', () => {
		const tagged = changeAt(makeChoice(), ['options', 0, 'patterns'], ['order-by-size']);
		const after = change(tagged, ['options', 3, 'content', 'math'], '13') as ChoiceItem;
		expect(after.options[0]?.patterns).toEqual(['order-by-size']);
	});

	test('of the order of options letters them anew, and a stated key follows', () => {
		const stated = makeChoice({ rule: { kind: 'stated', options: ['b'], reason: 'Because.' } });
		const after = settleChange(stated, moveAt(stated, ['options'], 1, 3), ['options', 3]) as ChoiceItem;
		expect(after.options.map(({ id }) => id)).toEqual(['a', 'b', 'c', 'd']);
		expect(after.rule).toMatchObject({ options: ['d'] });
	});

	test('that takes the keyed option out leaves no letter that names another', () => {
		const stated = makeChoice({ rule: { kind: 'stated', options: ['b'], reason: 'Because.' } });
		const after = settleChange(stated, removeAt(stated, ['options'], 1), ['options', 1]) as ChoiceItem;
		expect(after.rule).toMatchObject({ options: [] });
	});

	test('of the points of a part makes the set worth the sum', () => {
		expect(change(makeSet(), ['parts', 0, 'points'], 4)).toMatchObject({ points: 6 });
	});
});

describe('offered wrong answers', () => {
	test('are numbers that wrong ideas lead to; those taken stand with the key in increasing order', () => {
		const item = makeChoice();
		const offer = offerDistractors(item);
		if (!offer) throw new Error('expected an offer');
		expect(offer.key).toBe(-7);
		const { options } = takeDistractors(item, offer, offer.best);
		const values = options.map(({ content }) => (content.kind === 'mathematics' ? Number(content.math) : 0));
		expect(values).toEqual([...values].sort((a, b) => a - b));
		expect(values).toHaveLength(4);
		expect(options.filter(({ patterns = [] }) => patterns.length === 0)).toHaveLength(1);
	});

	test('are none while the expression cannot be read', () => {
		expect(offerDistractors(makeChoice({ rule: { kind: 'same-value', expression: '-9 +' } }))).toBeUndefined();
	});
});
