import type { AnswerSheetGeometry, SheetField, SheetPage } from '../../../item-bank/types.ts';
import { type Box, stack, wrap } from '../page/box.ts';
import { textWidth } from '../page/fonts.ts';
import { type Block, black, fromMm, type Mark, toMm } from '../page/marks.ts';
import { layText } from '../page/text.ts';
import type { AnswerPlace } from '../placed-items.ts';
import { drawBubble } from './bubbles.ts';
import type { SheetContext } from './draw-sheet.ts';
import { fitLine } from './frame-marks.ts';
import { measuresFor, round, type SheetMeasures, sheetFrame } from './measures.ts';

/** Millimetres from the top edge of the paper to what stands under the head's first line. */
export const codeTop = 20;
/** From the top edge to the instructions, and what the example of a filled bubble takes below them, millimetres. */
const instructionsTop = (large: boolean) => (large ? 30 : 29);
const exampleGap = 3;

/** What a page of fields, or a whole form, has to be told about. */
interface Told {
	readonly kinds: ReadonlySet<SheetField['kind']>;
	/** Numbers of the items that take several marks. */
	readonly severals: readonly string[];
	/** Characters of the field for a student code, and whether some code is longer. */
	readonly characters: number;
	readonly isCut: boolean;
}

function instructions({ kinds, severals, characters, isCut }: Told): readonly string[] {
	const which = isCut ? `each of the first ${characters} characters` : 'each character';
	const some = severals.length > 0 ? ` In ${listNumbers(severals)} fill all that you choose.` : '';
	const rows = kinds.has('choice') || kinds.has('order') || kinds.has('match');
	return [
		...(kinds.has('student-code') ? [`Write your student code in the boxes and fill one bubble for ${which}.`] : []),
		...(rows ? [`Fill one bubble in each row.${some}`] : []),
		...(kinds.has('grid') ? ['Grids: write the answer in the boxes, then fill the bubbles below.'] : []),
		...(kinds.has('point') ? ['Number lines: fill the bubble of the tick that you mark.'] : []),
		...(kinds.has('rating') ? ['Leave the bubbles marked “scorer” empty.'] : []),
	];
}

