import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normaliseExpression } from '../../../item-bank/expression/normalise.ts';
import { parseMathematics } from '../../../item-bank/expression/parse.ts';
import { speakMathematics } from '../../../item-bank/expression/speak.ts';
import type { Expression } from '../../../item-bank/expression/tree.ts';
import { anyExpression } from './arbitraries.ts';

/** The only thing that speech leaves out: parentheses around a single opposite or absolute value. */
function dropSilentGroups(expression: Expression): Expression {
	if (expression.kind === 'number' || expression.kind === 'unknown') return expression;
	if (expression.kind === 'operation') {
		return { ...expression, left: dropSilentGroups(expression.left), right: dropSilentGroups(expression.right) };
	}
	const of = dropSilentGroups(expression.of);
	const isSilent =
		expression.kind === 'group' && (expression.of.kind === 'opposite' || expression.of.kind === 'absolute');
	return isSilent ? of : { ...expression, of };
}

describe('speakMathematics', () => {
	it.each([
		['-3 - 8', 'negative 3 minus 8'],
		['3 - -8', '3 minus negative 8'],
		['-(5)', 'the opposite of 5'],
		['-(-5)', 'the opposite of negative 5'],
		['-(3+4)', 'the opposite of open parenthesis 3 plus 4 close parenthesis'],
		['2(3-8)', '2 times open parenthesis 3 minus 8 close parenthesis'],
		['-12 ÷ 4', 'negative 12 divided by 4'],
		['|-3|', 'the absolute value of negative 3'],
		['-|-3| + 2', 'the opposite of the absolute value of negative 3 plus 2'],
		['|3 - 8| × 2', 'the absolute value of the quantity 3 minus 8, end of absolute value, times 2'],
		['2 × |3 - 8|', '2 times the absolute value of the quantity 3 minus 8, end of absolute value'],
		['-3 + ? = 5', 'negative 3 plus what number equals 5'],
		['-8 < -3 <= 0', 'negative 8 is less than negative 3, which is less than or equal to 0'],
		['3 > -8', '3 is greater than negative 8'],
		['3 >= -8', '3 is greater than or equal to negative 8'],
	])('reads %s as "%s"', (text, words) => {
		expect(speakMathematics(parseMathematics(text))).toBe(words);
	});

	it('never lets two expressions sound alike', () => {
		const heard = new Map<string, string>();
		fc.assert(
			fc.property(anyExpression(true), (tree) => {
				const words = speakMathematics(tree);
				const written = JSON.stringify(dropSilentGroups(normaliseExpression(tree)));
				expect(heard.get(words) ?? written).toBe(written);
				heard.set(words, written);
			}),
			{ numRuns: 3000 },
		);
		const close = [
			'||3| - 5|',
			'||3 - 5||',
			'|3| - 5',
			'|3 - 5|',
			'-|3| - 5',
			'-|3 - 5|',
			'-(3 - 5)',
			'-3 - 5',
			'-(3) - 5',
		];
		expect(new Set(close.map((text) => speakMathematics(parseMathematics(text)))).size).toBe(close.length);
	});
});
