import { invariant } from '../../../item-bank/invariant.ts';
import type { PartItem, SheetField, StudentCodeField } from '../../../item-bank/types.ts';
import { textWidth } from '../page/fonts.ts';
import { type Block, black, fromMm, type Mark, toMm } from '../page/marks.ts';
import { drawColumns } from './bubbles.ts';
import { drawLineField } from './draw-line.ts';
import { labelOf } from './head.ts';
import type { SheetMeasures } from './measures.ts';
import { ordinals, ratingPadding } from './plan-blocks.ts';

/** A field of an item. */
export type ItemField = Exclude<SheetField, StudentCodeField>;

/** A field with its number; the item lends its unit and the numbers of its line. */
export function drawField(field: ItemField, item: PartItem | undefined, measures: SheetMeasures): Block {
	const [first] = field.columns;
	const label = labelOf(field);
	switch (field.kind) {
		case 'choice':
			return { tag: 'P', children: [drawRowLabel(label, first, measures, 'sans-bold'), ...drawMarks(field, measures)] };
		case 'rating':
			return { tag: 'P', children: drawRating(label, field, measures) };
		case 'grid': {
			const unit = item?.kind === 'gridded' && item.unit !== undefined ? `in ${item.unit}` : '';
			const { x = 0, y = 0 } = first?.box ?? {};
			return {
				tag: 'Sect',
				children: [drawHeading(label, unit, x, y - 1.6, measures), drawGrid(field, label, measures)],
			};
		}
		case 'order':
		case 'match': {
			const { x = 0, y = 0 } = first?.bubbles[0] ?? {};
			const top = y - measures.rowStep / 2 - 1.6;
			const what = field.kind === 'order' ? 'in order' : 'partners';
			const heading = drawHeading(label, what, x - measures.label, top, measures);
			return { tag: 'Sect', children: [heading, ...drawAnswer(field, item, measures)] };
		}
		case 'point': {
			const figure = drawAnswer(field, item, measures);
			const [left = 0, top = 0] = figure[0]?.bounds ?? [];
			const heading = drawHeading(label, '', toMm(left), toMm(top) - 2.4, measures);
			return { tag: 'Sect', children: [heading, ...figure] };
		}
		default:
			return field satisfies never;
	}
}

/** A field without its number, as it stands beside an item. */
export function drawAnswer(field: ItemField, item: PartItem | undefined, measures: SheetMeasures): readonly Block[] {
	switch (field.kind) {
		case 'choice':
			return [{ tag: 'P', children: drawMarks(field, measures) }];
		case 'grid':
			return [drawGrid(field, labelOf(field), measures)];
		case 'rating':
			return [{ tag: 'P', children: drawRating('', field, measures) }];
		case 'order':
			return drawRows(field, ordinals, measures, 'sans');
		case 'match':
			return drawRows(
				field,
				field.left.map((id) => id.toUpperCase()),
				measures,
				'sans-bold',
			);
		case 'point':
			invariant(item?.kind === 'point', 'expected the item of a line, found another');
			return [drawLineField(field, item, measures)];
		default:
			return field satisfies never;
	}
}

/** The field to bubble a student code in. */
export function drawCodeField(field: StudentCodeField, measures: SheetMeasures): Block {
	const { x = 0, y = 0 } = field.columns[0]?.box ?? {};
	const alt = `Field for a student code: ${field.columns.length} boxes with bubbles for digits, letters and the hyphen.`;
	return {
		tag: 'Sect',
		children: [
			drawHeading('Student code', '', x, y - 1.6, measures),
			figureOf(field, alt, drawMarks(field, measures), measures),
		],
	};
}

function drawMarks({ columns }: SheetField, { bubble, symbolSize }: SheetMeasures): readonly Mark[] {
	return drawColumns(columns, { bubble, symbolSize });
}

function drawGrid(field: Extract<ItemField, { kind: 'grid' }>, label: string, measures: SheetMeasures): Block {
	const alt = `Answer grid for item ${label}: ${field.columns.length} boxes with bubbles below them.`;
	return figureOf(field, alt, drawMarks(field, measures), measures);
}

