import { evaluate } from '../../../item-bank/expression/evaluate.ts';
import { parseExpression } from '../../../item-bank/expression/parse.ts';
import { figureFor } from '../../../item-bank/figures/figure-for.ts';
import type { FormRecord, ItemRecord } from '../../../item-bank/items/record.ts';
import { gridProfiles } from '../../../item-bank/responses/grid-profiles.ts';
import { frameworks } from '../../../item-bank/standards/frameworks.ts';
import type { Alignment, Option, OptionContent, StemBlock } from '../../../item-bank/types.ts';
import type { ExportableItem, ExportableRecord } from '../../../server/qti/exportable.ts';
import { type Draw, drawFrom } from './random-draw.ts';
import { randomFigure } from './random-figures.ts';

/** Distinct random items of every kind, with figures, tables, rich text and alignments; the same seed, the same items. */
export function randomItems(count: number, seed: number): readonly ExportableRecord[] {
	const draw = drawFrom(seed);
	const seen = new Set<string>();
	const records: ExportableRecord[] = [];
	while (records.length < count) {
		const item = randomItem(draw);
		const text = JSON.stringify([item.stem, 'options' in item ? item.options : item.expression]);
		if (seen.has(text)) continue;
		seen.add(text);
		const status = draw.pick(['approved', 'approved', 'draft', 'retired'] as const);
		records.push({ id: `random-${seed}-${records.length}`, version: draw.whole(1, 12), status, item });
	}
	return records;
}

/** A form of all the items in order, in sections, some with points of their own. */
export function randomForm(items: readonly ItemRecord[], seed: number): FormRecord {
	const draw = drawFrom(seed);
	const sections: { title: string; items: { item: string; version: number; points?: number }[] }[] = [];
	for (const { id, version } of items) {
		const isFull = (sections.at(-1)?.items.length ?? 0) >= 900;
		if (sections.length === 0 || isFull || (sections.length < 8 && draw.chance(0.1))) {
			sections.push({ title: `Section ${sections.length + 1}: ${draw.pick(hardTexts)}`, items: [] });
		}
		const points = draw.chance(0.3) ? { points: draw.whole(1, 10) } : {};
		sections.at(-1)?.items.push({ item: id, version, ...points });
	}
	const gridProfile = draw.pick(gridProfiles).id;
	return { id: `form-${seed}`, version: 1, form: { title: `Tide & lift <${seed}>`, gridProfile, sections } };
}

// Characters that XML, spreadsheets and fonts trip over.
const hardTexts = [
	'a < b & c > d',
	'"quoted" & \'single\'',
	'ends ]]> here',
	'é ü ñ ≤ ≥ ≠',
	'𝑥 outside the plane',
	'&amp; &#45; &lt;',
];

function randomItem(draw: Draw): ExportableItem {
	const kind = draw.whole(0, 9);
	if (kind < 3) return randomGridded(draw);
	if (kind < 5) return randomMultipleChoice(draw);
	if (kind < 6) return randomShows(draw) ?? randomChoice(draw);
	if (kind < 7) return randomShown(draw) ?? randomChoice(draw);
	return randomChoice(draw);
}