function listNumbers(numbers: readonly string[]): string {
	if (numbers.length === 1) return `row ${numbers[0]}`;
	return `rows ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
}

function layInstructions(told: Told, large: boolean, width: number): Box {
	const { textSize } = measuresFor(large);
	const style = { size: textSize, leading: textSize * 1.25 };
	const lines = instructions(told).map((text) => wrap(layText([{ text, font: 'sans' }], width, style), { tag: 'P' }));
	return stack(lines, textSize * 0.25);
}

/** Height of the head of every page, millimetres: all that a form has to be told about must fit in `width` points. */
export function headHeight(
	places: readonly AnswerPlace[],
	{ large, students }: { readonly large: boolean; readonly students: readonly string[] },
	width: number,
	hasCodeField: boolean,
): number {
	const measures = measuresFor(large);
	const kinds = new Set<SheetField['kind']>(places.map(({ item }) => fieldKinds[item.kind]));
	if (hasCodeField) kinds.add('student-code');
	const severals = places.flatMap(({ item, label }) => (item.kind === 'multiple-choice' ? [label] : []));
	const isCut = students.some(({ length }) => length > measures.codeCharacters);
	const told = layInstructions({ kinds, severals, characters: measures.codeCharacters, isCut }, large, width);
	const needed = instructionsTop(large) - codeTop + toMm(told.height) + exampleGap + measures.bubble + 2.5;
	return Math.max(measures.head, round(needed));
}

const fieldKinds = {
	choice: 'choice',
	'multiple-choice': 'choice',
	'inline-choice': 'choice',
	gridded: 'grid',
	point: 'point',
	order: 'order',
	match: 'match',
	explanation: 'rating',
} as const satisfies Readonly<Record<AnswerPlace['item']['kind'], SheetField['kind']>>;

/** Title, student, instructions for the fields of the page, and an example of a filled bubble. */
export function drawHead(context: SheetContext, page: SheetPage, student: string | undefined): readonly Block[] {
	const { geometry, form, students } = context;
	const measures = measuresFor(geometry.large);
	const frame = sheetFrame(geometry.paper);
	const left = fromMm(frame.left);
	const width = fromMm(page.code.x - 5) - left;
	const fitted = fitLine(
		`${form.form.title} · answer sheet`,
		'sans-bold',
		measures.titleSize,
		geometry.large ? 18 : 9,
		fromMm(frame.right - frame.left - 4),
	);
	const title: Block = {
		tag: 'H1',
		children: [{ kind: 'text', x: left, y: fromMm(14), font: 'sans-bold', ...fitted }],
	};
	const characters = page.fields.find(({ kind }) => kind === 'student-code')?.columns.length ?? 0;
	const told: Told = {
		kinds: new Set(page.fields.map(({ kind }) => kind)),
		severals: page.fields.flatMap((field) =>
			field.kind === 'choice' && field.marks === 'several' ? [labelOf(field)] : [],
		),
		characters,
		isCut: students.some(({ length }) => length > characters),
	};
	const lines = layInstructions(told, geometry.large, width);
	const top = fromMm(instructionsTop(geometry.large));
	const below = lines.place(left, top);
	const example = page.fields.some(({ kind }) => kind !== 'student-code')
		? [drawExample(geometry, top + lines.height)]
		: [];
	return [title, drawStudent(student, measures, left, width), ...(below as readonly Block[]), ...example];
}

/** The student's code large, or a line to write it on. */
function drawStudent(student: string | undefined, measures: SheetMeasures, left: number, width: number): Block {
	const size = measures.labelSize * 1.25;
	const y = fromMm(26.5);
	const label: Mark = { kind: 'text', x: left, y, text: 'Student code ', font: 'sans', size: measures.labelSize };
	const start = left + textWidth('Student code  ', 'sans', measures.labelSize);
	const code: Mark =
		student === undefined
			? { kind: 'line', x1: start, y1: y + 1, x2: left + width, y2: y + 1, paint: { stroke: black, width: 0.75 } }
			: { kind: 'text', x: start, y, text: student, font: 'sans-bold', size };
	return { tag: 'P', children: [label, code] };
}

/** A filled bubble, and three that do not count, at the lower edge of a head with room for them, below `above` points. */
function drawExample(geometry: AnswerSheetGeometry, above: number): Block {
	const measures = measuresFor(geometry.large);
	const frame = sheetFrame(geometry.paper);
	const lowest = codeTop + measures.head - measures.bubble / 2 - 2.5;
	const y = Math.max(lowest, toMm(above) + exampleGap + measures.bubble / 2);
	const step = measures.pitch;
	const size = measures.textSize;
	const baseline = fromMm(y) + size * 0.33;
	const marks: Mark[] = [];
	let x = frame.left;
	const say = (text: string) => {
		marks.push({ kind: 'text', x: fromMm(x), y: baseline, text, font: 'sans', size });
		x += (textWidth(text, 'sans', size) * 25.4) / 72 + step * 0.8;
	};
	const style = { bubble: measures.bubble, symbolSize: measures.symbolSize };
	say('Like this:');
	marks.push(...drawBubble(x, y, 'A', style, true));
	x += step * 1.2;
	say('Not like this:');
	for (const fault of ['tick', 'cross', 'dot'] as const) {
		marks.push(...drawBubble(x, y, '', style), ...drawFault(fault, x, y, measures.bubble / 2));
		x += step;
	}
	const alt = 'A bubble filled all over counts. A bubble with a tick, a cross or a dot in it does not.';
	const bounds = [
		fromMm(frame.left),
		fromMm(y - measures.bubble / 2),
		fromMm(x),
		fromMm(y + measures.bubble / 2),
	] as const;
	return { tag: 'Figure', alt, bounds, children: marks };
}

function drawFault(fault: 'tick' | 'cross' | 'dot', x: number, y: number, reach: number): readonly Mark[] {
	const paint = { stroke: black, width: 1.2 };
	const stroke = (x1: number, y1: number, x2: number, y2: number): Mark => ({
		kind: 'line',
		x1: fromMm(x + x1 * reach),
		y1: fromMm(y + y1 * reach),
		x2: fromMm(x + x2 * reach),
		y2: fromMm(y + y2 * reach),
		paint,
	});
	switch (fault) {
		case 'tick':
			return [stroke(-0.5, 0, -0.1, 0.5), stroke(-0.1, 0.5, 0.6, -0.6)];
		case 'cross':
			return [stroke(-0.5, -0.5, 0.5, 0.5), stroke(-0.5, 0.5, 0.5, -0.5)];
		case 'dot':
			return [{ kind: 'circle', x: fromMm(x), y: fromMm(y), radius: fromMm(reach * 0.25), paint: { fill: black } }];
	}
}

/** What stands before a field: "7", or "7a" for a part of a set. */
export function labelOf({ position, part = '' }: Exclude<SheetField, { readonly kind: 'student-code' }>): string {
	return `${position}${part}`;
}
