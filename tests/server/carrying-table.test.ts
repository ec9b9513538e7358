import { afterAll, expect, test } from 'vitest';
import type { PointItem } from '../../item-bank/types.ts';
import { tabulateCarrying } from '../../server/carrying-table.ts';
import { closeCartridges } from '../../server/cartridge/cartridge-pool.ts';
import { exportCartridge } from '../../server/cartridge/export-cartridge.ts';
import { checkShape } from '../../server/json-schemas.ts';
import { cartridgeForm, cartridgeItems } from './cartridge/sample-cartridge.ts';
import { randomForm, randomItems } from './qti/random-items.ts';

afterAll(closeCartridges);

test('every item has a row with every version, and the table fits its schema', () => {
	const table = tabulateCarrying(cartridgeForm, cartridgeItems);
	expect(checkShape('carrying-table.schema.json', JSON.parse(JSON.stringify(table)))).toEqual([]);
	expect(table.items.map(({ position, item }) => [position, item])).toEqual(
		cartridgeItems.map(({ id }, index) => [index + 1, id]),
	);
	expect(table.items.map(({ carries }) => carries['cc-1.1'].how)).toEqual([
		...['carried', 'carried', 'carried', 'converted', 'converted', 'converted', 'converted', 'converted'],
		...['carried', 'carried', 'converted', 'converted'],
	]);
	const set = table.items[10]?.carries;
	expect(set?.['cc-1.1'].as).toContain('part 2 to choice among lettered points');
	expect(set?.['cc-1.1'].lost).toContain('placement in the grid');
	expect(set?.['qti-2.2'].lost).toEqual(['placement in the grid, but for the column style']);
	expect(set?.['qti-3.0'].as).toContain('shared stimulus');
});

test('an item that cannot be written in a version is refused there, with the reason', () => {
	const mark = cartridgeItems.find(({ item }) => item.kind === 'point');
	if (mark?.item.kind !== 'point') throw new Error('no point');
	const line = { ...mark.item.line, from: -20, to: 20, labels: 'every-tick' as const };
	const crowded: PointItem = { ...mark.item, line };
	const form = {
		...cartridgeForm,
		form: { ...cartridgeForm.form, sections: [{ title: 'One', items: [{ item: mark.id, version: mark.version }] }] },
	};
	const [row] = tabulateCarrying(form, [{ ...mark, item: crowded }]).items;
	expect(row?.carries['qti-2.2']).toMatchObject({ how: 'refused', why: expect.stringContaining('pixels') });
	expect(row?.carries['cc-1.1'].how).not.toBe('carried');
});

test('the table keeps its word: a cartridge stops at exactly the items it calls converted or refused', async () => {
	const items = randomItems(60, 45);
	const form = randomForm(items, 45);
	const table = tabulateCarrying(form, items);
	const told = table.items.filter(({ carries }) => carries['cc-1.1'].how !== 'carried').map(({ position }) => position);
	const problems = await exportCartridge({ form, items }, { images: 'svg' }).then(
		() => [],
		(error: { readonly problems: readonly { readonly message: string }[] }) => error.problems,
	);
	expect(problems.map(({ message }) => Number(/item (\d+) /.exec(message)?.[1]))).toEqual(told);
	expect(told.length).toBeGreaterThan(20);
});
