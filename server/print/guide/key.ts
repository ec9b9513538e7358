import { printItemName } from '../../../item-bank/items/item-name.ts';
import type { FormRecord } from '../../../item-bank/items/record.ts';
import { findFramework } from '../../../item-bank/standards/code.ts';
import type { Alignment } from '../../../item-bank/types.ts';
import { type Box, pad, stack, wrap } from '../page/box.ts';
import { textWidth } from '../page/fonts.ts';
import { type Block, grey, type Mark, type Page } from '../page/marks.ts';
import { dealBoxes, drawFoot, type FlowBox, makePage, placeBoxes } from '../page/page-boxes.ts';
import { type PaperName, pageFrame, standardType, type TypeScale } from '../page/paper.ts';
import { layEntry, layParagraph, layTitle, linesOf, type ProseRoom } from '../page/prose.ts';
import { layText, richSpans, type Span } from '../page/text.ts';
import { type AnswerPlace, answersAt, type PlacedItem } from '../placed-items.ts';
import { type WorkedItem, workItem } from './worked-item.ts';

/** Teachers' papers: as standard print, set a little tighter. */
export const guideType: TypeScale = { ...standardType, title: 18, heading: 11, text: 10.5, item: 11.5, leading: 1.3 };

/** Something to answer with its key and work. */
type WorkedAnswer = AnswerPlace & { readonly worked: WorkedItem };

/** The key on one page (more only when there are too many items), then worked steps and what wrong answers are consistent with. */
export function layKey(form: FormRecord, placed: readonly PlacedItem[], paper: PaperName): readonly Page[] {
	const frame = pageFrame(paper);
	const room: ProseRoom = { width: frame.right - frame.left, type: guideType };
	const answers = placed.flatMap((place) =>
		answersAt(place).map((answer) => ({ ...answer, worked: workItem(answer.item) })),
	);
	const height = frame.bottom - frame.top;
	const keyPages = layKeyPages(form, placed, answers, room, height);
	const steps = [
		layTitle(`Worked steps: ${form.form.title}`, room),
		layParagraph(
			'Each line does one step with two numbers. What wrong answers are consistent with is a hint and no diagnosis: one answer can come from several ideas.',
			room,
		),
		...answers.map((answer) => ({ box: layWorkedItem(answer, room) })),
	];
	const pages = [...keyPages, ...dealBoxes(steps, height, 8)];
	const left = `Key of ${form.id}, version ${form.version} · confidential`;
	return pages.map((boxes, index) =>
		makePage(
			frame,
			placeBoxes(boxes, frame, 8),
			drawFoot(frame, left, `${index + 1} of ${pages.length}`, guideType.small),
		),
	);
}

function layKeyPages(
	form: FormRecord,
	placed: readonly PlacedItem[],
	answers: readonly WorkedAnswer[],
	room: ProseRoom,
	height: number,
): readonly (readonly Box[])[] {
	const total = placed.reduce((sum, { points }) => sum + points, 0);
	const head = [
		layTitle(`Key: ${form.form.title}`, room),
		layParagraph(
			`${placed.length} items, ${total} points. Number grids: ${form.form.gridProfile}. The standard that an item counts under comes first. A star: the item covers a part of the standard.`,
			room,
		),
	];
	// Smaller until it is one page, and not below 7.5 points.
	for (const size of [10.5, 9.5, 8.5, 7.5]) {
		const small = { ...room, type: { ...room.type, text: Math.min(9, size) } };
		const legend = layParagraph(`${explainFrameworks(placed)}.`, small);
		const boxes = [...head, ...layKeyRows(answers, room, size), legend];
		const pages = dealBoxes(boxes, height, 8);
		if (pages.length === 1 || size === 7.5) return pages;
	}
	return [];
}

const columns = [
	{ title: 'Item', share: 0.07 },
	{ title: 'Key', share: 0.13 },
	{ title: 'Points', share: 0.08 },
	{ title: 'DOK', share: 0.07 },
	{ title: 'Standards', share: 0.45 },
	{ title: 'In the bank', share: 0.2 },
] as const;

function layKeyRows(answers: readonly WorkedAnswer[], room: ProseRoom, size: number): readonly FlowBox[] {
	const rows = answers.map(({ label, worked, points, item, id, version }) => [
		label,
		worked.key,
		String(points),
		String(item.dok),
		printAlignments(item.alignments),
		`${id} v${version}`,
	]);
	const type = { ...room.type, leading: 1.25 };
	const tables: Box[] = [];
	const perTable = 60;
	for (let start = 0; start < rows.length; start += perTable) {
		const cells = [columns.map(({ title }) => title), ...rows.slice(start, start + perTable)];
		tables.push(layRows(cells, { ...room, type }, size));
	}
	return tables.map((box) => ({ box }));
}

