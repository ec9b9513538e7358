import { EvaluationError, solveUnknown } from '../expression/evaluate.ts';
import { parseMathematics } from '../expression/parse.ts';
import { printMathematics } from '../expression/print.ts';
import { speakMathematics } from '../expression/speak.ts';
import { type StepRow, stepRows } from '../expression/steps.ts';
import { type Expression, type MathematicsNode, numberNode } from '../expression/tree.ts';
import { mathematicsOf, worthAt } from '../items/compute.ts';
import type { PartKey } from '../items/key.ts';
import type { MatchItem, Option, OrderItem, PartItem } from '../types.ts';

/** A line of working with how it is read aloud, and what was done. */
export interface WorkedLine extends StepRow {
	readonly spoken: string;
	/** Whether a line of work begins here; the others equal the line before. */
	readonly isStart: boolean;
}

/** The work to the key of an item, two numbers at a time; nothing where no computation decides. */
export function listWorkedLines(item: PartItem, key: PartKey): readonly WorkedLine[] {
	const right = key.kind === 'options' ? key.options : [];
	switch (item.kind) {
		case 'gridded':
		case 'point':
			return work(item.expression);
		case 'choice':
		case 'multiple-choice':
			if ('expression' in item.rule) return work(item.rule.expression);
			return item.options.filter(({ id }) => right.includes(id)).flatMap((option) => workOption(option, 'Option'));
		case 'inline-choice':
			return item.choices
				.filter(({ id }) => right.includes(id))
				.flatMap(({ math }) => work(item.statement.replace('_', math)));
		case 'order':
			return workOrder(item, key);
		case 'match':
			return workMatch(item, key);
		case 'explanation':
			return [];
		default:
			return item satisfies never;
	}
}

/** The number that an entry is worth. Throws ContentError for an entry that is worth none. */
export function worthOf(entry: Option): number {
	return worthAt(mathematicsOf(entry, ''), '');
}

/** Entries that are more than a number, then all worths in their order. */
function workOrder({ entries, direction }: OrderItem, key: PartKey): readonly WorkedLine[] {
	const order = key.kind === 'order' ? key.order : [];
	const sorted = order.flatMap((id) => entries.filter((entry) => entry.id === id));
	const relation = direction === 'ascending' ? ' < ' : ' > ';
	const [line] = work(sorted.map((entry) => String(worthOf(entry))).join(relation));
	const note = direction === 'ascending' ? 'From least to greatest.' : 'From greatest to least.';
	const worked = entries.flatMap((entry) => {
		const lines = workOption(entry, 'Entry');
		return lines.length > 1 ? lines : [];
	});
	return [...worked, ...(line ? [{ ...line, note }] : [])];
}

/** Each entry on the left with its partner; a partner that is more than a number is worked as well. */
function workMatch({ left, right }: MatchItem, key: PartKey): readonly WorkedLine[] {
	const pairs = key.kind === 'pairs' ? key.pairs : [];
	return pairs.flatMap((pair) => {
		const [first] = left.filter(({ id }) => id === pair.left);
		const [second] = right.filter(({ id }) => id === pair.right);
		if (!first || !second) return [];
		const [own, other] = [workOption(first, 'Entry'), workOption(second, 'Partner')];
		const [start, ...rest] = own.length > 0 ? own : other;
		const note = `${pair.left.toUpperCase()} goes with ${pair.right.toUpperCase()}.`;
		return [...(start ? [{ ...start, note }, ...rest] : []), ...(own.length > 0 && other.length > 1 ? other : [])];
	});
}

function workOption({ content, id }: Option, what: string): readonly WorkedLine[] {
	const text = content.kind === 'mathematics' ? content.math : content.kind === 'text' ? content.worth : undefined;
	if (text === undefined) return [];
	const lines = work(text);
	const [first, ...rest] = lines;
	return first ? [{ ...first, note: first.note === '' ? `${what} ${id.toUpperCase()}.` : first.note }, ...rest] : [];
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
