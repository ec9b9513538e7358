import { describe, expect, test } from 'vitest';
import { measureDifficulty } from '../../../item-bank/analysis/difficulty.ts';
import { leastDistractorShare, tabulateDistractors } from '../../../item-bank/analysis/distractors.ts';
import { type Finding, foundValue } from '../../../item-bank/analysis/finding.ts';
import { measureCorrelations } from '../../../item-bank/analysis/point-biserial.ts';
import { plotResponseGroups } from '../../../item-bank/analysis/response-groups.ts';
import { buildScoreTable, type ScoreRow, type ScoreTable } from '../../../item-bank/analysis/score-table.ts';
import { keepComplete } from '../../../item-bank/analysis/select-students.ts';
import { findScoreGroups, largestDiscrimination, measureUpperLower } from '../../../item-bank/analysis/upper-lower.ts';
import { requireOutside } from '../../helpers/reference.ts';
import { hasReference, readCsv, readReference, rightOrWrongSets, tableOf } from './reference-data.ts';

const outside = requireOutside('the reference set for item analysis', hasReference);

/** Held to the tolerance the notes of the reference set state. */
function near(finding: Finding<number>, expected: number | null, what: string): void {
	if (expected === null) expect(finding.kind, what).toBe('refused');
	else expect(Math.abs((foundValue(finding) ?? Number.NaN) - expected), what).toBeLessThan(1e-12);
}

describe.runIf(outside)('the figures of items are those of the reference set', () => {
	test.each(rightOrWrongSets)('for %s', (name, read) => {
		const { items, groups27 } = readReference().ctt[name];
		const { table } = keepComplete(read());
		const correlations = measureCorrelations(table);
		const shared = measureUpperLower(table, 'shared');
		const inclusive = measureUpperLower(table, 'inclusive');
		const groups = foundValue(findScoreGroups(table, 'inclusive'));
		expect(groups).toMatchObject({
			upperCut: groups27.cut_upper,
			lowerCut: groups27.cut_lower,
			upperSize: groups27.n_upper_inclusive,
			lowerSize: groups27.n_lower_inclusive,
		});
		expect(foundValue(findScoreGroups(table, 'shared'))?.upperSize).toBeCloseTo(groups27.ng, 9);
		for (const [at, column] of table.columns.entries()) {
			const difficulty = foundValue(measureDifficulty(column));
			expect(difficulty?.full).toBe(items.n_correct[at]);
			expect(difficulty?.share).toBeCloseTo(items.p[at], 12);
			const correlation = correlations[at];
			if (!correlation) throw new Error('an item without correlations');
			near(correlation.corrected, items.r_pbis_corrected_rest[at], `${name} ${column.item.id} corrected`);
			near(correlation.uncorrected, items.r_pbis_uncorrected[at], `${name} ${column.item.id} uncorrected`);
			expect(foundValue(shared[at] as Finding<never>)).toMatchObject({
				discrimination: expect.closeTo(items.D27_C_fractional[at], 12),
			});
			expect(foundValue(inclusive[at] as Finding<never>)).toMatchObject({
				upper: expect.closeTo(items.p_upper27_inclusive[at], 12),
				lower: expect.closeTo(items.p_lower27_inclusive[at], 12),
				discrimination: expect.closeTo(items.D27_A_inclusive[at], 12),
			});
		}
	});

	test('neither tie rule depends on the order of the file', () => {
		const [, read] = rightOrWrongSets[0] ?? [];
		const table = read?.() as ScoreTable;
		const reversed: ScoreTable = {
			...table,
			columns: table.columns.map((column) => ({ ...column, points: column.points.slice().reverse() })),
		};
		for (const rule of ['shared', 'inclusive'] as const) {
			const values = (given: ScoreTable) =>
				measureUpperLower(given, rule).map((finding) => foundValue(finding)?.discrimination);
			for (const [at, value] of values(table).entries()) expect(values(reversed)[at]).toBeCloseTo(value ?? 9, 12);
		}
	});

	test('38 of 88 distractors of the real choice items do not function', () => {
		const { distractors_iqitems: expected } = readReference();
		const tables = tabulateDistractors(readChoices(), 'inclusive').map((finding) => foundValue(finding));
		expect(tables.reduce((sum, table) => sum + (table?.distractors ?? 0), 0)).toBe(expected.n_distractors);
		const failing = tables.reduce((sum, table) => sum + (table ? table.distractors - table.functioning : 0), 0);
		expect(failing).toBe(expected.n_nonfunctioning);
		// The trap of the two denominators: option 1 of the first item is below 5 % of all either way, .0452 and .0479.
		const first = tables[0]?.options[0];
		expect(first?.shareOfAll).toBeCloseTo(0.0452, 4);
		expect(first?.shareOfAnswered).toBeCloseTo(0.0479, 4);
	});
});

