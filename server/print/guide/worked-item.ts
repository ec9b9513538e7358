import { EvaluationError, solveUnknown } from '../../../item-bank/expression/evaluate.ts';
import { parseMathematics } from '../../../item-bank/expression/parse.ts';
import { printMathematics } from '../../../item-bank/expression/print.ts';
import { speakMathematics } from '../../../item-bank/expression/speak.ts';
import { type StepRow, stepRows } from '../../../item-bank/expression/steps.ts';
import { type Expression, type MathematicsNode, numberNode } from '../../../item-bank/expression/tree.ts';
import { invariant } from '../../../item-bank/invariant.ts';
import { computeKey, type PartKey } from '../../../item-bank/items/key.ts';
import { findPatternsBehind } from '../../../item-bank/patterns/explain-answer.ts';
import { findPattern } from '../../../item-bank/patterns/index.ts';
import { listWrongAnswers } from '../../../item-bank/patterns/wrong-answers.ts';
import type { GriddedItem, Option } from '../../../item-bank/types.ts';
import type { PrintableItem } from '../placed-items.ts';

/** A line of working with how it is read aloud, and what was done. */
export interface WorkedLine extends StepRow {
	readonly spoken: string;
	/** Whether a line of work begins here; the others equal the line before. */
	readonly isStart: boolean;
}

/** A wrong answer and what it is consistent with, a sentence. */
export interface WrongAnswerNote {
	/** An option's letter, or a number as printed. */
	readonly answer: string;
	/** How a number is read aloud. */
	readonly spoken?: string;
	/** What an option says, as rich text; left out for figures. */
	readonly says?: string;
	readonly sentence: string;
}

/** What a teacher needs of an item besides its text. */
export interface WorkedItem {
	readonly key: string;
	readonly lines: readonly WorkedLine[];
	/** Why, where no computation decides. */
	readonly reason: string | undefined;
	readonly wrong: readonly WrongAnswerNote[];
}

/** Most wrong numbers listed for a gridded item: those that most patterns lead to. */
const mostWrongNumbers = 6;

/** The key, the worked steps two numbers at a time, and what wrong answers are consistent with. Throws ItemKeyError. */
export function workItem(item: PrintableItem): WorkedItem {
	const key = computeKey(item);
	return {
		key: printKey(key),
		lines: linesOfItem(item, key),
		reason: item.kind !== 'gridded' && item.rule.kind === 'stated' ? item.rule.reason : undefined,
		wrong: item.kind === 'gridded' ? wrongNumbers(item) : wrongOptions(item, key),
	};
}

/** A key as a teacher reads it: letters, or a number. */
export function printKey(key: PartKey): string {
	if (key.kind === 'options') return key.options.map((id) => id.toUpperCase()).join(', ');
	invariant(key.kind === 'value', `expected letters or a number as the key of a printed item, found ${key.kind}`);
	return printMathematics(numberNode(key.value));
}

/** Sentences of patterns as one: "Consistent with a; with b; with c." */
export function joinSentences(ids: readonly string[]): string {
	const parts = ids.flatMap((id) => {
		const sentence = findPattern(id)?.sentence;
		return sentence === undefined ? [] : [sentence.replace(/^Consistent with /, 'with ').replace(/\.$/, '')];
	});
	return parts.length === 0 ? '' : `Consistent ${parts.join('; or ')}.`;
}

function wrongNumbers(item: GriddedItem): readonly WrongAnswerNote[] {
	const numbers = listWrongAnswers(item).flatMap(({ answer, patterns }) =>
		typeof answer === 'number' ? [{ answer, patterns }] : [],
	);
	const common = [...numbers].sort((a, b) => b.patterns.length - a.patterns.length).slice(0, mostWrongNumbers);
	return numbers
		.filter((entry) => common.includes(entry))
		.map(({ answer, patterns }) => ({
			answer: printMathematics(numberNode(answer)),
			spoken: speakMathematics(numberNode(answer)),
			sentence: joinSentences(patterns),
		}));
}

function wrongOptions(item: Exclude<PrintableItem, GriddedItem>, key: PartKey): readonly WrongAnswerNote[] {
	const right = key.kind === 'options' ? key.options : [];
	return item.options
		.filter(({ id }) => !right.includes(id))
		.map((option) => {
			const ids = option.patterns ?? findPatternsBehind(item, option.id);
			const sentence = joinSentences(ids) || 'Not the answer of any pattern that the bank knows.';
			return { answer: option.id.toUpperCase(), sentence, ...saysOf(option) };
		});
}

function saysOf({ content }: Option): { readonly says?: string } {
	if (content.kind === 'figure') return {};
	return { says: content.kind === 'text' ? content.text : `\`${content.math}\`` };
}

function linesOfItem(item: PrintableItem, key: PartKey): readonly WorkedLine[] {
	if (item.kind === 'gridded') return work(item.expression);
	if ('expression' in item.rule) return work(item.rule.expression);
	const right = key.kind === 'options' ? key.options : [];
	return item.options.filter(({ id }) => right.includes(id)).flatMap(workOption);
}

function workOption({ content, id }: Option): readonly WorkedLine[] {
	const text = content.kind === 'mathematics' ? content.math : content.kind === 'text' ? content.worth : undefined;
	if (text === undefined) return [];
	const lines = work(text);
	const [first, ...rest] = lines;
	return first ? [{ ...first, note: first.note === '' ? `Option ${id.toUpperCase()}.` : first.note }, ...rest] : [];
}

function work(text: string): readonly WorkedLine[] {
	return workMathematics(parseMathematics(text));
}

function workMathematics(mathematics: MathematicsNode): readonly WorkedLine[] {
	if (mathematics.kind !== 'statement') return workExpression(mathematics);
	const given = { line: printMathematics(mathematics), note: '', spoken: speakMathematics(mathematics), isStart: true };
	try {
		// A statement is worked side by side: every side that is more than a number.
		const sides = mathematics.sides.filter((side) => side.kind !== 'number');
		return [given, ...sides.flatMap(workExpression)];
	} catch (error) {
		if (!(error instanceof EvaluationError)) throw error;
		const unknown = solveUnknown(mathematics);
		const note = `The unknown number is ${printMathematics(numberNode(unknown))}.`;
		return [{ ...given, note }];
	}
}

function workExpression(expression: Expression): readonly WorkedLine[] {
	return stepRows(expression).map((row, index) => ({
		...row,
		spoken: speakMathematics(parseMathematics(row.line)),
		isStart: index === 0,
	}));
}
