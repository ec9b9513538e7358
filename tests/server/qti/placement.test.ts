import { afterAll, expect, test } from 'vitest';
import { ExportInputError } from '../../../server/qti/export-errors.ts';
import { exportItems } from '../../../server/qti/export-form.ts';
import { checkIdentifiers, placeItems } from '../../../server/qti/placement.ts';
import { closeValidation } from '../../../server/qti/validate/pool.ts';
import { qtiVersions } from '../../../server/qti/versions.ts';
import { randomItems } from './random-items.ts';
import { unpack } from './unpacked.ts';

afterAll(closeValidation);

test.each(qtiVersions)(
	'bank ids that differ in capitals alone stay apart in %s, whatever a platform makes of capitals',
	async (as) => {
		const [one, other] = randomItems(2, 94);
		if (!one || !other) throw new Error('no items');
		const items = [
			{ ...one, id: 'tide-gauge', version: 1 },
			{ ...other, id: 'Tide-Gauge', version: 1 },
		];
		const files = unpack((await exportItems(items, { as, images: 'svg' })).bytes);
		const paths = [...files.keys()];
		expect(new Set(paths.map((path) => path.toLowerCase())).size).toBe(paths.length);
		const identifiers = placeItems(items).map(({ identifier }) => identifier);
		expect(new Set(identifiers.map((identifier) => identifier.toLowerCase())).size).toBe(2);
	},
);

test('identifiers that differ in capitals alone are refused, and both are named', () => {
	expect(() => checkIdentifiers(['item-a', 'item-b'])).not.toThrow();
	let thrown: unknown;
	try {
		checkIdentifiers(['item-a', 'item-b', 'Item-A']);
	} catch (error) {
		thrown = error;
	}
	expect(thrown).toBeInstanceOf(ExportInputError);
	expect(thrown).toMatchObject({ code: 'export-identifier-repeated' });
	expect(String(thrown)).toContain('found "item-a" and "Item-A"');
});

test('an item keeps its identifier in every version and manner, so that results are of one item', () => {
	const items = randomItems(40, 95);
	const plain = placeItems(items).map(({ identifier }) => identifier);
	const other = placeItems(items, {
		sharesStimuli: true,
		gridStyle: 'columns',
		hasFeedback: true,
		pointStyle: 'choice',
	});
	expect(other.map(({ identifier }) => identifier)).toEqual(plain);
});
