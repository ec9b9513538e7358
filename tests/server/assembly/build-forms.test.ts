import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Blueprint } from '../../../item-bank/types.ts';
import { buildForms } from '../../../server/assembly/build-forms.ts';
import { buildHere } from '../../../server/assembly/build-here.ts';
import type { BuildProgress, BuildRequest } from '../../../server/assembly/build-request.ts';
import { loadSolver } from '../../../server/assembly/solver.ts';
import { projectRoot } from '../../../server/project-root.ts';
import { demoPool, makeBlueprint } from '../../item-bank/forms/sample-blueprints.ts';

const plans = JSON.parse(readFileSync(join(projectRoot, 'item-bank/demo/blueprints.json'), 'utf8')) as readonly {
	readonly id: string;
	readonly blueprint: Blueprint;
}[];
const blueprint = plans.find(({ id }) => id === 'srm-screening-plan')?.blueprint ?? makeBlueprint();
const common = plans.find(({ id }) => id === 'srm-common-assessment-plan')?.blueprint ?? makeBlueprint();
const request: BuildRequest = { blueprint, pool: demoPool(), count: 2, seed: 'thread' };

describe('building in a thread', () => {
	test('gives what building here gives, and tells how far it is', async () => {
		const heard: BuildProgress[] = [];
		const answer = await buildForms(request, { onProgress: (progress) => heard.push(progress) });
		const solver = await loadSolver();
		expect(answer).toEqual(buildHere(request, solver, () => {}));
		expect(heard.map(({ phase }) => phase)).toEqual(expect.arrayContaining(['reading', 'choosing', 'checking']));
	});

	test('two builds at once do not disturb each other', async () => {
		const [a, b, again] = await Promise.all([
			buildForms(request),
			buildForms({ ...request, seed: 'other' }),
			buildForms(request),
		]);
		expect(again).toEqual(a);
		expect(b).not.toEqual(a);
	});

	test('stops in the middle when aborted, with the reason', async () => {
		const controller = new AbortController();
		const reason = new Error('changed my mind');
		const building = buildForms(
			{ ...request, blueprint: common, count: 3, limits: { nodes: 100_000, iterations: 10_000_000 } },
			{
				onProgress: ({ phase }) => phase === 'reading' && setTimeout(() => controller.abort(reason), 300),
				signal: controller.signal,
			},
		);
		await expect(building).rejects.toBe(reason);
		await expect(buildForms(request, { signal: controller.signal })).rejects.toBe(reason);
	});

	test('refuses what building here refuses', async () => {
		await expect(buildForms({ ...request, count: 9 })).rejects.toMatchObject({ code: 'build-request-refused' });
	});

	test('hands on what a listener throws', async () => {
		const onProgress = (): void => {
			throw new Error('listener');
		};
		await expect(buildForms(request, { onProgress })).rejects.toThrow('listener');
	});
});
