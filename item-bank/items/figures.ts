import type { Figure, Item, StemBlock } from '../types.ts';
import { entryListsOf } from './entries.ts';

/** A figure inside an item, with its place as a JSON pointer. */
export interface PlacedFigure {
	readonly path: string;
	readonly figure: Figure;
}

/** Every figure of an item in document order: stem, answer line, options and entries; of a set also those of its parts. */
export function figuresOf(item: Item): readonly PlacedFigure[] {
	if (item.kind === 'set') {
		const inside = item.parts.flatMap((part, index) =>
			figuresOf(part).map(({ path, figure }) => ({ path: `/parts/${index}${path}`, figure })),
		);
		return [...blockFigures(item.stem, '/stem'), ...inside];
	}
	const line = item.kind === 'point' ? [{ path: '/line', figure: item.line }] : [];
	const shown = entryListsOf(item).flatMap(({ path, entries }) =>
		entries.flatMap(({ content }, index) =>
			content.kind === 'figure' ? [{ path: `${path}/${index}/content/figure`, figure: content.figure }] : [],
		),
	);
	return [...blockFigures(item.stem, '/stem'), ...line, ...shown];
}

function blockFigures(blocks: readonly StemBlock[], path: string): readonly PlacedFigure[] {
	return blocks.flatMap((block, index) =>
		block.kind === 'figure' ? [{ path: `${path}/${index}/figure`, figure: block.figure }] : [],
	);
}
