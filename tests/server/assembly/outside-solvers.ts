import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** What a solver from outside says of a program in LP format: its least cost, or that there is none. */
export type OutsideAnswer = number | 'infeasible';

/** Solves an LP file with glpsol of GLPK (Debian package glpk-utils). */
export function solveWithGlpsol(lp: string): OutsideAnswer {
	return inFolder(lp, (file, out) => {
		execFileSync('glpsol', ['--lp', file, '-o', out], { stdio: 'pipe' });
		const text = readFileSync(out, 'utf8');
		if (/Status:\s+INTEGER (EMPTY|UNDEFINED)/.test(text)) return 'infeasible';
		const cost = /Objective:\s+cost = (-?[\d.e+-]+)/.exec(text)?.[1];
		if (!/Status:\s+INTEGER OPTIMAL/.test(text) || cost === undefined) throw new Error(`glpsol: ${text.slice(0, 400)}`);
		return Number(cost);
	});
}

/** Solves an LP file with cbc (Debian package coinor-cbc). */
export function solveWithCbc(lp: string): OutsideAnswer {
	return inFolder(lp, (file, out) => {
		const said = execFileSync('cbc', [file, 'solve', 'solu', out], { stdio: 'pipe', encoding: 'utf8' });
		const first = readFileSync(out, 'utf8').split('\n')[0] ?? '';
		if (/infeasible/i.test(first)) return 'infeasible';
		const cost = /^Optimal - objective value (-?[\d.]+)/.exec(first)?.[1];
		if (cost === undefined) throw new Error(`cbc: ${first} ${said.slice(-400)}`);
		return Number(cost);
	});
}

function inFolder(lp: string, work: (file: string, out: string) => OutsideAnswer): OutsideAnswer {
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-lp-'));
	try {
		const file = join(folder, 'model.lp');
		writeFileSync(file, lp);
		return work(file, join(folder, 'solution.txt'));
	} finally {
		rmSync(folder, { recursive: true });
	}
}