type Row = SheetField['columns'][number];

/** Labels end where the bubbles begin, so that tens stand under tens. */
function drawRowLabel(
	text: string,
	row: Row | undefined,
	measures: SheetMeasures,
	font: 'sans' | 'sans-bold',
): Extract<Mark, { kind: 'text' }> {
	const bubble = row?.bubbles[0] ?? { x: 0, y: 0 };
	const size = font === 'sans' ? measures.textSize : measures.labelSize;
	const x = fromMm(bubble.x - measures.bubble / 2 - 1.8) - textWidth(text, font, size);
	return { kind: 'text', x, y: fromMm(bubble.y) + size * 0.33, text, font, size };
}

function drawRows(
	{ columns }: ItemField,
	labels: readonly string[],
	measures: SheetMeasures,
	font: 'sans' | 'sans-bold',
): readonly Block[] {
	const { bubble, symbolSize } = measures;
	return columns.map((row, index) => ({
		tag: 'P',
		children: [drawRowLabel(labels[index] ?? '', row, measures, font), ...drawColumns([row], { bubble, symbolSize })],
	}));
}

/** A frame of dashes tells that these bubbles are not the student's. */
function drawRating(label: string, field: ItemField, measures: SheetMeasures): readonly (Mark | Block)[] {
	const [row] = field.columns;
	const bubbles = row?.bubbles ?? [];
	const [first, last] = [bubbles[0], bubbles.at(-1)];
	const half = measures.bubble / 2;
	const word: Mark = drawRowLabel('scorer', row, measures, 'sans');
	const left = word.x - fromMm(ratingPadding);
	const top = fromMm((first?.y ?? 0) - half - ratingPadding);
	const size = measures.labelSize;
	const frame: Mark = {
		kind: 'rect',
		x: left,
		y: top,
		width: fromMm((last?.x ?? 0) + half + ratingPadding) - left,
		height: fromMm(measures.bubble + 2 * ratingPadding),
		paint: { stroke: black, width: 0.6, dash: [2.5, 2] },
	};
	const x = left - fromMm(ratingPadding) - textWidth(label, 'sans-bold', size);
	const number: Mark = {
		kind: 'text',
		x,
		y: fromMm(first?.y ?? 0) + size * 0.33,
		text: label,
		font: 'sans-bold',
		size,
	};
	return [
		...(label === '' ? [] : [number]),
		word,
		...drawMarks(field, measures),
		{ tag: 'Artifact', children: [frame] },
	];
}

/** The number of a field and, smaller, what it takes; `x`, `y` is the left end of its baseline in millimetres. */
function drawHeading(number: string, more: string, x: number, y: number, measures: SheetMeasures): Block {
	const size = measures.labelSize;
	const at = { y: fromMm(y), kind: 'text' } as const;
	const marks: Mark[] = [{ ...at, x: fromMm(x), text: number, font: 'sans-bold', size }];
	if (more !== '') {
		const start = fromMm(x) + textWidth(`${number}  `, 'sans-bold', size);
		marks.push({ ...at, x: start, text: more, font: 'sans', size: measures.textSize });
	}
	return { tag: 'P', children: marks };
}

function figureOf(field: SheetField, alt: string, children: readonly Mark[], measures: SheetMeasures): Block {
	const boxes = field.columns.flatMap(({ box }) => (box ? [box] : []));
	const bubbles = field.columns.flatMap((column) => column.bubbles);
	const half = measures.bubble / 2;
	const bounds = [
		fromMm(Math.min(...boxes.map((box) => box.x))),
		fromMm(Math.min(...boxes.map((box) => box.y))),
		fromMm(Math.max(...boxes.map((box) => box.x + box.width))),
		fromMm(Math.max(...bubbles.map((bubble) => bubble.y + half))),
	] as const;
	return { tag: 'Figure', alt, bounds, children };
}
