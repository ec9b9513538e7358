import { type Column, columns } from '../board/board-state.ts';

/** A cell by the key of its row; key undefined: the first row. */
export interface GridPlace {
	readonly key: string | undefined;
	readonly column: Column | 'head';
}

const across: readonly (Column | 'head')[] = ['head', ...columns];
const page = 10;

/** Where a key leads from a cell, by the ARIA grid pattern; undefined for a key that does not move. */
export function moveInGrid(
	place: { readonly key: string; readonly column: Column | 'head' },
	{ key, ctrlKey }: Pick<KeyboardEvent, 'key' | 'ctrlKey'>,
	keys: readonly string[],
): GridPlace | undefined {
	const row = Math.max(keys.indexOf(place.key), 0);
	const column = across.indexOf(place.column);
	const to = (nextRow: number, nextColumn: number): GridPlace => ({
		key: keys[Math.min(Math.max(nextRow, 0), keys.length - 1)],
		column: across[Math.min(Math.max(nextColumn, 0), across.length - 1)] ?? 'head',
	});
	switch (key) {
		case 'ArrowDown':
			return to(row + 1, column);
		case 'ArrowUp':
			return to(row - 1, column);
		case 'ArrowRight':
			return to(row, column + 1);
		case 'ArrowLeft':
			return to(row, column - 1);
		case 'Home':
			return to(ctrlKey ? 0 : row, 0);
		case 'End':
			return to(ctrlKey ? keys.length - 1 : row, across.length - 1);
		case 'PageDown':
			return to(row + page, column);
		case 'PageUp':
			return to(row - page, column);
		default:
			return undefined;
	}
}
