import { type Finding, found } from './finding.ts';
import type { ScoreTable } from './score-table.ts';
import { findTotals } from './totals.ts';

/**
 * What becomes of students whose total ties with the cut. Neither depends on the order of the students.
 * - shared: each group is worth exactly 27 % of the students; those tied at the cut share its last places equally.
 * - inclusive: everybody tied at the cut belongs to the group; groups may be larger and differ in size.
 */
export type TieRule = 'shared' | 'inclusive';

/** How much each student counts in the upper and lower group, 0 to 1. */
export interface ScoreGroups {
	readonly upper: Float64Array;
	readonly lower: Float64Array;
	/** Sums of the weights. */
	readonly upperSize: number;
	readonly lowerSize: number;
	/** Lowest total in the upper group, highest in the lower. */
	readonly upperCut: number;
	readonly lowerCut: number;
	readonly rule: TieRule;
}

/** One item in the two groups. */
export interface UpperLower {
	/** Share of the points earned in each group. */
	readonly upper: number;
	readonly lower: number;
	/** upper − lower, −1 to 1. */
	readonly discrimination: number;
}

/**
 * The groups with the highest and lowest totals: g = (27 n + 50) div 100 students each, which is 27 % rounded half up in
 * whole numbers (Kelley 1939 for 27 %, from memory), under a tie rule. Refused like findTotals; one student at least is in
 * each group from two students on.
 */
export function findScoreGroups(table: ScoreTable, rule: TieRule = 'shared'): Finding<ScoreGroups> {
	const finding = findTotals(table);
	if (finding.kind === 'refused') return finding;
	const { totals } = finding.value;
	const size = Math.max(1, Math.floor((27 * totals.length + 50) / 100));
	const sorted = totals.slice().sort();
	const lowerCut = sorted[size - 1] as number;
	const upperCut = sorted[sorted.length - size] as number;
	const upper = weigh(totals, (total) => total - upperCut, size, rule);
	const lower = weigh(totals, (total) => lowerCut - total, size, rule);
	return found({
		upper: upper.weights,
		lower: lower.weights,
		upperSize: upper.sum,
		lowerSize: lower.sum,
		upperCut,
		lowerCut,
		rule,
	});
}

/** Above 0 is inside the group, 0 at the cut. */
function weigh(totals: Float64Array, beyond: (total: number) => number, size: number, rule: TieRule) {
	const weights = new Float64Array(totals.length);
	let [inside, tied] = [0, 0];
	for (let place = 0; place < totals.length; place += 1) {
		const distance = beyond(totals[place] as number);
		if (distance > 0) inside += 1;
		else if (distance === 0) tied += 1;
	}
	const atCut = rule === 'inclusive' ? 1 : (size - inside) / tied;
	for (let place = 0; place < totals.length; place += 1) {
		const distance = beyond(totals[place] as number);
		weights[place] = distance > 0 ? 1 : distance === 0 ? atCut : 0;
	}
	return { weights, sum: inside + atCut * tied };
}

/**
 * Upper-lower discrimination of every item, in form order: D = (share of the points in the upper group) − (share in the
 * lower). The studied item is in the total. Refused like {@link findScoreGroups}. A largest possible D follows from the
 * difficulty p: 1 for .27 < p < .73, else p/.27 or (1 − p)/.27 (Tristan Lopez 1998, Rasch Measurement Transactions 12:1).
 */
export function measureUpperLower(table: ScoreTable, rule: TieRule = 'shared'): readonly Finding<UpperLower>[] {
	const finding = findScoreGroups(table, rule);
	if (finding.kind === 'refused') return table.columns.map(() => finding);
	const groups = finding.value;
	return table.columns.map(({ item, points }) => {
		let [above, below] = [0, 0];
		for (let place = 0; place < points.length; place += 1) {
			const earned = points[place] as number;
			above += earned * (groups.upper[place] as number);
			below += earned * (groups.lower[place] as number);
		}
		const upper = above / (groups.upperSize * item.maximum);
		const lower = below / (groups.lowerSize * item.maximum);
		return found({ upper, lower, discrimination: upper - lower });
	});
}

/** The largest discrimination an item of this difficulty can have; see {@link measureUpperLower}. */
export function largestDiscrimination(share: number): number {
	return Math.min(1, share / 0.27, (1 - share) / 0.27);
}
