import { withoutGroups } from '../figures/terms.ts';
import { optionsOf, ruleOf } from '../items/asked.ts';
import { findKey } from '../items/key.ts';
import type { Item, Option } from '../types.ts';
import { composeSlips } from './compose.ts';
import { patterns } from './index.ts';
import { listInseparable } from './inseparable.ts';
import { figuresOf, mathematicsOf, tryEvaluate } from './item-subjects.ts';
import { isSameAnswer, type PatternId } from './pattern.ts';
import { answersUnder, type Question, questionOf } from './question.ts';
import type { Slips } from './slips.ts';
import { looksTrueUnder } from './statement-under.ts';
import { type Answer, type Subject, subjectOf, type TwoNumbers } from './subject.ts';
import { answerUnder } from './work.ts';

/** What a wrong answer is consistent with. All of it is a hint: one answer never shows which idea a student followed. */
export interface Explanation {
	/** Right answers have no explanation here. */
	readonly isRight: boolean;
	/** The patterns that each lead to the answer alone: one group, as this item cannot tell them apart. */
	readonly patterns: readonly PatternId[];
	/** Those among them that no item of the same kind tells apart: the same operation, signs and larger size. */
	readonly inseparable: readonly (readonly PatternId[])[];
	/** Weaker: two patterns that lead to the answer only together, the one followed first before the other. */
	readonly pairs: readonly (readonly [PatternId, PatternId])[];
}

/** Thrown where an option is named that the item does not have. */
export class UnknownOptionError extends Error {
	readonly code = 'option-unknown';
	readonly option: string;

	constructor(option: string, item: Item) {
		const offered =
			optionsOf(item)
				.map(({ id }) => id)
				.join(', ') || 'none: it is answered with a number';
		super(`expected an option of the item, found "${option}"; there are ${offered}`);
		this.option = option;
	}
}

/**
 * All patterns, and all pairs of patterns, that lead to an answer: a number, numbers from least to greatest, or for an
 * item with options the id of one.
 * @throws {UnknownOptionError} for an option that the item does not have.
 */
export function explainAnswer(asked: Subject | Item, answer: Answer | string): Explanation {
	const question = questionOf(asked);
	const isLedTo = makeTest(asked, question, answer);
	if (isLedTo === 'right') return { isRight: true, patterns: [], inseparable: [], pairs: [] };
	const alone = patterns.filter(({ slips }) => isLedTo(slips)).map(({ id }) => id);
	const others = patterns.filter(({ id }) => !alone.includes(id));
	const pairs = others.flatMap((first) =>
		others
			.filter((second) => second !== first && isLedTo(composeSlips(first.slips, second.slips)))
			.map((second): readonly [PatternId, PatternId] => [first.id, second.id]),
	);
	return { isRight: false, patterns: alone, inseparable: listInseparable(question, alone), pairs: dropMirrored(pairs) };
}

/**
 * The patterns that each lead to an answer alone, without the pairs, which take longer: what an option carries.
 * None for a right answer.
 * @throws {UnknownOptionError} like {@link explainAnswer}.
 */
export function findPatternsBehind(asked: Subject | Item, answer: Answer | string): readonly PatternId[] {
	const isLedTo = makeTest(asked, questionOf(asked), answer);
	return isLedTo === 'right' ? [] : patterns.filter(({ slips }) => isLedTo(slips)).map(({ id }) => id);
}

/** A test whether slips lead somewhere, or the finding that the answer is right. */
type Test = ((slips: Slips) => boolean) | 'right';

function makeTest(asked: Subject | Item, question: Question, answer: Answer | string): Test {
	return typeof answer === 'string' ? testOption(asked, question, answer) : testAnswer(question, answer);
}

function testAnswer(question: Question, answer: Answer): Test {
	if (question.right !== undefined && isSameAnswer(question.right, answer)) return 'right';
	return (slips) => answersUnder(slips, question).some((wrong) => isSameAnswer(wrong, answer));
}

function testOption(asked: Subject | Item, question: Question, id: string): Test {
	const item = 'stem' in asked ? asked : undefined;
	const option = item && optionsOf(item).find((candidate) => candidate.id === id);
	if (item === undefined || option === undefined) {
		if (item !== undefined) throw new UnknownOptionError(id, item);
		return () => false;
	}
	const finding = findKey(item);
	if ('key' in finding && finding.key.kind === 'options' && finding.key.options.includes(id)) return 'right';
	return testContent(item, option, question);
}

/**
 * An option is led to when slips turn what is asked into its value, or its own expression into the right value, or a
 * false statement into one that looks true. Where forms are asked for and not values, and the slips change the form, the
 * form has to agree.
 */
function testContent(item: Item, option: Option, question: Question): Test {
	const mathematics = mathematicsOf(option.content);
	if (mathematics === undefined) return () => false;
	if (mathematics.kind === 'statement') return (slips) => looksTrueUnder(slips, mathematics, figuresOf(item));
	const own = subjectOf(mathematics);
	const rule = ruleOf(item);
	const value = tryEvaluate(mathematics);
	if (value === undefined) return () => false;
	const isFormAsked = rule?.kind === 'shows' || rule?.kind === 'shown';
	if (!isFormAsked && value === question.right) return () => false;
	const isWorked = rule?.kind === 'same-value' && withoutGroups(mathematics).kind !== 'number';
	return (slips) => {
		const [asked] = question.subjects;
		const form = isFormAsked && asked?.kind === 'two-numbers' ? slips.twoNumbers?.(asked) : undefined;
		if (typeof form === 'object' && own.kind === 'two-numbers') return isSameForm(form, own);
		if (answersUnder(slips, question).some((wrong) => isSameAnswer(wrong, value))) return true;
		return isWorked && question.right !== undefined && answerUnder(slips, own) === question.right;
	};
}

/** Whether two operations are written alike, a − b counted as a + (−b). */
function isSameForm(a: TwoNumbers, b: TwoNumbers): boolean {
	const asSum = ({ operator, left, right }: TwoNumbers): TwoNumbers =>
		operator === 'subtract' ? { operator: 'add', left, right: -right } : { operator, left, right };
	const [first, second] = [asSum(a), asSum(b)];
	return first.operator === second.operator && first.left === second.left && first.right === second.right;
}

/** Of two ideas that lead to the answer in either order, the order of the registry is kept. */
function dropMirrored(pairs: Explanation['pairs']): Explanation['pairs'] {
	const kept: (readonly [PatternId, PatternId])[] = [];
	for (const [first, second] of pairs) {
		if (!kept.some(([before, after]) => before === second && after === first)) kept.push([first, second]);
	}
	return kept;
}
