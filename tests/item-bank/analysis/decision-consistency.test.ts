import { describe, expect, test } from 'vitest';
import { type ConsistencyMethod, measureConsistency } from '../../../item-bank/analysis/decision-consistency.ts';
import { foundValue } from '../../../item-bank/analysis/finding.ts';
import { requireOutside } from '../../helpers/reference.ts';
import { hasReference, readDataset, readReference, tableOf } from './reference-data.ts';

const outside = requireOutside('the reference set for item analysis', hasReference);

describe.runIf(outside)('decision consistency is that of the reference set', () => {
	test.each(['raschdat1', 'blot', 'difsim'])('for %s', (name) => {
		const expected = readReference().classification[name];
		const table = readDataset(`${name}.csv`);
		const methods: readonly (readonly [ConsistencyMethod, string, number])[] = [
			['huynh', 'huynh1976_beta_binomial', 1e-9],
			['subkoviak', 'subkoviak1976_kr20', 1e-9],
			// The package fits the beta distribution to rescaled scores; ours takes mean and true variance. The cut of difsim falls
			// between two scores, at 11.5 of 23, which the package places between their two answers.
			['effective-length', 'livingston_lewis_betafunctions_2P', name === 'difsim' ? 0.011 : 1e-3],
		];
		for (const [method, key, tolerance] of methods) {
			const found = foundValue(measureConsistency(table, expected.cut, method));
			expect(found?.passing).toBeCloseTo(expected.pass_rate, 12);
			expect(Math.abs((found?.agreement ?? 9) - expected[key].p_agree)).toBeLessThan(tolerance);
			expect(Math.abs((found?.chance ?? 9) - expected[key].p_chance)).toBeLessThan(tolerance);
			expect(Math.abs((found?.kappa ?? 9) - expected[key].kappa)).toBeLessThan(3 * tolerance);
		}
	});
});

describe('decision consistency', () => {
	const points = [
		[1, 1, 1, 1],
		[1, 1, 1, 0],
		[1, 1, 0, 0],
		[1, 0, 0, 0],
		[0, 0, 0, 0],
		[1, 1, 1, 1],
	];
	const items = ['a', 'b', 'c', 'd'];

	test('is refused for cuts out of reach, equal scores, unreliable scores and points in parts', () => {
		const reason = (table: ReturnType<typeof tableOf>, cut: number, method?: ConsistencyMethod) => {
			const finding = measureConsistency(table, cut, method);
			return finding.kind === 'refused' ? finding.reason : 'found';
		};
		expect(reason(tableOf(items, points), 3)).toBe('found');
		expect(reason(tableOf(items, points), 5)).toBe('not-applicable');
		expect(reason(tableOf(items, points), 0)).toBe('not-applicable');
		expect(
			reason(
				tableOf(
					['a', 'b'],
					[
						[1, 0],
						[1, 0],
					],
				),
				1,
			),
		).toBe('no-variance');
		expect(
			reason(
				tableOf(
					['a', 'b'],
					[
						[1, 0],
						[0, 1],
						[1, 1],
					],
				),
				1,
			),
		).toBe('no-solution');
		expect(
			reason(
				tableOf(
					['a', 'b'],
					[
						[2, 2],
						[1, 2],
						[0, 0],
					],
					2,
				),
				2,
			),
		).toBe('not-right-or-wrong');
		expect(
			reason(
				tableOf(
					['a', 'b'],
					[
						[2, 2],
						[1, 2],
						[0, 0],
					],
					2,
				),
				2,
				'effective-length',
			),
		).toBe('found');
		expect(reason(tableOf(items, []), 2)).toBe('too-few-students');
	});
});
