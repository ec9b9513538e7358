import { describe, expect, test } from 'vitest';
import { diagnoseClass } from '../../../item-bank/analysis/diagnosis/class.ts';
import { readItemPatterns } from '../../../item-bank/analysis/diagnosis/item-patterns.ts';
import { canRepeat, diagnoseStudents } from '../../../item-bank/analysis/diagnosis/student.ts';
import { foundValue } from '../../../item-bank/analysis/finding.ts';
import { listFrequentAnswers } from '../../../item-bank/analysis/frequent-answers.ts';
import { buildScoreTable, type ScoreRow } from '../../../item-bank/analysis/score-table.ts';
import { simulateStudents } from '../../../item-bank/analysis/simulation/simulate-students.ts';
import { answerTextOf, tableItemOf } from '../../../item-bank/analysis/table-item.ts';
import { getGridProfile } from '../../../item-bank/responses/grid-profiles.ts';
import type { Item } from '../../../item-bank/types.ts';
import { makeChoice, makeGridded } from '../../helpers/items.ts';

const gridded = (expression: string): Item =>
	makeGridded({ expression, stem: [{ kind: 'paragraph', text: `What is \`${expression}\`?` }] });
const expressions = ['-9 + 2', '3 - 8', '-3 - (-8)', '-6 - 4', '7 - (-2)', '-3 + 5'];
const items = expressions.map((expression, at) => ({ id: `i${at}`, item: gridded(expression) }));
const patterns = items.map(({ item }) => readItemPatterns(item));

function tableOf(students: Readonly<Record<string, readonly (number | undefined)[]>>) {
	const form = items.map(({ id, item }) => tableItemOf({ id, version: 1, item }));
	const rows = Object.entries(students).flatMap(([student, answers]) =>
		answers.map((answer, at): ScoreRow => {
			const item = form[at];
			if (answer === undefined) return { student, item: item?.id ?? '', points: 0, state: 'omitted' };
			const isRight = item?.key?.[0] === String(answer);
			return { student, item: item?.id ?? '', points: isRight ? 1 : 0, state: 'answered', answer: String(answer) };
		}),
	);
	return buildScoreTable(form, rows).table;
}

const right = [-7, -5, 5, -10, 9, 2];
// The answers with every sign dropped, and the right one where that idea does not show.
const dropped = expressions.map((_, at) => {
	const wrong = [...(patterns[at]?.byAnswer ?? [])].find(([, behind]) => behind.includes('signs-dropped'));
	return wrong === undefined ? right[at] : Number(wrong[0]);
});

describe('what answers of a student are consistent with', () => {
	test('is a pattern repeated over several items', () => {
		const [student] = diagnoseStudents(tableOf({ s1: dropped }), patterns);
		expect(student).toMatchObject({ student: 's1', answered: 6, unexplained: 0 });
		expect(student?.findings[0]?.patterns).toContain('signs-dropped');
		expect(student?.findings[0]).toMatchObject({ strength: 'repeated' });
		expect(student?.findings[0]?.consistent).toBeGreaterThanOrEqual(3);
	});

	test('is nothing for right answers, single wrong ones, odd ones and left out ones', () => {
		const found = diagnoseStudents(
			tableOf({
				all: right,
				one: [11, ...right.slice(1)],
				odd: [99, 98, 97, 96, 95, 94],
				none: right.map(() => undefined),
			}),
			patterns,
		);
		expect(found.map(({ findings }) => findings)).toEqual([[], [], [], []]);
		expect(found.map(({ wrong, unexplained, omitted }) => [wrong, unexplained, omitted])).toEqual([
			[0, 0, 0],
			[1, 1, 0],
			[6, 6, 0],
			[0, 0, 6],
		]);
		expect(diagnoseStudents(tableOf({}), patterns)).toEqual([]);
	});

	test('cannot be said of patterns the items hardly show', () => {
		expect(canRepeat(patterns, 'signs-dropped')).toBe(true);
		expect(canRepeat(patterns, 'order-by-size')).toBe(false);
		expect(canRepeat(patterns.slice(0, 2), 'signs-dropped')).toBe(false);
	});
});

