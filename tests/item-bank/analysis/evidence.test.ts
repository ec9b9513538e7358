import { describe, expect, test } from 'vitest';
import type { FindPlace } from '../../../item-bank/analysis/evidence/cells.ts';
import { compareSittings } from '../../../item-bank/analysis/evidence/change.ts';
import { gatherEvidence } from '../../../item-bank/analysis/evidence/evidence.ts';
import { foundValue } from '../../../item-bank/analysis/finding.ts';
import { wilsonInterval } from '../../../item-bank/analysis/intervals.ts';
import { createRandom } from '../../../item-bank/random/random.ts';
import { tableOf } from './reference-data.ts';

const findPlace: FindPlace = ({ id }) =>
	id === 'none'
		? undefined
		: {
				standard: id.startsWith('a') ? '6.3(C)' : '6.3(D)',
				model: 'symbols',
				...(id === 'b1' ? { patterns: ['signs-dropped'] as const } : {}),
			};

const points = [
	[1, 0, 1, 1],
	[1, 1, 0, 0],
	[0, 0, 1, 0],
	[1, undefined, 1, 1],
];

describe('evidence', () => {
	test('adds points, responses, students and items cell by cell', () => {
		const cells = gatherEvidence([tableOf(['a1', 'a2', 'b1', 'none'], points)], findPlace);
		expect(
			cells.map(({ standard, pattern, earned, possible, responses, students, items, method }) => [
				standard,
				pattern,
				earned,
				possible,
				responses,
				students,
				items,
				method,
			]),
		).toEqual([
			['6.3(C)', undefined, 4, 7, 7, 4, 2, 'resampling'],
			['6.3(D)', undefined, 3, 4, 4, 4, 1, 'wilson'],
			['6.3(D)', 'signs-dropped', 3, 4, 4, 4, 1, 'wilson'],
		]);
		expect(cells[1]?.interval).toEqual({ kind: 'found', value: wilsonInterval(3, 4) });
	});

	test('pools forms and sittings, and takes any set of students', () => {
		const tables = [tableOf(['a1'], [[1], [0]]), tableOf(['a2'], [[1], [1], [0]])];
		expect(gatherEvidence(tables, findPlace)[0]).toMatchObject({ earned: 3, possible: 5, students: 3, items: 2 });
		const one = gatherEvidence(tables, findPlace, { isWanted: (student) => student === 's2' });
		expect(one).toMatchObject([{ earned: 0, possible: 1, students: 1, method: 'wilson' }]);
		expect(gatherEvidence([], findPlace)).toEqual([]);
		expect(gatherEvidence(tables, findPlace, { isWanted: () => false })).toEqual([]);
	});

	test('gives no interval for one student on several items, and no false certainty where all are alike', () => {
		expect(gatherEvidence([tableOf(['a1', 'a2'], [[1, 0]])], findPlace)[0]?.interval).toMatchObject({
			reason: 'too-few-students',
		});
		const alike = gatherEvidence(
			[
				tableOf(
					['a1', 'a2'],
					[
						[1, 1],
						[1, 1],
						[1, 1],
					],
				),
			],
			findPlace,
		)[0];
		expect(alike).toMatchObject({ method: 'wilson-students', interval: { value: wilsonInterval(3, 3) } });
	});

	test('is the same for the same seed, and differs hardly for another', () => {
		const random = createRandom('evidence');
		const rows = Array.from({ length: 200 }, () => Array.from({ length: 4 }, () => random.nextInteger(0, 1)));
		const tables = [tableOf(['a1', 'a2', 'a3', 'a4'], rows)];
		const [first, again, other] = ['x', 'x', 'y'].map(
			(seed) => gatherEvidence(tables, findPlace, { seed })[0]?.interval,
		);
		expect(again).toEqual(first);
		expect(other).not.toEqual(first);
		const [one, two] = [first, other].map((interval) => interval && foundValue(interval));
		expect(Math.abs((one?.low ?? 0) - (two?.low ?? 9))).toBeLessThan(0.01);
		// By the other way, mean ± 1.96 SD/√n of the students' shares, within what drawing 1,000 samples leaves open.
		const shares = rows.map((row) => row.reduce((sum, value) => sum + value, 0) / 4);
		const mean = shares.reduce((sum, share) => sum + share, 0) / 200;
		const deviation = Math.sqrt(shares.reduce((sum, share) => sum + (share - mean) ** 2, 0) / 199);
		expect(one?.low).toBeCloseTo(mean - (1.96 * deviation) / Math.sqrt(200), 1.7);
		expect(one?.high).toBeCloseTo(mean + (1.96 * deviation) / Math.sqrt(200), 1.7);
	});

	test('intervals of pooled items hold the true share about as often as they say', () => {
		// Students differ: each has a chance of their own from .2 to .8, so responses of one student go together.
		let held = 0;
		const runs = 200;
		for (let run = 0; run < runs; run += 1) {
			const random = createRandom(`coverage ${run}`);
			const rows = Array.from({ length: 40 }, () => {
				const chance = random.nextInteger(20, 80);
				return Array.from({ length: 5 }, () => (random.nextInteger(1, 100) <= chance ? 1 : 0));
			});
			const tables = [tableOf(['a1', 'a2', 'a3', 'a4', 'a5'], rows)];
			const cell = gatherEvidence(tables, findPlace, { seed: String(run) })[0];
			const interval = cell && foundValue(cell.interval);
			if (interval && interval.low <= 0.5 && interval.high >= 0.5) held += 1;
		}
		// 95 of 100 are promised; 200 runs leave ± 3 of 100 to chance, and percentile intervals run a little short.
		expect(held / runs).toBeGreaterThan(0.9);
		expect(held / runs).toBeLessThan(0.99);
	});

	test('of more than 2,000 students comes from the spread, and agrees with drawing', () => {
		const random = createRandom('many');
		const rows = Array.from({ length: 2001 }, () => {
			const chance = random.nextInteger(20, 80);
			return Array.from({ length: 3 }, () => (random.nextInteger(1, 100) <= chance ? 1 : 0));
		});
		const [many] = gatherEvidence([tableOf(['a1', 'a2', 'a3'], rows)], findPlace);
		const [fewer] = gatherEvidence([tableOf(['a1', 'a2', 'a3'], rows.slice(1))], findPlace);
		expect([many?.method, fewer?.method]).toEqual(['ratio', 'resampling']);
		const [one, two] = [many, fewer].map((cell) => cell && foundValue(cell.interval));
		expect(one?.low).toBeCloseTo(two?.low ?? 9, 2);
		expect(one?.high).toBeCloseTo(two?.high ?? 9, 2);
	});
});

