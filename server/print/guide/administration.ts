import { describeFigure } from '../../../item-bank/figures/describe-figure.ts';
import { entryListsOf } from '../../../item-bank/items/entries.ts';
import { figuresOf } from '../../../item-bank/items/figures.ts';
import type { FormRecord } from '../../../item-bank/items/record.ts';
import { getGridProfile } from '../../../item-bank/responses/grid-profiles.ts';
import type { StemBlock } from '../../../item-bank/types.ts';
import { gridRules } from '../grid-rules.ts';
import { kindRules, kindsOf } from '../kind-rules.ts';
import { type Box, pad, wrap } from '../page/box.ts';
import { textWidth } from '../page/fonts.ts';
import { black, type Mark, type Page } from '../page/marks.ts';
import { dealBoxes, drawFoot, type FlowBox, makePage, placeBoxes } from '../page/page-boxes.ts';
import { type PaperName, pageFrame } from '../page/paper.ts';
import { layEntry, layHeading, layList, layParagraph, layTitle, linesOf, type ProseRoom } from '../page/prose.ts';
import { layText } from '../page/text.ts';
import { answersAt, type PlacedItem } from '../placed-items.ts';
import { guideType } from './key.ts';

/** Minutes to answer, by kind. Gridded: about 1.5 minutes (Florida sample questions, grade 7); others: common practice, no source. */
const minutesEach = {
	choice: 1.25,
	'multiple-choice': 1.75,
	gridded: 1.5,
	point: 1.25,
	order: 1.5,
	match: 2,
	'inline-choice': 1,
	explanation: 4,
} as const;
/** Minutes to read what the parts of a set share: common practice, no source. */
const minutesOfStimulus = 1;

/** What the sheet is made for. */
export interface AdministrationOrder {
	readonly form: FormRecord;
	readonly placed: readonly PlacedItem[];
	readonly paper: PaperName;
	readonly grids: 'separate' | 'beside';
	readonly students: readonly string[];
}

/** Working time to plan for, minutes: the sum over the items, up to the next five. */
export function planMinutes(placed: readonly PlacedItem[]): number {
	const answers = placed.flatMap(answersAt).reduce((total, { item }) => total + minutesEach[item.kind], 0);
	const sum = answers + placed.filter(({ record }) => record.item.kind === 'set').length * minutesOfStimulus;
	return Math.max(5, Math.ceil(sum / 5) * 5);
}

/** The pages of the administration sheet. */
export function layAdministration(order: AdministrationOrder): readonly Page[] {
	const { form, paper } = order;
	const frame = pageFrame(paper);
	const room: ProseRoom = { width: frame.right - frame.left, type: guideType };
	const boxes = [
		layTitle(`Giving the test: ${form.form.title}`, room),
		...before(order, room),
		...script(order, room),
		...rules(order, room),
		...lists(order, room),
		...figures(order, room),
	];
	const pages = dealBoxes(boxes, frame.bottom - frame.top, 5);
	const left = `${form.id}, version ${form.version} · confidential`;
	return pages.map((page, index) =>
		makePage(
			frame,
			placeBoxes(page, frame, 5),
			drawFoot(frame, left, `${index + 1} of ${pages.length}`, guideType.small),
		),
	);
}

function before({ form, placed, grids, students }: AdministrationOrder, room: ProseRoom): readonly FlowBox[] {
	const minutes = planMinutes(placed);
	const sheets =
		grids === 'separate' ? 'a booklet and an answer sheet' : 'a booklet, which is also where answers are marked';
	const many =
		students.length === 0
			? ''
			: ` There ${students.length === 1 ? 'is 1' : `are ${students.length}`} with a printed student code and one blank spare.`;
	return [
		layHeading('Before', room),
		{
			box: layList(
				[
					`Every student needs ${sheets}, a dark pencil, an eraser.${many}`,
					`${placed.length} items, about ${minutes} minutes of work. Plan 10 minutes more for handing out, the script and collecting.`,
					'The time is a plan and no limit unless the department sets one. It counts about a minute and a half for a gridded item, which one published set of sample questions gives; for other kinds it is common practice, no source.',
					'Cover or take down posters that show number lines, sign rules or counters.',
					`Count booklets${grids === 'separate' ? ' and sheets' : ''} before and after. Items are live until the department releases form ${form.id}.`,
				],
				room,
				'dashes',
			),
		},
	];
}

function script({ form, placed, grids }: AdministrationOrder, room: ProseRoom): readonly FlowBox[] {
	const kinds = kindsOf(placed);
	const where = grids === 'separate' ? 'on your answer sheet' : 'beside the item';
	const grid = kinds.has('gridded')
		? [
				`Some items have a number grid. ${gridRules(getGridProfile(form.form.gridProfile)).join(' ')}`,
				'Look at the two filled grids on the cover. One of them is a negative number.',
			]
		: [];
	const others = kindRules(kinds, grids).flatMap(({ sentences }) => sentences);
	const said = [
		`This test shows what you can do with positive and negative numbers. It has ${placed.length} items.`,
		grids === 'separate'
			? 'Check that your student code is on the answer sheet. If it is not, write it and fill the bubbles of the code. Write it on your booklet as well.'
			: 'Check that your student code is on your booklet. If it is not, write it on every page.',
		`Mark every answer ${where}. Fill the bubble all over. Erase completely when you change an answer.`,
		...others,
		...grid,
		'Use the space below each item for your work. If you do not know an answer, go on and come back to it.',
		'Are there questions about how to mark answers? (Answer these. Do not explain any item.) You may begin.',
	];
	return [
		layHeading('Read aloud', room),
		{
			box: layList(
				said.map((sentence) => `“${sentence.replaceAll('“', '‘').replaceAll('”', '’')}”`),
				room,
				'numbers',
			),
		},
	];
}