/** Six options each; 0 is skipped, blank is counted as skipped too, like in the reference figures. */
function readChoices(): ScoreTable {
	const keys = new Map(readCsv('iqitems_key.csv').rows.map(([item = '', key = '']) => [item, key]));
	const { header, rows } = readCsv('iqitems_raw.csv');
	const options = new Map(
		header.map((item, at) => [
			item,
			[...new Set(rows.map((cells) => cells[at] ?? ''))].filter((cell) => Number(cell) > 0).sort(),
		]),
	);
	const items = header.map((id) => ({
		id,
		version: 1,
		maximum: 1,
		key: [keys.get(id) ?? ''],
		options: options.get(id) ?? [],
	}));
	const responses = rows.flatMap((cells, student) =>
		items.map(({ id, key }, at): ScoreRow => {
			const answer = cells[at] ?? '';
			const about = { student: String(student), item: id };
			return Number(answer) > 0
				? { ...about, points: answer === key[0] ? 1 : 0, state: 'answered', answer }
				: { ...about, points: 0, state: 'omitted' };
		}),
	);
	return buildScoreTable(items, responses).table;
}

describe('item figures', () => {
	test('of a published teaching example are the published ones', () => {
		// K. Wuensch, core.ecu.edu/wuenschk/StatHelp/KR20.txt: ten items, ten students, p .7 .7 .6 .7 .6 .8 .7 .7 .5 .6.
		if (!outside) return;
		const { table } = keepComplete(rightOrWrongSets[7]?.[1]() as ScoreTable);
		const shares = table.columns.map((column) => foundValue(measureDifficulty(column))?.share);
		expect(shares).toEqual([0.7, 0.7, 0.6, 0.7, 0.6, 0.8, 0.7, 0.7, 0.5, 0.6]);
	});

	test.runIf(outside)('of a published newsletter are the published ones: mean 37.50, r .91 and undefined', () => {
		// J. D. Brown, Statistics Corner, hosted.jalt.org/test/bro_12.htm: r prints .91 for .9045, and .00 where nothing varies.
		const { header, rows } = readCsv('jdbrown8.csv');
		const cell = (cells: readonly string[], name: string): number => Number(cells[header.indexOf(name)]);
		const correlationOf = (name: string): Finding<number> | undefined => {
			const points = rows.map((cells) => [cell(cells, name), cell(cells, 'total') - cell(cells, name)]);
			return measureCorrelations(tableOf([name, 'rest'], points, 100))[0]?.uncorrected;
		};
		const mean = rows.reduce((sum, cells) => sum + cell(cells, 'total'), 0) / rows.length;
		expect(mean).toBe(37.5);
		expect(foundValue(correlationOf('item1') as Finding<number>)).toBeCloseTo(0.9045, 4);
		expect(foundValue(correlationOf('item2') as Finding<number>)).toBeCloseTo(-0.9045, 4);
		expect(correlationOf('item3')).toMatchObject({ reason: 'no-variance' });
	});

	test('of items with more points use the mean and the t interval', () => {
		// Working: points 0, 1, 2 of 2: share 3/6; sample variance 1; t(2) = 4.302653; half width 4.302653/√3/2 = 1.242.
		const table = tableOf(['a'], [[0], [1], [2]], 2);
		const [column] = table.columns;
		if (!column) throw new Error('no column');
		expect(foundValue(measureDifficulty(column))).toEqual({
			share: 0.5,
			responses: 3,
			full: 1,
			none: 1,
			isRightOrWrong: false,
			interval: { kind: 'found', value: { low: 0, high: 1 } },
		});
	});

	test('of items everybody or nobody has right are refused where they have no value', () => {
		const table = tableOf(
			['all', 'none', 'some', 'other'],
			[
				[1, 0, 1, 1],
				[1, 0, 0, 1],
				[1, 0, 1, 0],
			],
		);
		expect(
			measureCorrelations(table).map(({ corrected }) => ('reason' in corrected ? corrected.reason : 'found')),
		).toEqual(['no-variance', 'no-variance', 'found', 'found']);
		const shares = table.columns.map((column) => foundValue(measureDifficulty(column)));
		expect(shares.slice(0, 2).map((difficulty) => difficulty?.share)).toEqual([1, 0]);
		// R, prop.test(3, 3, correct = FALSE) begins at 0.4385.
		expect(foundValue(shares[0]?.interval as Finding<never>)).toMatchObject({
			low: expect.closeTo(0.4385, 4),
			high: 1,
		});
	});

	test('of one student, of nobody and of unfinished tables are refused with words', () => {
		const reasons = (table: ScoreTable): readonly (string | undefined)[] => [
			...measureCorrelations(table).map(({ corrected }) =>
				corrected.kind === 'refused' ? corrected.reason : undefined,
			),
			...measureUpperLower(table).map((finding) => (finding.kind === 'refused' ? finding.reason : undefined)),
		];
		expect(reasons(tableOf(['a', 'b'], [[1, 0]]))).toEqual(Array.from({ length: 4 }, () => 'too-few-students'));
		expect(reasons(tableOf(['a', 'b'], []))).toEqual(Array.from({ length: 4 }, () => 'too-few-students'));
		const gaps = tableOf(
			['a', 'b'],
			[
				[1, undefined],
				[0, 1],
				[1, 1],
			],
		);
		expect(reasons(gaps)).toEqual(Array.from({ length: 4 }, () => 'incomplete'));
		const [, unanswered] = tableOf(['a', 'b'], [[1]]).columns;
		expect(unanswered && measureDifficulty(unanswered)).toMatchObject({ kind: 'refused', reason: 'too-few-students' });
	});

	test('the largest discrimination follows from the difficulty', () => {
		expect(largestDiscrimination(0.5)).toBe(1);
		expect(largestDiscrimination(0.135)).toBeCloseTo(0.5, 12);
		expect(largestDiscrimination(0.865)).toBeCloseTo(0.5, 12);
	});
});

