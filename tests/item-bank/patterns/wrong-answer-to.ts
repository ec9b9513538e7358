import { parseExpression } from '../../../item-bank/expression/parse.ts';
import { type ErrorPattern, findWrongAnswer } from '../../../item-bank/patterns/pattern.ts';
import { type Answer, subjectOf } from '../../../item-bank/patterns/subject.ts';

/** The wrong answer of a pattern to an expression as typed. */
export function wrongAnswerTo(pattern: ErrorPattern, text: string): Answer | undefined {
	return findWrongAnswer(pattern, subjectOf(parseExpression(text)));
}
