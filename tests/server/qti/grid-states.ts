import type { ItemRecord } from '../../../item-bank/items/record.ts';
import { columnCount, columnSymbols, decodeGrid, type GridColumns } from '../../../item-bank/responses/grid.ts';
import type { GridProfile } from '../../../item-bank/types.ts';
import { placeItems } from '../../../server/qti/placement.ts';
import { openItem } from '../../../server/qti/scoring/interpret-item.ts';
import { readTree } from '../../../server/qti/scoring/read-tree.ts';
import type { QtiVersion } from '../../../server/qti/versions.ts';
import { writeItem } from '../../../server/qti/write/item.ts';
import { writeShapedXml } from '../../../server/qti/write/shaped-xml.ts';
import { holdColumns } from './platform-responses.ts';
import { randomItems } from './random-items.ts';

/** What came of trying states of an answer grid. */
export interface TriedStates {
	readonly tried: number;
	readonly accepted: number;
	/** States that the exported item scores otherwise than the bank reads them. */
	readonly differing: readonly GridColumns[];
}

/**
 * Every state of the answer grid, or every nth, scored by an exported item whose key is the value, against decodeGrid. A blank
 * column was never touched in some states and given back in others; which one follows from the number of the state.
 */
export function tryStates(
	value: number,
	profile: GridProfile,
	version: QtiVersion,
	{ every = 1, hasFeedback = false } = {},
): TriedStates {
	const respond = openItem(readTree(writeGrid(value, profile, version, hasFeedback)));
	const offered = Array.from({ length: columnCount(profile) }, (_, column) => columnSymbols(profile, column));
	const total = offered.reduce((product, symbols) => product * (symbols.length + 1), 1);
	const differing: GridColumns[] = [];
	let [tried, accepted] = [0, 0];
	for (let state = 0; state < total; state += every) {
		let rest = state;
		const columns = offered.map((symbols): GridColumns[number] => {
			const mark = symbols[(rest % (symbols.length + 1)) - 1];
			rest = Math.floor(rest / (symbols.length + 1));
			return mark === undefined ? [] : [mark];
		});
		const reading = decodeGrid(columns, profile);
		const isRight = reading.kind === 'valid' && reading.value === value;
		const earned = respond(holdColumns(columns, state)).get('SCORE')?.members[0];
		if (earned !== (isRight ? 1 : 0)) differing.push(columns);
		if (isRight) accepted += 1;
		tried += 1;
	}
	return { tried, accepted, differing };
}

function writeGrid(value: number, profile: GridProfile, version: QtiVersion, hasFeedback: boolean): string {
	const [record] = randomItems(1, 90, 'gridded');
	if (record?.item.kind !== 'gridded') throw new Error('expected a gridded item');
	const keyed: ItemRecord = { ...record, item: { ...record.item, expression: `${value}`, grid: profile.id } };
	const [placement] = placeItems([keyed], { gridStyle: 'columns', hasFeedback });
	if (!placement) throw new Error('expected a place');
	return writeShapedXml(writeItem(placement, version, 'svg').root);
}
