import { describe, expect, test } from 'vitest';
import type { ItemRecord } from '../../../../item-bank/items/record.ts';
import type { Item } from '../../../../item-bank/types.ts';
import { layItemPages } from '../../../../server/print/booklet/item-pages.ts';
import { layPieces } from '../../../../server/print/booklet/pieces.ts';
import { bookletStyle } from '../../../../server/print/booklet/styles.ts';
import { type Block, isMark, type Mark } from '../../../../server/print/page/marks.ts';
import { placeItems } from '../../../../server/print/placed-items.ts';
import { makeChoice, makeExplanation, makePoint, makeSet } from '../../../helpers/items.ts';
import { formWith } from '../demo-forms.ts';

const textOf = (part: Block | Mark): string =>
	isMark(part) ? (part.kind === 'text' ? `${part.text} ` : '') : part.children.map(textOf).join('');

function pagesOf(items: readonly Item[], large = false): readonly string[] {
	const records = items.map((item, index): ItemRecord => ({ id: `made-${index}`, version: 1, status: 'draft', item }));
	const placed = placeItems(formWith(records), records);
	const pages = layItemPages(placed, bookletStyle('letter', large, 1), undefined);
	return pages.map((page) => page.blocks().map(textOf).join(''));
}

const told = 'A mine lift stops at';
const reminder = 'continued: look back at the start of item';
const longPart = (lines: number) => makeExplanation({ lines, points: 2 });

describe('a set in a booklet', () => {
	test('stays together and moves to the next page where the page it falls on has too little room', () => {
		const before = Array.from({ length: 4 }, () => longPart(3));
		const pages = pagesOf([...before, makeSet()]);
		const [page] = pages.filter((text) => text.includes(told));
		expect(pages).toHaveLength(2);
		expect(page).toContain('5a ');
		expect(page).toContain('5b ');
		expect(pages.join('')).not.toContain(reminder);
	});

	test('that no page holds is broken between parts, its start with the first part, and says so on the next page', () => {
		const parts = [makeChoice(), longPart(12), longPart(12), makeChoice()];
		const [first = '', ...others] = pagesOf([makeSet({ parts, points: 6 })]);
		expect(first).toContain(told);
		expect(first).toContain('1a ');
		expect(others.length).toBeGreaterThan(0);
		for (const page of others) {
			expect(page).not.toContain(told);
			expect(page).toContain(`Item 1, ${reminder} 1.`);
		}
		expect([first, ...others].join('').match(/1[abcd] /g)).toEqual(['1a ', '1b ', '1c ', '1d ']);
	});

	test('in large print shares pages as far as figures keep their size', () => {
		const parts = [makeChoice(), makePoint(), longPart(8)];
		const pages = pagesOf([makeSet({ parts, points: 4 })], true);
		expect(pages.map((text) => text.match(/1[abc] /g))).toEqual([['1a ', '1b '], ['1c ']]);
	});
});

describe('an explanation', () => {
	test.each([
		[false, 30, 15],
		[true, 20, 8],
	])('with more lines than stand together goes on (large: %s)', (large, lines, most) => {
		const style = bookletStyle('letter', large, 1);
		const record: ItemRecord = { id: 'made', version: 1, status: 'draft', item: makeExplanation({ lines }) };
		const [place] = placeItems(formWith([record]), [record]);
		if (!place) throw new Error('expected a place');
		const pieces = layPieces(place, { width: 500, style });
		expect(pieces).toHaveLength(Math.ceil(lines / most));
		const rules = (block: Block | Mark): number =>
			isMark(block) ? Number(block.kind === 'line') : block.children.reduce((sum, child) => sum + rules(child), 0);
		const drawn = pieces.flatMap(({ box }) => box.place(0, 0)).reduce((sum, block) => sum + rules(block), 0);
		expect(drawn).toBe(lines);
	});
});
