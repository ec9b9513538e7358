import { EvaluationError, evaluate, solveUnknown } from '../expression/evaluate.ts';
import { ExpressionSyntaxError, parseMathematics } from '../expression/parse.ts';
import type { Expression } from '../expression/tree.ts';
import type { Problem } from '../problem.ts';
import type { Option } from '../types.ts';

/** Carries one problem out of a computation; findKey turns it back into a value. */
export class ContentError extends Error {
	readonly problem: Problem;

	constructor(problem: Problem) {
		super(problem.message);
		this.problem = problem;
	}
}

/** Does the work, with errors of expressions as problems at the path. */
export function computeAt<T>(path: string, work: () => T): T {
	try {
		return work();
	} catch (error) {
		if (error instanceof ExpressionSyntaxError || error instanceof EvaluationError) {
			throw new ContentError({ code: error.code, path, message: error.message });
		}
		throw error;
	}
}

/** Reads an expression or statement. Throws {@link ContentError}. */
export function parseAt(text: string, path: string): ReturnType<typeof parseMathematics> {
	return computeAt(path, () => parseMathematics(text));
}

/** Reads an expression and refuses a statement. Throws {@link ContentError}. */
export function expressionAt(text: string, path: string): Expression {
	const mathematics = parseAt(text, path);
	if (mathematics.kind !== 'statement') return mathematics;
	throw notComputable(path, 'an expression', `the statement "${text}"`);
}

/** The value of an expression, or the unknown of a statement with one ?. Throws {@link ContentError}. */
export function worthAt(text: string, path: string): number {
	const mathematics = parseAt(text, path);
	return computeAt(path, () => (mathematics.kind === 'statement' ? solveUnknown(mathematics) : evaluate(mathematics)));
}

/** The mathematics an option shows or its words stand for. Throws {@link ContentError}. */
export function mathematicsOf({ content }: Option, path: string): string {
	if (content.kind === 'mathematics') return content.math;
	if (content.kind === 'text' && content.worth !== undefined) return content.worth;
	const found = content.kind === 'text' ? 'text without worth' : 'a figure';
	throw notComputable(path, 'mathematics, or text with a worth', found);
}

/** An option or entry that the key cannot be computed from. */
export function notComputable(path: string, expected: string, found: string): ContentError {
	const message = `expected ${expected} so that the key can be computed, found ${found}`;
	return new ContentError({ code: 'option-not-computable', path, message });
}
