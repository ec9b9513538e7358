import { type BoardPlace, gatherBoard } from '../../item-bank/analysis/evidence/board.ts';
import { collectCells, type FindPlace } from '../../item-bank/analysis/evidence/cells.ts';
import { leastStudents } from '../../item-bank/analysis/evidence/suppression.ts';
import type { AnswerPlace } from '../../item-bank/forms/answer-places.ts';
import { leadAlignment } from '../../item-bank/forms/item-traits.ts';
import type { Evidence, EvidenceEntry, EvidenceSpot, ModelType, ReportSection } from '../../item-bank/types.ts';
import { intervalText, makeSection, percent, type ReportCell, roundTo } from './report-text.ts';
import type { ResultTable } from './result-set.ts';

/** Which framework's standards are the rows. */
export interface Lens {
	readonly framework: string;
	readonly edition: string;
}

/** Model types in the order of the board's columns. */
const models: readonly ModelType[] = ['symbols', 'counters', 'number-line', 'story', 'table'];

/**
 * Evidence per standard × model with totals, over any tables. In a shared copy cells of fewer than 10 students are hidden
 * and whatever would give them away.
 */
export function reportEvidence(
	tables: readonly ResultTable[],
	lens: Lens,
	copy: Evidence['copy'],
): Pick<Evidence, 'cells' | 'students'> {
	const score = tables.map(({ table }) => table);
	const find = findStandards(tables, lens);
	const board = gatherBoard(score, find, {}, copy === 'own' ? 0 : leastStudents);
	const everywhere: FindPlace = () => ({ standard: '', model: 'symbols' });
	return { students: collectCells(score, everywhere).codes.length, cells: board.map(describePlace) };
}

/** Finds the standard and model type of the items of some tables. */
export function findStandards(tables: readonly ResultTable[], lens: Lens): FindPlace {
	const standards = new Map(
		tables.flatMap(({ table, places }) =>
			table.columns.map(({ item }, index): readonly [string, { standard: string; model: ModelType } | undefined] => [
				`${item.id} ${item.version}`,
				placeOf(places[index], lens),
			]),
		),
	);
	return ({ id, version }) => standards.get(`${id} ${version}`);
}

function placeOf(
	place: AnswerPlace | undefined,
	{ framework, edition }: Lens,
): { readonly standard: string; readonly model: ModelType } | undefined {
	const standard = place && leadAlignment(place.item, framework, edition)?.code;
	return place === undefined || standard === undefined ? undefined : { standard, model: place.item.given };
}

function describePlace({ standard, model, items, shown }: BoardPlace): EvidenceEntry {
	const name = { ...(standard === undefined ? {} : { standard }), ...(model === undefined ? {} : { model }) };
	if ('hidden' in shown) return { ...name, hidden: shown.hidden, items };
	const { earned, possible, share, interval, responses, students } = shown;
	const bounds = interval.kind === 'found' ? { low: interval.value.low, high: interval.value.high } : {};
	return {
		...name,
		items,
		earned: roundTo(earned, 4),
		possible: roundTo(possible, 4),
		share,
		...bounds,
		responses,
		students,
	};
}

/** A model type as people call it. */
export function nameModel(model: ModelType | undefined): string {
	return model === undefined ? 'all models' : model.replace('-', ' ');
}

/** The board as a table: a row a standard, a column a model type, and the totals. */
export function coverageSections(
	{ cells, students }: Pick<Evidence, 'cells' | 'students'>,
	lens: Lens,
): readonly ReportSection[] {
	const rows = [...new Set(cells.flatMap(({ standard }) => standard ?? []))].sort();
	const used = models.filter((model) => cells.some((cell) => cell.model === model));
	const find = (standard: string | undefined, model: ModelType | undefined): string => {
		const cell = cells.find((each) => each.standard === standard && each.model === model);
		if (cell === undefined) return '–';
		if (cell.share === undefined) return 'hidden';
		return `${percent(cell.share)} of ${cell.possible} points`;
	};
	const board = [...rows, undefined].map((standard): readonly ReportCell[] => [
		standard ?? 'All',
		...used.map((model) => find(standard, model)),
		find(standard, undefined),
	]);
	const details = cells
		.filter(({ standard }) => standard !== undefined)
		.sort((a, b) => (`${a.standard}` < `${b.standard}` ? -1 : a.standard === b.standard ? 0 : 1))
		.map((cell): readonly ReportCell[] => [
			cell.standard ?? '',
			nameModel(cell.model),
			cell.share === undefined ? 'hidden' : percent(cell.share),
			cell.low === undefined || cell.high === undefined ? null : intervalText({ low: cell.low, high: cell.high }),
			cell.earned ?? null,
			cell.possible ?? null,
			cell.responses ?? null,
			cell.students ?? null,
			cell.items,
		]);
	return [
		makeSection(
			`Points earned by standard and model (${lens.framework} ${lens.edition})`,
			['Standard', ...used.map(nameModel), 'all models'],
			board,
			[`${students} students. A cell with fewer than 3 items rests on those items more than on the standard.`],
			{
				kind: 'evidence-board',
				columns: [...used.map(nameModel), 'all models'],
				rows: [...rows, undefined].map((standard) => ({
					label: standard ?? 'All',
					cells: [...used, undefined].map((model) => plotCell(cells, standard, model)),
				})),
			},
		),
		makeSection(
			'The same with counts and intervals',
			['Standard', 'Model', 'Share', '95 % interval', 'Earned', 'Possible', 'Responses', 'Students', 'Items'],
			details,
		),
	];
}

function plotCell(
	cells: Evidence['cells'],
	standard: string | undefined,
	model: ModelType | undefined,
): EvidenceSpot | null {
	const cell = cells.find((each) => each.standard === standard && each.model === model);
	if (cell === undefined) return null;
	const { share, low, high, students, items } = cell;
	return {
		items,
		...(share === undefined ? {} : { share }),
		...(low === undefined ? {} : { low }),
		...(high === undefined ? {} : { high }),
		...(students === undefined ? {} : { students }),
	};
}
