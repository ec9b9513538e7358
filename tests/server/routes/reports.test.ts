import { beforeAll, describe, expect, test } from 'vitest';
import { fillDemo } from '../../../server/demo.ts';
import { countPages } from '../../helpers/pdf-pages.ts';
import { readText } from '../../helpers/sat-bank.ts';
import { expectShape, openTestApp, type TestApp } from '../../helpers/test-app.ts';

describe('reports on the demo department', () => {
	let demo: TestApp;
	beforeAll(async () => {
		demo = await openTestApp();
		await fillDemo(demo.store);
		await demo.store.groups.add({
			id: 'small-group',
			group: { name: 'Small', studentCodes: ['SM-01', 'SM-02', 'SM-03'] },
		});
		await readText(
			demo.store,
			'Code;1;14\nSM-01;A;9\nSM-02;A;8\nSM-03;B;-9\n',
			{},
			{
				form: 'srm-unit-check-a',
				group: 'small-group',
			},
		);
	});
	const small = async (): Promise<string> =>
		(await demo.store.sittings.list()).find(({ sitting }) => sitting.group === 'small-group')?.id ?? '';

	test.each(['coverage', 'class', 'items', 'form', 'patterns', 'groups', 'pack'])(
		'%s says that it is simulated and what to be careful about',
		async (kind) => {
			const answer = await demo.send('GET', `/api/reports/${kind}?sitting=srm-sitting-6a&sitting=srm-sitting-6b`);
			expect(answer.status).toBe(200);
			expectShape('report', answer.json);
			expect(answer.json.simulated).toBe(true);
			expect(answer.json.cautions[0]).toContain('SIMULATED');
			expect(answer.json.cautions.join()).toContain('no weighty decision about a child rests on one score');
			expect(answer.json.cautions.join()).toContain('not equated');
			expect(answer.json.sections.length).toBeGreaterThan(0);
		},
	);

	test('evidence adds up along rows, columns and over all', async () => {
		const { json } = await demo.send('GET', '/api/evidence?copy=own');
		expectShape('evidence', json);
		interface Cell {
			standard?: string;
			model?: string;
			earned: number;
			possible: number;
			low: number;
			high: number;
			share: number;
		}
		const cells: readonly Cell[] = json.cells;
		const inner = cells.filter(({ standard, model }) => standard !== undefined && model !== undefined);
		const all = cells.find(({ standard, model }) => standard === undefined && model === undefined);
		const sum = (list: readonly Cell[], field: 'earned' | 'possible') =>
			list.reduce((total, cell) => total + cell[field], 0);
		for (const field of ['earned', 'possible'] as const) {
			expect(sum(inner, field)).toBeCloseTo(all?.[field] ?? 0, 6);
			const rows = cells.filter(({ standard, model }) => standard !== undefined && model === undefined);
			expect(sum(rows, field)).toBeCloseTo(all?.[field] ?? 0, 6);
		}
		for (const { low, share, high } of inner) expect(low <= share && share <= high).toBe(true);
	});

	test('a shared copy tells nothing of fewer than ten students, and the teacher’s own does', async () => {
		const id = await small();
		for (const kind of ['class', 'items', 'form', 'patterns', 'coverage']) {
			const shared = await demo.send('GET', `/api/reports/${kind}?sitting=${id}`);
			expect(JSON.stringify(shared.json.sections), kind).toMatch(/[Hh]idden/);
			expect(JSON.stringify(shared.json.sections), kind).not.toMatch(/\d %"|\d % of|SM-0/);
		}
		const evidence = (await demo.send('GET', `/api/evidence?sitting=${id}`)).json;
		for (const cell of evidence.cells)
			expect([cell.hidden !== undefined, cell.share, cell.students]).toEqual([true, undefined, undefined]);
		const own = await demo.send('GET', `/api/reports/class?sitting=${id}&copy=own`);
		expect(JSON.stringify(own.json.sections)).toMatch(/SM-01/);
	});

	test('a shared copy never names a student code', async () => {
		for (const kind of ['coverage', 'class', 'items', 'form', 'patterns', 'groups', 'pack']) {
			const { text } = await demo.send('GET', `/api/reports/${kind}`);
			expect(text, kind).not.toMatch(/\b(6A|6B|7A|7B|7C|8A|SM)-\d\d\b/);
		}
	});

	test('the meeting pack is a tagged PDF of several pages', async () => {
		const answer = await demo.send('GET', '/api/reports/pack/pdf?sitting=srm-sitting-6a&paper=a4');
		expect(answer.headers['content-type']).toBe('application/pdf');
		expect(answer.bytes.subarray(0, 5).toString()).toBe('%PDF-');
		expect(answer.bytes.includes('/StructTreeRoot')).toBe(true);
		expect(countPages(answer.bytes)).toBeGreaterThan(3);
	});

	test('CSV opens safely and keeps numbers as numbers', async () => {
		const { text, headers } = await demo.send('GET', '/api/reports/items/csv?sitting=srm-sitting-6a');
		expect(headers['content-type']).toContain('text/csv');
		expect(text.startsWith('\uFEFF')).toBe(true);
		for (const line of text.slice(1).split('\r\n')) expect(line).not.toMatch(/(^|,)"?[=+@]/);
		expect(text).toMatch(/,-0\.\d+/);
	});

	test.each([
		['an unknown sitting', '/api/reports/items?sitting=nobody', 404, 'not-found'],
		['an unknown framework', '/api/reports/coverage?framework=x&edition=1', 422, 'report-refused'],
		['an unknown kind', '/api/reports/everything', 400, 'query-refused'],
		['an unknown copy', '/api/reports/items?copy=public', 400, 'query-refused'],
	])('%s is refused', async (_title, url, status, code) => {
		const answer = await demo.send('GET', url);
		expect([answer.status, answer.json.code]).toEqual([status, code]);
	});
});

test('a bank without responses has nothing to report', async () => {
	const { send } = await openTestApp();
	const answer = await send('GET', '/api/reports/pack');
	expect([answer.status, answer.json.code]).toEqual([422, 'report-refused']);
});
