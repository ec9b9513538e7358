import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { blueprintOf } from '../../../item-bank/forms/blueprint-of.ts';
import { checkAgainstBlueprint, checkTogether } from '../../../item-bank/forms/check-against-blueprint.ts';
import { checkBlueprint } from '../../../item-bank/forms/check-blueprint.ts';
import { checkForm, positionsOf } from '../../../item-bank/forms/check-form.ts';
import type { ItemRecord } from '../../../item-bank/items/record.ts';
import type { Blueprint, BuildAnswer, Form, FormsBuilt, FormsImpossible, Item } from '../../../item-bank/types.ts';
import { buildHere } from '../../../server/assembly/build-here.ts';
import type { BuildRequest } from '../../../server/assembly/build-request.ts';
import { describeBuild } from '../../../server/assembly/describe-build.ts';
import { loadSolver, type Solver } from '../../../server/assembly/solver.ts';
import { checkShape } from '../../../server/json-schemas.ts';
import { projectRoot } from '../../../server/project-root.ts';
import { makeGridded } from '../../helpers/items.ts';
import { demoForms, demoPool, finderOf, makeBlueprint, recordsOf } from '../../item-bank/forms/sample-blueprints.ts';

let solver: Solver;
beforeAll(async () => {
	solver = await loadSolver();
});

const pool = demoPool();
const findItem = finderOf(pool);
const idsOf = (form: Form): readonly string[] => positionsOf(form).map(({ entry }) => entry.item);

function build(request: Omit<BuildRequest, 'pool'> & { readonly pool?: readonly ItemRecord[] }): BuildAnswer {
	const answer = buildHere({ pool, ...request }, solver, () => {});
	expect(checkShape('build-answer.schema.json', answer)).toEqual([]);
	return answer;
}

function buildForms(request: Parameters<typeof build>[0]): FormsBuilt {
	const answer = build(request);
	if (answer.kind !== 'built') throw new Error(`expected forms, found ${JSON.stringify(answer)}`);
	return answer;
}

function explain(request: Parameters<typeof build>[0]): FormsImpossible {
	const answer = build(request);
	if (answer.kind !== 'impossible') throw new Error(`expected no forms, found ${answer.kind}`);
	return answer;
}

const plans = JSON.parse(readFileSync(join(projectRoot, 'item-bank/demo/blueprints.json'), 'utf8')) as readonly {
	readonly id: string;
	readonly blueprint: Blueprint;
}[];
const planOf = (id: string): Blueprint => {
	const plan = plans.find((one) => one.id === id);
	if (!plan) throw new Error(`expected the plan ${id}`);
	return plan.blueprint;
};
const [formA] = demoForms();
const otherForms = [{ id: 'srm-unit-check-a', title: formA.title, items: idsOf(formA) }];

describe('the demo blueprints', () => {
	test.each(plans.map(({ id, blueprint }) => [id, blueprint] as const))(
		'%s is sound and met by the demo bank',
		(_id, blueprint) => {
			expect(checkShape('blueprint.schema.json', blueprint)).toEqual([]);
			expect(checkBlueprint(blueprint)).toEqual([]);
			const { forms } = buildForms({ blueprint, count: 1, seed: 'a', otherForms, today: '2026-11-25' });
			expect(checkShape('form.schema.json', forms[0])).toEqual([]);
			expect(checkForm(forms[0] as Form, findItem)).toEqual([]);
			expect(
				checkAgainstBlueprint(forms[0] as Form, findItem, blueprint).filter(({ path }) => !path.startsWith('/order')),
			).toEqual([]);
		},
	);

	test('give two forms of the common assessment that share nothing and are proved to be even', () => {
		const { balance, forms, proof } = buildForms({
			blueprint: planOf('srm-common-assessment-plan'),
			count: 2,
			seed: 3,
		});
		expect(forms.map(({ title }) => title)).toEqual([
			'Common assessment: integers, Form A',
			'Common assessment: integers, Form B',
		]);
		expect(balance.shared).toEqual([]);
		expect(proof).toMatchObject({ status: 'optimal', unevenness: 0, bound: 0 });
		expect(
			balance.rows.filter(({ difference, group }) => difference !== 0 && group !== 'keyPlaces' && group !== 'spread'),
		).toEqual([]);
	});
});

describe('the same seed', () => {
	test('gives the same forms from a pool in any order, another seed gives others', () => {
		const blueprint = planOf('srm-screening-plan');
		const first = buildForms({ blueprint, count: 2, seed: 'x' });
		expect(buildForms({ blueprint, count: 2, seed: 'x', pool: [...pool].reverse() })).toEqual(first);
		const others = ['y', 'z'].map((seed) => buildForms({ blueprint, count: 2, seed }).forms.map(idsOf));
		expect(others.some((ids) => JSON.stringify(ids) !== JSON.stringify(first.forms.map(idsOf)))).toBe(true);
	});
});

