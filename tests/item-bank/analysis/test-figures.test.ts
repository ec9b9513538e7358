import { describe, expect, test } from 'vitest';
import { foundValue } from '../../../item-bank/analysis/finding.ts';
import { alphaOf, lengthFor, measureReliability } from '../../../item-bank/analysis/reliability.ts';
import { describeScores } from '../../../item-bank/analysis/score-distribution.ts';
import { keepComplete } from '../../../item-bank/analysis/select-students.ts';
import { measureSplitHalf, type Split } from '../../../item-bank/analysis/split-half.ts';
import { requireOutside } from '../../helpers/reference.ts';
import { hasReference, readReference, rightOrWrongSets, tableOf } from './reference-data.ts';

const outside = requireOutside('the reference set for item analysis', hasReference);

describe.runIf(outside)('the figures of tests are those of the reference set', () => {
	test.each(rightOrWrongSets)('for %s', (name, read) => {
		const expected = readReference().ctt[name];
		const { table } = keepComplete(read());
		const reliability = foundValue(measureReliability(table));
		expect(reliability?.isKr20).toBe(true);
		expect(reliability?.alpha).toBeCloseTo(expected.kr20, 12);
		// The trap: item variances divided by n over a total variance divided by n − 1.
		expect(reliability?.alpha).toBeLessThan(expected.kr20_MIXED_pq_over_sample_var_WRONG - 1e-5);
		expect(reliability?.interval.low).toBeCloseTo(expected.alpha_feldt_95ci[0], 9);
		expect(reliability?.interval.high).toBeCloseTo(expected.alpha_feldt_95ci[1], 9);
		expect(reliability?.standardError).toBeCloseTo(expected.sem_sample_sd, 12);
		for (const [at, finding] of (reliability?.withoutItem ?? []).entries()) {
			expect(foundValue(finding)).toBeCloseTo(expected.items.alpha_if_deleted[at], 12);
		}
		for (const [split, key] of [
			['odd-even', 'split_odd_even'],
			['first-second', 'split_first_second'],
		] as readonly (readonly [Split, string])[]) {
			const halves = foundValue(measureSplitHalf(table, split));
			expect(halves?.correlation).toBeCloseTo(expected[key].r_halves, 12);
			expect(halves && foundValue(halves.spearmanBrown)).toBeCloseTo(expected[key].spearman_brown, 12);
			expect(halves?.rulon).toBeCloseTo(expected[key].guttman_rulon_lambda4, 12);
		}
		const scores = foundValue(describeScores(table));
		const { score, score_distribution: distribution } = expected;
		expect(scores).toMatchObject({ students: score.n, median: score.median, lowest: score.min, highest: score.max });
		expect(scores?.mean).toBeCloseTo(score.mean, 12);
		expect(scores?.deviation).toBeCloseTo(score.sd_sample, 12);
		expect(scores && foundValue(scores.skewness)).toBeCloseTo(score.skew_g1_type1, 10);
		expect(scores?.scores.map((row) => row.score)).toEqual(distribution.score);
		expect(scores?.scores.map(({ count }) => count)).toEqual(distribution.count);
		expect(scores?.scores.map(({ below }) => below)).toEqual(distribution.cum_count);
		for (const [at, row] of (scores?.scores ?? []).entries()) {
			expect(row.percentileRank).toBeCloseTo(distribution.percentile_rank_mid[at], 10);
			expect(foundValue(row.standardError)).toBeCloseTo(distribution.csem_lord_binomial[at], 12);
		}
	});

	test('leaving students out and scoring blanks as wrong give the two published reliabilities', () => {
		const alphaOf = (set: number) =>
			foundValue(measureReliability(keepComplete(rightOrWrongSets[set]?.[1]() as never).table));
		expect(alphaOf(5)?.alpha).toBeCloseTo(0.828, 4);
		expect(alphaOf(5)?.students).toBe(1248);
		expect(alphaOf(6)?.alpha).toBeCloseTo(0.8408, 4);
	});
});

describe('reliability', () => {
	test('of published variances is the published figure, to its places', () => {
		// R. Hart, richard-hart.blogspot.com: 21 items, variances 2.96 together, total 4.08: KR-20 .29.
		expect(alphaOf(21, 2.96, 4.08)).toBeCloseTo(0.29, 2);
	});

	test('lengthening follows Spearman and Brown', () => {
		// Nunnally 1978 p. 244 as quoted: from .66 to .70, .75, .80 takes 1.2, 1.5 (1.545) and 2.06 times the length.
		expect(lengthFor(0.66, 0.7)).toBeCloseTo(1.202, 3);
		expect(lengthFor(0.66, 0.75)).toBeCloseTo(1.545, 3);
		expect(lengthFor(0.66, 0.8)).toBeCloseTo(2.061, 3);
	});

	test('of items that go against each other is negative and stays so', () => {
		// Working: totals 1 1 1 2: variance 3/16; items 1 1 0 1 and 0 0 1 1: 3/16 + 4/16; 2 × (1 − 7/3) = −8/3.
		const table = tableOf(
			['a', 'b'],
			[
				[1, 0],
				[1, 0],
				[0, 1],
				[1, 1],
			],
		);
		const reliability = foundValue(measureReliability(table));
		expect(reliability?.alpha).toBeCloseTo(-8 / 3, 12);
		expect(reliability?.withoutItem.map(({ kind }) => kind)).toEqual(['refused', 'refused']);
	});

	test('of items with several points is alpha and not KR-20', () => {
		// Working: items 0 1 2 and 0 2 2: variances 2/3 and 8/9, totals 0 3 4: variance 26/9; 2 × (1 − 14/26) = 12/13.
		const reliability = foundValue(
			measureReliability(
				tableOf(
					['a', 'b'],
					[
						[0, 0],
						[1, 2],
						[2, 2],
					],
					2,
				),
			),
		);
		expect(reliability).toMatchObject({ isKr20: false, alpha: expect.closeTo(12 / 13, 12) });
	});

	test('is refused for nobody, one student, one item and equal scores', () => {
		const reason = (points: readonly (readonly number[])[], items = ['a', 'b']) => {
			const finding = measureReliability(tableOf(items, points));
			return finding.kind === 'refused' ? finding.reason : undefined;
		};
		expect(reason([])).toBe('too-few-students');
		expect(reason([[1, 0]])).toBe('too-few-students');
		expect(reason([[1], [0]], ['a'])).toBe('too-few-items');
		expect(
			reason([
				[1, 0],
				[0, 1],
			]),
		).toBe('no-variance');
		expect(
			reason([
				[1, 1],
				[1, 1],
			]),
		).toBe('no-variance');
	});
});

describe('halves and scores', () => {
	test('halves that cannot be compared are refused', () => {
		expect(
			measureSplitHalf(
				tableOf(
					['a', 'b'],
					[
						[1, 0],
						[1, 1],
					],
				),
			),
		).toMatchObject({ reason: 'no-variance' });
	});

	test('scores of one student are described, of nobody refused', () => {
		const one = foundValue(describeScores(tableOf(['a', 'b'], [[1, 0]])));
		expect(one).toMatchObject({ mean: 1, median: 1, deviation: 0, skewness: { reason: 'no-variance' } });
		expect(describeScores(tableOf(['a', 'b'], []))).toMatchObject({ reason: 'too-few-students' });
		expect(describeScores(tableOf([], [[]]))).toMatchObject({ reason: 'too-few-items' });
		expect(describeScores(tableOf(['a', 'b'], [[1, undefined]]))).toMatchObject({ reason: 'incomplete' });
	});
});
