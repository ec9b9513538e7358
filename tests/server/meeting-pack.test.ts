import { beforeAll, describe, expect, test } from 'vitest';
import { getPattern } from '../../item-bank/patterns/index.ts';
import type { Evidence, Report, ReportSection } from '../../item-bank/types.ts';
import { fillDemo } from '../../server/demo.ts';
import { readText } from '../helpers/sat-bank.ts';
import { openTestApp, type TestApp } from '../helpers/test-app.ts';

describe('the meeting pack of the demo department', () => {
	let demo: TestApp;
	beforeAll(async () => {
		demo = await openTestApp();
		await fillDemo(demo.store);
		await demo.store.groups.add({
			id: 'small-group',
			group: { name: 'Small', grade: '6', studentCodes: ['SM-01', 'SM-02', 'SM-03'] },
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

	const asked = new Map<string, Promise<readonly ReportSection[]>>();
	const sectionsOf = (url: string): Promise<readonly ReportSection[]> => {
		const known = asked.get(url) ?? demo.send('GET', url).then(({ json }) => (json as Report).sections);
		asked.set(url, known);
		return known;
	};
	const find = (sections: readonly ReportSection[], start: string) =>
		sections.find(({ title }) => title.startsWith(start));

	test('the pack begins with what a meeting needs, every figure with its counts, and tells no more than its sections', async () => {
		const sections = await sectionsOf('/api/reports/pack');
		expect(sections[0]?.title).toBe('For the meeting');
		const rows = sections[0]?.table?.rows ?? [];
		const told = (question: string) => rows.filter(([name]) => name === question).map((row) => String(row[1]));
		expect(told('Who answered')[0]).toMatch(/^149 students of 7 groups, 2026-09-14 to 2026-10-07\./);
		const { cells } = (await demo.send('GET', '/api/evidence')).json as Evidence;
		const shares = cells.flatMap(({ standard, model, share }) => (standard && model && share ? [share] : []));
		const lowest = `${Math.round(Math.min(...shares) * 100)} %`;
		expect(told('Fewest points earned')[0]).toMatch(
			new RegExp(`^6\\.3\\(C\\) number line ${lowest} \\(\\d+ to \\d+ %\\), 6 items, \\d+ students`),
		);
		for (const text of told('Wrong ideas answers repeat')) {
			for (const [, count] of text.matchAll(/(\d+) of \d+ \(/g)) expect(Number(count)).toBeGreaterThanOrEqual(3);
		}
		expect(told('How far totals can be trusted')).toHaveLength(2);
		const few = await sectionsOf(`/api/reports/pack?sitting=${await small()}`);
		expect(JSON.stringify(few[0]?.table?.rows.slice(1))).not.toMatch(/\d %|\d of \d/);
	});

	test('a planted idea is found in the class it was planted in, and counts by class never give one or two away', async () => {
		const sections = await sectionsOf(
			'/api/reports/pack?sitting=srm-sitting-6b&sitting=srm-sitting-7b&sitting=srm-sitting-8a',
		);
		const byClass = find(sections, 'Wrong ideas by class')?.table;
		const [, ...names] = byClass?.headings ?? [];
		expect(names).toEqual(['Class 6B', 'Class 7B', 'Class 8A']);
		const turned = byClass?.rows.find(([name]) => name === getPattern('subtraction-reversed').name);
		expect(turned?.slice(1)).toEqual(['0 of 21', '7 of 25', '0 of 30']);
		expect(JSON.stringify(find(sections, 'For the meeting'))).toContain('all in Class 7B (25 students)');
		const overall = find(sections, 'Wrong ideas answers are consistent with')?.table?.rows ?? [];
		for (const row of byClass?.rows ?? []) {
			const shown = row.slice(1).flatMap((cell) => (cell === 'hidden' ? [] : [Number.parseInt(String(cell), 10)]));
			const all = Number(overall.find(([name]) => name === row[0])?.[1]);
			const left = all - shown.reduce((sum, each) => sum + each, 0);
			expect(shown.every((count) => count === 0 || count >= 3)).toBe(true);
			expect(left === 0 || left >= 3).toBe(true);
		}
		const board = find(sections, 'Points earned by standard and class');
		expect(board?.plot).toMatchObject({ kind: 'evidence-board', columns: names });
		expect(board?.notes.join()).toContain('no comparison of teachers');
	});

	test('a small class cannot be told from the others', async () => {
		const id = await small();
		const sections = await sectionsOf(`/api/reports/pack?sitting=srm-sitting-6a&sitting=srm-sitting-7a&sitting=${id}`);
		const board = find(sections, 'Points earned by standard and class')?.table;
		const column = board?.headings.indexOf('Small') ?? -1;
		expect(column).toBeGreaterThan(0);
		for (const row of board?.rows ?? []) {
			const cells = row.slice(1).filter((cell) => cell !== null);
			if (row[column] === null) continue;
			expect(row[column]).toBe('hidden');
			expect(cells.filter((cell) => cell === 'hidden').length).toBeGreaterThan(1);
		}
	});

	test('grades are told together, but never where a class in them is hidden', async () => {
		const sittings = ['srm-sitting-6a', 'srm-sitting-6b', 'srm-sitting-7a', 'srm-sitting-7b', await small()];
		const query = sittings.map((id) => `sitting=${id}`).join('&');
		const sections = await sectionsOf(`/api/reports/coverage?${query}`);
		const classes = find(sections, 'Points earned by standard and class')?.table;
		const grades = find(sections, 'Points earned by standard and grade')?.table;
		expect(grades?.headings).toEqual(['Standard', 'Grade 6', 'Grade 7']);
		const gradeOf = (name: string): string => (name.includes('7') ? 'Grade 7' : 'Grade 6');
		let hidden = 0;
		let told = 0;
		for (const [index, row] of (grades?.rows ?? []).entries()) {
			const cells = classes?.rows[index] ?? [];
			expect(cells[0]).toBe(row[0]);
			for (const [column, grade] of (grades?.headings ?? []).entries()) {
				if (column === 0) continue;
				const mine = cells.filter((_, place) => place > 0 && gradeOf(classes?.headings[place] ?? '') === grade);
				if (mine.includes('hidden')) expect(row[column]).toBe('hidden');
				else told += typeof row[column] === 'string' ? 1 : 0;
				hidden += row[column] === 'hidden' ? 1 : 0;
			}
		}
		expect(hidden).toBeGreaterThan(0);
		expect(told).toBeGreaterThan(0);
		const own = await sectionsOf(`/api/reports/coverage?copy=own&${query}`);
		expect(JSON.stringify(find(own, 'Points earned by standard and grade')?.table)).not.toContain('hidden');
	});
});
