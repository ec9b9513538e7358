import { describe, expect, test } from 'vitest';
import { foundValue } from '../../../item-bank/analysis/finding.ts';
import { estimateDifficulties } from '../../../item-bank/analysis/rasch/difficulties.ts';
import { mapItemsAndPersons } from '../../../item-bank/analysis/rasch/item-person-map.ts';
import { measurePersons } from '../../../item-bank/analysis/rasch/persons.ts';
import { symmetricFunctions } from '../../../item-bank/analysis/rasch/symmetric-functions.ts';
import { keepComplete } from '../../../item-bank/analysis/select-students.ts';
import { requireOutside } from '../../helpers/reference.ts';
import { hasReference, readReference, rightOrWrongSets, tableOf } from './reference-data.ts';

const outside = requireOutside('the reference set for item analysis', hasReference);
const raschSets = ['lsat6', 'lsat7', 'raschdat1', 'difsim', 'blot', 'ability_listwise'];

describe.runIf(outside)('Rasch figures are those of the reference set', () => {
	test.each(rightOrWrongSets.filter(([name]) => raschSets.includes(name)))('for %s', (name, read) => {
		const expected = readReference().rasch_cml[name];
		const { table } = keepComplete(read());
		const scale = foundValue(estimateDifficulties(table));
		expect(scale?.informative).toBe(expected.n_used_in_cml);
		expect(scale?.logLikelihood).toBeCloseTo(expected.loglik_newton, 6);
		for (const [at, finding] of (scale?.items ?? []).entries()) {
			const { difficulty = 99, standardError = 99 } = foundValue(finding) ?? {};
			// Tolerances of the notes: 1e-6 to the exact solution, 1e-3 to eRm, which stops earlier.
			expect(Math.abs(difficulty - expected.items.difficulty_newton[at])).toBeLessThan(1e-6);
			expect(Math.abs(standardError - expected.items.se_newton[at])).toBeLessThan(1e-6);
			expect(Math.abs(difficulty - expected.items.difficulty_eRm[at])).toBeLessThan(1e-3);
		}
		const persons = measurePersons(scale?.difficulties ?? new Float64Array());
		const { raw, theta_ml: likely, theta_wle: weighted, se_wle: errors } = expected.persons_by_raw_score;
		for (const [at, score] of (raw as readonly number[]).entries()) {
			const person = persons[score];
			expect(Math.abs((person?.measure ?? 99) - weighted[at])).toBeLessThan(1e-6);
			expect(Math.abs((person?.standardError ?? 99) - errors[at])).toBeLessThan(1e-6);
			if (likely[at] === null) expect(person?.mostLikely.kind).toBe('refused');
			else expect(Math.abs((person && foundValue(person.mostLikely)) ?? 99)).toBeCloseTo(Math.abs(likely[at]), 5);
		}
	});

	test('LSAT 6 has the difficulties long published', () => {
		// BUGS Examples volume 1, LSAT (figures from memory), centred: -1.26 .48 1.24 .17 -.63.
		const scale = foundValue(estimateDifficulties(rightOrWrongSets[0]?.[1]() as never));
		for (const [at, value] of [-1.26, 0.48, 1.24, 0.17, -0.63].entries()) {
			expect(Math.abs((scale?.difficulties[at] ?? 9) - value)).toBeLessThan(0.011);
		}
	});

	test('the map of LSAT 6 counts every student once and shows an easy test', () => {
		const map = foundValue(mapItemsAndPersons(rightOrWrongSets[0]?.[1]() as never));
		expect(map?.persons.map(({ students }) => students)).toEqual([3, 20, 85, 237, 357, 298]);
		expect(map?.bins.reduce((sum, { students }) => sum + students, 0)).toBe(1000);
		expect(map?.bins.flatMap(({ items }) => items).sort()).toEqual(['Q1', 'Q2', 'Q3', 'Q4', 'Q5']);
		expect(map?.items.map(({ id }) => id)).toEqual(['Q3', 'Q2', 'Q4', 'Q5', 'Q1']);
		expect(map?.targeting).toBeGreaterThan(1);
	});
});

describe('Rasch figures', () => {
	test('rest on symmetric functions that add up to the product of 1 + value', () => {
		// Working: of 1, 2, 3: 1, 6, 11, 6; without the 2: 1, 4, 3.
		expect([...symmetricFunctions(Float64Array.of(1, 2, 3))]).toEqual([1, 6, 11, 6]);
		expect([...symmetricFunctions(Float64Array.of(1, 2, 3), [1])]).toEqual([1, 4, 3, 0]);
	});

	test('of two items are the logarithm of the odds between them', () => {
		// Working: of students with one of two right, 6 have the first and 2 the second: b2 − b1 = ln 3.
		const points = [...Array.from({ length: 6 }, () => [1, 0]), [0, 1], [0, 1], [1, 1], [0, 0]];
		const scale = foundValue(estimateDifficulties(tableOf(['a', 'b'], points)));
		expect([...(scale?.difficulties ?? [])]).toEqual([
			expect.closeTo(-Math.log(3) / 2, 9),
			expect.closeTo(Math.log(3) / 2, 9),
		]);
		expect(scale).toMatchObject({ informative: 8, extreme: 2 });
	});

	test('leave out items everybody or nobody has right and say so', () => {
		const points = [
			[1, 0, 1, 0],
			[1, 0, 0, 1],
			[1, 0, 1, 0],
			[1, 0, 0, 0],
			[1, 0, 1, 1],
		];
		const scale = foundValue(estimateDifficulties(tableOf(['all', 'none', 'a', 'b'], points)));
		expect(scale?.items.map((finding) => (finding.kind === 'refused' ? finding.reason : 'found'))).toEqual([
			'no-variance',
			'no-variance',
			'found',
			'found',
		]);
		expect(scale?.estimated).toEqual([2, 3]);
		expect(foundValue(mapItemsAndPersons(tableOf(['all', 'none', 'a', 'b'], points)))?.leftOut).toEqual([
			'all',
			'none',
		]);
	});

	test('are refused where responses are too orderly, too few, incomplete or in parts', () => {
		const reason = (points: readonly (readonly (number | undefined)[])[], maximum = 1) => {
			const names = points[0]?.map((_, at) => `i${at}`) ?? ['a', 'b'];
			const finding = estimateDifficulties(tableOf(names, points, maximum));
			return finding.kind === 'refused' ? finding.reason : 'found';
		};
		// Every student with a right answer below has the first pair right and the second wrong: no finite estimate.
		expect(
			reason([
				[1, 0, 0, 0],
				[0, 1, 0, 0],
				[1, 1, 1, 0],
				[1, 1, 0, 1],
			]),
		).toBe('no-solution');
		expect(reason([])).toBe('too-few-items');
		expect(reason([[1, 0]])).toBe('too-few-items');
		expect(
			reason([
				[1, undefined],
				[0, 1],
			]),
		).toBe('incomplete');
		expect(
			reason(
				[
					[1, 2],
					[0, 1],
				],
				2,
			),
		).toBe('not-right-or-wrong');
	});
});
