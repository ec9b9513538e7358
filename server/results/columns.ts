import type { Problem } from '../../item-bank/problem.ts';
import type { ResponseMapping, TakenColumn } from '../../item-bank/types.ts';
import { trimCell } from './cell-text.ts';
import type { NamedPlace, PlaceFinder } from './place-names.ts';

/** What the cells of a column of answers hold. */
export type Holds = NonNullable<ResponseMapping['holds']>;

/** A column of answers to one place. */
export interface ItemColumn extends NamedPlace {
	/** Index of the column, 0 for the first. */
	readonly column: number;
	readonly holds: Holds;
}

/** Which column is what; all others are never looked at. Indices from 0. */
export interface ColumnPlan {
	readonly headings: readonly string[];
	readonly student: number;
	readonly group: number | undefined;
	/** Of long files. */
	readonly place: number | undefined;
	/** Of long files. */
	readonly answer: number | undefined;
	/** Of wide files, in form order. */
	readonly items: readonly ItemColumn[];
}

/** A plan, or why the mapping does not fit the headings. */
export interface ColumnFinding {
	readonly plan: ColumnPlan;
	readonly problems: readonly Problem[];
}

/** Finds the columns a mapping names among headings. Headings are compared without blanks around them and without regard to case. */
export function planColumns(
	headings: readonly string[],
	mapping: ResponseMapping,
	findPlace: PlaceFinder,
): ColumnFinding {
	const problems: Problem[] = [];
	const find = (column: string | number | undefined, path: string): number | undefined => {
		if (column === undefined) return undefined;
		const { index, problem } = findColumn(headings, column, path);
		if (problem) problems.push(problem);
		return index;
	};
	const isLong = mapping.layout === 'long';
	const student = find(mapping.student, '/student') ?? -1;
	const group = find(mapping.group, '/group');
	if (isLong) {
		for (const field of ['place', 'answer'] as const) {
			if (mapping[field] !== undefined) continue;
			const message = `expected the column of the ${field} for a long file, found none`;
			problems.push({ code: 'field-missing', path: `/${field}`, message });
		}
		if (mapping.items !== undefined) problems.push(contradiction('items', 'long'));
		const [place, answer] = [find(mapping.place, '/place'), find(mapping.answer, '/answer')];
		return { plan: { headings, student, group, place, answer, items: [] }, problems };
	}
	for (const field of ['place', 'answer'] as const) {
		if (mapping[field] !== undefined) problems.push(contradiction(field, 'wide'));
	}
	const holds = mapping.holds ?? 'responses';
	const items: ItemColumn[] = [];
	const taken = new Map<number, string>();
	const add = (column: number, name: string, path: string, own: Holds): void => {
		const found = findPlace(name);
		if (found === undefined) {
			const message = `expected a position, item id or platform identifier of the form, found "${name}"`;
			problems.push({ code: 'place-unknown', path, message });
			return;
		}
		const other = taken.get(found.index);
		if (other !== undefined) {
			const message = `expected one column for place ${found.place.label}, found ${other} and ${nameColumn(headings, column)}`;
			problems.push({ code: 'place-repeated', path, message });
			return;
		}
		taken.set(found.index, nameColumn(headings, column));
		if (own === 'ratings' && found.place.item.kind !== 'explanation') {
			const message = `expected ratings for explanations only, found place ${found.place.label}, which is ${found.place.item.kind}`;
			problems.push({ code: 'rating-refused', path, message });
		}
		items.push({ ...found, column, holds: own });
	};
	if (mapping.items === undefined) {
		for (const [column, heading] of headings.entries()) {
			if (column !== student && column !== group && findPlace(heading) !== undefined)
				add(column, heading, '/items', holds);
		}
	} else {
		for (const [index, entry] of mapping.items.entries()) {
			const column = find(entry.column, `/items/${index}/column`);
			if (column !== undefined) add(column, entry.place, `/items/${index}/place`, entry.holds ?? holds);
		}
	}
	if (items.length === 0 && problems.length === 0) {
		const message = `expected columns headed by a position such as 7 or Q7, an item id or a platform identifier, found ${listHeadings(headings)}: name the columns in "items"`;
		problems.push({ code: 'columns-without-items', path: '/items', message });
	}
	return {
		plan: {
			headings,
			student,
			group,
			place: undefined,
			answer: undefined,
			items: items.sort((a, b) => a.index - b.index),
		},
		problems,
	};
}

/** What each column was taken for; "discarded" ones are never read. */
export function listColumns({ headings, student, group, place, answer, items }: ColumnPlan): readonly TakenColumn[] {
	return headings.map((heading, column): TakenColumn => {
		const number = column + 1;
		const item = items.find((each) => each.column === column);
		if (item) return { number, heading, as: 'item', place: item.place.label };
		const as =
			column === student
				? 'student'
				: column === group
					? 'group'
					: column === place
						? 'place'
						: column === answer
							? 'answer'
							: 'discarded';
		return { number, heading, as };
	});
}

function findColumn(
	headings: readonly string[],
	column: string | number,
	path: string,
): { readonly index?: number; readonly problem?: Problem } {
	if (typeof column === 'number') {
		if (column <= headings.length) return { index: column - 1 };
		const message = `expected one of ${headings.length} columns, found number ${column}`;
		return { problem: { code: 'column-unknown', path, message } };
	}
	const wanted = fold(column);
	const [index, ...others] = headings.flatMap((heading, at) => (fold(heading) === wanted ? [at] : []));
	if (index === undefined) {
		const message = `expected a column headed "${column}", found ${listHeadings(headings)}`;
		return { problem: { code: 'column-unknown', path, message } };
	}
	if (others.length === 0) return { index };
	const numbers = [index, ...others].map((at) => at + 1).join(' and ');
	const message = `expected one column headed "${column}", found columns ${numbers}: name the column by its number`;
	return { problem: { code: 'column-repeated', path, message } };
}

/** A heading as it is compared. */
export function fold(heading: string): string {
	return trimCell(heading).normalize('NFC').toLowerCase();
}

function nameColumn(headings: readonly string[], column: number): string {
	return `column ${column + 1} ("${headings[column] ?? ''}")`;
}

function listHeadings(headings: readonly string[]): string {
	const shown = headings.slice(0, 30).map((heading) => `"${heading.slice(0, 40)}"`);
	return `${shown.join(', ')}${headings.length > 30 ? ` and ${headings.length - 30} more` : ''}`;
}

function contradiction(field: string, layout: string): Problem {
	return {
		code: 'field-unknown',
		path: `/${field}`,
		message: `expected no "${field}" for a ${layout} file, found one`,
	};
}
