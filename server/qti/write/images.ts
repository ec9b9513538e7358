import { entryListsOf } from '../../../item-bank/items/entries.ts';
import { entryIdentifier, optionIdentifier } from '../identifiers.ts';
import { type Placement, stimulusBeside, stimulusWithin } from '../placement.ts';

/** How figures are put into the package. */
export type ImageFormat = 'png' | 'svg';

/** Name of the line that a point is marked on. */
export const lineImage = 'line';

/** Name of the figure that is the nth of a stem, counted from 1. */
export function stemImage(count: number): string {
	return `figure-${count}`;
}

/** Name of the figure in the option or entry at an index. */
export function optionImage(index: number): string {
	return `option-${optionIdentifier(index).toLowerCase()}`;
}

/** Name of the figure in the entry at an index of one column of a match: left-2. */
export function entryImage(side: 'left' | 'right', index: number): string {
	return entryIdentifier(side, index).replace(/^./, `${side}-`);
}

/** Address of a figure as its item names it. */
export function imageReference(stem: string, name: string, format: ImageFormat): string {
	return `images/${stem}-${name}.${format}`;
}

/** Paths of all figures of an item within the package, in document order. */
export function listImages(
	placement: Pick<Placement, 'record' | 'stimulus' | 'stem' | 'shared'>,
	format: ImageFormat,
): readonly string[] {
	const { item } = placement.record;
	const shown = [...stimulusWithin(placement), ...item.stem].filter(({ kind }) => kind === 'figure');
	const line = item.kind === 'point' ? [lineImage] : [];
	const inEntries = entryListsOf(item).flatMap(({ path, entries }) =>
		entries.flatMap(({ content }, index) => (content.kind === 'figure' ? [nameIn(path, index)] : [])),
	);
	const names = [...shown.map((_, index) => stemImage(index + 1)), ...line, ...inEntries];
	return names.map((name) => `items/${imageReference(placement.stem, name, format)}`);
}

/** Paths of all figures of the stimulus written beside an item; none where there is no such. */
export function listStimulusImages(placement: Placement, format: ImageFormat): readonly string[] {
	const stem = stimulusBeside(placement)?.stem;
	if (stem === undefined) return [];
	return placement.stimulus
		.filter(({ kind }) => kind === 'figure')
		.map((_, index) => `items/${imageReference(stem, stemImage(index + 1), format)}`);
}

function nameIn(path: string, index: number): string {
	if (path === '/left' || path === '/right') return entryImage(path === '/left' ? 'left' : 'right', index);
	return optionImage(index);
}
