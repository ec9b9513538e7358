import { EvaluationError, evaluate, solveUnknown } from '../expression/evaluate.ts';
import { ExpressionSyntaxError, parseMathematics } from '../expression/parse.ts';
import type { Expression, MathematicsNode } from '../expression/tree.ts';
import { expressionsShown } from '../figures/expressions-shown.ts';
import { chooseWindow } from '../figures/number-line-window.ts';
import { withoutGroups } from '../figures/terms.ts';
import { optionsOf, ruleOf, workOf } from '../items/asked.ts';
import { findKey } from '../items/key.ts';
import type { Figure, GriddedItem, Item, Option, OptionContent } from '../types.ts';
import { findInverse } from './inverse.ts';
import { findRightAnswer, type Subject, subjectOf } from './subject.ts';

/**
 * What a student may be working on in an item, the item's own expression first. None for an item that is all words.
 * - The expression asked for, or what is worked out to find its unknown; for |a − b| also the distance from a to b; for two
 *   numbers in bars also the numbers without them, for somebody who leaves the bars out.
 * - The figure of the stem where it is worth the right answer: the counters that count, the arrows as a walk, a point as
 *   a walk from zero.
 * - For a gridded item, the right answer about to be marked.
 */
export function subjectsOf(item: Item): readonly Subject[] {
	const value = findValue(item);
	const pictured = figuresOf(item).map((figure) => readFigure(figure, value));
	return [
		...distinct(expressionsOf(item).flatMap(readExpression)),
		...pictured.filter((subject) => subject !== undefined).filter((subject) => findRightAnswer(subject) === value),
		...(item.kind === 'gridded' && value !== undefined ? [{ kind: 'grid-entry', value } as const] : []),
	];
}

/** What an option says: mathematics, or the first expression its figure shows; undefined for words without a worth. */
export function mathematicsOf(content: OptionContent): MathematicsNode | undefined {
	switch (content.kind) {
		case 'mathematics':
			return tryParse(content.math);
		case 'text':
			return content.worth === undefined ? undefined : tryParse(content.worth);
		case 'figure':
			return expressionsShown(content.figure)[0];
		default:
			return content satisfies never;
	}
}

/** The number the right answer of an item is worth; undefined where it is no number. */
export function findValue(item: Item): number | undefined {
	const text = workOf(item);
	const [shown] = text === undefined ? keyOptions(item) : [];
	const mathematics = text === undefined ? shown && mathematicsOf(shown.content) : tryParse(text);
	if (mathematics === undefined) return undefined;
	if (mathematics.kind !== 'statement') return tryEvaluate(mathematics);
	return text === undefined ? undefined : tryWork(() => solveUnknown(mathematics));
}

/** The value of an expression; undefined where it has none. */
export function tryEvaluate(expression: Expression): number | undefined {
	return tryWork(() => evaluate(expression));
}

function tryWork(work: () => number): number | undefined {
	try {
		return work();
	} catch (error) {
		if (error instanceof EvaluationError) return undefined;
		throw error;
	}
}

function expressionsOf(item: Item): readonly Expression[] {
	const work = workOf(item);
	if (work !== undefined) return readText(work);
	const rule = ruleOf(item);
	switch (rule?.kind) {
		case undefined:
		case 'shows':
		case 'same-value':
			return [];
		case 'shown':
			return keyOptions(item).flatMap(({ content }) => {
				const mathematics = mathematicsOf(content);
				return mathematics === undefined || mathematics.kind === 'statement' ? [] : [mathematics];
			});
		case 'true-statement':
		case 'stated':
			return [];
		default:
			return rule satisfies never;
	}
}

function readText(text: GriddedItem['expression']): readonly Expression[] {
	const mathematics = tryParse(text);
	if (mathematics === undefined) return [];
	if (mathematics.kind !== 'statement') return [mathematics];
	const inverse = findInverse(mathematics);
	return inverse === undefined ? [] : [inverse];
}

function readExpression(expression: Expression): readonly Subject[] {
	const plain = withoutGroups(expression);
	// A number alone is nothing to work out.
	if (plain.kind === 'number') return [];
	const subject = subjectOf(plain);
	if (plain.kind !== 'absolute') return [subject];
	const inner = subjectOf(plain.of);
	if (inner.kind !== 'two-numbers') return [subject];
	if (inner.operator !== 'subtract') return [subject, inner];
	return [subject, { kind: 'distance', from: inner.left, to: inner.right }, inner];
}

/** The figures of the stem. */
export function figuresOf(item: Item): readonly Figure[] {
	return item.stem.flatMap((block) => (block.kind === 'figure' ? [block.figure] : []));
}

/**
 * What a student may read off a figure: the counters that count, the arrows as a walk, or a walk from zero to the point
 * that is worth the value; undefined for points without one.
 */
export function readFigure(figure: Figure, value?: number): Subject | undefined {
	switch (figure.kind) {
		case 'counters': {
			const added = figure.addedPairs ?? 0;
			const removed = (sign: 'plus' | 'minus') => (figure.removed?.sign === sign ? figure.removed.count : 0);
			const plus = figure.plus + added - removed('plus');
			return { kind: 'counter-set', plus, minus: figure.minus + added - removed('minus') };
		}
		case 'counter-groups': {
			const count = figure.groups * figure.each;
			const isPlus = figure.sign === 'plus';
			return { kind: 'counter-set', plus: isPlus ? count : 0, minus: isPlus ? 0 : count };
		}
		case 'number-line': {
			const { tickEvery } = chooseWindow(figure);
			const { start = 0, arrows, points = [] } = figure;
			if (arrows !== undefined) return { kind: 'walk', start, moves: arrows, tickEvery };
			if (value === undefined || points.every(({ at }) => at !== value)) return undefined;
			return { kind: 'walk', start: 0, moves: [value], tickEvery };
		}
		default:
			return figure satisfies never;
	}
}

function keyOptions(item: Item): readonly Option[] {
	const finding = findKey(item);
	if (!('key' in finding) || finding.key.kind !== 'options') return [];
	const { options } = finding.key;
	return optionsOf(item).filter(({ id }) => options.includes(id));
}

function distinct(subjects: readonly Subject[]): readonly Subject[] {
	return [...new Map(subjects.map((subject) => [JSON.stringify(subject), subject])).values()];
}

function tryParse(text: string): MathematicsNode | undefined {
	try {
		return parseMathematics(text);
	} catch (error) {
		if (error instanceof ExpressionSyntaxError) return undefined;
		throw error;
	}
}
