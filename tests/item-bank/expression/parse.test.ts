import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../item-bank/expression/evaluate.ts';
import { normaliseExpression } from '../../../item-bank/expression/normalise.ts';
import { ExpressionSyntaxError, parseExpression, parseMathematics } from '../../../item-bank/expression/parse.ts';
import { printMathematics } from '../../../item-bank/expression/print.ts';
import {
	absoluteNode,
	groupNode,
	numberNode,
	operationNode,
	oppositeNode,
} from '../../../item-bank/expression/tree.ts';

const n = numberNode;

function catchSyntax(text: string, parse: (text: string) => unknown = parseExpression): ExpressionSyntaxError {
	try {
		parse(text);
	} catch (error) {
		if (error instanceof ExpressionSyntaxError) return error;
		throw error;
	}
	throw new Error(`"${text}" was accepted`);
}

describe('parseExpression', () => {
	it.each([
		['3 + -8', operationNode('add', n(3), n(-8))],
		['3 - -8', operationNode('subtract', n(3), n(-8))],
		['3−8', operationNode('subtract', n(3), n(8))],
		['3 – 8', operationNode('subtract', n(3), n(8))],
		['3 ++ 8', operationNode('add', n(3), n(8))],
		['(-3)(5)', operationNode('multiply', n(-3), n(5))],
		['-3(5)', operationNode('multiply', n(-3), n(5))],
		['-3 × 5', operationNode('multiply', n(-3), n(5))],
		['-3*5', operationNode('multiply', n(-3), n(5))],
		['-3 · 5', operationNode('multiply', n(-3), n(5))],
		['12 / -4', operationNode('divide', n(12), n(-4))],
		['12 ÷ (-4)', operationNode('divide', n(12), n(-4))],
		['2(3-8)', operationNode('multiply', n(2), groupNode(operationNode('subtract', n(3), n(8))))],
		['2[3-8]', operationNode('multiply', n(2), groupNode(operationNode('subtract', n(3), n(8))))],
		['2|-4|', operationNode('multiply', n(2), absoluteNode(n(-4)))],
		['+7', n(7)],
		['-0', n(0)],
		['(-5)', n(-5)],
		['((-5))', n(-5)],
		['-(5)', oppositeNode(n(5))],
		['-(-5)', oppositeNode(n(-5))],
		['-(3+4)', oppositeNode(groupNode(operationNode('add', n(3), n(4))))],
		['-|−3|', oppositeNode(absoluteNode(n(-3)))],
		['5 - -(-3)', operationNode('subtract', n(5), oppositeNode(n(-3)))],
		['1 - 2 - 3', operationNode('subtract', operationNode('subtract', n(1), n(2)), n(3))],
		['1 + 2 × 3', operationNode('add', n(1), operationNode('multiply', n(2), n(3)))],
		['-(3+4) × 5', operationNode('multiply', oppositeNode(groupNode(operationNode('add', n(3), n(4)))), n(5))],
		['||3|-5|', absoluteNode(operationNode('subtract', absoluteNode(n(3)), n(5)))],
		['|3-|5||', absoluteNode(operationNode('subtract', n(3), absoluteNode(n(5))))],
		['|(2)|3||', undefined],
		['999999', n(999_999)],
	])('reads %s', (text, tree) => {
		if (tree === undefined) expect(catchSyntax(text).found).toBe('"3"');
		else expect(parseExpression(text)).toStrictEqual(tree);
	});

	it.each([
		['', 0, 'nothing'],
		['   ', 3, 'nothing'],
		['3 +', 3, 'the end'],
		['3 +++ 8', 4, '"+"'],
		['--5', 1, '"-"'],
		['3 × × 8', 4, '"×"'],
		['3.5', 1, '"3.5"'],
		['1,000', 1, '"1,000"'],
		['1000000', 0, '"1000000"'],
		['007', 0, '"007"'],
		['3 8', 2, '"8"'],
		['(3)8', 3, '"8"'],
		['2x', 1, '"x"'],
		['3 + 😀', 4, '"😀"'],
		['(3 + 4', 6, 'the end'],
		['(3 + 4]', 6, '"]"'],
		['3 + 4)', 5, '")"'],
		['()', 1, '")"'],
		['||', 2, 'the end'],
		['|3', 2, 'the end'],
		['3 = 3', 2, '"="'],
		['3 + ?', 4, '"?"'],
		['12 ÷ 2(3)', 6, '"("'],
		['12 ÷ -2|3|', 7, '"|"'],
		['1+1+1+1+1+1+1+1+1', 16, '"1"'],
	])('refuses "%s" at position %i, found %s', (text, position, found) => {
		const error = catchSyntax(text);
		expect({ code: error.code, position: error.position, found: error.found }).toStrictEqual({
			code: 'expression-syntax',
			position,
			found,
		});
		expect(error.message).toContain(error.expected);
	});

	it('refuses more than 200 characters and more than 20 nested parentheses', () => {
		expect(parseExpression(`${' '.repeat(199)}5`)).toStrictEqual(n(5));
		expect(catchSyntax(`${' '.repeat(200)}5`).position).toBe(200);
		expect(parseExpression(`${'('.repeat(20)}5${')'.repeat(20)}`)).toStrictEqual(n(5));
		expect(catchSyntax(`${'('.repeat(21)}5${')'.repeat(21)}`).position).toBe(20);
	});

	it('answers any text with a tree or a syntax error that points into it', () => {
		const typed = fc.string({ unit: fc.constantFrom(...'0123459 -−+×÷/*()[]|?=<>≤.,x'), maxLength: 24 });
		fc.assert(
			fc.property(typed, (text) => {
				try {
					const line = printMathematics(parseMathematics(text));
					expect(printMathematics(parseMathematics(line))).toBe(line);
				} catch (error) {
					expect(error).toBeInstanceOf(ExpressionSyntaxError);
					const { position } = error as ExpressionSyntaxError;
					expect(position >= 0 && position <= text.length).toBe(true);
				}
			}),
			{ numRuns: 3000 },
		);
	});
});

describe('parseMathematics', () => {
	it('reads statements with typed relations and the unknown', () => {
		expect(parseMathematics('-8 < -3 <= ? >= -9')).toStrictEqual({
			kind: 'statement',
			sides: [n(-8), n(-3), { kind: 'unknown' }, n(-9)],
			relations: ['<', '≤', '≥'],
		});
		expect(parseMathematics('3 + (?)')).toStrictEqual(operationNode('add', n(3), { kind: 'unknown' }));
	});

	it('allows eight numbers on each side', () => {
		const eight = '1+1+1+1+1+1+1+1';
		expect(parseMathematics(`${eight} = ${eight}`).kind).toBe('statement');
		expect(catchSyntax(`${eight} = ${eight}+1`, parseMathematics).position).toBe(34);
	});

	it.each([
		['= 3', 0],
		['3 =', 3],
		['3 = = 3', 4],
		['3 =< 4', 3],
		['(3 = 3)', 3],
		['3 ? 8', 2],
		['2?', 1],
	])('refuses "%s" at position %i', (text, position) => {
		expect(catchSyntax(text, parseMathematics).position).toBe(position);
	});

	it('leaves normal trees alone', () => {
		const tree = parseExpression('2 × (3 − 8) + |−4|');
		expect(normaliseExpression(tree)).toStrictEqual(tree);
		expect(evaluate(tree)).toBe(-6);
	});
});
