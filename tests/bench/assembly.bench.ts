import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createRandom } from '../../item-bank/random/random.ts';
import type { BuildAnswer } from '../../item-bank/types.ts';
import { buildForms } from '../../server/assembly/build-forms.ts';
import type { BuildRequest } from '../../server/assembly/build-request.ts';
import { classesOf } from '../../server/assembly/classes.ts';
import { type ProgramPlan, writeFormProgram } from '../../server/assembly/form-program.ts';
import { makeInstance } from '../../server/assembly/instance.ts';
import { readPool } from '../../server/assembly/pool.ts';
import { type Program, writeLp } from '../../server/assembly/program.ts';
import { loadSolver } from '../../server/assembly/solver.ts';
import { readDemo } from '../../server/demo.ts';
import { projectRoot } from '../../server/project-root.ts';
import { largeBlueprint, largePool } from './assembly-pool.ts';

/** Seconds a native solver may take before it counts as not having found anything. */
const patience = 120;

/**
 * Prints how long forms take: two of forty items from 5,000 beside native solvers on the same program in the same run, growth
 * with the bank, the demo department's pair, and memory.
 */
export async function run(): Promise<void> {
	await benchDemo();
	for (const size of [500, 1000, 2000, 5000, 10_000, 20_000]) await benchPool(size);
	await benchNative();
}

async function benchDemo(): Promise<void> {
	const plans = JSON.parse(readFileSync(join(projectRoot, 'item-bank/demo/blueprints.json'), 'utf8')) as readonly {
		readonly id: string;
		readonly blueprint: BuildRequest['blueprint'];
	}[];
	const blueprint = plans.find(({ id }) => id === 'srm-common-assessment-plan')?.blueprint;
	if (!blueprint) throw new Error('expected the plan of the common assessment');
	const { items, made } = readDemo();
	const pool = [...items, ...made].flatMap(({ id, item }) =>
		id === undefined ? [] : [{ id, version: 1, status: 'approved' as const, item }],
	);
	const times: number[] = [];
	for (let seed = 1; seed <= 7; seed += 1) {
		const start = performance.now();
		expectBuilt(await buildForms({ blueprint, pool, count: 2, seed }));
		times.push(performance.now() - start);
	}
	const sorted = times.sort((a, b) => a - b).map((time) => Math.round(time));
	console.log(
		`two forms of 20 from the demo bank of ${pool.length}: median ${sorted[3]} ms, slowest ${sorted[6]} ms of 7 seeds`,
	);
}

async function benchPool(size: number): Promise<void> {
	const request: BuildRequest = { blueprint: largeBlueprint(), pool: largePool(size), count: 2, seed: 1 };
	let first: number | undefined;
	let mostMemory = 0;
	const watch = setInterval(() => {
		mostMemory = Math.max(mostMemory, process.memoryUsage().rss);
	}, 50);
	const start = performance.now();
	const answer = await buildForms(request, {
		onProgress: ({ best }) => {
			if (best !== undefined) first ??= performance.now() - start;
		},
	});
	const time = performance.now() - start;
	clearInterval(watch);
	const found =
		answer.kind === 'built'
			? `${answer.proof.status}, unevenness ${answer.proof.unevenness}, bound ${answer.proof.bound}, ${answer.proof.method}`
			: answer.kind;
	const megabytes = Math.round(mostMemory / 1e6);
	console.log(
		`two forms of 40 from ${size}: first ${Math.round(first ?? time)} ms, answer ${Math.round(time)} ms (${found}), process at most ${megabytes} MB`,
	);
	expectBuilt(answer);
}

/** The plain program has an unknown for each item on each form; the class program is what we solve ourselves. */
async function benchNative(): Promise<void> {
	const request: BuildRequest = { blueprint: largeBlueprint(), pool: largePool(5000), count: 2, seed: 1 };
	const start = performance.now();
	expectBuilt(await buildForms(request));
	const ours = (performance.now() - start) / 1000;
	const instance = makeInstance(request, readPool(request), createRandom(request.seed));
	const coarse = classesOf(instance, 'coarse');
	const near = classesOf(instance, 'near');
	const alike: ProgramPlan = { instance, classes: near, forms: 1, copies: 2, grain: 'near', goal: 'any' };
	const single = coarse.flatMap((one) =>
		one.members.map((member) => ({ ...one, members: [member], traits: instance.items[member]?.traits ?? one.traits })),
	);
	const plain: ProgramPlan = { instance, classes: single, forms: 2, copies: 1, grain: 'fine', goal: 'any' };
	const programs = { plain: writeFormProgram(plain).program, classes: writeFormProgram(alike).program };
	console.log(`plain program: ${sizeOf(programs.plain)}; class program: ${sizeOf(programs.classes)}`);
	console.log(`whole build, thread and reading the bank included: ${ours.toFixed(2)} s`);
	const solver = await loadSolver();
	const begin = performance.now();
	solver.solve(programs.classes, { limits: { nodes: 200, iterations: 15_000 }, seed: 1, isFirstEnough: true });
	console.log(`our solver on the class program: ${((performance.now() - begin) / 1000).toFixed(2)} s`);
	for (const [name, program] of Object.entries(programs)) {
		const lp = writeLp(program);
		for (const command of ['cbc', 'glpsol'] as const) {
			const time = timeNative(command, lp);
			const isWhole = typeof time === 'number' && name === 'plain';
			const ratio = isWhole ? `; our whole build takes ${(ours / time).toFixed(2)} times as long` : '';
			console.log(
				`${command} on the ${name} program: ${typeof time === 'number' ? `${time.toFixed(2)} s` : time}${ratio}`,
			);
		}
	}
}

function sizeOf({ columns, rows }: Program): string {
	return `${columns.length} unknowns, ${rows.length} rows`;
}

/** Seconds until the command has found values that keep the program, or why it has not. */
function timeNative(command: 'cbc' | 'glpsol', lp: string): number | string {
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-bench-'));
	try {
		const file = join(folder, 'model.lp');
		const solution = join(folder, 'solution.txt');
		writeFileSync(file, lp);
		const limits = {
			cbc: [file, 'sec', String(patience), 'maxSolutions', '1', 'solve', 'solu', solution],
			glpsol: ['--lp', file, '--tmlim', String(patience), '-o', solution],
		};
		const start = performance.now();
		execFileSync(command, limits[command], { stdio: 'pipe' });
		const time = (performance.now() - start) / 1000;
		const text = readFileSync(solution, 'utf8').slice(0, 600);
		if (/UNDEFINED|no integer|infeasible/i.test(text)) return `nothing found in ${time.toFixed(0)} s`;
		return time;
	} catch (error) {
		return error instanceof Error && 'code' in error && error.code === 'ENOENT'
			? 'not at hand'
			: `failed: ${String(error).slice(0, 200)}`;
	} finally {
		rmSync(folder, { recursive: true });
	}
}

function expectBuilt(answer: BuildAnswer): void {
	if (answer.kind !== 'built')
		throw new Error(`expected forms, found ${answer.kind}: ${JSON.stringify(answer).slice(0, 800)}`);
}
