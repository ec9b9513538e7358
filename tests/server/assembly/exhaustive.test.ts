import { beforeAll, expect, test } from 'vitest';
import { buildHere } from '../../../server/assembly/build-here.ts';
import { loadSolver, type Solver } from '../../../server/assembly/solver.ts';
import { keepOnly, smallRequest, tryAll } from './small-instances.ts';

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

test('an anchor that only helps is no part of a conflict, and what is can be left out without harm', () => {
	// Three two-point items on 7.NS.A.1c, one of them the anchor: two forms of four points can be had only because it is on both.
	const request = smallRequest(1405);
	expect(request.blueprint.anchors).toEqual([{ item: 'item-0' }]);
	const answer = buildHere(request, solver, () => {});
	if (answer.kind !== 'impossible') throw new Error(`expected no forms, found ${answer.kind}`);
	const paths = answer.conflict.map(({ path }) => path);
	expect(paths).not.toContain('/anchors');
	expect(tryAll(keepOnly(request, paths), ['item-0'])).toBeUndefined();
	for (const path of paths) {
		expect(
			tryAll(
				keepOnly(
					request,
					paths.filter((other) => other !== path),
				),
				['item-0'],
			),
			path,
		).toBeDefined();
	}
});
