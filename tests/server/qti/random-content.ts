import { evaluate } from '../../../item-bank/expression/evaluate.ts';
import { parseExpression } from '../../../item-bank/expression/parse.ts';
import { frameworks } from '../../../item-bank/standards/frameworks.ts';
import type { Alignment, Option, StemBlock } from '../../../item-bank/types.ts';
import type { Draw } from './random-draw.ts';
import { randomFigure } from './random-figures.ts';

// Characters that XML, spreadsheets and fonts trip over.
export const hardTexts = [
	'a < b & c > d',
	'"quoted" & \'single\'',
	'ends ]]> here',
	'é ü ñ ≤ ≥ ≠',
	'𝑥 outside the plane',
	'&amp; &#45; &lt;',
];

/** What every item has. */
export function common(draw: Draw, answerIn: string) {
	const alignments: Alignment[] = Array.from({ length: draw.whole(1, 3) }, (_, index) => {
		const framework = draw.pick(frameworks);
		const { code, grade } = draw.pick(framework.standards);
		const extent = draw.pick(['full', 'partial'] as const);
		return { framework: framework.id, edition: framework.edition, code, grade, extent, primary: index === 0 };
	});
	const given = draw.pick(['symbols', 'counters', 'number-line', 'story', 'table'] as const);
	const { whole } = draw;
	return { name: `Random ${answerIn}`, given, points: whole(1, 4), dok: whole(1, 3), alignments };
}

/** An expression of two or three numbers and its value. */
export function randomExpression(draw: Draw): { readonly text: string; readonly value: number } {
	const a = draw.whole(-60, 60);
	const b = draw.whole(-40, 40) || 7;
	const later = b < 0 ? `(${b})` : `${b}`;
	const text = draw.pick([
		`${a} + ${later}`,
		`${a} - ${later}`,
		`${draw.whole(-12, 12)} × ${later}`,
		`${draw.whole(-12, 12) * b} ÷ ${later}`,
		`|${a} - ${later}| - ${draw.whole(1, 30)}`,
	]);
	return { text, value: evaluate(parseExpression(text)) };
}

/** Blocks that end, mostly, with the question. */
export function randomStem(draw: Draw, question: string): StemBlock[] {
	const blocks: StemBlock[] = [];
	if (draw.chance(0.3))
		blocks.push({ kind: 'paragraph', text: `The lift stands at ${draw.whole(1, 900)}: ${draw.pick(hardTexts)}.` });
	if (draw.chance(0.35)) blocks.push({ kind: 'figure', figure: randomFigure(draw) });
	if (draw.chance(0.2)) blocks.push(randomTable(draw));
	if (draw.chance(0.2)) blocks.push({ kind: 'mathematics', math: `${randomExpression(draw).text} = ?` });
	if (draw.chance(0.8) || blocks.length === 0) blocks.push({ kind: 'paragraph', text: question });
	return blocks;
}

function randomTable(draw: Draw): StemBlock {
	const width = draw.whole(2, 4);
	const cells = (): string[] => Array.from({ length: width }, () => `\`${draw.whole(-99, 99)}\` & more`);
	const header = Array.from({ length: width }, (_, index) => `Day ${index + 1}`);
	const rows = Array.from({ length: draw.whole(1, 4) }, cells);
	return draw.chance(0.5) ? { kind: 'table', caption: 'Tide <gauge>', header, rows } : { kind: 'table', header, rows };
}

/** A number as an option. */
export function numberOption(value: number, index: number): Option {
	return { id: 'abcdefgh'.charAt(index), content: { kind: 'mathematics', math: String(value) } };
}

/** Wrong values beside the right one, shuffled; all different. */
export function randomValues(draw: Draw, right: number, count: number): readonly number[] {
	const values = new Set([right]);
	while (values.size < count) values.add(draw.pick([-right, right + draw.whole(-9, 9), draw.whole(-120, 120)]));
	return shuffle(draw, [...values]);
}

/** The list in another order. */
export function shuffle<T>(draw: Draw, list: readonly T[]): readonly T[] {
	return list
		.map((value) => ({ value, at: draw.whole(0, 1e9) }))
		.sort((one, other) => one.at - other.at)
		.map(({ value }) => value);
}

/** A sum of two small numbers. */
export function randomSum(draw: Draw): string {
	const b = draw.whole(-9, 9) || 4;
	return `${draw.whole(-9, 9) || -5} + ${b < 0 ? `(${b})` : b}`;
}
