import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FlowUnit, flowUnits } from '../../../../server/print/booklet/flow.ts';

const unit = (height: number, work: number, isWide: boolean, item = 'made'): FlowUnit => ({
	item,
	box: { width: 100, height, place: () => [] },
	work,
	isWide,
});
const units = fc.array(
	fc
		.tuple(fc.integer({ min: 10, max: 300 }), fc.integer({ min: 0, max: 90 }), fc.boolean())
		.map(([height, work, isWide]) => unit(height, work, isWide)),
	{ minLength: 1, maxLength: 40 },
);

describe('dealing items out to pages', () => {
	test.each([1, 2] as const)('in %i columns keeps the order, breaks none and lets none overlap', (columns) => {
		fc.assert(
			fc.property(units, (all) => {
				const pages = flowUnits(all, 700, columns);
				expect(pages.flatMap((page) => page.map(({ unit: placed }) => placed))).toEqual(all);
				for (const page of pages) {
					for (const [index, { unit: each, column, y }] of page.entries()) {
						expect(y + each.box.height).toBeLessThanOrEqual(700.001);
						for (const other of page.slice(index + 1)) {
							const isApart = columns === 2 && !each.isWide && !other.unit.isWide && other.column !== column;
							if (!isApart) expect(other.y).toBeGreaterThanOrEqual(y + each.box.height - 0.001);
						}
					}
				}
			}),
		);
	});

	test('gives what is left of a full page to the items on it', () => {
		const [first] = flowUnits([unit(100, 50, true), unit(100, 50, true), unit(600, 0, true)], 700, 1);
		expect(first?.map(({ room }) => room)).toEqual([350, 350]);
	});

	test('sets two columns evenly when something wide follows', () => {
		const [page] = flowUnits([...Array.from({ length: 4 }, () => unit(80, 20, false)), unit(200, 0, true)], 700, 2);
		expect(page?.map(({ column }) => column)).toEqual([0, 0, 1, 1, 0]);
	});

	test('keeps the room for working above something wide free', () => {
		const [page] = flowUnits([unit(20, 90, false), unit(20, 90, false), unit(200, 0, true)], 700, 2);
		expect(page?.at(-1)?.y).toBeGreaterThanOrEqual(110);
	});

	test('opens a page with what a piece that goes on has for it, and only a page', () => {
		const opening = unit(60, 0, true).box;
		const more = { ...unit(50, 0, true), opening };
		const pages = flowUnits([unit(601, 0, true), more, more, { ...unit(650, 0, true), opening }], 700, 1);
		expect(pages.map((page) => page.map(({ unit: { box } }) => box.height))).toEqual([[601, 50], [60], [60]]);
	});

	test('refuses an item taller than a page by name', () => {
		expect(() => flowUnits([unit(50, 0, true), unit(701, 0, true, 'tall-one')], 700, 1)).toThrow(
			expect.objectContaining({ code: 'print-item-too-tall', item: 'tall-one' }),
		);
	});
});