function common(draw: Draw, answerIn: ExportableItem['answerIn']) {
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
function randomExpression(draw: Draw): { readonly text: string; readonly value: number } {
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

function randomStem(draw: Draw, question: string): StemBlock[] {
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

function numberOption(value: number, index: number): Option {
	return { id: 'abcdefgh'.charAt(index), content: { kind: 'mathematics', math: String(value) } };
}

/** Wrong values beside the right one, shuffled; all different. */
function randomValues(draw: Draw, right: number, count: number): readonly number[] {
	const values = new Set([right]);
	while (values.size < count) values.add(draw.pick([-right, right + draw.whole(-9, 9), draw.whole(-120, 120)]));
	return shuffle(draw, [...values]);
}

function shuffle<T>(draw: Draw, list: readonly T[]): readonly T[] {
	return list
		.map((value) => ({ value, at: draw.whole(0, 1e9) }))
		.sort((one, other) => one.at - other.at)
		.map(({ value }) => value);
}

function randomChoice(draw: Draw): ExportableItem {
	const { text, value } = randomExpression(draw);
	const options = randomValues(draw, value, draw.whole(2, 6)).map(numberOption);
	if (draw.chance(0.3)) {
		const worded = options.map((option, index): Option => {
			const { content } = option;
			if (content.kind !== 'mathematics') return option;
			return {
				id: option.id,
				content: {
					kind: 'text',
					text: `\`${content.math}\` ${hardTexts[index % hardTexts.length]}`,
					worth: content.math,
				},
			};
		});
		return {
			kind: 'choice',
			...common(draw, 'words'),
			answerIn: 'words',
			stem: randomStem(draw, `What is \`${text}\`?`),
			options: worded,
			rule: { kind: 'same-value', expression: text },
		};
	}
	return {
		kind: 'choice',
		...common(draw, 'number'),
		answerIn: 'number',
		stem: randomStem(draw, `What is \`${text}\`?`),
		options,
		rule: { kind: 'same-value', expression: text },
	};
}

function randomMultipleChoice(draw: Draw): ExportableItem {
	const truths = Array.from({ length: draw.whole(3, 6) }, (_, index) =>
		index === 0 ? true : index === 1 ? false : draw.chance(0.5),
	);
	const contents = shuffle(draw, truths).map((isTrue): OptionContent => {
		const { text, value } = randomExpression(draw);
		return { kind: 'mathematics', math: `${text} = ${isTrue ? value : value + (draw.whole(-9, 9) || 5)}` };
	});
	return {
		kind: 'multiple-choice',
		...common(draw, 'statement'),
		answerIn: 'statement',
		stem: randomStem(draw, `Which are true at ${draw.whole(1, 9999)}?`),
		options: contents.map((content, index) => ({ id: 'abcdefgh'.charAt(index), content })),
		rule: { kind: 'true-statement' },
	};
}

function randomSum(draw: Draw): string {
	const b = draw.whole(-9, 9) || 4;
	return `${draw.whole(-9, 9) || -5} + ${b < 0 ? `(${b})` : b}`;
}

/** Figures as options: one shows the expression. */
function randomShows(draw: Draw): ExportableItem | undefined {
	const sums = new Set<string>();
	while (sums.size < 3) sums.add(randomSum(draw));
	const [right = '', ...wrong] = sums;
	const options = shuffle(draw, [right, ...wrong]).map((text, index): Option | undefined => {
		const figure = figureFor(parseExpression(text), 'number-line');
		return figure && { id: 'abc'.charAt(index), content: { kind: 'figure', figure } };
	});
	if (!options.every((option) => option !== undefined)) return undefined;
	return {
		kind: 'choice',
		...common(draw, 'number-line'),
		answerIn: 'number-line',
		stem: [{ kind: 'paragraph', text: `Which shows \`${right}\`?` }],
		options,
		rule: { kind: 'shows', expression: right },
	};
}

/** A figure in the stem: one option is what it shows. */
function randomShown(draw: Draw): ExportableItem | undefined {
	const sums = new Set<string>();
	while (sums.size < 4) sums.add(randomSum(draw));
	const [right = '', ...wrong] = sums;
	const figure = figureFor(parseExpression(right), 'number-line');
	if (!figure) return undefined;
	const options = shuffle(draw, [right, ...wrong]).map(
		(math, index): Option => ({ id: 'abcd'.charAt(index), content: { kind: 'mathematics', math } }),
	);
	return {
		kind: 'choice',
		...common(draw, 'expression'),
		answerIn: 'expression',
		stem: [
			{ kind: 'figure', figure },
			{ kind: 'paragraph', text: 'Which sum is shown?' },
		],
		options,
		rule: { kind: 'shown' },
	};
}

function randomGridded(draw: Draw): ExportableItem {
	const { text } = randomExpression(draw);
	const unit = draw.chance(0.4) ? { unit: draw.pick(['metres', '°C', 'dollars & cents']) } : {};
	return {
		kind: 'gridded',
		...common(draw, 'number'),
		answerIn: 'number',
		stem: randomStem(draw, `Work out \`${text}\`.`),
		expression: text,
		grid: draw.pick(gridProfiles).id,
		...unit,
	};
}