describe('change between sittings', () => {
	const rows = (chance: number, seed: string) => {
		const random = createRandom(seed);
		return Array.from({ length: 60 }, () => [0, 1].map(() => (random.nextInteger(1, 100) <= chance ? 1 : 0)));
	};

	test('is found where it is large, with who took part', () => {
		const [change, ...more] = compareSittings(
			[tableOf(['a1', 'a2'], rows(30, 'before'))],
			[tableOf(['a1', 'a2'], rows(80, 'after').slice(0, 50))],
			findPlace,
		);
		expect(more).toEqual([]);
		expect(change).toMatchObject({ studentsBefore: 60, studentsAfter: 50, studentsBoth: 50, isSameItems: true });
		const interval = change && foundValue(change.interval);
		expect(interval?.low).toBeGreaterThan(0.2);
		expect(change?.change).toBeCloseTo((change?.after ?? 0) - (change?.before ?? 0), 12);
	});

	test('may be none where nothing changed, and says when the items differ', () => {
		const [change] = compareSittings([tableOf(['a1'], rows(50, 'one'))], [tableOf(['a2'], rows(50, 'two'))], findPlace);
		const interval = change && foundValue(change.interval);
		expect(interval && interval.low < 0 && interval.high > 0).toBe(true);
		expect(change?.isSameItems).toBe(false);
		expect(compareSittings([tableOf(['a1'], [[1]])], [tableOf(['a1'], [[1]])], findPlace)[0]?.interval).toMatchObject({
			reason: 'too-few-students',
		});
	});
});
