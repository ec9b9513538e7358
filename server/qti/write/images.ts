import type { ExportableItem } from '../exportable.ts';
import { optionIdentifier } from '../identifiers.ts';

/** How figures are put into the package. */
export type ImageFormat = 'png' | 'svg';

/** Name of the figure that is the nth of a stem, counted from 1. */
export function stemImage(count: number): string {
	return `figure-${count}`;
}

/** Name of the figure in the option at an index. */
export function optionImage(index: number): string {
	return `option-${optionIdentifier(index).toLowerCase()}`;
}

/** Address of a figure as its item names it. */
export function imageReference(stem: string, name: string, format: ImageFormat): string {
	return `images/${stem}-${name}.${format}`;
}

/** Paths of all figures of an item within the package, in document order. */
export function listImages(item: ExportableItem, stem: string, format: ImageFormat): readonly string[] {
	const inStem = item.stem.filter(({ kind }) => kind === 'figure').map((_, index) => stemImage(index + 1));
	const inOptions =
		item.kind === 'gridded'
			? []
			: item.options.flatMap(({ content }, index) => (content.kind === 'figure' ? [optionImage(index)] : []));
	return [...inStem, ...inOptions].map((name) => `items/${imageReference(stem, name, format)}`);
}
