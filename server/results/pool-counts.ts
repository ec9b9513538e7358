import type { ScoreBar } from '../../item-bank/types.ts';

/**
 * Bars that each stand for nobody or for `least` students or more: bars of fewer are joined with the next, the last with the one
 * before. Ranges stay in order and cover what they covered.
 */
export function poolCounts(bars: readonly ScoreBar[], least: number): readonly ScoreBar[] {
	const pooled: ScoreBar[] = [];
	let open: ScoreBar | undefined;
	for (const bar of bars) {
		const joined: ScoreBar = open === undefined ? bar : { from: open.from, to: bar.to, count: open.count + bar.count };
		open = joined.count > 0 && joined.count < least ? joined : undefined;
		if (open === undefined) pooled.push(joined);
	}
	while (open !== undefined) {
		const before = pooled.pop();
		if (before === undefined) return [open];
		const joined: ScoreBar = { from: before.from, to: open.to, count: before.count + open.count };
		open = joined.count < least ? joined : undefined;
		if (open === undefined) pooled.push(joined);
	}
	return pooled;
}

/**
 * The same with boundaries kept at cuts: bars are pooled between them, and a cut is given up where fewer than `least` students
 * would stand between it and the next. So whatever is told of students at or above a kept cut tells of nobody less.
 */
export function poolAtCuts(bars: readonly ScoreBar[], least: number, cuts: readonly number[]): readonly ScoreBar[] {
	const stretches: ScoreBar[][] = [[]];
	for (const bar of bars) {
		if (cuts.includes(bar.from) && (stretches.at(-1)?.length ?? 0) > 0) stretches.push([]);
		stretches.at(-1)?.push(bar);
	}
	const count = (list: readonly ScoreBar[]): number => list.reduce((sum, bar) => sum + bar.count, 0);
	const kept: ScoreBar[][] = [];
	let open: ScoreBar[] = [];
	for (const stretch of stretches) {
		open = [...open, ...stretch];
		if (count(open) > 0 && count(open) < least) continue;
		kept.push(open);
		open = [];
	}
	if (open.length > 0) kept.push([...(kept.pop() ?? []), ...open]);
	return kept.flatMap((stretch) => poolCounts(stretch, least));
}