describe('distractors', () => {
	const items = [
		{ id: 'choice', version: 1, maximum: 1, key: ['A'], options: ['A', 'B', 'C'] },
		{ id: 'one', version: 1, maximum: 1 },
		{ id: 'two', version: 1, maximum: 1 },
	];
	// Option, then points on the two other items.
	const students = ['A11', 'A11', 'A01', 'B00', 'B10', 'B00', 'C11', 'C11'];
	const rows = students.flatMap(([answer = '', one, two], student): readonly ScoreRow[] => {
		const about = { student: String(student), state: 'answered' } as const;
		return [
			{ ...about, item: 'choice', points: answer === 'A' ? 1 : 0, answer },
			{ ...about, item: 'one', points: Number(one) },
			{ ...about, item: 'two', points: Number(two) },
		];
	});
	const { table } = buildScoreTable(items, rows);

	test('that draw strong students are flagged', () => {
		const [choice, one] = tabulateDistractors(table);
		const found = choice && foundValue(choice);
		expect(found?.options.map(({ flags }) => flags)).toEqual([[], [], ['draws-strong']]);
		expect(found).toMatchObject({ functioning: 1, distractors: 2, answered: 8 });
		// Working: rests 2 2 1 0 1 0 2 2, mean 10/8; C marked by two with mean 2; S² = (3 × .5625 + ...)/8 = 5.5/8.
		const r = ((2 - 1.25) / Math.sqrt(5.5 / 8)) * Math.sqrt(0.25 / 0.75);
		expect(found && foundValue(found.options[2]?.correlation as Finding<number>)).toBeCloseTo(r, 12);
		expect(one).toMatchObject({ kind: 'refused', reason: 'not-applicable' });
	});

	test('show as lines over score groups whose shares add up to 1', () => {
		const plot = foundValue(plotResponseGroups(table, 0, 2));
		expect(plot?.sizes).toEqual([expect.closeTo(4, 12), expect.closeTo(4, 12)]);
		expect(plot?.lines.map(({ answer }) => answer)).toEqual(['A', 'B', 'C']);
		for (const group of [0, 1]) {
			expect(plot?.lines.reduce((sum, { shares }) => sum + (shares[group] ?? 0), 0)).toBeCloseTo(1, 12);
		}
		// Working: totals 3 3 2 0 1 0 2 2: the low four are 0 0 1 and a third of each of the three with 2.
		expect(plot?.lines[1]?.shares).toEqual([3 / 4, 0]);
		expect(plot?.lines[0]?.shares[0]).toBeCloseTo(1 / 3 / 4, 12);
		expect(plotResponseGroups(table, 0, 5)).toMatchObject({ reason: 'too-few-students' });
	});

	test('that hardly anybody marks are flagged at five in a hundred', () => expect(leastDistractorShare).toBe(0.05));
});