describe('a retake', () => {
	test('is parallel to the given form and uses none of its items', () => {
		const blueprint = { ...blueprintOf(formA, findItem, { framework: 'teks-math', edition: '2012' }), title: 'Retake' };
		const { balance, forms } = buildForms({ blueprint, count: 1, seed: 1, like: formA });
		expect(idsOf(forms[0] as Form).filter((id) => idsOf(formA).includes(id))).toEqual([]);
		expect(balance.forms).toEqual([formA.title, 'Retake']);
		for (const group of ['cells', 'kinds', 'dok', 'points']) {
			expect(
				balance.rows.filter((row) => row.group === group && row.difference !== 0),
				group,
			).toEqual([]);
		}
	});
});

describe('anchors and forced items', () => {
	const blueprint = makeBlueprint({
		items: { min: 5, max: 5 },
		sections: [
			{ title: 'First', kinds: ['gridded'], items: { min: 2, max: 2 } },
			{ title: 'Second', kinds: ['choice'], items: { min: 3, max: 3 } },
		],
	});

	test('anchors stand on every form at the same place, forced items where they should', () => {
		const anchored = {
			...blueprint,
			anchors: [{ item: 'srm-add-003' }, { item: 'srm-mul-001' }],
			forced: [{ item: 'srm-lin-001', form: 2 }, { item: 'srm-sto-001' }],
		};
		const { forms } = buildForms({ blueprint: anchored, count: 3, seed: 1, limits: { nodes: 10, iterations: 1000 } });
		expect(checkTogether(forms, findItem, anchored)).toEqual([]);
		for (const anchor of ['srm-add-003', 'srm-mul-001'])
			expect(new Set(forms.map((form) => idsOf(form).indexOf(anchor))).size).toBe(1);
		expect(idsOf(forms[1] as Form)).toContain('srm-lin-001');
		expect(forms.filter((form) => idsOf(form).includes('srm-sto-001'))).toHaveLength(1);
	});

	test('anchors that break the plan are named with what they break', () => {
		const tight = {
			...blueprint,
			anchors: [{ item: 'srm-mul-001' }],
			cells: [{ standard: '6.3(D)', model: 'symbols' as const, items: { max: 0 } }],
		};
		const { conflict, isIrreducible } = explain({ blueprint: tight, count: 1, seed: 1 });
		expect(conflict.map(({ path }) => path)).toEqual(['/cells/0/items', '/anchors']);
		expect(isIrreducible).toBe(true);
	});

	test('anchors that are not there, not approved or not admitted say so', () => {
		const anchors = [{ item: 'no-such-item' }, { item: 'srm-cnt-009' }];
		expect(
			explain({ blueprint: { ...blueprint, anchors }, count: 1, seed: 1 }).conflict.map(
				({ excluded }) => excluded[0]?.reason,
			),
		).toEqual(['there is no approved item of that id', 'no section admits it']);
	});
});

