import { type Finding, found } from '../finding.ts';
import type { ScoreTable } from '../score-table.ts';
import { selectItems } from '../select-students.ts';
import { estimateDifficulties, type RaschDifficulty } from './difficulties.ts';
import { measurePersons, type PersonMeasure } from './persons.ts';

/** Items and students on one scale: data of a map that shows whether items stand where students are. */
export interface ItemPersonMap {
	/** Items that are estimated, hardest first. */
	readonly items: readonly ({ readonly id: string } & RaschDifficulty)[];
	/** Every raw score with its measure and the number of students, lowest first. */
	readonly persons: readonly (PersonMeasure & { readonly students: number })[];
	/** Steps of the scale in logits, lowest first, with what stands in each: from `from` up to `from` + width. */
	readonly bins: readonly MapBin[];
	/** Mean of the measures less mean of the difficulties (which is 0), logits: above 0 the form was easy for these students. */
	readonly targeting: number;
	/** Items without an estimate. */
	readonly leftOut: readonly string[];
}

/** One step of the map. */
export interface MapBin {
	readonly from: number;
	readonly items: readonly string[];
	readonly students: number;
}

/** Item-person map of a form, in steps of a width in logits. Refused like estimateDifficulties. */
export function mapItemsAndPersons(table: ScoreTable, width = 0.5): Finding<ItemPersonMap> {
	const scale = estimateDifficulties(table);
	if (scale.kind === 'refused') return scale;
	const { estimated, difficulties } = scale.value;
	const counts = new Float64Array(estimated.length + 1);
	const scores = new Uint16Array(table.students.length);
	for (const { points } of selectItems(table, estimated).columns) {
		for (let student = 0; student < scores.length; student += 1) {
			if ((points[student] as number) > 0) scores[student] = (scores[student] as number) + 1;
		}
	}
	for (const score of scores) counts[score] = (counts[score] as number) + 1;
	const persons = measurePersons(difficulties).map((person) => ({
		...person,
		students: counts[person.score] as number,
	}));
	const items = scale.value.items
		.flatMap((finding, place) => (finding.kind === 'found' ? [{ id: idAt(table, place), ...finding.value }] : []))
		.sort((a, b) => b.difficulty - a.difficulty);
	const present = persons.filter(({ students }) => students > 0);
	const positions = [...items.map(({ difficulty }) => difficulty), ...present.map(({ measure }) => measure)];
	const first = Math.floor(Math.min(...positions) / width);
	const last = Math.floor(Math.max(...positions) / width);
	const bins = Array.from({ length: last - first + 1 }, (_, step): MapBin => {
		const stands = (position: number): boolean => Math.floor(position / width) === first + step;
		return {
			from: (first + step) * width,
			items: items.filter(({ difficulty }) => stands(difficulty)).map(({ id }) => id),
			students: present.filter(({ measure }) => stands(measure)).reduce((sum, { students }) => sum + students, 0),
		};
	});
	return found({
		items,
		persons,
		bins,
		targeting: present.reduce((sum, { measure, students }) => sum + measure * students, 0) / table.students.length,
		leftOut: scale.value.items.flatMap(({ kind }, place) => (kind === 'refused' ? [idAt(table, place)] : [])),
	});
}

function idAt(table: ScoreTable, place: number): string {
	return table.columns[place]?.item.id ?? '';
}
