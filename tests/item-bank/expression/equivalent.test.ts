import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listNodes } from '../../../item-bank/expression/count.ts';
import {
	findRewritings,
	findWrittenRewritings,
	isEquivalent,
	rewritings,
} from '../../../item-bank/expression/equivalent.ts';
import { evaluate } from '../../../item-bank/expression/evaluate.ts';
import { ExpressionSyntaxError, parseExpression } from '../../../item-bank/expression/parse.ts';
import {
	type Expression,
	groupNode,
	numberNode,
	operationNode,
	oppositeNode,
} from '../../../item-bank/expression/tree.ts';
import { anyExpression, findValue, valuedExpression } from './arbitraries.ts';

const find = (a: string, b: string) => findRewritings(parseExpression(a), parseExpression(b))?.map(({ id }) => id);
const findWritten = (a: string, b: string) => findWrittenRewritings(a, b)?.map(({ id }) => id);

/** The other ways to write one node that a single rewriting gives, written down here apart from the code under test. */
function listWays(node: Expression): readonly Expression[] {
	const ways: Expression[] = [oppositeNode(oppositeNode(node)), groupNode(node)];
	if (node.kind !== 'operation') return ways;
	const { operator, left, right } = node;
	if (operator === 'subtract') ways.push(operationNode('add', left, oppositeNode(right)));
	if (operator === 'add' || operator === 'multiply') {
		ways.push(operationNode(operator, right, left));
		if (left.kind === 'operation' && left.operator === operator) {
			ways.push(operationNode(operator, left.left, operationNode(operator, left.right, right)));
		}
	}
	if (operator === 'multiply' || operator === 'divide') {
		ways.push(operationNode(operator, oppositeNode(left), oppositeNode(right)));
		ways.push(oppositeNode(operationNode(operator, oppositeNode(left), right)));
		ways.push(oppositeNode(operationNode(operator, left, oppositeNode(right))));
	}
	return ways;
}

function rewriteAt(tree: Expression, node: number, choice: number): Expression {
	const target = node % listNodes(tree).length;
	let index = -1;
	const visit = (current: Expression): Expression => {
		index += 1;
		if (index === target) {
			const ways = listWays(current);
			return ways[choice % ways.length] ?? current;
		}
		if (current.kind === 'number' || current.kind === 'unknown') return current;
		if (current.kind !== 'operation') return { ...current, of: visit(current.of) };
		const left = visit(current.left);
		return { ...current, left, right: visit(current.right) };
	};
	return visit(tree);
}