function rules({ placed }: AdministrationOrder, room: ProseRoom): readonly FlowBox[] {
	const hasFigures = placed.some(({ record }) => figuresOf(record.item).length > 0);
	const keeps = [
		'Large print, more time, breaks, a separate or quiet place, a marker or ruler under the line, a scribe who writes what is said.',
		'Reading items aloud, when numbers are read as written: “negative five” for `-5`, “minus” for the operation.',
		...(hasFigures
			? ['Describing a figure in the words at the end of this paper, which name what is drawn and no result.']
			: []),
		'Explaining a word that is not about mathematics.',
	];
	const changes = [
		'A calculator: then the items no longer show whether a student can compute with integers.',
		'Reading a sign as an action, such as “take away”, or saying which way to move.',
		'Counters, a number line or a sign chart that the item does not give.',
		'Notes, unless the whole department allows the same notes for everybody.',
	];
	return [
		layHeading('Calculator and notes', room),
		layParagraph(
			'No calculator, no notes, no multiplication chart, for every class alike, so that results can be compared.',
			room,
		),
		layHeading('Supports that do not change what is measured', room),
		{ box: layList(keeps, room, 'dashes') },
		layHeading('Supports that change it', room),
		layParagraph(
			'Where a student has a right to one of these, give it, note it, and read the result apart from the others.',
			room,
		),
		{ box: layList(changes, room, 'dashes') },
		layParagraph('Both lists are common practice, no source. A student’s own plan and local rules come first.', room),
		layHeading('Confidential', room),
		{
			box: layList(
				[
					'Booklets, sheets, key and this page stay locked up before and after. Nobody copies, photographs or posts an item.',
					'Use student codes and no names. Answers and work are student data: keep and delete them as local law and district policy say.',
					'Report a lost booklet, a seen key or help during the test to the department lead on the same day.',
					'One score decides nothing weighty about a child. Forms built to one plan are not equated.',
				],
				room,
				'dashes',
			),
		},
	];
}

function lists({ students }: AdministrationOrder, room: ProseRoom): readonly FlowBox[] {
	const collected = [
		'Booklets handed out',
		'Booklets back',
		'Answer sheets back',
		'Spares used',
		'Given by, date, time',
	];
	const lines = (count: number) => Array.from({ length: count }, () => '');
	return [
		layHeading('Collected', room),
		{ box: layForm(collected, [''], room) },
		layHeading('To make up', room),
		layParagraph(
			students.length === 0
				? 'Students who were away, with the day on which they take the test.'
				: `Of ${students.length === 1 ? 'the 1 student' : `the ${students.length} students`} in the list: who was away, and the day on which they take the test.`,
			room,
		),
		{ box: layForm(['Student code', 'Date', 'Done'], lines(6), room) },
		layHeading('What happened', room),
		{ box: layForm(['Student code', 'Support given, interruption, anything unusual'], lines(4), room) },
	];
}

/** Every figure in words, to be read aloud where a student needs it. */
function figures({ placed }: AdministrationOrder, room: ProseRoom): readonly FlowBox[] {
	const entries = placed.flatMap((place) => [
		...(place.record.item.kind === 'set' ? figuresIn(String(place.position), place.record.item.stem) : []),
		...answersAt(place).flatMap(({ label, item }) => [
			...figuresIn(label, item.stem),
			...(item.kind === 'point' ? [{ label, text: describeFigure(item.line) }] : []),
			...entryListsOf(item).flatMap(({ path, entries: shown }) =>
				shown.flatMap(({ id, content }) => {
					const side = item.kind === 'match' ? `${path.slice(1)} ` : '';
					if (content.kind !== 'figure') return [];
					return [{ label: `${label} ${side}${id.toUpperCase()}`, text: describeFigure(content.figure) }];
				}),
			),
		]),
	]);
	if (entries.length === 0) return [];
	const widest = Math.max(22, ...entries.map(({ label }) => textWidth(label, 'sans-bold', room.type.text)));
	return [
		layHeading('Figures in words', room),
		...entries.map(({ label, text }) => ({
			box: wrap(layEntry({ text: label, font: 'sans-bold' }, [{ text, font: 'sans' }], room, widest + 12), {
				tag: 'L',
			}),
		})),
	];
}

function figuresIn(
	label: string,
	stem: readonly StemBlock[],
): readonly { readonly label: string; readonly text: string }[] {
	return stem.flatMap((block) => (block.kind === 'figure' ? [{ label, text: describeFigure(block.figure) }] : []));
}

/** A table to write in: headings, and empty rows. */
function layForm(headings: readonly string[], rows: readonly string[], { width, type }: ProseRoom): Box {
	const step = width / headings.length;
	const head = type.text * 1.5;
	const rowHeight = 22;
	const box: Box = {
		width,
		height: head + rows.length * rowHeight,
		place(x, y) {
			const texts = headings.flatMap((text, column) =>
				layText([{ text, font: 'sans' }], step - 4, linesOf(type, type.small)).place(x + column * step, y),
			);
			const rules = Array.from({ length: rows.length + 1 }, (_, index): Mark => {
				const at = y + head + index * rowHeight;
				return { kind: 'line', x1: x, y1: at, x2: x + width, y2: at, paint: { stroke: black, width: 0.5 } };
			});
			return [...texts, { tag: 'Artifact', children: rules }];
		},
	};
	return wrap(pad(box, { bottom: 6 }), { tag: 'P' });
}
