import type { Expression, Operator } from '../expression/tree.ts';
import type { CounterGroupsFigure, CountersFigure, Figure, NumberLineFigure } from '../types.ts';
import { factorsOf, numberIn, termsOf, withoutGroups } from './terms.ts';

/**
 * The expressions a figure shows, the plainest first; all have one value. None when nothing is modelled.
 * - Counters: plus + (−minus) and (−minus) + plus; with counters crossed out, the starting set minus what is crossed out.
 * - Groups: groups × each, then as repeated addition.
 * - Number line with arrows: the start (unless 0) and the arrows added in order; each arrow after the first number also
 *   read as subtracting its opposite; equal arrows from 0 also as a product.
 * - Number line with one point: its number. With two: their distance |p − q|, either way round, and greater − lesser;
 *   when one is 0 also the absolute value of the other.
 */
export function expressionsShown(figure: Figure): readonly Expression[] {
	switch (figure.kind) {
		case 'counters':
			return countersShown(figure);
		case 'counter-groups':
			return groupsShown(figure);
		case 'number-line':
			return figure.arrows === undefined ? pointsShown(figure) : arrowsShown(figure);
		default:
			return figure satisfies never;
	}
}

/**
 * Whether a figure shows an expression. Expressions are compared after writing every a − b as a + (−b) and dropping
 * needless parentheses. Counters and products may be read in either order; the order of arrows counts, as −3 + 5 and
 * 5 + (−3) are different walks. Crossing out shows a subtraction only, never the addition it is equal to.
 */
export function isShownBy(expression: Expression, figure: Figure): boolean {
	const read = readingFor(figure);
	const reading = read(expression);
	return reading !== undefined && expressionsShown(figure).some((shown) => read(shown) === reading);
}

function countersShown(figure: CountersFigure): readonly Expression[] {
	const starting = startingShown(figure.plus, figure.minus);
	if (figure.removed === undefined) return figure.plus + figure.minus === 0 ? [] : starting;
	const removed = number(figure.removed.sign === 'plus' ? figure.removed.count : -figure.removed.count);
	return starting.map((start) => operation('subtract', start, removed));
}

function startingShown(plus: number, minus: number): readonly Expression[] {
	if (plus === 0 || minus === 0) return [number(plus - minus)];
	return [operation('add', number(plus), number(-minus)), operation('add', number(-minus), number(plus))];
}

function groupsShown(figure: CounterGroupsFigure): readonly Expression[] {
	const each = number(figure.sign === 'plus' ? figure.each : -figure.each);
	const product = operation('multiply', number(figure.groups), each);
	return figure.groups === 1 ? [product, each] : [product, addAll(Array.from({ length: figure.groups }, () => each))];
}

function arrowsShown(figure: NumberLineFigure): readonly Expression[] {
	const arrows = figure.arrows ?? [];
	const start = figure.start ?? 0;
	const [first = 0, ...rest] = start === 0 ? arrows : [start, ...arrows];
	const shown: Expression[] = [];
	for (let subtracted = 0; subtracted < 2 ** rest.length; subtracted += 1) {
		shown.push(
			rest.reduce<Expression>((sum, length, index) => {
				const isSubtracted = Math.floor(subtracted / 2 ** index) % 2 === 1;
				return isSubtracted ? operation('subtract', sum, number(-length)) : operation('add', sum, number(length));
			}, number(first)),
		);
	}
	const isProduct = start === 0 && arrows.length > 1 && arrows.every((length) => length === arrows[0]);
	return isProduct ? [...shown, operation('multiply', number(arrows.length), number(first))] : shown;
}

function pointsShown(figure: NumberLineFigure): readonly Expression[] {
	const [first, second, ...others] = (figure.points ?? []).map((point) => point.at);
	if (first === undefined || others.length > 0) return [];
	if (second === undefined) return [number(first)];
	const distance = (p: number, q: number): Expression => ({
		kind: 'absolute',
		of: operation('subtract', number(p), number(q)),
	});
	const greaterLesser = operation('subtract', number(Math.max(first, second)), number(Math.min(first, second)));
	const shown = [distance(first, second), distance(second, first), greaterLesser];
	if (first !== 0 && second !== 0) return shown;
	return [...shown, { kind: 'absolute', of: number(first === 0 ? second : first) }];
}

/** Gives expressions that a figure cannot tell apart one text, and undefined to those it never shows. */
type Reading = (expression: Expression) => string | undefined;

function readingFor(figure: Figure): Reading {
	const anyOrder = figure.kind !== 'number-line';
	if (figure.kind === 'counters' && figure.removed !== undefined) return readRemoval;
	return (expression) => readAny(expression, anyOrder);
}

function readAny(expression: Expression, anyOrder: boolean): string | undefined {
	const plain = withoutGroups(expression);
	if (plain.kind === 'absolute') {
		const inner = readAny(plain.of, anyOrder);
		return inner === undefined ? undefined : `|${inner}|`;
	}
	const factors = factorsOf(plain);
	if (factors !== undefined) return `product ${[...factors].sort((a, b) => a - b).join(' ')}`;
	const terms = termsOf(plain);
	if (terms === undefined) return undefined;
	return `sum ${(anyOrder ? [...terms].sort((a, b) => a - b) : terms).join(' ')}`;
}

function readRemoval(expression: Expression): string | undefined {
	const plain = withoutGroups(expression);
	if (plain.kind !== 'operation' || plain.operator !== 'subtract') return undefined;
	const start = readAny(plain.left, true);
	const removed = numberIn(plain.right);
	return start === undefined || removed === undefined ? undefined : `${start} without ${removed}`;
}

function addAll(terms: readonly Expression[]): Expression {
	return terms.reduce((sum, term) => operation('add', sum, term));
}

function operation(operator: Operator, left: Expression, right: Expression): Expression {
	return { kind: 'operation', operator, left, right };
}

function number(value: number): Expression {
	return { kind: 'number', value: value + 0 };
}
