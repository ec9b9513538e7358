import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isEquivalent } from '../../../item-bank/expression/equivalent.ts';
import { normaliseExpression, normaliseMathematics } from '../../../item-bank/expression/normalise.ts';
import { parseExpression, parseMathematics } from '../../../item-bank/expression/parse.ts';
import { printMathematics } from '../../../item-bank/expression/print.ts';
import { groupNode, numberNode, operationNode, oppositeNode } from '../../../item-bank/expression/tree.ts';
import { anyExpression, anyStatement, findValue } from './arbitraries.ts';

describe('printMathematics', () => {
	it.each([
		['3 + -8', '3 + (−8)', '3 − 8'],
		['3--8', '3 − (−8)', '3 + 8'],
		['-3-8', '−3 − 8', '−3 − 8'],
		['(-3)(-5)', '−3 × (−5)', '−3 × (−5)'],
		['4 + (-3)(5)', '4 + (−3) × 5', '4 + (−3) × 5'],
		['2(-3+8)', '2 × (−3 + 8)', '2 × (−3 + 8)'],
		['5 - |-3 - 4|', '5 − |−3 − 4|', '5 − |−3 − 4|'],
		['5 - -(-3)', '5 − (−(−3))', '5 − 3'],
		['5 + -(3 - 4)', '5 + (−(3 − 4))', '5 − (3 − 4)'],
		['-(5)', '−(5)', '−(5)'],
		['(3 + 4) + 5', '(3 + 4) + 5', '(3 + 4) + 5'],
		['-3+?=-5', '−3 + ? = −5', '−3 + ? = −5'],
		['-8<-3<=0', '−8 < −3 ≤ 0', '−8 < −3 ≤ 0'],
	])('writes %s as %s, shortened %s', (text, textbook, shortened) => {
		const tree = parseMathematics(text);
		expect(printMathematics(tree)).toBe(textbook);
		expect(printMathematics(tree, 'shortened')).toBe(shortened);
	});

	it('writes the parentheses that the tree needs and no others', () => {
		const [one, two, three] = [numberNode(1), numberNode(2), numberNode(3)];
		const sum = operationNode('add', one, two);
		expect(printMathematics(operationNode('add', sum, three))).toBe('1 + 2 + 3');
		expect(printMathematics(operationNode('add', three, sum))).toBe('3 + (1 + 2)');
		expect(printMathematics(operationNode('multiply', sum, three))).toBe('(1 + 2) × 3');
		expect(printMathematics(oppositeNode(oppositeNode(sum)))).toBe('−(−(1 + 2))');
		expect(printMathematics(groupNode(numberNode(-1)))).toBe('−1');
		expect(printMathematics(numberNode(-0))).toBe('0');
	});

	it('is read back as the same tree up to normalising', () => {
		fc.assert(
			fc.property(anyExpression(), (tree) => {
				expect(parseExpression(printMathematics(tree))).toStrictEqual(normaliseExpression(tree));
			}),
			{ numRuns: 1000 },
		);
		fc.assert(
			fc.property(anyStatement(), (tree) => {
				const line = printMathematics(tree);
				if (line.length <= 200) expect(parseMathematics(line)).toStrictEqual(normaliseMathematics(tree));
			}),
			{ numRuns: 1000 },
		);
	});

	it('normalises once and for all without changing the line or the value', () => {
		fc.assert(
			fc.property(anyExpression(true), (tree) => {
				const normal = normaliseExpression(tree);
				expect(normaliseExpression(normal)).toStrictEqual(normal);
				expect(printMathematics(normal)).toBe(printMathematics(tree));
				expect(printMathematics(normal, 'shortened')).toBe(printMathematics(tree, 'shortened'));
				expect(findValue(normal)).toBe(findValue(tree));
			}),
			{ numRuns: 1000 },
		);
	});

	it('shortened gives an equivalent expression', () => {
		fc.assert(
			fc.property(anyExpression(true), (tree) => {
				const shortened = parseMathematics(printMathematics(tree, 'shortened'));
				if (shortened.kind === 'statement') throw new Error('a statement');
				expect(isEquivalent(tree, shortened)).toBe(true);
			}),
			{ numRuns: 1000 },
		);
	});
});
