import type { ModelType } from '../../types.ts';
import type { EvidenceCell } from '../evidence/evidence.ts';
import { type CoverageScope, type CoveredItem, coverItems } from './coverage.ts';

/** One sitting of the year: a form on a day, with evidence where responses came back. */
export interface Sitting {
	readonly form: string;
	/** ISO 8601 calendar date. */
	readonly date: string;
	readonly items: readonly CoveredItem[];
	readonly evidence?: readonly EvidenceCell[];
}

/** One standard over the year. */
export interface YearRow {
	readonly standard: string;
	/** One entry a sitting, earliest first. */
	readonly sittings: readonly YearEntry[];
	/** Different items over the year, and in how many sittings and models. */
	readonly items: number;
	readonly timesAsked: number;
	readonly models: readonly ModelType[];
	/** Day it was last asked; undefined where never. */
	readonly lastAsked: string | undefined;
}

/** One standard on one sitting. */
export interface YearEntry {
	readonly form: string;
	readonly date: string;
	readonly items: number;
	/** Points earned over possible with responses, where there are any. */
	readonly earned: number;
	readonly possible: number;
	readonly responses: number;
}

/**
 * The year by standard over forms and sittings, for the standards given (those never asked stand with 0 items, which is the
 * point of the view). Sittings come in order of their days, ties as given. Shares are not compared across different
 * items here; compareSittings does that with its cautions.
 */
export function viewYear(
	sittings: readonly Sitting[],
	standards: readonly string[],
	scope: CoverageScope,
): readonly YearRow[] {
	const ordered = [...sittings].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
	const covered = ordered.map((sitting) => ({ sitting, cells: coverItems(sitting.items, scope).cells }));
	return standards.map((standard) => {
		const own = covered.map(({ sitting, cells }) => ({
			sitting,
			cells: cells.filter((cell) => cell.standard === standard),
			evidence: (sitting.evidence ?? []).filter((cell) => cell.standard === standard && cell.pattern === undefined),
		}));
		const asked = own.filter(({ cells }) => cells.length > 0);
		return {
			standard,
			sittings: own.map(({ sitting, cells, evidence }) => ({
				form: sitting.form,
				date: sitting.date,
				items: sum(cells, ({ items }) => items),
				earned: sum(evidence, ({ earned }) => earned),
				possible: sum(evidence, ({ possible }) => possible),
				responses: sum(evidence, ({ responses }) => responses),
			})),
			items: new Set(own.flatMap(({ cells }) => cells.flatMap(({ ids }) => ids))).size,
			timesAsked: asked.length,
			models: [...new Set(asked.flatMap(({ cells }) => cells.map(({ model }) => model)))],
			lastAsked: asked.at(-1)?.sitting.date,
		};
	});
}

function sum<T>(list: readonly T[], worth: (entry: T) => number): number {
	return list.reduce((total, entry) => total + worth(entry), 0);
}
