import type { ItemQuery, KindName, ModelType } from '../../item-bank/types.ts';
import { printAddress } from '../address.ts';
import { doks, kinds, modelColumns, type Status, statuses } from '../board/board-state.ts';

/** Part a number plays in a story. */
export type Role = 'position' | 'change' | 'total-distance' | 'comparison';

/** Order of what is found: as it came into the bank, by name, latest change first. */
export type Sort = 'added' | 'name' | 'changed';

/** Values asked for; values of one list are alternatives, an empty list does not narrow. */
export interface Marks {
	readonly model: readonly ModelType[];
	readonly kind: readonly KindName[];
	readonly dok: readonly number[];
	readonly status: readonly Status[];
	readonly points: readonly number[];
	readonly setting: readonly string[];
	readonly role: readonly Role[];
}

/** Name of a list of {@link Marks}, and of the counts the bank answers with. */
export type MarkName = keyof Marks;

/** What is looked for and how it is shown, all of which stands in the address. */
export interface FindState extends Marks {
	readonly text: string;
	/** Undefined: the one looked at last, else the first. */
	readonly framework: { readonly id: string; readonly edition: string } | undefined;
	/** In any spelling; undefined: every standard. */
	readonly code: string | undefined;
	/** Also the standards below the code. */
	readonly hasBelow: boolean;
	/** Every item aligned to the code, not only those counted under it. */
	readonly hasAny: boolean;
	readonly sort: Sort;
	/** Form that what is found can be added to. */
	readonly form: string | undefined;
	/** How many rows are shown at least. */
	readonly shown: number;
}

/** Lists of values in the order of the margin. */
export const markNames: readonly MarkName[] = ['model', 'kind', 'dok', 'status', 'points', 'setting', 'role'];
/** Parts of numbers in the order lists show them. */
export const roles: readonly Role[] = ['position', 'change', 'total-distance', 'comparison'];
/** Orders of what is found. */
export const sorts: readonly Sort[] = ['added', 'name', 'changed'];
/** How many rows more are read at a time. */
export const pageLength = 50;
/** Most rows the bank hands over at once. */
const mostRows = 200;
const mostText = 200;

/** Reads the fields of an address; what is not understood is left out. */
export function parseFindState(query: URLSearchParams): FindState {
	const [id, edition] = [query.get('framework'), query.get('edition')];
	const framework = id !== null && edition !== null ? { id, edition } : undefined;
	const code = query.get('code') ?? '';
	const shown = Number(query.get('shown') ?? pageLength);
	return {
		text: (query.get('text') ?? '').trim().slice(0, mostText),
		framework,
		code: framework === undefined || code === '' ? undefined : code.slice(0, 60),
		hasBelow: query.get('below') === 'true',
		hasAny: query.get('alignment') === 'any',
		model: known(query, 'model', modelColumns),
		kind: known(query, 'kind', kinds),
		dok: known(query, 'dok', doks),
		status: known(query, 'status', statuses),
		points: known(
			query,
			'points',
			Array.from({ length: 10 }, (_none, index) => index + 1),
		),
		setting: [...new Set(query.getAll('setting'))].filter((name) => /^[a-z][a-z0-9-]{1,40}$/.test(name)).slice(0, 20),
		role: known(query, 'role', roles),
		sort: sorts.find((name) => name === query.get('sort')) ?? 'added',
		form: query.get('form') ?? undefined,
		shown: Number.isInteger(shown) ? Math.min(Math.max(shown, pageLength), mostRows) : pageLength,
	};
}

/** The address of a state. */
export function printFindState(state: FindState): string {
	const { text, framework, code, hasBelow, hasAny, sort, form, shown } = state;
	return printAddress('find', {
		text,
		framework: framework?.id,
		edition: framework?.edition,
		code,
		below: code !== undefined && hasBelow ? true : undefined,
		alignment: code !== undefined && hasAny ? 'any' : undefined,
		...marksOf(state),
		sort: sort === 'added' ? undefined : sort,
		form,
		shown: shown > pageLength ? Math.min(shown, mostRows) : undefined,
	});
}

/** What the bank is asked for, without the size of the page. */
export function queryOf(state: FindState): ItemQuery {
	const { text, framework, code, hasBelow, hasAny, sort } = state;
	const standard =
		code === undefined
			? {}
			: { code, ...(hasBelow ? { below: true } : {}), ...(hasAny ? { alignment: 'any' as const } : {}) };
	return {
		...(text === '' ? {} : { text }),
		...(framework === undefined ? {} : { framework: framework.id, edition: framework.edition, ...standard }),
		...marksOf(state),
		sort,
	};
}

/** Everything let go of that narrows; the framework, the order and the form stay. */
export function clearFindState({ framework, sort, form }: FindState): FindState {
	const nothing = parseFindState(new URLSearchParams());
	return { ...nothing, framework, sort, form };
}

/** States with one condition less each, by the name of the condition; a list counts as one condition. */
export function loosenFindState(state: FindState): readonly { readonly name: Condition; readonly state: FindState }[] {
	const loosened: { readonly name: Condition; readonly state: FindState }[] = [];
	if (state.text !== '') loosened.push({ name: 'text', state: { ...state, text: '' } });
	if (state.code !== undefined) loosened.push({ name: 'code', state: { ...state, code: undefined } });
	for (const name of markNames) {
		if (state[name].length > 0) loosened.push({ name, state: { ...state, [name]: [] } });
	}
	return loosened;
}

/** How many values and standards narrow a search; words are not counted. */
export function countMarked(state: FindState): number {
	return markNames.reduce((sum, name) => sum + state[name].length, state.code === undefined ? 0 : 1);
}

/** Something that narrows. */
export type Condition = MarkName | 'text' | 'code';

function marksOf({ model, kind, dok, status, points, setting, role }: Marks): Marks {
	return { model, kind, dok, status, points, setting, role };
}

function known<T extends string | number>(query: URLSearchParams, name: string, values: readonly T[]): readonly T[] {
	const asked = query.getAll(name);
	return values.filter((value) => asked.includes(String(value)));
}
