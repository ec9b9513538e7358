import { execFileSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countNumbers, countOperations, countUnknowns } from '../../../item-bank/expression/count.ts';
import { EvaluationError, evaluate, isTrue, solveUnknown } from '../../../item-bank/expression/evaluate.ts';
import { parseExpression, parseMathematics } from '../../../item-bank/expression/parse.ts';
import { printMathematics } from '../../../item-bank/expression/print.ts';
import { type Expression, numberNode, type Statement } from '../../../item-bank/expression/tree.ts';
import { hasCommand, requireOutside } from '../../helpers/reference.ts';
import { valuedExpression } from './arbitraries.ts';

function parseStatement(text: string): Statement {
	const tree = parseMathematics(text);
	if (tree.kind !== 'statement') throw new Error(`"${text}" is no statement`);
	return tree;
}

function catchEvaluation(run: () => unknown): EvaluationError {
	try {
		run();
	} catch (error) {
		if (error instanceof EvaluationError) return error;
		throw error;
	}
	throw new Error('no error');
}

/** The printed line in the language of bc: operators mapped, absolute values as calls of a function a. */
function writeForBc(line: string): string {
	let written = '';
	let canEnd = false;
	for (const glyph of line) {
		if (glyph === '|') written += canEnd ? ')' : 'a(';
		else written += { '−': '-', '×': '*', '÷': '/' }[glyph] ?? glyph;
		if (glyph !== ' ' && !(glyph === '|' && canEnd)) canEnd = /[0-9)]/.test(glyph);
	}
	return written;
}

describe('evaluate', () => {
	it.each([
		['3 - 8', -5],
		['3 - -8', 11],
		['-3 - 8', -11],
		['-3 + 8', 5],
		['8 + -8', 0],
		['-3 × 5', -15],
		['(-3)(-5)', 15],
		['-12 ÷ 4', -3],
		['-12 ÷ -4', 3],
		['0 × -5', 0],
		['0 ÷ -5', 0],
		['-(0)', 0],
		['|-9|', 9],
		['-|-9|', -9],
		['2 + 3 × 4', 14],
		['(2 + 3) × 4', 20],
		['20 - 8 - 5', 7],
		['20 ÷ 2 × 5', 50],
		['-(3 + 4) × 2', -14],
		['5 - -(-3)', 2],
		['|3 - |5||', 2],
		['||3| - 5|', 2],
		['999999 - 0', 999_999],
	])('%s is %i', (text, value) => {
		expect(Object.is(evaluate(parseExpression(text)), value)).toBe(true);
	});

	it.each([
		['7 ÷ 2', 'expression-inexact-division', [7, 2], '7 ÷ 2'],
		['1 + -7 ÷ (3 - 5)', 'expression-inexact-division', [-7, -2], '−7 ÷ (−2)'],
		['5 ÷ (3 - 3)', 'expression-zero-division', [5, 0], '5 ÷ 0'],
		['0 ÷ 0', 'expression-zero-division', [0, 0], '0 ÷ 0'],
		['999999 + 1', 'expression-out-of-range', [999_999, 1], '999999 + 1'],
		['-1000 × 1000 ÷ 1000', 'expression-out-of-range', [-1000, 1000], '−1000 × 1000'],
	])('refuses %s', (text, code, operands, printed) => {
		const error = catchEvaluation(() => evaluate(parseExpression(text)));
		expect({ code: error.code, operands: error.operands, printed: error.printed }).toStrictEqual({
			code,
			operands,
			printed,
		});
		expect(error.message).toContain(printed);
	});

	it('refuses an unknown and numbers that the bank does not hold', () => {
		const unknown: Expression = { kind: 'unknown' };
		expect(catchEvaluation(() => evaluate(unknown)).code).toBe('expression-unknown');
		expect(catchEvaluation(() => evaluate(numberNode(1.5))).code).toBe('expression-out-of-range');
		expect(catchEvaluation(() => evaluate(numberNode(1_000_000))).code).toBe('expression-out-of-range');
	});

	// Source: bc, the arbitrary precision calculator of the operating system (POSIX), integer arithmetic with scale 0.
	it.skipIf(!requireOutside('bc', hasCommand('bc')))(
		'agrees with bc on 10,000 expressions',
		{ timeout: 20_000 },
		() => {
			const trees = fc.sample(valuedExpression(), { numRuns: 10_000, seed: 20 });
			const lines = trees.map((tree) => printMathematics(tree));
			const program = ['define a(x) { if (x < 0) return (-x); return (x); }', ...lines.map(writeForBc), ''].join('\n');
			const output = execFileSync('bc', ['-q'], { input: program, encoding: 'utf8' }).trim().split('\n');
			const ours = lines.map((line) => `${line} = ${evaluate(parseExpression(line))}`);
			expect(ours).toStrictEqual(lines.map((line, index) => `${line} = ${output[index]}`));
			expect(trees.map((tree) => evaluate(tree))).toStrictEqual(output.map(Number));
			// The sample is worth the name: most lines differ, and all operators, bars and opposites are common in it.
			expect(new Set(lines).size).toBeGreaterThan(8000);
			for (const sign of ['+', ' − ', '×', '÷', '|', '(−']) {
				expect(lines.filter((line) => line.includes(sign)).length).toBeGreaterThan(1500);
			}
		},
	);
});