function layRows(rows: readonly (readonly string[])[], room: ProseRoom, size: number): Box {
	const style = linesOf(room.type, size);
	const laid = rows.map((row, at) =>
		row.map((text, column) => {
			const font = at === 0 || column === 1 ? 'sans-bold' : 'sans';
			return layText([{ text, font }], (columns[column]?.share ?? 0) * room.width - 6, style);
		}),
	);
	const heights = laid.map((cells) => Math.max(...cells.map((cell) => cell.height)) + size * 0.35);
	return {
		width: room.width,
		height: heights.reduce((sum, each) => sum + each, 0),
		place(x, y) {
			let top = y;
			const rules: Mark[] = [];
			const children = laid.map((cells, at): Block => {
				let left = x;
				const row = cells.map((cell, column): Block => {
					const placed = cell.place(left, top + size * 0.17);
					left += (columns[column]?.share ?? 0) * room.width;
					if (at === 0) return { tag: 'TH', scope: 'Column', children: placed };
					return column === 0 ? { tag: 'TH', scope: 'Row', children: placed } : { tag: 'TD', children: placed };
				});
				top += heights[at] ?? 0;
				const paint = { stroke: grey, width: at === 0 ? 1 : 0.35 };
				rules.push({ kind: 'line', x1: x, y1: top, x2: x + room.width, y2: top, paint });
				return { tag: 'TR', children: row };
			});
			return [
				{ tag: 'Artifact', children: rules },
				{ tag: 'Table', children },
			];
		},
	};
}

/** Codes after the id of their framework, the lead alignment first. */
function printAlignments(alignments: readonly Alignment[]): string {
	const sorted = [...alignments].sort((a, b) => Number(b.primary ?? false) - Number(a.primary ?? false));
	const groups = new Map<string, string[]>();
	for (const { framework, edition, code, extent } of sorted) {
		const name = `${framework} ${edition}`;
		groups.set(name, [...(groups.get(name) ?? []), extent === 'full' ? code : `${code}*`]);
	}
	return [...groups].map(([name, codes]) => `${name}: ${codes.join(', ')}`).join('; ');
}

/** What the ids of the frameworks stand for. */
function explainFrameworks(placed: readonly PlacedItem[]): string {
	const names = new Map<string, string>();
	for (const { framework, edition } of placed.flatMap(answersAt).flatMap(({ item }) => item.alignments)) {
		const found = findFramework(framework, edition);
		if (found) names.set(`${framework} ${edition}`, found.name);
	}
	return [...names].map(([id, name]) => `${id}: ${name}`).join('. ');
}

/** One item: key, the work to it line by line, the rubric, and the wrong answers. */
function layWorkedItem(answer: WorkedAnswer, room: ProseRoom): Box {
	const { label, worked, item, id, version } = answer;
	const { type, width } = room;
	const points = answer.points === 1 ? '1 point' : `${answer.points} points`;
	const heading = layText(
		[
			{ text: label, font: 'sans-bold' },
			{ text: ' · key ', font: 'sans' },
			{ text: worked.key, font: 'sans-bold' },
			{ text: ` · ${printItemName(item.name)} · ${points} · DOK ${item.dok} · ${id} v${version}`, font: 'sans' },
		],
		width,
		linesOf(type, type.heading),
	);
	const lines = worked.lines.map((line) => layWorkedLine(line, room));
	const reason = worked.reason === undefined ? [] : [layParagraph(worked.reason, room).box];
	const scoring = worked.scoring === undefined ? [] : [layParagraph(worked.scoring, room).box];
	const levels = worked.rubric.map((level) => layLevel(level, { ...room, width: width - 16 }));
	// Letters of several entries need more room than one letter or a number.
	const widest = Math.max(18, ...worked.wrong.map((note) => textWidth(note.answer, 'serif-bold', type.text)));
	const wrong = worked.wrong.map((note) => {
		const { answer: given, spoken, says, sentence } = note;
		const mark: Span = { text: given, font: 'serif-bold', ...(spoken === undefined ? {} : { spoken }) };
		const said = says === undefined ? [] : [...richSpans(says, 'serif'), { text: '  ·  ', font: 'sans' } as const];
		return layEntry(mark, [...said, { text: sentence, font: 'sans' }], { ...room, width: width - 16 }, widest + 16);
	});
	const lists = [levels, wrong]
		.filter((list) => list.length > 0)
		.map((list) => pad(wrap(stack(list, 2), { tag: 'L' }), { left: 16, top: 3 }));
	return wrap(pad(stack([wrap(heading, { tag: 'H2' }), ...lines, ...reason, ...scoring, ...lists], 2), { bottom: 5 }), {
		tag: 'Sect',
	});
}

/** A level of a rubric: its points, what it asks for, and a sample. */
function layLevel({ points, descriptor, sample }: WorkedItem['rubric'][number], room: ProseRoom): Box {
	const shown =
		sample === undefined ? [] : [{ text: ' Sample: ', font: 'sans-bold' } as const, ...richSpans(sample, 'serif')];
	const label: Span = { text: points === 1 ? '1 point' : `${points} points`, font: 'sans-bold' };
	return layEntry(label, [...richSpans(descriptor, 'sans'), ...shown], room, 54);
}

/** A line of mathematics, and beside it what was done. */
function layWorkedLine(line: WorkedItem['lines'][number], { width, type }: ProseRoom): Box {
	const style = linesOf(type, type.item);
	const left = width * 0.4;
	const math: Span = { text: line.isStart ? line.line : `= ${line.line}`, font: 'serif', spoken: line.spoken };
	const formula = layText([math], left - 24, style);
	const note = layText([{ text: line.note, font: 'sans' }], width - left - 16, linesOf(type, type.text));
	const box: Box = {
		width,
		height: Math.max(formula.height, note.height),
		place: (x, y) => [...formula.place(x + (line.isStart ? 16 : 24), y), ...note.place(x + left + 16, y + 1)],
	};
	return wrap(box, { tag: 'P' });
}
