import { beforeAll, describe, expect, test } from 'vitest';
import { readItemPatterns } from '../../../item-bank/analysis/diagnosis/item-patterns.ts';
import { printItemName } from '../../../item-bank/items/item-name.ts';
import { describePlot } from '../../../item-bank/plots/describe-plot.ts';
import { drawPlot } from '../../../item-bank/plots/draw-plot.ts';
import type { Report, ReportSection } from '../../../item-bank/types.ts';
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

	test.each(['coverage', 'class', 'items', 'form', 'patterns', 'groups', 'compare', 'pack'])(
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
		for (const kind of ['coverage', 'class', 'items', 'form', 'patterns', 'groups', 'compare', 'pack']) {
			const text = JSON.stringify(await sectionsOf(`/api/reports/${kind}`));
			expect(text, kind).not.toMatch(/\b(6A|6B|7A|7B|7C|8A|SM)-\d\d\b/);
		}
	});

	const asked = new Map<string, Promise<readonly ReportSection[]>>();
	const sectionsOf = (url: string): Promise<readonly ReportSection[]> => {
		const known = asked.get(url) ?? demo.send('GET', url).then(({ json }) => (json as Report).sections);
		asked.set(url, known);
		return known;
	};
	const find = (sections: readonly ReportSection[], start: string) =>
		sections.find(({ title }) => title.startsWith(start));

	test('every plot has its table behind it and can be drawn and told', async () => {
		const sections = [...(await sectionsOf('/api/reports/pack')), ...(await sectionsOf('/api/reports/items'))];
		const plots = sections.flatMap(({ plot }) => plot ?? []);
		const kinds = [
			'count-board',
			'evidence-board',
			'item-person',
			'item-scatter',
			'option-curves',
			'pattern-bars',
			'scores',
		];
		expect([...new Set(plots.map(({ kind }) => kind))].sort()).toEqual(kinds);
		for (const { plot, table, title } of sections) if (plot) expect(table?.rows.length, title).toBeGreaterThan(0);
		for (const plot of plots) expect(drawPlot(plot).height * describePlot(plot).length).toBeGreaterThan(0);
	});

	test('plots of a shared copy count out no fewer than three students', async () => {
		for (const { plot } of [...(await sectionsOf('/api/reports/pack')), ...(await sectionsOf('/api/reports/items'))]) {
			if (plot?.kind === 'scores') for (const { count } of plot.bars) expect(count === 0 || count >= 3).toBe(true);
			if (plot?.kind === 'item-person')
				for (const { count } of plot.students) expect(count === 0 || count >= 3).toBe(true);
			if (plot?.kind !== 'pattern-bars') continue;
			for (const { repeated = 0, hint = 0 } of plot.bars) {
				expect([repeated, hint].every((count) => count === 0 || count >= 3)).toBe(true);
			}
		}
	});

	test('decisions are judged at the cuts asked for, and an unreachable cut says so', async () => {
		const sections = await sectionsOf('/api/reports/form?sitting=srm-sitting-6a&cut=12&cut=99');
		const rows = find(sections, 'Decisions at a cut')?.table?.rows ?? [];
		expect(rows.map((row) => row[1])).toEqual([12, 99]);
		expect(rows[0]?.[2]).toMatch(/^\d+ % \(\d+ of 22\)$/);
		expect(rows[0]?.[6]).toMatch(/^A hint only, from 22 students: on another form like this/);
		expect(rows[1]?.[6]).toMatch(/expected a cut above 0 and up to 23 points, found 99/);
		expect(find(await sectionsOf('/api/reports/form?sitting=srm-sitting-6a'), 'Decisions')).toBeUndefined();
	});

	test('two cuts of a shared copy never tell of fewer than three students between them', async () => {
		const cuts = Array.from({ length: 8 }, (_unused, index) => `cut=${index + 14}`).join('&');
		const url = `/api/reports/form?sitting=srm-sitting-6a&${cuts}`;
		const reached = (find(await sectionsOf(url), 'Decisions at a cut')?.table?.rows ?? []).map((row) => String(row[2]));
		expect(reached).toContain('hidden');
		const counts = reached.flatMap((text) => /\((\d+) of/.exec(text)?.[1] ?? []).map(Number);
		expect(counts.length).toBeGreaterThan(0);
		for (const [index, count] of [22, ...counts, 0].entries()) {
			const next = [22, ...counts, 0][index + 1] ?? 0;
			expect(count - next === 0 || count - next >= 3).toBe(true);
		}
		const own = find(await sectionsOf(`${url}&copy=own`), 'Decisions at a cut')?.table?.rows ?? [];
		expect(own.map((row) => String(row[2]))).not.toContain('hidden');
	});

	test('score bands of a blueprint are cuts, and a blueprint without them is refused', async () => {
		const { blueprint } = await demo.store.blueprints.get('srm-unit-check-plan');
		const bands = [
			{ name: 'Not yet', from: 0 },
			{ name: 'Secure', from: 8 },
		];
		await demo.store.blueprints.create({
			id: 'with-bands',
			blueprint: { ...blueprint, scoreBands: { bands, setBy: 'the department', why: 'to try', on: '2026-09-01' } },
		});
		const sections = await sectionsOf('/api/reports/form?sitting=srm-sitting-6a&blueprint=with-bands');
		expect(find(sections, 'Decisions at a cut')?.table?.rows.map((row) => row.slice(0, 2))).toEqual([['Secure', 8]]);
		expect(find(sections, 'How scores spread')?.plot).toMatchObject({ cuts: [{ label: 'Secure', from: 8 }] });
		const { scoreBands: _bands, ...plain } = blueprint;
		await demo.store.blueprints.create({ id: 'without-bands', blueprint: plain });
		const refused = await demo.send('GET', '/api/reports/form?blueprint=without-bands');
		expect([refused.status, refused.json.code]).toEqual([422, 'report-refused']);
	});

	test('coverage tells alignment after Webb, depth only where levels are given, and the year with what was never asked', async () => {
		const plain = await sectionsOf('/api/reports/coverage');
		const year = find(plain, 'Which standards were asked when');
		expect(year?.plot?.kind).toBe('count-board');
		expect(year?.notes.join()).toMatch(/Never asked in these sittings: .*7\.3\(A\)/);
		const asked = find(plain, 'Alignment of items and standards');
		const row = asked?.table?.rows.find(([, standard]) => standard === '6.3');
		expect(row?.slice(2, 5)).toEqual(['15 (met)', null, '2 of 3 (met)']);
		const depth = ['6.3(C)=1', '6.3(D)=4'].map((each) => `depth=${encodeURIComponent(each)}`).join('&');
		const deep = find(await sectionsOf(`/api/reports/coverage?${depth}`), 'Alignment of items and standards');
		expect(deep?.table?.rows.find(([, standard]) => standard === '6.3')?.[3]).toMatch(
			/^0(\.\d+)? \((met|weak|not met)\)$/,
		);
	});

	test('groups too small to compare get no figures, in any copy', async () => {
		const sections = await sectionsOf('/api/reports/items?copy=own&focal=srm-class-6a');
		const difference = find(sections, 'Differences between groups');
		expect(difference?.table).toBeUndefined();
		expect(difference?.notes.join()).toMatch(
			/expected 200 students or more in each group and 500 in both, found \d+ and \d+/,
		);
	});

	test('groups are proposed with fresh items of the bank that show the idea or tell ideas apart', async () => {
		const sections = await sectionsOf('/api/reports/groups?sitting=srm-sitting-6a&sitting=srm-sitting-8a&copy=own');
		const proposals = sections.flatMap(({ proposals = [] }) => proposals);
		const onForms = new Set(
			(await Promise.all(['a', 'b'].map((form) => demo.store.forms.get(`srm-unit-check-${form}`)))).flatMap(
				({ items }) => items.map(({ id }) => id),
			),
		);
		expect(proposals.length).toBeGreaterThan(3);
		expect(proposals.map(({ settled, notToldApart }) => settled && notToldApart.length > 0)).not.toContain(true);
		expect(new Set(proposals.map(({ strength }) => strength))).toEqual(new Set(['repeated', 'hint']));
		for (const { next, pattern, notToldApart } of proposals) {
			expect(next.length).toBeGreaterThan(0);
			for (const { id, version, name, why } of next) {
				expect(onForms).not.toContain(id);
				expect(why).toBe(notToldApart.length === 0 ? 'like' : 'probe');
				const { item } = await demo.store.items.get(id, version);
				expect(name).toBe(printItemName(item.name));
				if (why === 'like') expect(readItemPatterns(item).visible).toContain(pattern);
			}
		}
		const shared = await sectionsOf('/api/reports/groups?sitting=srm-sitting-6a');
		expect(shared.flatMap(({ proposals: told = [] }) => told)).toEqual([]);
	});

	test('one item is told over all its sittings, and an item nobody met is refused', async () => {
		const { items } = await demo.store.forms.get('srm-unit-check-a');
		const sections = await sectionsOf(`/api/reports/item?item=${items[0]?.id}`);
		expect(sections[0]?.table?.rows.map((row) => row.slice(1, 4))).toEqual([['1', 1, 4]]);
		const kinds = sections.flatMap(({ plot }) => plot ?? []);
		expect(kinds.map((plot) => (plot.kind === 'option-curves' ? plot.panels.length : 0))).toEqual([1]);
		const all = await sectionsOf('/api/reports/items');
		const row = find(all, 'Items: Unit check: integers, Form A')?.table?.rows[0];
		expect(sections[0]?.table?.rows[0]?.slice(4, 7)).toEqual(row?.slice(3, 6));
		const refused = await demo.send('GET', '/api/reports/item?item=srm-nothing');
		expect([refused.status, refused.json.code]).toEqual([422, 'report-refused']);
	});

	test('forms side by side never claim to be equated', async () => {
		const [scores, anchors] = await sectionsOf('/api/reports/compare');
		expect(scores?.notes.join()).toMatch(/not equated/);
		expect(scores?.table?.rows.find(([figure]) => figure === 'Students')).toEqual(['Students', 70, 76]);
		expect(anchors?.notes.join()).toMatch(/expected items with the same version on both forms, found none/);
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
