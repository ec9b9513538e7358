import { findKey, type ItemKey } from '../items/key.ts';
import type { Problem } from '../problem.ts';
import { fitsGrid } from '../responses/grid.ts';
import type { GridProfile, Item } from '../types.ts';

/** A gridded key that the profile's grid cannot hold; nothing for items of other kinds. */
export function checkKeyFits(item: Item, profile: GridProfile, path: string): readonly Problem[] {
	if (item.kind === 'set') {
		return item.parts.flatMap((part, index) => checkKeyFits(part, profile, `${path}/parts/${index}`));
	}
	if (item.kind !== 'gridded') return [];
	const finding = findKey(item);
	return 'key' in finding ? checkWidth(finding.key, profile, path) : [];
}

/** A number that a grid cannot hold, for want of digit columns or of a sign. */
export function checkWidth(key: ItemKey, profile: GridProfile, path: string): readonly Problem[] {
	if (key.kind !== 'value' || fitsGrid(key.value, profile)) return [];
	const sign = profile.signColumn === 'none' ? 'no sign column' : 'a sign column';
	const message = `the key ${key.value} does not fit the grid "${profile.id}" with ${profile.digitColumns} digit columns and ${sign}`;
	return [{ code: 'grid-too-narrow', path, message }];
}
