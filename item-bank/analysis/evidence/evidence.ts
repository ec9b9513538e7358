import { createRandom } from '../../random/random.ts';
import { type Finding, found, refuse } from '../finding.ts';
import { type Interval, usualConfidence, wilsonInterval } from '../intervals.ts';
import type { ScoreTable } from '../score-table.ts';
import { addPoints, type CellName, type CellPoints, cellKey, collectCells, type FindPlace } from './cells.ts';
import { intervalOfStudents, type PooledMethod } from './resample.ts';

/** What students did in one cell: never a share alone. */
export interface EvidenceCell extends CellName {
	/** Points. */
	readonly earned: number;
	readonly possible: number;
	/** earned/possible, 0 to 1. */
	readonly share: number;
	readonly responses: number;
	readonly students: number;
	/** Different items; below 3 the cell rests on very little. */
	readonly items: number;
	readonly interval: Finding<Interval>;
	readonly method: IntervalMethod;
}

/**
 * - wilson: one right-or-wrong item, answered once by each student.
 * - wilson-students: pooled items on which no two students differ, where drawing students would pretend to be certain: Wilson's
 *   interval with one trial a student.
 * - resampling, ratio: see intervalOfStudents.
 */
export type IntervalMethod = 'wilson' | 'wilson-students' | PooledMethod;

/** For whom, and how sure. */
export interface EvidenceOptions {
	/** Any set of students; all when left out. */
	readonly isWanted?: (student: string) => boolean;
	/** Of the draws. */
	readonly seed?: string;
	readonly confidence?: number;
}

/**
 * Evidence per standard × model, and per standard × model × pattern where items name patterns they can show, over any forms
 * and sittings: points earned over points possible with the number of responses, students and items and an interval.
 * Cells without responses are left out. An interval is refused for a single student on several items.
 */
export function gatherEvidence(
	tables: readonly ScoreTable[],
	findPlace: FindPlace,
	{ isWanted, seed = 'evidence', confidence = usualConfidence }: EvidenceOptions = {},
): readonly EvidenceCell[] {
	const { cells, codes } = collectCells(tables, findPlace, isWanted);
	return cells.flatMap((cell) => {
		const points = addPoints(cell, codes.length);
		if (points.responses === 0) return [];
		return [summarise(cell.name, points, `${seed} ${cellKey(cell.name)}`, confidence)];
	});
}

function summarise(name: CellName, points: CellPoints, seed: string, confidence: number): EvidenceCell {
	const earned = points.earned.reduce((sum, value) => sum + value, 0);
	const possible = points.possible.reduce((sum, value) => sum + value, 0);
	const { responses, students, items } = points;
	const counts = { ...name, earned, possible, share: earned / possible, responses, students, items };
	if (items === 1 && responses === students && points.isRightOrWrong) {
		const right = Math.round((earned / possible) * responses);
		return { ...counts, interval: found(wilsonInterval(right, responses, confidence)), method: 'wilson' };
	}
	if (students < 2) {
		const interval = refuse('too-few-students', `expected two or more students for an interval, found ${students}`);
		return { ...counts, interval, method: 'resampling' };
	}
	if (hasNoSpread(points)) {
		const interval = found(wilsonInterval((earned / possible) * students, students, confidence));
		return { ...counts, interval, method: 'wilson-students' };
	}
	const { interval, method } = intervalOfStudents([points], createRandom(seed), confidence);
	return { ...counts, interval: found(interval), method };
}

/** Whether every student earned the same share. */
function hasNoSpread({ earned, possible }: CellPoints): boolean {
	let share: number | undefined;
	for (let place = 0; place < earned.length; place += 1) {
		if (possible[place] === 0) continue;
		const own = (earned[place] as number) / (possible[place] as number);
		if (share !== undefined && Math.abs(own - share) > 1e-12) return false;
		share = own;
	}
	return true;
}
