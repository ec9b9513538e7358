import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildScoreTable, type ScoreRow, stateCodes, type TableItem } from '../../../item-bank/analysis/score-table.ts';
import { keepComplete, selectItems, selectStudents, totalsOf } from '../../../item-bank/analysis/select-students.ts';

const items: readonly TableItem[] = [
	{ id: 'one', version: 1, maximum: 1, key: ['-5'] },
	{ id: 'two', version: 3, maximum: 2, key: ['B'], options: ['A', 'B', 'C'] },
];

const row = (student: string, item: string, points: number, more: Partial<ScoreRow> = {}): ScoreRow => ({
	student,
	item,
	points,
	state: 'answered',
	...more,
});

describe('a score table', () => {
	test('holds points, states and answers column by column', () => {
		const { table, faults } = buildScoreTable(items, [
			row('s2', 'two', 2, { answer: 'B' }),
			row('s1', 'one', 0, { answer: '5' }),
			row('s1', 'two', 0, { state: 'omitted' }),
			row('s2', 'one', 0, { answer: '5' }),
		]);
		expect(faults).toEqual([]);
		expect(table.students).toEqual(['s2', 's1']);
		const [one, two] = table.columns;
		expect([...(one?.answers ?? [])]).toEqual([0, 0]);
		expect(one?.distinctAnswers).toEqual(['5']);
		expect([...(two?.points ?? [])]).toEqual([2, 0]);
		expect([...(two?.states ?? [])]).toEqual([stateCodes.answered, stateCodes.omitted]);
		expect([...(two?.answers ?? [])]).toEqual([0, -1]);
		expect([...totalsOf(table)]).toEqual([2, 0]);
	});

	test('takes an item without a row as not given', () => {
		const { table } = buildScoreTable(items, [row('s1', 'one', 1)], ['s0', 's1']);
		expect(table.columns.map(({ states }) => [...states])).toEqual([
			[5, 0],
			[5, 5],
		]);
		expect(keepComplete(table)).toMatchObject({ leftOut: 2 });
		expect(keepComplete(selectItems(table, [0])).table.students).toEqual(['s1']);
	});

	test('lists rows that cannot stand and keeps the rest', () => {
		const { table, faults } = buildScoreTable(items, [
			row('s1', 'three', 1),
			row('s1', 'one', 2),
			row('s1', 'one', 1, { state: 'omitted' }),
			row('s1', 'one', Number.NaN),
			row('s1', 'one', 1),
			row('s1', 'one', 0),
		]);
		expect(faults.map(({ row: at, fault }) => [at, fault])).toEqual([
			[0, 'item-unknown'],
			[1, 'points-refused'],
			[2, 'points-refused'],
			[3, 'points-refused'],
			[5, 'row-repeated'],
		]);
		expect(faults[1]?.message).toContain('expected 0 to 1 points');
		expect([...(table.columns[0]?.points ?? [])]).toEqual([1]);
	});

	test('gives back what was put in, whatever the order of the rows', () => {
		const cells = fc.array(fc.record({ student: fc.nat(60), item: fc.nat(1), points: fc.nat(1), answer: fc.string() }));
		fc.assert(
			fc.property(cells, (drawn) => {
				const firsts = drawn.filter(
					(cell, at) => drawn.findIndex(({ student, item }) => student === cell.student && item === cell.item) === at,
				);
				const { table } = buildScoreTable(
					items,
					drawn.map(({ student, item, points, answer }) =>
						row(`s${student}`, items[item]?.id ?? '', points, { answer }),
					),
				);
				for (const { student, item, points, answer } of firsts) {
					const place = table.students.indexOf(`s${student}`);
					const column = table.columns[item];
					expect(column?.points[place]).toBe(points);
					expect(column?.distinctAnswers[column.answers[place] ?? -1]).toBe(answer);
				}
			}),
		);
	});

	test('selects students in the order asked', () => {
		const { table } = buildScoreTable(
			items,
			['s0', 's1', 's2'].flatMap((student, points) => items.map(({ id }) => row(student, id, Math.min(1, points)))),
		);
		const chosen = selectStudents(table, [2, 0]);
		expect(chosen.students).toEqual(['s2', 's0']);
		expect([...totalsOf(chosen)]).toEqual([2, 0]);
	});
});
