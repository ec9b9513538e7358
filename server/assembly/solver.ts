import highsModule, { type Highs, type ModelData } from 'highs';
import { invariant } from '../../item-bank/invariant.ts';
import type { BuildLimits } from './build-request.ts';
import { brokenRows, costOf, type Program } from './program.ts';

/** What a search came to. */
export type Solution =
	| {
			readonly status: 'optimal' | 'feasible';
			readonly values: readonly number[];
			readonly cost: number;
			/** No values cost less; an integer, since all costs are. */
			readonly bound: number;
			readonly nodes: number;
	  }
	| { readonly status: 'infeasible'; readonly nodes: number }
	| { readonly status: 'limit'; readonly nodes: number };

/** What is heard during a search. */
export interface SearchNews {
	readonly nodes: number;
	readonly best: number | undefined;
	readonly bound: number;
}

/** How to search. */
export interface SearchOptions {
	readonly limits: BuildLimits;
	readonly seed: number;
	/** Stop at the first values that keep every row. */
	readonly isFirstEnough?: boolean;
	/** Values of some unknowns to start from: columns and their values. */
	readonly start?: { readonly columns: readonly number[]; readonly values: readonly number[] };
	readonly onNews?: (news: SearchNews) => void;
}

/** An integer programming solver loaded into this thread. */
export interface Solver {
	/** Searches for the cheapest values. Whatever the solver says, values are returned only if they are whole and keep every row. */
	readonly solve: (program: Program, options: SearchOptions) => Solution;
	/** Numbers of rows that cannot hold together even in fractions; undefined when there are none or they were not found. */
	readonly findConflict: (program: Program) => readonly number[] | undefined;
	/** WebAssembly memory in bytes. */
	readonly memory: () => number;
}

// The package's types describe its CommonJS build; as a module its default export is the loader itself.
const loadHighs = highsModule as unknown as () => Promise<Highs>;

/** Loads the solver; takes about a tenth of a second. */
export async function loadSolver(): Promise<Solver> {
	const highs = await loadHighs();
	return {
		solve: (program, options) => solve(highs, program, options),
		findConflict: (program) => findConflict(highs, program),
		memory: () => highs.memoryBytes,
	};
}

function solve(highs: Highs, program: Program, options: SearchOptions): Solution {
	if (program.columns.length === 0) return solveEmpty(program);
	const model = highs.createModel(modelData(program, true));
	try {
		model.options.set({
			output_flag: false,
			random_seed: options.seed,
			mip_max_nodes: options.limits.nodes,
			// Costs are integers: values within less than 1 of the bound are the cheapest.
			mip_abs_gap: 0.999,
			mip_rel_gap: 0,
			...(options.isFirstEnough ? { mip_max_improving_sols: 1 } : {}),
		});
		if (options.start) model.setSolution({ indices: options.start.columns, values: options.start.values });
		const types = highs.constants.callbackType;
		model.run({
			[types.mipInterrupt](event) {
				if (Number(event.data.mip_total_lp_iterations ?? 0) > options.limits.iterations) event.interrupt();
				return undefined;
			},
			[types.mipLogging](event) {
				const best = event.data.mip_primal_bound;
				options.onNews?.({
					nodes: Number(event.data.mip_node_count ?? 0),
					best: best !== undefined && Number.isFinite(best) ? Math.round(best) : undefined,
					bound: lowerBound(event.data.mip_dual_bound ?? 0),
				});
				return undefined;
			},
		});
		const status = model.getModelStatus();
		const statuses = highs.constants.modelStatus;
		const nodes = Math.max(0, Number(model.info.get('mip_node_count')));
		if (status === statuses.infeasible || status === statuses.unboundedOrInfeasible)
			return { status: 'infeasible', nodes };
		const values = Array.from(model.getSolution().colValue, (value) => Math.round(value) + 0);
		if (brokenRows(program, values).length > 0) {
			invariant(status !== statuses.optimal, 'the solver called values optimal that break the program');
			return { status: 'limit', nodes };
		}
		const cost = costOf(program, values);
		const bound = Math.min(cost, lowerBound(Number(model.info.get('mip_dual_bound'))));
		return {
			status: status === statuses.optimal || bound >= cost ? 'optimal' : 'feasible',
			values,
			cost,
			bound: status === statuses.optimal ? cost : bound,
			nodes,
		};
	} finally {
		model.dispose();
	}
}

/** The least integer cost that a bound from floating-point arithmetic allows. */
function lowerBound(bound: number): number {
	return Number.isFinite(bound) ? Math.max(0, Math.ceil(bound - 1e-6)) : 0;
}

function solveEmpty(program: Program): Solution {
	if (brokenRows(program, []).length > 0) return { status: 'infeasible', nodes: 0 };
	return { status: 'optimal', values: [], cost: 0, bound: 0, nodes: 0 };
}

function findConflict(highs: Highs, program: Program): readonly number[] | undefined {
	if (program.columns.length === 0) return undefined;
	const model = highs.createModel(modelData(program, false));
	try {
		// Of the strategies of this version only the elastic one (2) names rows.
		model.options.set({ output_flag: false, iis_strategy: 2 });
		model.run();
		if (model.getModelStatus() !== highs.constants.modelStatus.infeasible) return undefined;
		const rows = [...model.getIis().rowIndex];
		return rows.length > 0 ? rows : undefined;
	} finally {
		model.dispose();
	}
}

function modelData(program: Program, isInteger: boolean): ModelData {
	const starts = new Int32Array(program.rows.length + 1);
	program.rows.forEach((row, index) => {
		starts[index + 1] = (starts[index] ?? 0) + row.columns.length;
	});
	return {
		numCols: program.columns.length,
		numRows: program.rows.length,
		colCost: Float64Array.from(program.columns, ({ cost }) => cost),
		colLower: Float64Array.from(program.columns, ({ lower }) => lower),
		colUpper: Float64Array.from(program.columns, ({ upper }) => upper),
		rowLower: Float64Array.from(program.rows, ({ lower }) => lower),
		rowUpper: Float64Array.from(program.rows, ({ upper }) => upper),
		matrix: {
			format: 'csr',
			numRows: program.rows.length,
			numCols: program.columns.length,
			starts,
			indices: Int32Array.from(program.rows.flatMap(({ columns }) => columns)),
			values: Float64Array.from(program.rows.flatMap(({ values }) => values)),
		},
		...(isInteger ? { integrality: new Int32Array(program.columns.length).fill(1) } : {}),
	};
}
