import { printMathematics } from '../../../item-bank/expression/print.ts';
import { numberNode } from '../../../item-bank/expression/tree.ts';
import type { FormRecord } from '../../../item-bank/items/record.ts';
import { getGridProfile } from '../../../item-bank/responses/grid-profiles.ts';
import type { GridProfile } from '../../../item-bank/types.ts';
import { exampleValues, gridRules, plainGridding } from '../grid-rules.ts';
import { type KindRule, kindRules, kindsOf } from '../kind-rules.ts';
import { type Box, beside, stack, wrap, wrapFigure } from '../page/box.ts';
import { textWidth } from '../page/fonts.ts';
import { black, fromMm, toMm } from '../page/marks.ts';
import type { FlowBox } from '../page/page-boxes.ts';
import { layHeading, layList, layParagraph, layTitle, linesOf, type ProseRoom } from '../page/prose.ts';
import { layText } from '../page/text.ts';
import type { PlacedItem } from '../placed-items.ts';
import { drawColumns } from '../sheet/bubbles.ts';
import { measuresFor } from '../sheet/measures.ts';
import { gridSize, planGridColumns } from '../sheet/plan-fields.ts';
import type { BookletStyle } from './styles.ts';

/** What a cover is about. */
export interface CoverOrder {
	readonly form: FormRecord;
	readonly placed: readonly PlacedItem[];
	readonly style: BookletStyle;
	readonly grids: 'separate' | 'beside';
	readonly student: string | undefined;
}

/** The boxes of a cover from the top: title, who and when, how to answer each kind of item, a worked example of the grid. */
export function layCover(order: CoverOrder): readonly FlowBox[] {
	const { form, placed, style, grids, student } = order;
	const { type, frame } = style;
	const width = frame.right - frame.left;
	const room = { width, type };
	const say = (text: string) => layParagraph(text, room);
	const kinds = kindsOf(placed);
	const where = grids === 'separate' ? 'on the answer sheet' : 'beside the item';
	const boxes: FlowBox[] = [
		layTitle(form.form.title, room),
		{ box: layWriteLines(style, width, student) },
		layHeading('Before you begin', room),
		say(
			`This test has ${placed.length === 1 ? '1 item' : `${placed.length} items`}. Mark your answers ${where} with a dark pencil.`,
		),
		say('Fill bubbles all over. Erase completely when you change an answer.'),
		say('Use the space below each item for your work.'),
	];
	const rules = kindRules(kinds, grids);
	const [only] = rules;
	if (only && rules.length === 1) boxes.push(layHeading(only.title, room), ...only.sentences.map(say));
	else if (only) {
		boxes.push(layHeading('Kinds of items', room), ...rules.map((rule) => layRule(rule, room)));
	}
	if (kinds.has('gridded')) {
		boxes.push(layHeading('Items with a number grid', room));
		boxes.push({ box: layGridExample(getGridProfile(form.form.gridProfile), style, width) });
	}
	return boxes;
}

/** Several kinds: each in a paragraph that begins with its title. */
function layRule({ title, sentences }: KindRule, { width, type }: ProseRoom): FlowBox {
	const spans = [
		{ text: `${title}. `, font: 'sans-bold' } as const,
		{ text: sentences.join(' '), font: 'sans' } as const,
	];
	return { box: wrap(layText(spans, width, linesOf(type, type.text)), { tag: 'P' }) };
}

/** Lines for the student's code or name and the date; the code is printed when the booklet is made for one student. */
function layWriteLines(style: BookletStyle, width: number, student: string | undefined): Box {
	const size = style.type.text;
	const line = (label: string, length: number, given: string | undefined): Box => {
		const start = textWidth(`${label}  `, 'sans', size);
		const box: Box = {
			width: length,
			height: size * 2,
			place(x, y) {
				const base = y + size * 1.5;
				const value =
					given === undefined
						? ({
								kind: 'line',
								x1: x + start,
								y1: base + 1.5,
								x2: x + length,
								y2: base + 1.5,
								paint: { stroke: black, width: 0.75 },
							} as const)
						: ({ kind: 'text', x: x + start, y: base, text: given, font: 'sans-bold', size: size * 1.2 } as const);
				return [{ kind: 'text', x, y: base, text: label, font: 'sans', size }, value];
			},
		};
		return wrap(box, { tag: 'P' });
	};
	const gap = 18;
	const code = line(student === undefined ? 'Student code or name' : 'Student code', (width - gap) * 0.64, student);
	return beside([code, line('Date', (width - gap) * 0.36, undefined)], gap);
}

/** Two numbers gridded, one of them negative, beside the rules of the grid. */
function layGridExample(profile: GridProfile, style: BookletStyle, width: number): Box {
	const { type } = style;
	const examples = beside(
		exampleValues(profile).map((value) => layFilledGrid(value, profile, style)),
		fromMm(style.large ? 10 : 7),
	);
	const isBelow = width - examples.width < width * 0.5;
	const rulesWidth = isBelow ? width : width - examples.width - fromMm(8);
	const list = layList(gridRules(profile), { width: rulesWidth, type }, 'numbers');
	return isBelow ? stack([list, examples], type.text) : beside([examples, list], fromMm(8));
}

/** A grid with a value written and filled in. */
function layFilledGrid(value: number, profile: GridProfile, style: BookletStyle): Box {
	const measures = measuresFor(style.large);
	const text = printMathematics(numberNode(value));
	const filled = plainGridding(value, profile) ?? [];
	const size = gridSize(profile, measures);
	const grid: Box = {
		width: fromMm(size.width),
		height: fromMm(size.height - measures.heading),
		place(x, y) {
			const columns = planGridColumns(profile, toMm(x), toMm(y), measures);
			const { bubble, symbolSize } = measures;
			return drawColumns(columns, { bubble, symbolSize, writingSize: style.large ? 24 : 15 }, filled);
		},
	};
	const marks = filled.map((column) => (column[0] === '-' ? 'minus' : (column[0] ?? 'empty')));
	const alt = `The number ${text} in a grid. Boxes and bubbles from the left: ${marks.join(', ')}.`;
	const label = layText(
		[{ text: `The answer ${text}`, font: 'sans' }],
		grid.width + 20,
		linesOf(style.type, style.type.text),
	);
	return stack([wrap({ ...label, width: grid.width }, { tag: 'P' }), wrapFigure(grid, alt)], 3);
}
