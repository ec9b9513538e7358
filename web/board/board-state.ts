import type { KindName, ModelType } from '../../item-bank/types.ts';
import { printAddress } from '../address.ts';

/** What the cells of the board say: items in the bank, what a plan asks and a form delivers, what students did. */
export type Lens = 'supply' | 'plan' | 'evidence';

/** Status of an item. */
export type Status = 'draft' | 'approved' | 'retired';

/** A column of the board: a model type, or all of them. */
export type Column = ModelType | 'total';

/** Model types in the order of the columns. */
export const modelColumns: readonly ModelType[] = ['symbols', 'counters', 'number-line', 'story', 'table'];

/** Every column, the total last. */
export const columns: readonly Column[] = [...modelColumns, 'total'];

/** A place on the board; code '' is the row of totals. */
export interface Cell {
	readonly code: string;
	readonly column: Column;
}

/** Which items count; an empty list does not narrow, no status means approved. */
export interface BoardFilter {
	readonly kind: readonly KindName[];
	readonly dok: readonly number[];
	readonly status: readonly Status[];
	readonly points: readonly number[];
}

/** How the board is looked at, all of which stands in the address. */
export interface BoardState {
	/** Undefined: the one looked at last, else the first. */
	readonly framework: { readonly id: string; readonly edition: string } | undefined;
	readonly lens: Lens;
	readonly filter: BoardFilter;
	readonly blueprint: string | undefined;
	readonly form: string | undefined;
	/** Whose responses the evidence is; all sittings where undefined. */
	readonly sitting: string | undefined;
	/** Rows folded shut, by code or heading. */
	readonly closed: readonly string[];
	/** The cell whose items are shown. */
	readonly cell: Cell | undefined;
}

/** Kinds in the order lists show them. */
export const kinds: readonly KindName[] = [
	'choice',
	'multiple-choice',
	'gridded',
	'point',
	'order',
	'match',
	'inline-choice',
	'explanation',
	'set',
];
const lenses: readonly Lens[] = ['supply', 'plan', 'evidence'];
/** Statuses in the order an item goes through them. */
export const statuses: readonly Status[] = ['draft', 'approved', 'retired'];
/** Levels of DOK. */
export const doks: readonly number[] = [1, 2, 3, 4];
/** Points an item can be worth, of which filters offer the first few. */
export const pointValues: readonly number[] = [1, 2, 3, 4];

/** Reads the fields of an address; what is not understood is left out. */
export function parseBoardState(query: URLSearchParams): BoardState {
	const [id, edition] = [query.get('framework'), query.get('edition')];
	const code = query.get('cell');
	const column = columns.find((name) => name === query.get('model'));
	return {
		framework: id !== null && edition !== null ? { id, edition } : undefined,
		lens: lenses.find((name) => name === query.get('lens')) ?? 'supply',
		filter: {
			kind: known(query, 'kind', kinds),
			dok: known(query, 'dok', doks),
			status: known(query, 'status', statuses),
			points: known(
				query,
				'points',
				Array.from({ length: 10 }, (_none, index) => index + 1),
			),
		},
		blueprint: query.get('blueprint') ?? undefined,
		form: query.get('form') ?? undefined,
		sitting: query.get('sitting') ?? undefined,
		closed: query.getAll('closed'),
		cell: code !== null && column !== undefined ? { code, column } : undefined,
	};
}

/** The address of a state. */
export function printBoardState(state: BoardState): string {
	const { framework, lens, filter, blueprint, form, sitting, closed, cell } = state;
	const fields = {
		framework: framework?.id,
		edition: framework?.edition,
		lens: lens === 'supply' ? undefined : lens,
		...filter,
		blueprint,
		form,
		sitting,
		closed,
		model: cell?.column,
	};
	const address = printAddress('board', fields);
	if (!cell) return address;
	return `${address}&cell=${encodeURIComponent(cell.code)}`;
}

function known<T extends string | number>(query: URLSearchParams, name: string, values: readonly T[]): readonly T[] {
	const asked = query.getAll(name);
	return values.filter((value) => asked.includes(String(value)));
}