describe('findRewritings', () => {
	it.each([
		['3 - 8', '3 + -8', ['subtraction-as-adding-the-opposite']],
		['3 - -8', '3 + 8', ['subtraction-as-adding-the-opposite']],
		['3 - 8', '-8 + 3', ['subtraction-as-adding-the-opposite', 'commuted-sum']],
		['3 - (4 + 5)', '3 + -(4 + 5)', ['subtraction-as-adding-the-opposite']],
		['3 - 4 × 5', '3 + -(4 × 5)', ['subtraction-as-adding-the-opposite']],
		['3 - -(4 + 5)', '3 + (4 + 5)', ['subtraction-as-adding-the-opposite', 'opposite-of-opposite']],
		['-8 + 3', '3 + -8', ['commuted-sum']],
		['1 + 2 + 3', '3 + 1 + 2', ['commuted-sum']],
		['(3 + 4) + 5', '5 + (3 + 4)', ['commuted-sum']],
		['(3 + 4) + 5', '3 + (4 + 5)', ['regrouped-sum']],
		['(3 + 4) + 5', '3 + 4 + 5', ['redundant-parentheses']],
		['3 + (4 × 5)', '3 + 4 × 5', ['redundant-parentheses']],
		['((3 + 4)) × 2', '(3 + 4) × 2', ['redundant-parentheses']],
		['-(5)', '-5', ['redundant-parentheses']],
		['-3 × 5', '5 × -3', ['commuted-product']],
		['(2 × 3) × 4', '2 × (3 × 4)', ['regrouped-product']],
		['-(-5)', '5', ['opposite-of-opposite']],
		['3 + -(-(4 + 5))', '3 + (4 + 5)', ['opposite-of-opposite']],
		['-(0)', '0', ['zero-has-no-sign']],
		['-3 × 5', '-(3 × 5)', ['sign-of-product']],
		['-3 × 5', '3 × -5', ['sign-of-product']],
		['-3 × -5', '3 × 5', ['sign-of-product']],
		['-12 ÷ 4', '12 ÷ -4', ['sign-of-quotient']],
		['-12 ÷ 4', '-(12 ÷ 4)', ['sign-of-quotient']],
		['2 × -3 × 4', '-(2 × 3 × 4)', ['sign-of-product']],
		['2 × (8 ÷ 4)', '8 ÷ 4 × 2', ['commuted-product']],
		['(8 ÷ 4) × 2', '8 ÷ 4 × 2', ['redundant-parentheses']],
		['2 + (8 - 4)', '8 - 4 + 2', ['commuted-sum']],
		['0 × 5', '-(0 × 5)', ['redundant-parentheses', 'zero-has-no-sign', 'sign-of-product']],
		['3 + -8', '3 + (-8)', []],
		['2(3)', '2 × 3', []],
	])('%s and %s: %j', (a, b, ids) => {
		expect(find(a, b)).toStrictEqual(ids);
		expect(find(b, a)).toStrictEqual(ids);
	});

	it.each([
		['3 - 8', '8 - 3'],
		['3 - 8', '-5'],
		['3 - 8', '3 + 8'],
		['3 - (4 + 5)', '3 - 4 + 5'],
		['3 - (4 - 5)', '3 - 4 - 5'],
		['12 ÷ 4', '4 ÷ 12'],
		['8 ÷ (4 ÷ 2)', '8 ÷ 4 ÷ 2'],
		['2 × (3 + 4)', '2 × 3 + 4'],
		['2 × (3 + 4)', '2 × 3 + 2 × 4'],
		['|-3|', '3'],
		['-3 - 8', '-(3 - 8)'],
		['4 × 3', '6 × 2'],
	])('%s and %s are not linked', (a, b) => {
		expect(find(a, b)).toBeUndefined();
		expect(isEquivalent(parseExpression(a), parseExpression(b))).toBe(false);
	});

	it('links only expressions of equal value', () => {
		fc.assert(
			fc.property(valuedExpression(), valuedExpression(), (a, b) => {
				if (isEquivalent(a, b)) expect(evaluate(a)).toBe(evaluate(b));
			}),
		);
		// Few numbers and signs, so that many pairs are linked.
		const part = fc.constantFrom('1', '-1', '2', '-(2)', '(1 - 2)', '-(-2)');
		const text = fc.tuple(part, fc.constantFrom('+', '-', '×'), part).map((parts) => parts.join(' '));
		let linked = 0;
		fc.assert(
			fc.property(text, text, (a, b) => {
				if (find(a, b) === undefined) return;
				linked += 1;
				expect(evaluate(parseExpression(a))).toBe(evaluate(parseExpression(b)));
			}),
			{ numRuns: 2000, seed: 7 },
		);
		expect(linked).toBeGreaterThan(50);
	});

	it('links an expression with itself by nothing, and with each single rewriting of it', () => {
		fc.assert(
			fc.property(anyExpression(true), anyExpression(true), (a, b) => {
				const pairs = [
					[operationNode('subtract', a, b), operationNode('add', a, oppositeNode(b))],
					[operationNode('add', a, b), operationNode('add', b, a)],
					[operationNode('multiply', a, b), operationNode('multiply', b, a)],
					[oppositeNode(oppositeNode(a)), a],
					[groupNode(a), a],
				] as const;
				expect(findRewritings(a, a)).toStrictEqual([]);
				for (const [first, second] of pairs) {
					expect(isEquivalent(first, second)).toBe(true);
					expect(findValue(first)).toBe(findValue(second));
				}
			}),
			{ numRuns: 300 },
		);
	});

	it('links an expression with what any walk of rewritings anywhere in it leads to', () => {
		const walk = fc.array(fc.tuple(fc.nat(), fc.nat()), { minLength: 1, maxLength: 5 });
		fc.assert(
			fc.property(anyExpression(true), walk, (tree, choices) => {
				const end = choices.reduce((from, [node, choice]) => rewriteAt(from, node, choice), tree);
				expect(isEquivalent(tree, end)).toBe(true);
				if (findValue(tree) !== undefined && findValue(end) !== undefined) expect(findValue(end)).toBe(findValue(tree));
			}),
			{ numRuns: 500 },
		);
	});

	it('is quick for long expressions that need many rewritings', () => {
		const ids = find('-(-5) + (2 × 3) × -4 - -(0) + 7', '7 + 5 + -(2 × (4 × 3)) + 0');
		expect(ids).toStrictEqual([
			'subtraction-as-adding-the-opposite',
			'opposite-of-opposite',
			'commuted-sum',
			'commuted-product',
			'regrouped-product',
			'sign-of-product',
		]);
	});
});

describe('findWrittenRewritings', () => {
	it('sees the signs and parentheses that parsing drops', () => {
		expect(findWritten('+7', '7')).toStrictEqual(['plus-sign-dropped']);
		expect(findWritten('-0', '0')).toStrictEqual(['zero-has-no-sign']);
		expect(findWritten('(5) + 3', '5 + 3')).toStrictEqual(['redundant-parentheses']);
		expect(findWritten('3 - +8', '3 + -8')).toStrictEqual(['subtraction-as-adding-the-opposite', 'plus-sign-dropped']);
		expect(findWritten('3 + -8', '3 + (-8)')).toStrictEqual([]);
		expect(findWritten('+7', '-7')).toBeUndefined();
		expect(() => findWritten('3 = 3', '3')).toThrow(ExpressionSyntaxError);
	});

	it('gives every rewriting a name', () => {
		expect(rewritings.every(({ name }) => name.length > 10)).toBe(true);
		expect(find('+7', '7')).toStrictEqual([]);
		expect(numberNode(7)).toStrictEqual(parseExpression('+7'));
	});
});
