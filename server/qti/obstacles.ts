import { computeKey, ItemKeyError } from '../../item-bank/items/key.ts';
import { readEntry } from '../../item-bank/responses/entry.ts';
import type { Placement } from './placement.ts';
import { KeyTooWideError } from './write/gridded.ts';
import { FigureTooSmallError, layHotspots } from './write/hotspots.ts';

/** Why an item at its place cannot be written as QTI, found without writing it; undefined where nothing is known to stand against it. */
export function findObstacle({ record: { item }, profile, pointStyle }: Placement): string | undefined {
	try {
		const key = computeKey(item);
		if (key.kind === 'value' && profile && readEntry(String(key.value), profile).kind !== 'valid') {
			throw new KeyTooWideError(key.value, profile);
		}
		if (item.kind === 'point' && pointStyle === 'hotspot') layHotspots(item.line);
		return undefined;
	} catch (error) {
		if (error instanceof ItemKeyError || error instanceof KeyTooWideError || error instanceof FigureTooSmallError) {
			return error.message;
		}
		throw error;
	}
}
