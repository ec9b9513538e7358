import { beforeAll, describe, expect, test } from 'vitest';
import { createRandom } from '../../../item-bank/random/random.ts';
import { classesOf } from '../../../server/assembly/classes.ts';
import { writeFormProgram } from '../../../server/assembly/form-program.ts';
import { makeInstance } from '../../../server/assembly/instance.ts';
import { readPool } from '../../../server/assembly/pool.ts';
import { brokenRows, costOf, draftProgram, type Program, writeLp } from '../../../server/assembly/program.ts';
import { loadSolver, type Solver } from '../../../server/assembly/solver.ts';
import { hasCommand, requireOutside } from '../../helpers/reference.ts';
import { solveWithCbc, solveWithGlpsol } from './outside-solvers.ts';
import { smallRequest } from './small-instances.ts';

let solver: Solver;
beforeAll(async () => {
	solver = await loadSolver();
});

const options = { limits: { nodes: 20_000, iterations: 1_000_000 }, seed: 1 };

/** Two kinds of thing to buy, at least 7 in all, weighing at most 20; fractions would be cheaper. */
function shopping(): Program {
	const draft = draftProgram();
	const big = draft.addColumn('big', 0, 9, 5);
	const small = draft.addColumn('small', 0, 9, 3);
	draft.addRow('enough', 7, Infinity, [
		[big, 2],
		[small, 1],
	]);
	draft.addRow('light', -Infinity, 20, [
		[big, 4],
		[small, 3],
	]);
	return draft.finish();
}

describe('an integer program', () => {
	test('is solved in whole numbers', () => {
		// 3 big + 1 small: 7 enough, 15 light, cost 18. By hand: 4 big cost 20, 2 big + 3 small cost 19.
		expect(solver.solve(shopping(), options)).toMatchObject({ status: 'optimal', values: [3, 1], cost: 18, bound: 18 });
	});

	test('says so when nothing keeps its rows, and names rows that conflict in fractions', () => {
		const program = shopping();
		const tight: Program = {
			...program,
			rows: program.rows.map((row) => (row.name === 'light' ? { ...row, upper: 10 } : row)),
		};
		expect(solver.solve(tight, options).status).toBe('infeasible');
		expect(
			solver
				.findConflict(tight)
				?.map((row) => tight.rows[row]?.name)
				.sort(),
		).toEqual(['enough', 'light']);
		expect(solver.findConflict(program)).toBeUndefined();
	});

	test('counts its own rows: fractions, bounds and sums', () => {
		expect(brokenRows(shopping(), [3, 1])).toEqual([]);
		expect(brokenRows(shopping(), [3.5, 0])).toEqual(['big']);
		expect(brokenRows(shopping(), [10, 0])).toEqual(['big', 'light']);
		expect(brokenRows(shopping(), [1, 1])).toEqual(['enough']);
		expect(brokenRows(shopping(), [3])).toEqual(['length']);
		expect(costOf(shopping(), [3, 1])).toBe(18);
	});

	test('may have no unknowns', () => {
		const draft = draftProgram();
		draft.addRow('nothing', 0, 0, []);
		expect(solver.solve(draft.finish(), options)).toMatchObject({ status: 'optimal', cost: 0 });
		draft.addRow('something', 1, 1, []);
		expect(solver.solve(draft.finish(), options).status).toBe('infeasible');
	});

	test('sums terms on one unknown and leaves out what limits nothing', () => {
		const draft = draftProgram();
		const column = draft.addColumn('x', 0, 3, 1);
		draft.addRow('twice', 2, 4, [
			[column, 1],
			[column, 1],
		]);
		draft.addRow('open', -Infinity, Infinity, [[column, 1]]);
		expect(draft.finish().rows).toEqual([{ name: 'twice', lower: 2, upper: 4, columns: [0], values: [2] }]);
	});
});

/** The whole program of a small request, sharing rules among its rows. */
function smallProgram(seed: number): Program {
	const request = smallRequest(seed);
	const instance = makeInstance(request, readPool(request), createRandom(seed));
	const classes = classesOf(instance, 'fine');
	return writeFormProgram({ instance, classes, forms: instance.count, copies: 1, grain: 'fine', goal: 'balanced' })
		.program;
}

const seeds = Array.from({ length: 12 }, (_, index) => index + 2001);

describe('written as an LP file', () => {
	// Outside check: GLPK's glpsol, a solver of its own, from Debian's package glpk-utils.
	test.runIf(requireOutside('glpsol (package glpk-utils)', hasCommand('glpsol')))(
		'glpsol finds the same least cost',
		() => {
			for (const seed of seeds) {
				const program = smallProgram(seed);
				const ours = solver.solve(program, options);
				expect(solveWithGlpsol(writeLp(program)), `seed ${seed}`).toBe('cost' in ours ? ours.cost : ours.status);
			}
		},
	);

	// Outside check: COIN-OR's cbc, a solver of its own, from Debian's package coinor-cbc.
	test.runIf(requireOutside('cbc (package coinor-cbc)', hasCommand('cbc')))('cbc finds the same least cost', () => {
		for (const seed of seeds) {
			const program = smallProgram(seed);
			const ours = solver.solve(program, options);
			expect(solveWithCbc(writeLp(program)), `seed ${seed}`).toBe('cost' in ours ? ours.cost : ours.status);
		}
	});
});
