import { describe, expect, test } from 'vitest';
import { analyseForm } from '../../../item-bank/analysis/analyse-form.ts';
import { found, foundValue, refuse } from '../../../item-bank/analysis/finding.ts';
import { compareAnchors, compareScores } from '../../../item-bank/analysis/form-comparison.ts';
import { markNotReached, measureOmitRates } from '../../../item-bank/analysis/omit-rates.ts';
import {
	readChange,
	readEvidence,
	readPatternFinding,
} from '../../../item-bank/analysis/readings/evidence-readings.ts';
import {
	readCorrelation,
	readDifficulty,
	readDiscrimination,
	readDistractors,
	readOmits,
} from '../../../item-bank/analysis/readings/item-readings.ts';
import { percentText } from '../../../item-bank/analysis/readings/reading.ts';
import {
	readComparison,
	readConsistency,
	readReliability,
	readScores,
	readStandardError,
	readTargeting,
} from '../../../item-bank/analysis/readings/test-readings.ts';
import { buildScoreTable, type ResponseState, responseStates } from '../../../item-bank/analysis/score-table.ts';
import { createRandom } from '../../../item-bank/random/random.ts';
import { tableOf } from './reference-data.ts';

describe('two forms compared', () => {
	const [a, b, c] = [
		[0.2, 0.4, 0.5, 0.9],
		[0.3, 0.7, 0.6, 1],
		[0.1, 0.5, 0.5, 0.8, 0.9],
	].map((shares) => shares.map((share) => [share]));

	test('over the same students give the paired interval of R', () => {
		// R 4.2.2: t.test(b, a, paired = TRUE), cor(a, b).
		const value = foundValue(compareScores(tableOf(['x'], a ?? []), tableOf(['y'], b ?? [])));
		expect(value).toMatchObject({ design: 'paired' });
		expect(value?.interval.low).toBeCloseTo(-0.00912231526418539, 9);
		expect(value?.interval.high).toBeCloseTo(0.30912231526418532, 9);
		expect(value && foundValue(value.correlation)).toBeCloseTo(0.941357448663283, 9);
	});

	test("over other students give Welch's interval of R", () => {
		// R 4.2.2: t.test(c, a).
		const value = foundValue(compareScores(tableOf(['x'], a ?? []), tableOf(['y'], c ?? [])));
		expect(value).toMatchObject({ design: 'separate' });
		expect(value?.interval.low).toBeCloseTo(-0.424079718956697, 9);
		expect(value?.interval.high).toBeCloseTo(0.544079718956697, 9);
	});

	test('on anchors tell groups from forms', () => {
		// Anchors: both groups half right. Rest: first all right, second none.
		const first = tableOf(
			['anchor', 'one'],
			[
				[1, 1],
				[0, 1],
				[1, 1],
				[0, 1],
			],
		);
		const second = tableOf(
			['anchor', 'two'],
			[
				[1, 0],
				[0, 0],
				[0, 0],
				[1, 0],
			],
		);
		const value = foundValue(compareAnchors(first, second));
		expect(value).toMatchObject({ items: [{ id: 'anchor', first: 0.5, second: 0.5 }], anchors: { difference: 0 } });
		expect(value && foundValue(value.gap)).toBe(-1);
		expect(compareAnchors(tableOf(['a'], [[1], [0]]), tableOf(['b'], [[1], [0]]))).toMatchObject({
			reason: 'too-few-items',
		});
		expect(compareScores(tableOf(['a'], [[1]]), tableOf(['b'], [[1]]))).toMatchObject({ reason: 'too-few-students' });
	});
});

describe('omitted and not reached', () => {
	const build = (states: readonly (readonly ResponseState[])[]) =>
		buildScoreTable(
			states[0]?.map((_, at) => ({ id: `i${at}`, version: 1, maximum: 1 })) ?? [],
			states.flatMap((own, student) =>
				own.map((state, at) => ({ student: `s${student}`, item: `i${at}`, points: 0, state })),
			),
		).table;

	test('are told apart at the end of the form', () => {
		const table = markNotReached(
			build([
				['answered', 'omitted', 'answered', 'omitted', 'omitted'],
				['omitted', 'omitted', 'omitted', 'omitted', 'omitted'],
				['answered', 'omitted', 'answered', 'invalid', 'omitted'],
			]),
		);
		const states = table.students.map((_, student) =>
			table.columns.map((column) => responseStates[column.states[student] ?? 0]),
		);
		expect(states).toEqual([
			['answered', 'omitted', 'answered', 'omitted', 'not-reached'],
			['not-reached', 'not-reached', 'not-reached', 'not-reached', 'not-reached'],
			['answered', 'omitted', 'answered', 'invalid', 'omitted'],
		]);
	});

	test('are counted over those who were given the item', () => {
		const [column] = build([
			['omitted'],
			['invalid'],
			['answered'],
			['not-given'],
			['not-reached'],
			['unrated'],
		]).columns;
		const rates = column && foundValue(measureOmitRates(column));
		expect(rates).toMatchObject({
			given: 5,
			omitted: { share: 0.2 },
			invalid: { count: 1 },
			notReached: { count: 1 },
			unrated: { count: 1 },
		});
		const [nobody] = build([['not-given']]).columns;
		expect(nobody && measureOmitRates(nobody)).toMatchObject({ reason: 'too-few-students' });
	});
});

const random = createRandom('form figures');
const drawn = Array.from({ length: 150 }, () => {
	const chance = random.nextInteger(15, 95);
	return Array.from({ length: 12 }, () => (random.nextInteger(1, 100) <= chance ? 1 : 0));
});
const names = Array.from({ length: 12 }, (_, at) => `i${at}`);

