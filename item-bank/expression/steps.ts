import { evaluate } from './evaluate.ts';
import { findNextPart, replacePart } from './next-part.ts';
import { normaliseExpression } from './normalise.ts';
import { printMathematics } from './print.ts';
import { explainPart, type StepPart, type StepReason, type StepRule } from './step-rules.ts';
import { type Expression, numberNode, operationNode } from './tree.ts';

/** One step of worked mathematics: two numbers at a time, or the absolute value or opposite of one. */
export interface WorkedStep {
	readonly before: Expression;
	/** What is worked out. */
	readonly part: StepPart;
	readonly rule: StepRule;
	/** For a subtraction written as adding the opposite: the rule of that sum. */
	readonly sumRule?: StepRule;
	readonly value: number;
	/** The whole line with the subtraction written as adding the opposite. */
	readonly rewritten?: Expression;
	/** The whole line with the value in place of the part. */
	readonly after: Expression;
	/** What stands unchanged, with … for the part; '' when the part is the whole line. */
	readonly broughtDown: string;
	/** Why this part comes first, such as "inside the parentheses"; '' where nothing else could. */
	readonly order: string;
	/** One sentence that names the rule and the value. */
	readonly explanation: string;
}

/** One line of worked steps for screen or paper, with what is said beside it. */
export interface StepRow {
	/** The whole expression at this point, printed. */
	readonly line: string;
	/** A sentence; '' beside the expression as given. */
	readonly note: string;
}

/**
 * The work from an expression to its value: parentheses and absolute values first, then × and ÷, then + and −, left
 * to right among equals. One step for each operation, absolute value and opposite; none for a single number.
 * @throws {EvaluationError} when the expression has no value.
 */
export function workSteps(expression: Expression): readonly WorkedStep[] {
	evaluate(expression);
	const steps: WorkedStep[] = [];
	let before = normaliseExpression(expression);
	for (let next = findNextPart(before); next; next = findNextPart(before)) {
		const { part, path, order } = next;
		const place = (node: Expression) => normaliseExpression(replacePart(before, path, node));
		const value = evaluate(part);
		const reason = explainPart(part, value);
		const after = place(numberNode(value));
		const step = { before, part, rule: reason.rule, value, after, order, explanation: explain(order, reason) };
		const broughtDown = path.length === 0 ? '' : printMathematics(place({ kind: 'unknown' })).replace('?', '…');
		const { sumRule } = reason;
		if (sumRule === undefined || part.kind !== 'operation') steps.push({ ...step, broughtDown });
		else {
			const rewritten = place(operationNode('add', part.left, numberNode(-part.right.value)));
			steps.push({ ...step, broughtDown, sumRule, rewritten });
		}
		before = after;
	}
	return steps;
}

/**
 * The worked steps as lines: the expression as given, then after each step the whole line; a subtraction written as
 * adding the opposite has a line of its own.
 * @throws {EvaluationError} when the expression has no value.
 */
export function stepRows(expression: Expression): readonly StepRow[] {
	const rows: StepRow[] = [{ line: printMathematics(expression), note: '' }];
	for (const { part, value, order, rewritten, after } of workSteps(expression)) {
		const { rewriting, working } = explainPart(part, value);
		const isRewritten = rewritten !== undefined && rewriting !== undefined;
		if (isRewritten) rows.push({ line: printMathematics(rewritten), note: makeSentence([order, rewriting]) });
		rows.push({ line: printMathematics(after), note: makeSentence([isRewritten ? '' : order, working]) });
	}
	return rows;
}

/**
 * The worked steps as plain text, one line each: the expression, then "= …" with its sentence in brackets.
 * @throws {EvaluationError} when the expression has no value.
 */
export function stepText(expression: Expression): string {
	return stepRows(expression)
		.map(({ line, note }, index) => (index === 0 ? line : `= ${line}  [${note}]`))
		.join('\n');
}

function explain(order: string, { rewriting, working }: StepReason): string {
	return makeSentence([order, rewriting === undefined ? working : `${rewriting}; ${working}`]);
}

function makeSentence(parts: readonly string[]): string {
	const sentence = parts.filter((part) => part !== '').join(': ');
	return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`;
}
