import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';

/**
 * What one of several right answers adds to an item score of 1, as decimal text. What has no end is cut after twelve places
 * and rounded up: all of them together then reach 1 on every platform, and the upper bound of the mapping cuts the rest.
 */
export function writeShare(count: number): string {
	const exact = String(1 / count);
	return exact.length <= 14 ? exact : String(Math.ceil(1e12 / count) / 1e12);
}

/** A mapping from answers to their shares, bounded to 0 … 1; everything else is worth nothing. */
export function writeMapping(entries: readonly { readonly key: string; readonly value: string }[]): MarkupElement {
	return element(
		'mapping',
		{ lowerBound: '0', upperBound: '1', defaultValue: '0' },
		entries.map(({ key, value }) => element('mapEntry', { mapKey: key, mappedValue: value, caseSensitive: 'false' })),
	);
}
