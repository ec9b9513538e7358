import type { Subject } from '../../patterns/subject.ts';
import type { CountersFigure, StemBlock } from '../../types.ts';
import { paragraph } from '../writing.ts';

/** What the counters are worth, in words. */
export const worths = paragraph('Each plus counter is worth `1`. Each minus counter is worth `-1`.');

/** A stem of counters and a question about them. */
export function counterStem(
	figure: Extract<StemBlock, { kind: 'figure' }>['figure'],
	ask: string,
): readonly StemBlock[] {
	return [worths, { kind: 'figure', figure }, paragraph(ask)];
}

/** Counters that stand in the end as what a student may count. */
export function countedOf(figure: CountersFigure): Extract<Subject, { kind: 'counter-set' }> {
	const pairs = figure.addedPairs ?? 0;
	const removed = (sign: 'plus' | 'minus'): number => (figure.removed?.sign === sign ? figure.removed.count : 0);
	return {
		kind: 'counter-set',
		plus: figure.plus + pairs - removed('plus'),
		minus: figure.minus + pairs - removed('minus'),
	};
}

/** Taking away a number from a number with counters, zero pairs added where they are needed. */
export function takeAway(start: number, taken: number): CountersFigure {
	const sign = taken < 0 ? 'minus' : 'plus';
	const count = Math.abs(taken);
	const there = Math.max(0, taken < 0 ? -start : start);
	const addedPairs = Math.max(0, count - there);
	return {
		kind: 'counters',
		plus: Math.max(0, start),
		minus: Math.max(0, -start),
		...(addedPairs > 0 ? { addedPairs } : {}),
		removed: { sign, count },
	};
}