describe('when it cannot be done', () => {
	const point = (expression: string): Item => ({ ...makeGridded({ expression }), given: 'counters' });
	const bank = recordsOf(point('3 - 5'), makeGridded({ expression: '2 - 6' }), makeGridded({ expression: '1 - 8' }));
	const blueprint = makeBlueprint({
		items: { min: 2, max: 3 },
		cells: [{ standard: '6.3(D)', model: 'counters', items: { min: 3 } }],
		exclusions: { usedWithinDays: 60 },
	});
	const request = {
		blueprint,
		pool: bank,
		count: 1,
		seed: 1,
		today: '2026-11-25',
		uses: [{ item: 'item-1', form: 'Form A', date: '2026-10-12' }],
	};

	test('it says what is needed, what the bank has, and why it may not be used', () => {
		const answer = explain(request);
		expect(answer.conflict).toEqual([
			{
				path: '/cells/0/items',
				requirement: 'needs at least 3 items on 6.3(D) with counters',
				inBank: 1,
				usable: 0,
				excluded: [{ item: 'item-1', reason: 'Form A used it on 12 October 2026' }],
			},
		]);
		expect(answer.isIrreducible).toBe(true);
		expect(describeBuild(answer, finderOf(bank), blueprint)).toContain(
			'needs at least 3 items on 6.3(D) with counters; the bank has 1, of which 0 may be used\n      item-1 is excluded because Form A used it on 12 October 2026',
		);
	});

	test('the nearest form comes with each shortfall, and the missing items would do', () => {
		const { missing, nearest } = explain(request);
		expect(nearest?.shortfalls).toEqual([
			{
				form: 1,
				path: '/cells/0/items',
				requirement: 'needs at least 3 items on 6.3(D) with counters',
				found: '0 items',
			},
		]);
		expect(nearest?.forms).toHaveLength(1);
		expect(missing).toMatchObject([{ count: 3, standard: '6.3(D)', model: 'counters', dok: 1, points: 1 }]);
		const made = ['4 - 7', '5 - 9', '6 - 8'].map((expression, index) => ({
			id: `made-${index}`,
			version: 1,
			status: 'approved' as const,
			item: point(expression),
		}));
		expect(build({ ...request, pool: [...bank, ...made] }).kind).toBe('built');
	});

	test('an exclusion that alone is to blame is part of the conflict', () => {
		const { conflict } = explain({
			...request,
			blueprint: { ...blueprint, cells: [{ model: 'counters', items: { min: 1 } }] },
		});
		expect(conflict.map(({ path }) => path)).toEqual(['/cells/0/items', '/exclusions/usedWithinDays']);
	});

	test('an empty bank is said to be one', () => {
		const { conflict, missing } = explain({ ...request, pool: [] });
		expect(conflict).toMatchObject([{ inBank: 0 }]);
		expect(missing).toMatchObject([{ count: 3, model: 'counters' }]);
	});

	test('a rule about sharing can be what is in the way', () => {
		const same = recordsOf(makeGridded({ expression: '2 - 6' }), makeGridded({ expression: '1 - 5' }));
		const { conflict } = explain({
			blueprint: makeBlueprint({ items: { min: 2, max: 2 }, exclusions: { answerMost: 1 } }),
			pool: same,
			count: 1,
			seed: 1,
		});
		expect(conflict.map(({ path }) => path)).toEqual(['/items', '/exclusions/answerMost']);
	});

	test('drafts and retired items are not used, nor older versions', () => {
		const item = makeGridded();
		const records: readonly ItemRecord[] = [
			{ id: 'item-1', version: 1, status: 'approved', item },
			{ id: 'item-1', version: 2, status: 'approved', item },
			{ id: 'item-1', version: 3, status: 'draft', item },
			{ id: 'item-2', version: 1, status: 'retired', item },
		];
		const { forms } = buildForms({
			blueprint: makeBlueprint({ items: { min: 1, max: 1 } }),
			pool: records,
			count: 1,
			seed: 1,
		});
		expect(forms[0]?.sections[0]?.items).toEqual([{ item: 'item-1', version: 2 }]);
		expect(
			explain({ blueprint: makeBlueprint({ items: { min: 2, max: 2 } }), pool: records, count: 1, seed: 1 }).conflict[0]
				?.inBank,
		).toBe(1);
	});
});

describe('limits', () => {
	test('that are too tight give no answer rather than a wrong one', () => {
		const answer = build({
			blueprint: planOf('srm-common-assessment-plan'),
			count: 3,
			seed: 1,
			limits: { nodes: 0, iterations: 0 },
		});
		expect(answer).toMatchObject({
			kind: 'undecided',
			message: expect.stringContaining('within 0 nodes and 0 iterations neither forms nor a proof'),
		});
	});
});

describe('requests that no search can answer', () => {
	const refusal = (more: Partial<BuildRequest>) => () =>
		buildHere({ blueprint: makeBlueprint(), pool, count: 1, seed: 1, ...more }, solver, () => {});
	test.each([
		[
			'blueprints with problems',
			{ blueprint: makeBlueprint({ items: { min: 3, max: 2 } }) },
			'found: expected a smallest number',
		],
		[
			'five hundred items',
			{ blueprint: makeBlueprint({ items: { min: 500, max: 500 } }) },
			'at most 200 items on a form, found 500',
		],
		['no forms', { count: 0 }, 'expected 1 to 4 forms, found 0'],
		['five forms', { count: 5 }, 'found 5'],
		['days without a day', { blueprint: makeBlueprint({ exclusions: { usedWithinDays: 3 } }) }, 'the day of the build'],
		[
			'forms that are not given',
			{ blueprint: makeBlueprint({ exclusions: { notOnForms: ['form-z'] } }) },
			'found no "form-z"',
		],
		[
			'a forced form beyond the count',
			{ blueprint: makeBlueprint({ forced: [{ item: 'srm-add-001', form: 2 }] }) },
			'found form 2',
		],
	])('%s are refused', (_name, more, message) => {
		expect(refusal(more)).toThrow(message);
	});
});
