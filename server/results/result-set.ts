import {
	buildScoreTable,
	type ResponseState,
	type ScoreRow,
	type ScoreTable,
} from '../../item-bank/analysis/score-table.ts';
import { selectStudents } from '../../item-bank/analysis/select-students.ts';
import { answerTextOf, tableItemOf } from '../../item-bank/analysis/table-item.ts';
import type { AnswerPlace } from '../../item-bank/forms/answer-places.ts';
import { invariant } from '../../item-bank/invariant.ts';
import type { AnswerScore, PartResponse, SittingEntry } from '../../item-bank/types.ts';

/** The newest scores of one sitting. */
export interface ResultSet {
	readonly entry: SittingEntry;
	readonly places: readonly AnswerPlace[];
	/** Codes of the group's list, with responses or without. */
	readonly roster: readonly string[];
	readonly answers: readonly {
		readonly code: string;
		readonly position: number;
		/** 0 for an item by itself. */
		readonly part: number;
		/** JSON of the response; null where it came as points or a mark. */
		readonly response: string | null;
		readonly state: AnswerScore['state'];
		readonly points: number;
	}[];
}

/** A score table with what stands behind its columns, in the same order. */
export interface ResultTable {
	readonly table: ScoreTable;
	readonly places: readonly AnswerPlace[];
}

/**
 * Scores of sittings that follow the same version of a form as one table. A student who sat twice is two rows. Students are
 * named by their code, or by sitting and code where there are several sittings.
 */
export function buildResultTable(sets: readonly ResultSet[]): ResultTable {
	const [first] = sets;
	invariant(first, 'a table of no sittings');
	const { places } = first;
	const ids = places.map(({ record, part }) => (part === undefined ? record.id : `${record.id}.${part}`));
	const items = places.map(({ record, item, points }, index) =>
		tableItemOf({ id: ids[index] ?? '', version: record.version, item }, Math.round(points * 1e6) / 1e6),
	);
	const byPlace = new Map(places.map((place, index) => [`${place.position} ${place.part ?? 0}`, index]));
	const { table, faults } = buildScoreTable(items, listRows(sets, places, ids, byPlace));
	invariant(faults.length === 0, `scores that fit no table: ${faults[0]?.message}`);
	return { table, places };
}

/** How a student is named in the table of some sittings: by code, and by sitting too where there are several. */
export function studentName(sets: readonly ResultSet[], { entry }: ResultSet, code: string): string {
	return sets.length > 1 ? `${entry.id} ${code}` : code;
}

/**
 * The table of some sittings with students named by their code alone, so that those who sat two forms can be found on both. A
 * student who sat the same form twice counts by the last sitting in the list.
 */
export function tableByCode(sets: readonly ResultSet[]): ScoreTable {
	const { table } = buildResultTable(sets);
	const codeOf = new Map(
		sets.flatMap((set) => set.answers.map(({ code }) => [studentName(sets, set, code), code] as const)),
	);
	const last = new Map(table.students.map((name, place) => [codeOf.get(name) ?? name, place]));
	return { ...selectStudents(table, [...last.values()]), students: [...last.keys()] };
}

function* listRows(
	sets: readonly ResultSet[],
	places: readonly AnswerPlace[],
	ids: readonly string[],
	byPlace: ReadonlyMap<string, number>,
): Generator<ScoreRow> {
	for (const set of sets) {
		for (const { code, position, part, response, state, points } of set.answers) {
			const index = byPlace.get(`${position} ${part}`);
			const place = places[index ?? -1];
			if (index === undefined || place === undefined) continue;
			const answer = response === null ? undefined : answerTextOf(JSON.parse(response) as PartResponse, place.profile);
			yield {
				student: studentName(sets, set, code),
				item: ids[index] ?? '',
				points,
				state: stateOf(state),
				...(answer === undefined ? {} : { answer }),
			};
		}
	}
}

function stateOf(state: AnswerScore['state']): ResponseState {
	switch (state) {
		case 'correct':
		case 'partly':
		case 'incorrect':
			return 'answered';
		case 'omitted':
		case 'not-reached':
		case 'invalid':
		case 'unrated':
			return state;
		default:
			return state satisfies never;
	}
}

/** Sittings that can share a table: by form and the version whose keys they are scored by. */
export function groupByForm(sets: readonly ResultSet[]): readonly (readonly ResultSet[])[] {
	const groups = new Map<string, ResultSet[]>();
	for (const set of sets) {
		const key = `${set.entry.sitting.form} ${set.entry.scoredAs}`;
		const group = groups.get(key);
		if (group) group.push(set);
		else groups.set(key, [set]);
	}
	return [...groups.values()];
}
