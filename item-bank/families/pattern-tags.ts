import { listNodes } from '../expression/count.ts';
import type { Expression, Statement } from '../expression/tree.ts';
import { withoutGroups } from '../figures/terms.ts';
import { patterns } from '../patterns/index.ts';
import { isSameAnswer, type PatternId } from '../patterns/pattern.ts';
import { answersUnder, type Question } from '../patterns/question.ts';
import type { Slips } from '../patterns/slips.ts';
import { looksTrueUnder } from '../patterns/statement-under.ts';
import { type Subject, subjectOf } from '../patterns/subject.ts';
import { answerUnder, workExpression } from '../patterns/work.ts';
import type { Figure } from '../types.ts';

/**
 * What options of an item say besides plain numbers: expressions by the rule "same-value", or forms by "shown" and "shows".
 * Finds for an option what findPatternsBehind finds in the finished item, without reading the item again; a test holds the
 * two together.
 */
export interface OptionTagger {
	/** The patterns that lead to an option; none for one that is right. */
	readonly tag: (option: Expression) => readonly PatternId[];
}

/** A tagger for options beside one key; the subjects are everything a student may be working on, the asked one first. */
export function createTagger(subjects: readonly Subject[], right: number, isFormAsked: boolean): OptionTagger {
	const question: Question = { subjects, right, isGridded: false };
	const [asked] = subjects;
	const led = patterns.map(({ id, slips }) => {
		const form = isFormAsked && asked?.kind === 'two-numbers' ? slips.twoNumbers?.(asked) : undefined;
		return { id, slips, form: typeof form === 'object' ? form : undefined, answers: answersUnder(slips, question) };
	});
	const tag = (option: Expression): readonly PatternId[] => {
		const value = workExpression({}, option);
		if (value === undefined || (!isFormAsked && value === right)) return [];
		const own = subjectOf(option);
		const isWorked = !isFormAsked && withoutGroups(option).kind !== 'number';
		return led
			.filter(({ slips, form, answers }) => {
				if (form !== undefined && own.kind === 'two-numbers') {
					return isSameForm(form, own);
				}
				if (answers.some((wrong) => isSameAnswer(wrong, value))) return true;
				return isWorked && answerUnder(slips, own) === right;
			})
			.map(({ id }) => id);
	};
	return { tag };
}

/** The patterns under which a statement looks true that is not; none for a true one. */
export function tagStatement(statement: Statement, figures: readonly Figure[] = []): readonly PatternId[] {
	const touched = slipsTouching(statement, figures);
	return patterns
		.filter(
			({ slips }) => touched.some((slip) => slips[slip] !== undefined) && looksTrueUnder(slips, statement, figures),
		)
		.map(({ id }) => id);
}

/** The slips that can change how a statement is worked or compared; patterns without any of them leave it as it is. */
function slipsTouching({ sides, relations }: Statement, figures: readonly Figure[]): readonly (keyof Slips)[] {
	const kinds = new Set(sides.flatMap(listNodes).map(({ kind }) => kind));
	const touched: (keyof Slips)[] = relations.some((relation) => relation !== '=') ? ['ordering'] : [];
	if (kinds.has('operation')) touched.push('twoNumbers', 'regrouping');
	if (kinds.has('absolute')) touched.push('absoluteValue');
	if (kinds.has('opposite')) touched.push('oppositeNumber');
	if (figures.length > 0) touched.push('counterSet', 'walk');
	return touched;
}

type TwoNumbers = Extract<Subject, { readonly kind: 'two-numbers' }>;

/** Whether two operations are written alike, a − b counted as a + (−b). */
function isSameForm(a: Omit<TwoNumbers, 'kind'>, b: TwoNumbers): boolean {
	const asSum = ({ operator, left, right }: Omit<TwoNumbers, 'kind'>) =>
		operator === 'subtract' ? ({ operator: 'add', left, right: -right } as const) : { operator, left, right };
	const [first, second] = [asSum(a), asSum(b)];
	return first.operator === second.operator && first.left === second.left && first.right === second.right;
}