describe('what a class shares', () => {
	const table = tableOf({
		a: dropped,
		b: dropped,
		c: right,
		d: [99, 98, 97, 96, 95, 94],
		e: [1, ...right.slice(1).map(() => undefined)],
	});
	const found = foundValue(diagnoseClass(diagnoseStudents(table, patterns)));

	test('makes groups of two or more, with probes that tell the patterns apart', () => {
		expect(found?.groups).toMatchObject([{ students: ['a', 'b'] }]);
		expect(found?.groups[0]?.probes.items.length).toBeGreaterThan(0);
		expect(found?.shares.find(({ pattern }) => pattern === found.groups[0]?.pattern)).toMatchObject({
			repeated: 2,
			share: 0.4,
		});
	});

	test('names everybody once', () => {
		expect(found).toMatchObject({ single: [], withoutPattern: ['d'], allRight: ['c'], tooFewAnswers: ['e'] });
		expect(diagnoseClass([])).toMatchObject({ kind: 'refused', reason: 'too-few-students' });
	});
});

describe('frequent wrong answers', () => {
	test('come with what they are consistent with, as one group', () => {
		const [column] = tableOf({ a: [11], b: [11], c: [-11], d: [-7], e: [undefined] }).columns;
		const [item] = items;
		const found = column && item && foundValue(listFrequentAnswers(column, item.item));
		expect(found?.map(({ answer, count, share, shareOfWrong }) => [answer, count, share, shareOfWrong])).toEqual([
			['11', 2, 0.4, 2 / 3],
			['-11', 1, 0.2, 1 / 3],
		]);
		// Reference rules: −9 + 2 → 11 with every sign dropped, −11 with sizes added and a minus put.
		expect(found?.[0]?.explanation?.patterns).toContain('signs-dropped');
		expect(found?.[1]?.explanation?.patterns).toContain('sizes-added-minus-put');
	});

	test('of choices are options, and an item nobody was given is refused', () => {
		const item = makeChoice();
		const tableItem = tableItemOf({ id: 'c', version: 1, item });
		expect(tableItem).toMatchObject({ options: ['a', 'b', 'c', 'd'], key: ['b'] });
		const rows = ['a', 'a', 'd', 'b'].map((answer, at): ScoreRow => {
			return { student: `s${at}`, item: 'c', points: answer === 'b' ? 1 : 0, state: 'answered', answer };
		});
		const [column] = buildScoreTable([tableItem], rows).table.columns;
		expect(column && foundValue(listFrequentAnswers(column, item))?.map(({ answer }) => answer)).toEqual(['a', 'd']);
		const [empty] = buildScoreTable([tableItem], []).table.columns;
		expect(empty && listFrequentAnswers(empty, item)).toMatchObject({ reason: 'too-few-students' });
	});
});

describe('answers in a table', () => {
	const profile = getGridProfile('plain-sign-first');

	test('are the same text however they were given', () => {
		expect(answerTextOf({ kind: 'entry', text: ' −7 ' }, profile)).toBe('-7');
		expect(answerTextOf({ kind: 'grid', columns: [['-'], [], ['7'], [], []] }, profile)).toBe('-7');
		expect(answerTextOf({ kind: 'point', at: -7 }, profile)).toBe('-7');
		expect(answerTextOf({ kind: 'choice', options: ['b', 'a'] }, profile)).toBe('a b');
		expect(answerTextOf({ kind: 'order', order: ['b', 'a'] }, profile)).toBe('b a');
		expect(
			answerTextOf(
				{
					kind: 'match',
					pairs: [
						{ left: 'b', right: 'x' },
						{ left: 'a', right: 'y' },
					],
				},
				profile,
			),
		).toBe('a=y b=x');
	});

	test('are missing for what is no answer', () => {
		expect(answerTextOf({ kind: 'entry', text: '' }, profile)).toBeUndefined();
		expect(answerTextOf({ kind: 'grid', columns: [['-'], ['1', '2'], [], [], []] }, profile)).toBeUndefined();
		expect(answerTextOf({ kind: 'choice', options: [] }, profile)).toBeUndefined();
		expect(answerTextOf({ kind: 'point' }, profile)).toBeUndefined();
		expect(answerTextOf({ kind: 'explanation', text: 'because' }, profile)).toBeUndefined();
	});
});

test('simulated students are the same for the same seed', () => {
	const students = [{ code: 's', habit: { kind: 'guesses' } as const, slips: 0.1, omits: 0.1 }];
	const answers = (seed: string) =>
		simulateStudents(items, students, seed).columns.map(({ distinctAnswers }) => distinctAnswers);
	expect(answers('x')).toEqual(answers('x'));
	expect(answers('x')).not.toEqual(answers('y'));
});
