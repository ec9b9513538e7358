import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evaluate, solveUnknown } from '../../../item-bank/expression/evaluate.ts';
import { parseMathematics } from '../../../item-bank/expression/parse.ts';
import { printMathematics } from '../../../item-bank/expression/print.ts';
import { findInverse } from '../../../item-bank/patterns/inverse.ts';

function inverseOf(text: string): string | undefined {
	const statement = parseMathematics(text);
	if (statement.kind !== 'statement') throw new Error(`expected a statement, found ${text}`);
	const inverse = findInverse(statement);
	return inverse && printMathematics(inverse);
}

test.each([
	['-8 + ? = 5', '5 − (−8)'],
	['? + (-8) = 5', '5 − (−8)'],
	['5 = ? - 8', '5 + 8'],
	['5 - ? = -8', '5 − (−8)'],
	['? × (-6) = 42', '42 ÷ (−6)'],
	['42 ÷ ? = -6', '42 ÷ (−6)'],
	['? ÷ (-6) = 7', '7 × (−6)'],
	['(3 - 8) + ? = 2', '2 − (3 − 8)'],
])('the unknown of %s is found by %s', (text, inverse) => {
	expect(inverseOf(text)).toBe(inverse);
});

test.each(['? = 5', '-(?) = 5', '2 + 3 = 5', '? + 2 + 3 = 5', '? + 2 > 5', '? + ? = 4', '2 + ? = 5 = 6 - 1'])(
	'%s is not undone by one operation',
	(text) => {
		expect(inverseOf(text)).toBeUndefined();
	},
);

test('the inverse is worth the unknown', () => {
	const number = fc.integer({ min: -40, max: 40 });
	fc.assert(
		fc.property(number, number, fc.constantFrom('+', '-', '×'), fc.boolean(), (known, unknown, sign, isLeft) => {
			fc.pre(sign !== '×' || known !== 0);
			const side = isLeft ? `? ${sign} (${known})` : `${known} ${sign} ?`;
			const [left, right] = isLeft ? [unknown, known] : [known, unknown];
			const result = sign === '+' ? left + right : sign === '-' ? left - right : left * right;
			const statement = parseMathematics(`${side} = ${result}`);
			if (statement.kind !== 'statement') throw new Error('expected a statement');
			const inverse = findInverse(statement);
			expect(inverse && evaluate(inverse)).toBe(solveUnknown(statement));
		}),
	);
});
