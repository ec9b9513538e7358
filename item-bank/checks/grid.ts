import { findKey } from '../items/key.ts';
import type { Problem } from '../problem.ts';
import { fitsGrid } from '../responses/grid.ts';
import { findGridProfile, gridProfiles } from '../responses/grid-profiles.ts';
import type { GridProfile, Item, PartItem } from '../types.ts';

/** A grid profile nobody knows, and a key wider than the grid. */
export function checkGrid(item: PartItem): readonly Problem[] {
	if (item.kind !== 'gridded') return [];
	const profile = findGridProfile(item.grid);
	if (!profile) {
		const known = gridProfiles.map(({ id }) => id).join(', ');
		const message = `expected a grid profile among ${known}, found "${item.grid}"`;
		return [{ code: 'unknown-grid-profile', path: '/grid', message }];
	}
	return checkKeyFits(item, profile, '/grid');
}

/** A gridded key that the profile's grid cannot hold; nothing for items of other kinds. */
export function checkKeyFits(item: Item, profile: GridProfile, path: string): readonly Problem[] {
	if (item.kind === 'set') {
		return item.parts.flatMap((part, index) => checkKeyFits(part, profile, `${path}/parts/${index}`));
	}
	if (item.kind !== 'gridded') return [];
	const finding = findKey(item);
	if (!('key' in finding) || finding.key.kind !== 'value' || fitsGrid(finding.key.value, profile)) return [];
	const sign = profile.signColumn === 'none' ? 'no sign column' : 'a sign column';
	const message = `the key ${finding.key.value} does not fit the grid "${profile.id}" with ${profile.digitColumns} digit columns and ${sign}`;
	return [{ code: 'grid-too-narrow', path, message }];
}
