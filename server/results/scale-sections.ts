import { measureDifficulty } from '../../item-bank/analysis/difficulty.ts';
import { foundValue } from '../../item-bank/analysis/finding.ts';
import { estimateDifficulties } from '../../item-bank/analysis/rasch/difficulties.ts';
import { type ItemPersonMap, mapItemsAndPersons } from '../../item-bank/analysis/rasch/item-person-map.ts';
import { readTargeting } from '../../item-bank/analysis/readings/test-readings.ts';
import { isRightOrWrong, keepComplete, selectItems } from '../../item-bank/analysis/select-students.ts';
import { printItemName } from '../../item-bank/items/item-name.ts';
import type { ItemPersonPlot, Report, ReportSection, ScoreBar } from '../../item-bank/types.ts';
import { hideSmall, makeSection, type ReportCell, roundTo, tellReadings } from './report-text.ts';
import type { ResultTable } from './result-set.ts';
import { type ScoreCuts, shareBars } from './score-sections.ts';

/** Students below which a difficulty is shown with a warning: about 1 logit either way (Linacre 1994, read second hand). */
const leastForLogit = 30;

/**
 * Items and students on one scale (Rasch), with difficulties and what each number of right answers measures. Items that give
 * part of their points stand aside. Hidden in a shared copy of fewer than 10 students.
 */
export function scaleSections(
	{ table, places }: ResultTable,
	title: string,
	copy: Report['copy'],
	cuts: ScoreCuts,
): readonly ReportSection[] {
	const heading = `Items and students on one scale: ${title}`;
	const hidden = hideSmall(table.students.length, copy);
	if (hidden !== undefined) return [{ title: heading, notes: [hidden] }];
	const { table: complete, leftOut } = keepComplete(table);
	const used = [...complete.columns.keys()].filter((place) => isRightOrWrong(complete.columns[place] as never));
	const aside = places.filter((_unused, place) => !used.includes(place)).map(({ label }) => label);
	const scored = selectItems(complete, used);
	const students = complete.students.length;
	const notes = [
		`${students} students with points on every item${leftOut === 0 ? '' : `, ${leftOut} left out`}; ${used.length} items that give all their points or none${aside.length === 0 ? '' : `, so not place ${aside.join(', ')}`}.`,
	];
	const scale = estimateDifficulties(scored);
	const map = mapItemsAndPersons(scored);
	if (scale.kind === 'refused' || map.kind === 'refused') {
		const why = scale.kind === 'refused' ? scale.message : '';
		return [{ title: heading, notes: [...notes, `No scale: ${why}.`] }];
	}
	notes.push(
		...tellReadings([readTargeting(map, students)], students),
		'Difficulty in logits: 0 is the mean of these items, higher is harder. It holds for these items and these students; whether the model fits is not tested here.',
		...(students < leastForLogit
			? [`With fewer than ${leastForLogit} students a difficulty can be off by a logit and more.`]
			: []),
	);
	const rows = used.map((place, at): readonly ReportCell[] => {
		const figure = scale.value.items[at];
		const value = figure === undefined ? undefined : foundValue(figure);
		const share = foundValue(measureDifficulty(complete.columns[place] as never))?.share;
		return [
			places[place]?.label ?? '',
			printItemName(places[place]?.record.item.name ?? ''),
			share === undefined ? null : roundTo(share, 2),
			value === undefined ? null : roundTo(value.difficulty, 2),
			value === undefined ? null : roundTo(value.standardError, 2),
			figure?.kind === 'refused' ? 'no estimate: all right or all wrong' : '',
		];
	});
	rows.sort((a, b) => (typeof b[3] === 'number' ? b[3] : -Infinity) - (typeof a[3] === 'number' ? a[3] : -Infinity));
	const labelOf = new Map(used.map((place, at) => [scored.columns[at]?.item.id ?? '', places[place]?.label ?? '']));
	return [
		makeSection(
			heading,
			['Place', 'Item', 'p', 'Difficulty', 'Standard error', 'Note'],
			rows,
			notes,
			plotOf(map.value, labelOf, shareMeasures(map.value, copy, cuts)),
		),
		measureSection(map.value, title, copy, scale.value.estimated.length),
	];
}

function plotOf(
	{ items }: ItemPersonMap,
	labelOf: ReadonlyMap<string, string>,
	students: readonly ScoreBar[],
): ItemPersonPlot {
	return {
		kind: 'item-person',
		items: items.map(({ id, difficulty, standardError }) => ({
			label: labelOf.get(id) ?? id,
			at: roundTo(difficulty, 3),
			error: roundTo(standardError, 3),
		})),
		students: [...students],
	};
}

/**
 * Students along the scale: in half logits in the teacher's own copy; in a shared one by right answers, joined as the spread of
 * scores joins them, so that the two together tell no more than either. A bar reaches halfway to the measures beside it.
 */
function shareMeasures({ persons, bins }: ItemPersonMap, copy: Report['copy'], cuts: ScoreCuts): readonly ScoreBar[] {
	if (copy === 'own') return bins.map(({ from, students }) => ({ from, to: from + 0.5, count: students }));
	const counts = persons.map(({ score, students }) => ({ from: score, to: score, count: students }));
	const edge = (score: number): number => {
		const [below, above] = [persons[score - 1]?.measure, persons[score]?.measure];
		if (below === undefined) return (above ?? 0) - 0.5;
		return above === undefined ? below + 0.5 : (below + above) / 2;
	};
	return shareBars(counts, copy, cuts).map(({ from, to, count }) => ({
		from: roundTo(edge(from), 3),
		to: roundTo(edge(to + 1), 3),
		count,
	}));
}

/** What each number of right answers measures. How many students have it stands in the teacher's own copy only. */
function measureSection({ persons }: ItemPersonMap, title: string, copy: Report['copy'], items: number): ReportSection {
	const rows = persons.map(({ score, measure, standardError, students }): readonly ReportCell[] => [
		score,
		roundTo(measure, 2),
		roundTo(standardError, 2),
		...(copy === 'own' ? [students] : []),
	]);
	return makeSection(
		`What right answers measure: ${title}`,
		['Right answers', 'Measure', 'Standard error', ...(copy === 'own' ? ['Students'] : [])],
		rows,
		[
			`Of the ${items} items on the scale. A student at the difficulty of an item has it right one time in two. Two students are told apart by measures about three standard errors apart or more: twice the error of a difference of two.`,
		],
	);
}
