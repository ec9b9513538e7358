import { normaliseExpression } from './normalise.ts';
import type { Expression, MathematicsNode, Operator, Relation } from './tree.ts';

/**
 * How sums with negative numbers are written: textbook keeps 3 + (−8) and 3 − (−8), shortened writes them as 3 − 8
 * and 3 + 8. Products and quotients are the same in both.
 */
export type WritingStyle = 'textbook' | 'shortened';

/** One written sign, or a fence with what stands in it. */
export type Piece =
	| { readonly kind: 'numeral'; readonly text: string }
	| { readonly kind: 'unknown' }
	| { readonly kind: 'sign' }
	| { readonly kind: 'operator'; readonly text: '+' | '−' | '×' | '÷' }
	| { readonly kind: 'relation'; readonly text: Relation }
	| { readonly kind: 'fence'; readonly fence: 'parentheses' | 'bars'; readonly pieces: readonly Piece[] };

/** The printed glyph of each operator; minus is U+2212. */
export const operatorGlyphs: Readonly<Record<Operator, '+' | '−' | '×' | '÷'>> = {
	add: '+',
	subtract: '−',
	multiply: '×',
	divide: '÷',
};

/**
 * The signs of an expression or statement in writing order. Negative numbers and opposites stand in parentheses
 * except at the very start of a side, of parentheses or of an absolute value.
 */
export function layOutMathematics(mathematics: MathematicsNode, style: WritingStyle = 'textbook'): readonly Piece[] {
	if (mathematics.kind !== 'statement') return layOut(normaliseExpression(mathematics), true, style);
	return mathematics.sides.flatMap((side, index): readonly Piece[] => {
		const relation = mathematics.relations[index - 1];
		const pieces = layOut(normaliseExpression(side), true, style);
		return relation === undefined ? pieces : [{ kind: 'relation', text: relation }, ...pieces];
	});
}

function layOut(expression: Expression, isLeading: boolean, style: WritingStyle): readonly Piece[] {
	switch (expression.kind) {
		case 'number': {
			const numeral: Piece = { kind: 'numeral', text: String(Math.abs(expression.value)) };
			if (expression.value >= 0) return [numeral];
			const signed: readonly Piece[] = [{ kind: 'sign' }, numeral];
			return isLeading ? signed : [enclose(signed)];
		}
		case 'unknown':
			return [{ kind: 'unknown' }];
		case 'absolute':
			return [enclose(layOut(expression.of, true, style), 'bars')];
		case 'group':
			return [enclose(layOut(expression.of, true, style))];
		case 'opposite': {
			const inner = layOut(expression.of, true, style);
			// −(5) keeps its parentheses: without them it would be the number −5.
			return [{ kind: 'sign' }, ...(expression.of.kind === 'number' ? [enclose(inner)] : inner)];
		}
		case 'operation': {
			const { operator, right } = style === 'shortened' ? shorten(expression.operator, expression.right) : expression;
			const sign: Piece = { kind: 'operator', text: operatorGlyphs[operator] };
			return [...layOut(expression.left, isLeading, style), sign, ...layOut(right, false, style)];
		}
		default:
			return expression satisfies never;
	}
}

function shorten(operator: Operator, right: Expression): { readonly operator: Operator; readonly right: Expression } {
	if (operator !== 'add' && operator !== 'subtract') return { operator, right };
	const flipped = operator === 'add' ? 'subtract' : 'add';
	if (right.kind === 'number' && right.value < 0)
		return { operator: flipped, right: { ...right, value: -right.value } };
	const inner = right.kind === 'group' ? right.of : right;
	return inner.kind === 'opposite' ? shorten(flipped, inner.of) : { operator, right };
}

function enclose(pieces: readonly Piece[], fence: 'parentheses' | 'bars' = 'parentheses'): Piece {
	return { kind: 'fence', fence, pieces };
}
