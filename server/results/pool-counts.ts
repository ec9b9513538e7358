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