describe('isTrue', () => {
	it.each([
		['-8 < -3', true],
		['-8 > -3', false],
		['-8 < -3 < 0', true],
		['-8 < 0 < -3', false],
		['3 - 8 = 3 + -8 = -5', true],
		['|-3| ≥ 3', true],
		['|-3| ≤ 2', false],
		['-3 ≤ -3', true],
	])('%s: %s', (text, expected) => {
		expect(isTrue(parseStatement(text))).toBe(expected);
	});

	it('refuses an unknown', () => {
		expect(catchEvaluation(() => isTrue(parseStatement('? < 3'))).code).toBe('expression-unknown');
	});
});

describe('solveUnknown', () => {
	it.each([
		['-3 + ? = 5', 8],
		['? + -3 = 5', 8],
		['? - 8 = -5', 3],
		['3 - ? = 11', -8],
		['-3 × ? = 15', -5],
		['? ÷ -4 = 3', -12],
		['-12 ÷ ? = 3', -4],
		['-(?) = 5', -5],
		['-5 = 3 + ?', -8],
		['2(? - 3) = 6 - 16', -2],
		['|? × 0 - 4| + ? = 1', undefined],
		['|?| = 0', 0],
		['3 - 8 = 3 + ? = -5', -8],
	])('%s gives %s', (text, value) => {
		const statement = parseStatement(text);
		if (value === undefined) expect(catchEvaluation(() => solveUnknown(statement)).code).toBe('expression-unsolvable');
		else expect(Object.is(solveUnknown(statement), value)).toBe(true);
	});

	it.each([
		['-3 + ? < 5', '"<"'],
		['? + ? = 4', '2 times'],
		['3 + 4 = 7', '0 times'],
		['2 × ? = 7', 'none'],
		['0 × ? = 0', 'several'],
		['0 × ? = 3', 'none'],
		['0 ÷ ? = 0', 'several'],
		['7 ÷ ? = 0', 'none'],
		['? ÷ 0 = 7', 'none'],
		['|?| = 5', 'several'],
		['|?| = -5', 'none'],
		['3 + ? = 4 = 5', 'different'],
		['? - 999999 = 1', 'none'],
		['? × 1000 ÷ 1000 = 5000', 'none'],
	])('refuses %s', (text, found) => {
		const error = catchEvaluation(() => solveUnknown(parseStatement(text)));
		expect(error.code).toBe('expression-unsolvable');
		expect(error.message).toContain(found);
	});

	it('finds a number that was taken out of an expression, when it is the only one', () => {
		fc.assert(
			fc.property(valuedExpression(), fc.nat(), (tree, pick) => {
				const holed = takeOut(tree, pick % countNumbers(tree));
				const statement: Statement = {
					kind: 'statement',
					sides: [holed.tree, numberNode(evaluate(tree))],
					relations: ['='],
				};
				try {
					expect(solveUnknown(statement)).toBe(holed.value);
				} catch (error) {
					if (!(error instanceof EvaluationError)) throw error;
					expect(error.message).toContain('several');
				}
			}),
			{ numRuns: 1000 },
		);
	});
});

describe('counts', () => {
	it('counts numbers, unknowns and steps of work', () => {
		const tree = parseMathematics('-(3 + ?) × |-4| = 2(-(-5))');
		expect([countNumbers(tree), countUnknowns(tree), countOperations(tree)]).toStrictEqual([4, 1, 6]);
	});
});

function takeOut(tree: Expression, index: number): { readonly tree: Expression; readonly value: number } {
	let seen = -1;
	let value = Number.NaN;
	const walk = (node: Expression): Expression => {
		if (node.kind === 'number') {
			seen += 1;
			if (seen !== index) return node;
			value = node.value;
			return { kind: 'unknown' };
		}
		if (node.kind === 'unknown') return node;
		if (node.kind === 'operation') return { ...node, left: walk(node.left), right: walk(node.right) };
		return { ...node, of: walk(node.of) };
	};
	return { tree: walk(tree), value };
}
