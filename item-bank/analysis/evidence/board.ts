import type { ModelType } from '../../types.ts';
import type { ScoreTable } from '../score-table.ts';
import type { FindPlace } from './cells.ts';
import { type EvidenceCell, type EvidenceOptions, gatherEvidence } from './evidence.ts';
import { type Hiding, leastStudents, suppressSmallCells } from './suppression.ts';

/** One place of the board: a cell, or the total of a row, a column, or everything, where a name is undefined. */
export interface BoardPlace {
	readonly standard: string | undefined;
	readonly model: ModelType | undefined;
	/** Items behind it: known from the form, whoever sat it. */
	readonly items: number;
	/** What may be shown: the evidence, or why it is hidden. A hidden place tells no figure. */
	readonly shown: EvidenceCell | { readonly hidden: Hiding };
}

const all = 'all';

/**
 * The board of evidence for a shared report: every standard × model with totals, small groups hidden and with them whatever
 * would let one compute them (see suppressSmallCells). Totals count a student once and are gathered from the
 * responses, not added up from cells.
 */
export function gatherBoard(
	tables: readonly ScoreTable[],
	findPlace: FindPlace,
	options: EvidenceOptions = {},
	least: number = leastStudents,
): readonly BoardPlace[] {
	const gather = (byStandard: boolean, byModel: boolean): readonly EvidenceCell[] =>
		gatherEvidence(
			tables,
			(item) => {
				const place = findPlace(item);
				return place && { standard: byStandard ? place.standard : all, model: byModel ? place.model : all };
			},
			options,
		);
	const places = [
		...gather(true, true).map((cell) => ({ cell, standard: cell.standard, model: modelOf(cell) })),
		...gather(true, false).map((cell) => ({ cell, standard: cell.standard, model: undefined })),
		...gather(false, true).map((cell) => ({ cell, standard: undefined, model: modelOf(cell) })),
		...gather(false, false).map((cell) => ({ cell, standard: undefined, model: undefined })),
	];
	const shown = suppressSmallCells(
		places.map(({ cell: { students, earned, possible }, standard, model }) => {
			return { row: standard, column: model, students, earned, possible };
		}),
		least,
	);
	return places.map(({ cell, standard, model }, at) => {
		const hidden = shown[at]?.hidden;
		return { standard, model, items: cell.items, shown: hidden === undefined ? cell : { hidden } };
	});
}

function modelOf({ model }: EvidenceCell): ModelType | undefined {
	return model === all ? undefined : model;
}
