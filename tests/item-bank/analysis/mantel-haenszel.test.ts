import { describe, expect, test } from 'vitest';
import { type Finding, foundValue } from '../../../item-bank/analysis/finding.ts';
import {
	type GroupDifference,
	measureGroupDifferences,
	type Stratum,
	summariseStrata,
} from '../../../item-bank/analysis/mantel-haenszel.ts';
import { readGroupDifference } from '../../../item-bank/analysis/readings/item-readings.ts';
import type { ScoreTable } from '../../../item-bank/analysis/score-table.ts';
import { requireOutside } from '../../helpers/reference.ts';
import { hasReference, readCsv, readDataset, readReference, tableOf } from './reference-data.ts';

const outside = requireOutside('the reference set for item analysis', hasReference);
const anySize = { smaller: 2, all: 4 };
const sizes: Readonly<Record<string, GroupDifference['size']>> = { A: 'small', B: 'moderate', C: 'large' };

function compare(
	finding: Finding<GroupDifference> | undefined,
	expected: ReturnType<typeof readReference>,
	at: number,
) {
	const value = finding && foundValue(finding);
	const near = (mine: number | undefined, theirs: readonly number[] | number) => {
		const other = typeof theirs === 'number' ? theirs : (theirs[at] ?? Number.NaN);
		// The notes: 5e-15 to 1e-13 among independent programs; sums in another order allow a little more.
		expect(Math.abs((mine ?? Number.NaN) - other)).toBeLessThan(1e-11 * Math.max(1, Math.abs(other)));
	};
	near(value?.oddsRatio, expected.alpha);
	near(value?.delta, expected.delta);
	near(value?.standardError, expected.se_delta);
	near(value?.chiSquare, expected.chisq_corrected_classical);
	near(value?.uncorrected, expected.chisq_uncorrected);
	near(value?.probability, expected.p_uncorrected);
	near(value?.shareDifference, expected.std_p_dif);
	expect(value?.size).toBe(sizes[typeof expected.ets_class === 'string' ? expected.ets_class : expected.ets_class[at]]);
}

describe.runIf(outside)('differences between groups are those of the reference set', () => {
	test('on data with planted differences, by gender', () => {
		const expected = readReference().dif_mh.difsim_by_gender.total_score_matched;
		const table = readDataset('difsim.csv');
		const genders = readCsv('difsim.csv').rows.map(([gender]) => gender);
		const findings = measureGroupDifferences(
			table,
			(student) => (genders[Number(student.slice(1))] === 'male' ? 'reference' : 'focal'),
			anySize,
		);
		for (const [at, finding] of findings.entries()) compare(finding, expected, at);
	});

	test('on data without differences, odd against even rows', () => {
		const expected = readReference().dif_mh.raschdat1_odd_vs_even_rows.total_score_matched;
		const findings = measureGroupDifferences(
			readDataset('raschdat1.csv'),
			(student) => (Number(student.slice(1)) % 2 === 0 ? 'reference' : 'focal'),
			anySize,
		);
		for (const [at, finding] of findings.entries()) compare(finding, expected, at);
	});

	test('on tables small enough for a hand, also where the correction is larger than the difference', () => {
		const { hand_checkable, continuity_trap } = readReference().dif_mh;
		const strata = (rows: readonly (readonly [number, number, number, number])[]): readonly Stratum[] =>
			rows.map(([referenceRight, referenceWrong, focalRight, focalWrong]) => ({
				referenceRight,
				referenceWrong,
				focalRight,
				focalWrong,
			}));
		compare(
			summariseStrata(
				strata([
					[8, 12, 4, 16],
					[14, 6, 9, 11],
					[18, 2, 15, 5],
				]),
			),
			hand_checkable,
			0,
		);
		compare(
			summariseStrata(
				strata([
					[10, 10, 10, 10],
					[6, 4, 6, 5],
				]),
			),
			continuity_trap,
			0,
		);
	});
});

describe('differences between groups', () => {
	test('of tables worked by hand: the odds ratio is 31/11', () => {
		// Working: (8·16/40 + 14·11/40 + 18·5/40) / (12·4/40 + 6·9/40 + 2·15/40) = 372/132 = 31/11.
		const strata = [
			{ referenceRight: 8, referenceWrong: 12, focalRight: 4, focalWrong: 16 },
			{ referenceRight: 14, referenceWrong: 6, focalRight: 9, focalWrong: 11 },
			{ referenceRight: 18, referenceWrong: 2, focalRight: 15, focalWrong: 5 },
		];
		expect(foundValue(summariseStrata(strata))?.oddsRatio).toBeCloseTo(31 / 11, 12);
	});

	test('are read out as a reason to look, with the side that does better, and never as unfairness', () => {
		const stratum = { referenceRight: 140, referenceWrong: 60, focalRight: 90, focalWrong: 110 };
		const swapped = { referenceRight: 90, referenceWrong: 110, focalRight: 140, focalWrong: 60 };
		const [against, towards] = [stratum, swapped].map((one) => readGroupDifference(summariseStrata([one])));
		// The share right differs by 140/200 − 90/200 = 25 %.
		expect(against).toMatchObject({ tone: 'look' });
		expect(against?.text).toContain('the reference group does clearly better here, by 25 %');
		expect(towards?.text).toContain('the focal group does clearly better here, by 25 %');
		const even = { referenceRight: 100, referenceWrong: 100, focalRight: 100, focalWrong: 100 };
		expect(readGroupDifference(summariseStrata([even])).tone).toBe('plain');
		expect(readGroupDifference(summariseStrata([])).tone).toBe('absent');
		for (const reading of [against, towards]) expect(reading?.text).not.toMatch(/unfair|bias/);
	});

	test('are withheld from small groups, and refused where there is nothing to compare', () => {
		const table = tableOf(
			['a', 'b'],
			Array.from({ length: 40 }, (_, at) => [at % 2, at % 3 === 0 ? 1 : 0]),
		);
		const half = (student: string) => (Number(student.slice(1)) < 20 ? 'focal' : 'reference');
		const reasons = (given: ScoreTable, least?: typeof anySize) =>
			measureGroupDifferences(given, half, least).map((finding) =>
				finding.kind === 'refused' ? finding.reason : 'found',
			);
		expect(reasons(table)).toEqual(['too-few-students', 'too-few-students']);
		expect(reasons(table, anySize)).toEqual(['found', 'found']);
		const allRight = tableOf(
			['a', 'b'],
			Array.from({ length: 40 }, (_, at) => [1, at % 2]),
		);
		expect(reasons(allRight, anySize)).toEqual(['no-solution', 'no-solution']);
		expect(
			reasons(
				tableOf(
					['a'],
					Array.from({ length: 40 }, (_, at) => [at % 3]),
					2,
				),
				anySize,
			),
		).toEqual(['not-right-or-wrong']);
		expect(reasons(tableOf(['a'], []), anySize)).toEqual(['too-few-students']);
	});
});
