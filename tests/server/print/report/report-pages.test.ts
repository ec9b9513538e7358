import { expect, test } from 'vitest';
import { describePlot } from '../../../../item-bank/plots/describe-plot.ts';
import type { Plot, Report, ReportSection } from '../../../../item-bank/types.ts';
import { type Block, isMark, type Mark } from '../../../../server/print/page/marks.ts';
import { layReport } from '../../../../server/print/report/report-pages.ts';

const scores: Plot = {
	kind: 'scores',
	maximum: 5,
	students: 12,
	mean: 3,
	bars: [1, 0, 2, 4, 3, 2].map((count, score) => ({ from: score, to: score, count })),
};

const tableOf = (rows: number, words = 'x'): NonNullable<ReportSection['table']> => ({
	headings: ['Points', 'Students'],
	rows: Array.from({ length: rows }, (_unused, row) => [`${words} ${row}`, row / 4]),
});

const reportOf = (kind: Report['kind'], sections: readonly ReportSection[]): Report => ({
	kind,
	title: 'Report',
	copy: 'shared',
	simulated: true,
	sittings: [],
	cautions: ['SIMULATED.', 'First caution.', 'Second caution.'],
	sections,
});

const blocksOf = (block: Block | Mark): readonly Block[] =>
	isMark(block) ? [] : [block, ...block.children.flatMap(blocksOf)];
const textOf = (block: Block | Mark): string =>
	isMark(block) ? (block.kind === 'text' ? `${block.text} ` : '') : block.children.map(textOf).join('');
const pagesOf = (report: Report, paper: 'letter' | 'a4' = 'letter') =>
	layReport(report, paper).map(({ blocks, width, height }) => ({
		width,
		height,
		blocks: blocks.flatMap(blocksOf),
		text: blocks.map(textOf).join(''),
	}));

test('a plot is a figure that says in words what it shows, and stands beside a narrow table', () => {
	const [page] = pagesOf(
		reportOf('form', [{ title: 'Scores', notes: ['12 students.'], plot: scores, table: tableOf(6) }]),
	);
	const figure = page?.blocks.find(({ tag }) => tag === 'Figure');
	expect(figure?.alt).toBe(describePlot(scores));
	const [left = 0, top = 0, right = 0, bottom = 0] = figure?.bounds ?? [];
	expect(left >= 0 && top >= 0 && right <= (page?.width ?? 0) && bottom <= (page?.height ?? 0)).toBe(true);
	const heading = page?.blocks.find(({ tag }) => tag === 'TH');
	const first = heading?.children.find(isMark);
	expect(first?.kind === 'text' && first.x > right && first.y > top && first.y < bottom).toBe(true);
});

test('a wide table stands below its plot', () => {
	const section = {
		title: 'Scores',
		notes: [],
		plot: scores,
		table: tableOf(6, 'many words that fill the width of a column and more'.repeat(2)),
	};
	const [page] = pagesOf(reportOf('form', [section]));
	const bottom = page?.blocks.find(({ tag }) => tag === 'Figure')?.bounds?.[3] ?? 0;
	const first = page?.blocks.find(({ tag }) => tag === 'TH')?.children.find(isMark);
	expect(first?.kind === 'text' && first.y > bottom).toBe(true);
});

test('a pack has its summary and every caution on the first page and the rest from the second', () => {
	const sections = [
		{ title: 'For the meeting', notes: [], table: tableOf(3) },
		{ title: 'Board', notes: [] },
	];
	const [first, second] = pagesOf(reportOf('pack', sections));
	expect(first?.text).toMatch(
		/^Report SIMULATED\. For the meeting .*Read with care First caution\. Second caution\. $/,
	);
	expect(second?.text).toMatch(/^Board /);
	const [other] = pagesOf(reportOf('items', sections));
	expect(other?.text).toMatch(/^Report SIMULATED\. First caution\. Second caution\. For the meeting /);
});

test('numbers of a column have the same number of decimals, and columns with words are left as they are', () => {
	const table = {
		headings: ['A', 'B', 'C'],
		rows: [
			['x', 1, 2],
			['y', -0.25, 'word'],
			['z', null, 3.5],
		],
	} as const;
	const [page] = pagesOf(
		reportOf('items', [
			{ title: 'T', notes: [], table: { headings: [...table.headings], rows: table.rows.map((row) => [...row]) } },
		]),
	);
	expect(page?.text).toContain('x 1.00 2 y −0.25 word z – 3.5 ');
});
