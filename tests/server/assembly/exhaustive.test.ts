import { beforeAll, expect, test } from 'vitest';
import { buildHere } from '../../../server/assembly/build-here.ts';
import { loadSolver, type Solver } from '../../../server/assembly/solver.ts';
import { smallRequest, tryAll } from './small-instances.ts';

let solver: Solver;
beforeAll(async () => {
	solver = await loadSolver();
});

test('forty small requests come out as trying every way says, met or not', { timeout: 60_000 }, () => {
	const kinds = new Set<string>();
	for (let seed = 1; seed <= 40; seed += 1) {
		const request = smallRequest(seed);
		const least = tryAll(request);
		const answer = buildHere(request, solver, () => {});
		kinds.add(answer.kind);
		if (least === undefined) expect(answer.kind, `seed ${seed}`).toBe('impossible');
		else
			expect(answer, `seed ${seed}`).toMatchObject({
				kind: 'built',
				proof: { status: 'optimal', unevenness: least, bound: least },
			});
	}
	expect([...kinds].sort()).toEqual(['built', 'impossible']);
});
