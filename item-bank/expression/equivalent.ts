import { invariant } from '../invariant.ts';
import { type TreeRewriting, writeCanonicalForm } from './canonical-form.ts';
import { type DroppedMarks, readMathematics } from './parse.ts';
import type { Expression } from './tree.ts';

/** The ids of all known rewritings. */
export type RewritingId = TreeRewriting | 'plus-sign-dropped';

/** A way to write an expression differently without working anything out. */
export interface Rewriting {
	readonly id: RewritingId;
	/** The rewriting in words, with an example. */
	readonly name: string;
}

const names: Readonly<Record<RewritingId, string>> = {
	'subtraction-as-adding-the-opposite': 'subtracting as adding the opposite: a − b = a + (−b)',
	'redundant-parentheses': 'parentheses that change nothing: (a + b) + c = a + b + c',
	'plus-sign-dropped': 'a plus sign that says nothing: +a = a',
	'zero-has-no-sign': 'zero has no sign: −0 = 0',
	'opposite-of-opposite': 'the opposite of the opposite: −(−a) = a',
	'commuted-sum': 'terms of a sum in another order: a + b = b + a',
	'commuted-product': 'factors of a product in another order: a × b = b × a',
	'regrouped-sum': 'terms of a sum grouped differently: (a + b) + c = a + (b + c)',
	'regrouped-product': 'factors of a product grouped differently: (a × b) × c = a × (b × c)',
	'sign-of-product': 'the sign of a product taken outside: (−a) × b = −(a × b) = a × (−b)',
	'sign-of-quotient': 'the sign of a quotient taken outside: (−a) ÷ b = −(a ÷ b) = a ÷ (−b)',
};

/** Every known rewriting, the plainest first. */
export const rewritings: readonly Rewriting[] = (Object.keys(names) as readonly RewritingId[]).map(getRewriting);

const treeRewritings = rewritings.map(({ id }) => id).filter((id): id is TreeRewriting => id !== 'plus-sign-dropped');

/**
 * The rewritings that link two expressions: none when they print alike, a smallest set when there is one of at most
 * three, else a set from which none can be left out; undefined when no rewritings link them, whatever their values.
 * Plus signs leave no trace in a tree: see {@link findWrittenRewritings}.
 */
export function findRewritings(a: Expression, b: Expression): readonly Rewriting[] | undefined {
	const isLinkedBy = (ids: readonly TreeRewriting[]) =>
		writeCanonicalForm(a, new Set(ids)) === writeCanonicalForm(b, new Set(ids));
	if (!isLinkedBy(treeRewritings)) return undefined;
	for (let size = 0; size <= 3; size += 1) {
		const linking = listSubsets(treeRewritings, size).find(isLinkedBy);
		if (linking) return linking.map(getRewriting);
	}
	let needed: readonly TreeRewriting[] = treeRewritings;
	for (const id of treeRewritings.toReversed()) {
		const fewer = needed.filter((other) => other !== id);
		if (isLinkedBy(fewer)) needed = fewer;
	}
	return needed.map(getRewriting);
}

/**
 * Like {@link findRewritings} for two texts as typed, and so also seeing what parsing drops: +7 for 7, −0 for 0,
 * (5) for 5. Parentheses around a negative number are not counted: 3 + -8 and 3 + (-8) are one notation.
 * @throws {ExpressionSyntaxError} when one of them is not an expression.
 */
export function findWrittenRewritings(a: string, b: string): readonly Rewriting[] | undefined {
	const [first, second] = [readWritten(a), readWritten(b)];
	const linking = findRewritings(first.expression, second.expression);
	if (linking === undefined) return undefined;
	const ids = new Set(linking.map(({ id }) => id));
	if (first.dropped.plusSigns !== second.dropped.plusSigns) ids.add('plus-sign-dropped');
	if (first.dropped.zeroSigns !== second.dropped.zeroSigns) ids.add('zero-has-no-sign');
	if (first.dropped.parentheses !== second.dropped.parentheses) ids.add('redundant-parentheses');
	return rewritings.filter(({ id }) => ids.has(id));
}

/**
 * Whether rewritings link two expressions. Stricter than an equal value: 3 − 8 and 3 + (−8) are equivalent, 3 − 8 and
 * −5 only have the same value, because something must be worked out to get from one to the other. The distributive law,
 * which changes how many numbers are written, and adding 0 or multiplying by 1 are not among the rewritings.
 */
export function isEquivalent(a: Expression, b: Expression): boolean {
	return findRewritings(a, b) !== undefined;
}

function getRewriting(id: RewritingId): Rewriting {
	return { id, name: names[id] };
}

function readWritten(text: string): { readonly expression: Expression; readonly dropped: Readonly<DroppedMarks> } {
	const { mathematics, dropped } = readMathematics(text, { isUnknownAllowed: true, isStatementAllowed: false });
	invariant(mathematics.kind !== 'statement', 'a statement was read where none is allowed');
	return { expression: mathematics, dropped };
}

function listSubsets(ids: readonly TreeRewriting[], size: number): readonly (readonly TreeRewriting[])[] {
	if (size === 0) return [[]];
	return ids.flatMap((id, index) => listSubsets(ids.slice(index + 1), size - 1).map((rest) => [id, ...rest]));
}
