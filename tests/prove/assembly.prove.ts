import { beforeAll, expect, test } from 'vitest';
import { buildHere } from '../../server/assembly/build-here.ts';
import type { BuildRequest } from '../../server/assembly/build-request.ts';
import { loadSolver, type Solver } from '../../server/assembly/solver.ts';
import { keepOnly, smallRequest, tryAll } from '../server/assembly/small-instances.ts';

let solver: Solver;
beforeAll(async () => {
	solver = await loadSolver();
});

test('500 small requests come out as trying every way says, and their conflicts are irreducible', () => {
	const tally = { even: 0, uneven: 0, impossible: 0, alone: 0 };
	for (let seed = 1001; seed <= 1500; seed += 1) {
		const request = smallRequest(seed);
		const least = tryAll(request);
		const answer = buildHere(request, solver, () => {});
		if (least !== undefined) {
			expect(answer, `seed ${seed}`).toMatchObject({
				kind: 'built',
				proof: { status: 'optimal', unevenness: least, bound: least },
			});
			tally[least === 0 ? 'even' : 'uneven'] += 1;
			continue;
		}
		if (answer.kind !== 'impossible') throw new Error(`seed ${seed}: expected no forms, found ${answer.kind}`);
		tally.impossible += 1;
		const paths = answer.conflict.map(({ path }) => path);
		if (paths.length === 1) tally.alone += 1;
		expect(answer.isIrreducible, `seed ${seed}`).toBe(true);
		expect(tryRelaxed(request, paths), `seed ${seed}: ${paths.join(' ')}`).toBeUndefined();
		for (const path of paths) {
			const others = paths.filter((other) => other !== path);
			expect(tryRelaxed(request, others), `seed ${seed}: ${others.join(' ')} without ${path}`).toBeDefined();
		}
	}
	console.log(tally);
	expect(Math.min(tally.even, tally.uneven, tally.impossible)).toBeGreaterThan(50);
});

/** Tries all ways under some requirements alone; an anchor that is none any more may still stand on every form. */
function tryRelaxed(request: BuildRequest, paths: readonly string[]): number | undefined {
	const shared = paths.includes('/anchors') ? [] : (request.blueprint.anchors ?? []).map(({ item }) => item);
	return tryAll(keepOnly(request, paths), shared);
}
