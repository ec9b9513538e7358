import { expect, test } from 'vitest';
import { evenTable } from '../../../../item-bank/checks/stops/even-table.ts';
import { makeGridded, makeSet } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const table = (...row: readonly string[]) => ({
	stem: [
		{ kind: 'paragraph', text: 'What is the total change?' },
		{ kind: 'table', header: ['Day', 'Change'], rows: [['Monday', '`-3`'], row] },
	] as const,
});

test('a row with more or fewer cells than the header is refused, in parts of a set too', () => {
	expect(found(evenTable, makeGridded(table('Tuesday', '`5`', '?')))).toMatchObject([
		{ code: 'table-ragged', path: '/stem/1/rows/1' },
	]);
	const set = makeSet({ parts: [makeGridded(), makeGridded(table('Tuesday'))] });
	expect(found(evenTable, set)).toMatchObject([{ path: '/parts/1/stem/1/rows/1' }]);
});

test('rows as long as the header are left alone', () => {
	expect(found(evenTable, makeGridded(table('Tuesday', '`5`')))).toEqual([]);
});