/** Every number in a value, however deep. */
function numbersIn(value: unknown): readonly number[] {
	if (typeof value === 'number') return [value];
	if (typeof value !== 'object' || value === null) return [];
	return ('BYTES_PER_ELEMENT' in value ? [...(value as Float64Array)] : Object.values(value)).flatMap(numbersIn);
}

describe('a whole analysis', () => {
	test.each([
		['many students', drawn],
		['one student', drawn.slice(0, 1)],
		['nobody', []],
		['everybody right', drawn.map((row) => row.map(() => 1))],
		['everybody wrong', drawn.map((row) => row.map(() => 0))],
		['some items all right or all wrong', drawn.map((row) => [1, 0, ...row.slice(2)])],
		['students with gaps', drawn.map((row, at) => (at % 3 === 0 ? [undefined, ...row.slice(1)] : row))],
	] as const)('of %s has clear values and never NaN', (_name, rows) => {
		const analysis = analyseForm(tableOf(names, rows as readonly (readonly (number | undefined)[])[]));
		expect(analysis.items).toHaveLength(12);
		expect(numbersIn(analysis).filter((value) => !Number.isFinite(value))).toEqual([]);
	});

	test('leaves students with gaps out of totals and says how many', () => {
		const rows = drawn.map((row, at) => (at < 50 ? [undefined, ...row.slice(1)] : row));
		const analysis = analyseForm(tableOf(names, rows));
		expect(analysis.leftOut).toBe(50);
		expect(foundValue(analysis.scores)?.students).toBe(100);
		expect(foundValue(analysis.items[1]?.difficulty ?? refuse('incomplete', ''))?.responses).toBe(150);
	});
});

describe('readings in plain words', () => {
	const analysis = analyseForm(tableOf(names, drawn));

	test('are withheld under 10 takers and softened under 100', () => {
		expect(readReliability(analysis.reliability, 9)).toMatchObject({ tone: 'withheld' });
		expect(readReliability(analysis.reliability, 9).text).toContain('9 students');
		expect(readReliability(analysis.reliability, 60).text).toMatch(/^A hint only, from 60 students: /);
		expect(readReliability(analysis.reliability, 150).text).toMatch(/^Scores are/);
	});

	test('name the source of their threshold, and say why there is no figure', () => {
		const [item] = analysis.items;
		if (!item) throw new Error('no item');
		const readings = [
			readDifficulty(item.difficulty, 150),
			readCorrelation(item.correlation.corrected, 150),
			readDiscrimination(found(0.35), 150),
			readOmits(item.omits),
			readDistractors(item.distractors),
			readReliability(analysis.reliability, 150),
			readStandardError(analysis.reliability, 150),
			readScores(analysis.scores),
			readTargeting(analysis.map, 150),
			readConsistency(refuse('no-solution', 'no reliability'), 150),
			readComparison(refuse('too-few-students', 'expected students')),
		];
		for (const { text, basis } of readings) {
			expect(text.length).toBeGreaterThan(10);
			expect(basis.length).toBeGreaterThan(10);
			expect(text).not.toMatch(/NaN|undefined|Infinity/);
		}
		expect(readings[4]).toMatchObject({ tone: 'absent' });
		expect(readings[9]?.text).toBe('No figure: no reliability.');
	});

	test('hold thresholds at the edge', () => {
		expect(readCorrelation(found(0.2), 200).tone).toBe('plain');
		expect(readCorrelation(found(0.3 - 0.1), 200).tone).toBe('plain');
		expect(readCorrelation(found(0.19), 200).tone).toBe('look');
		expect(readCorrelation(found(-0.01), 200).text).toContain('Check the key');
		expect(percentText(0.999)).toBe('over 99 %');
		expect(percentText(0.001)).toBe('under 1 %');
		expect(percentText(1)).toBe('100 %');
	});

	test('of evidence never stand on a share alone', () => {
		const cell = {
			standard: '6.3(D)',
			model: 'symbols',
			earned: 120,
			possible: 300,
			share: 0.4,
			responses: 300,
			students: 100,
			items: 3,
			interval: found({ low: 0.35, high: 0.45 }),
			method: 'resampling',
		} as const;
		expect(readEvidence(cell).text).toBe(
			'120 of 300 points, 40 % (between 35 % and 45 %), from 300 responses of 100 students to 3 items. Enough items for a hint.',
		);
		expect(readEvidence({ ...cell, items: 1 }).tone).toBe('look');
		expect(readEvidence({ ...cell, students: 4 })).toMatchObject({ tone: 'withheld' });
	});

	test('of change and patterns keep their cautions', () => {
		const change = {
			standard: '6.3(D)',
			model: 'symbols',
			before: 0.4,
			after: 0.5,
			change: 0.1,
			interval: found({ low: -0.05, high: 0.25 }),
			studentsBefore: 120,
			studentsAfter: 120,
			studentsBoth: 110,
			isSameItems: false,
		} as const;
		expect(readChange(change).text).toMatch(/^No clear change.*items were not the same/);
		expect(readChange({ ...change, interval: found({ low: 0.02, high: 0.2 }) }).text).toMatch(/^A change/);
		const finding = {
			patterns: ['signs-dropped'],
			rivals: [],
			consistent: 3,
			opportunities: 4,
			items: [0, 1, 2],
			strength: 'repeated',
		} as const;
		expect(readPatternFinding(finding).text).toContain('consistent with');
		expect(readPatternFinding(finding).text).not.toMatch(/\bhas\b/);
	});
});
