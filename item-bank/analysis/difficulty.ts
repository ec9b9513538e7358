import { type Finding, found, refuse } from './finding.ts';
import { type Interval, meanInterval, wilsonInterval } from './intervals.ts';
import type { ItemColumn } from './score-table.ts';
import { hasPoints } from './select-students.ts';

/** How hard an item was for those who were given it. */
export interface Difficulty {
	/** Points earned over points possible, 0 to 1: the share right for items that are right or wrong. */
	readonly share: number;
	/** Responses with points; omitted, not reached and invalid ones count as 0 points. */
	readonly responses: number;
	/** Responses with all points, and with none. */
	readonly full: number;
	readonly none: number;
	/** Whether every response earned all points or none. */
	readonly isRightOrWrong: boolean;
	/** Of the share: Wilson's for right or wrong, Student's t of the mean otherwise, which needs two responses. */
	readonly interval: Finding<Interval>;
}

/**
 * Difficulty of one item: p = Σ points / (n × maximum), between 0 (nobody) and 1 (everybody). Higher is easier, as usual in
 * the trade. Source: any text on classical item analysis; intervals as in wilsonInterval and meanInterval. Refuses an item
 * without responses.
 */
export function measureDifficulty({ item, points, states }: ItemColumn): Finding<Difficulty> {
	let [responses, sum, squares, full, none] = [0, 0, 0, 0, 0];
	for (let place = 0; place < points.length; place += 1) {
		if (!hasPoints(states[place])) continue;
		const earned = points[place] as number;
		responses += 1;
		sum += earned;
		squares += earned * earned;
		if (earned === item.maximum) full += 1;
		else if (earned === 0) none += 1;
	}
	if (responses === 0) return refuse('too-few-students', `expected responses to item "${item.id}", found none`);
	const share = sum / (responses * item.maximum);
	const isRightOrWrong = full + none === responses;
	const counts = { responses, full, none, isRightOrWrong };
	if (isRightOrWrong) return found({ share, ...counts, interval: found(wilsonInterval(full, responses)) });
	if (responses < 2) {
		const interval = refuse('too-few-students', 'expected two or more responses for an interval, found 1');
		return found({ share, ...counts, interval });
	}
	const mean = sum / responses;
	const variance = Math.max(0, squares - responses * mean * mean) / (responses - 1);
	const { low, high } = meanInterval({ mean, variance, count: responses }, { low: 0, high: item.maximum });
	return found({ share, ...counts, interval: found({ low: low / item.maximum, high: high / item.maximum }) });
}
