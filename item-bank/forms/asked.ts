import { writeCanonicalForm } from '../expression/canonical-form.ts';
import { listNodes } from '../expression/count.ts';
import { evaluate } from '../expression/evaluate.ts';
import { parseMathematics } from '../expression/parse.ts';
import { printMathematics } from '../expression/print.ts';
import type { Expression, MathematicsNode, Statement } from '../expression/tree.ts';
import { optionsOf, workOf } from '../items/asked.ts';
import { findKey } from '../items/key.ts';
import { parseRichText } from '../markup/rich-text.ts';
import type { Item } from '../types.ts';

const alike = new Set([
	'subtraction-as-adding-the-opposite',
	'redundant-parentheses',
	'opposite-of-opposite',
	'commuted-sum',
	'commuted-product',
] as const);

/**
 * The mathematics an item asks for: the expression behind its key, or the first key option itself where options are
 * expressions or statements. Undefined where words alone decide.
 */
export function askedMathematics(item: Item): MathematicsNode | undefined {
	return allAsked(item)[0];
}

/** Like {@link askedMathematics}, with every key option where there are several. */
export function allAsked(item: Item): readonly MathematicsNode[] {
	const work = workOf(item);
	const texts = work === undefined ? keyTexts(item) : [work];
	return texts.flatMap((text) => tryParse(text) ?? []);
}

/**
 * The answer as students would compare it: a number where there is one, else the text of the key options. Undefined for
 * answers that are figures, or points named by letters.
 */
export function answerOf(item: Item): string | undefined {
	const finding = findKey(item);
	if ('problems' in finding) return undefined;
	const { key } = finding;
	if (key.kind === 'value') return String(key.value);
	const work = workOf(item);
	if (item.answerIn === 'number' && work !== undefined) {
		const asked = tryParse(work);
		const value = asked && asked.kind !== 'statement' ? tryEvaluate(asked) : undefined;
		if (value !== undefined) return String(value);
	}
	if (key.kind !== 'options' || optionsOf(item).length === 0) return undefined;
	const contents = optionsOf(item)
		.filter(({ id }) => key.options.includes(id))
		.map(({ content }) => content);
	if (contents.some(({ kind }) => kind !== 'mathematics')) return undefined;
	return contents.map((content) => (content.kind === 'mathematics' ? content.math : '')).join('; ');
}

/** Place of the key among the options, 0 for the first; undefined unless there is exactly one key option. */
export function keyPlaceOf(item: Item): number | undefined {
	if (item.kind !== 'choice') return undefined;
	const finding = findKey(item);
	if ('problems' in finding || finding.key.kind !== 'options') return undefined;
	const [key] = finding.key.options;
	const place = item.options.findIndex(({ id }) => id === key);
	return place < 0 ? undefined : place;
}

/** Sizes of the numbers an item asks about, 0 left out, ascending, as one text; undefined for fewer than two numbers. */
export function numbersOf(item: Item): string | undefined {
	const asked = askedMathematics(item);
	const sizes = asked
		? numbersIn(asked)
				.map(Math.abs)
				.filter((size) => size > 0)
		: [];
	return sizes.length < 2 ? undefined : sizes.sort((a, b) => a - b).join(' ');
}

/**
 * Facts of arithmetic an item asks for or tells: the asked expression, and every equation its stem prints. Two items that
 * share one give each other away. Expressions that differ only in the order of terms or in writing a − b as a + (−b) are
 * one fact; a fact has at least one operation.
 */
export function factsOf(item: Item): readonly string[] {
	const asked = askedMathematics(item);
	const told = stemMathematics(item).filter(
		(mathematics) => mathematics.kind === 'statement' && isEquation(mathematics),
	);
	const facts = [asked, ...told].flatMap((mathematics) => (mathematics ? factsIn(mathematics) : []));
	return [...new Set(facts)].sort();
}

/** Everything between backticks and on displayed lines of the stem. */
export function stemMathematics(item: Item): readonly MathematicsNode[] {
	return item.stem.flatMap((block): readonly MathematicsNode[] => {
		switch (block.kind) {
			case 'mathematics': {
				const parsed = tryParse(block.math);
				return parsed ? [parsed] : [];
			}
			case 'paragraph':
				return richMathematics(block.text);
			case 'table':
				return [...block.header, ...block.rows.flat()].flatMap(richMathematics);
			case 'figure':
				return [];
			default:
				return block satisfies never;
		}
	});
}

/** Numbers as written, signs included, in reading order. */
export function numbersIn(mathematics: MathematicsNode): readonly number[] {
	return listNodes(mathematics).flatMap((node) => (node.kind === 'number' ? [node.value] : []));
}

/** The value of an expression, or undefined where it has none. */
export function tryEvaluate(expression: Expression): number | undefined {
	try {
		return evaluate(expression);
	} catch {
		return undefined;
	}
}

function tryParse(text: string): MathematicsNode | undefined {
	try {
		return parseMathematics(text);
	} catch {
		return undefined;
	}
}

function richMathematics(text: string): readonly MathematicsNode[] {
	try {
		return parseRichText(text).flatMap((run) => (run.kind === 'mathematics' ? [run.mathematics] : []));
	} catch {
		return [];
	}
}

function keyTexts(item: Item): readonly string[] {
	const finding = findKey(item);
	if ('problems' in finding || finding.key.kind !== 'options') return [];
	const keys = finding.key.options;
	return optionsOf(item).flatMap(({ id, content }) => {
		if (!keys.includes(id)) return [];
		if (content.kind === 'mathematics') return [content.math];
		return content.kind === 'text' && content.worth !== undefined ? [content.worth] : [];
	});
}

function isEquation(statement: Statement): boolean {
	const values = statement.sides.map(tryEvaluate);
	return statement.relations.every((relation) => relation === '=') && values.every((value) => value !== undefined);
}

function factsIn(mathematics: MathematicsNode): readonly string[] {
	const sides = mathematics.kind === 'statement' ? mathematics.sides : [mathematics];
	return sides
		.filter((side) => listNodes(side).some(({ kind }) => kind === 'operation'))
		.map((side) =>
			mathematics.kind === 'statement' && !isEquation(mathematics)
				? printMathematics(mathematics)
				: writeCanonicalForm(side, alike),
		);
}
