import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../../item-bank/expression/evaluate.ts';
import { parseExpression } from '../../../../item-bank/expression/parse.ts';
import { patterns } from '../../../../item-bank/patterns/index.ts';
import { workItem } from '../../../../server/print/guide/worked-item.ts';
import { makeChoice, makeGridded, makeMultipleChoice, numberOptions } from '../../../helpers/items.ts';
import { demoItems } from '../demo-forms.ts';

describe('the work of an item', () => {
	test('goes two numbers at a time to the key, with the rule beside each line', () => {
		const { key, lines } = workItem(makeGridded({ expression: '5 + 7 × (-3)' }));
		expect(key).toBe('−16');
		expect(lines.map(({ line }) => line)).toEqual(['5 + 7 × (−3)', '5 + (−21)', '−16']);
		expect(lines.map(({ isStart }) => isStart)).toEqual([true, false, false]);
		expect(lines[1]?.note).toContain('× and ÷ come before + and −');
		expect(lines.slice(1).every(({ note }) => note !== '')).toBe(true);
	});

	test('shows why statements are true, side by side, for each right option', () => {
		const { key, lines } = workItem(makeMultipleChoice());
		expect(key).toBe('A, C');
		expect(lines.map(({ line, note }) => `${line} ${note}`)).toEqual(['−8 < −3 Option A.', '0 > −5 Option C.']);
	});

	test('gives the reason where no computation decides', () => {
		const options = numberOptions(1, 2);
		expect(workItem(makeChoice({ options, rule: { kind: 'stated', options: ['a'], reason: 'Because.' } })).reason).toBe(
			'Because.',
		);
	});

	test('names wrong ideas as what an answer is consistent with', () => {
		const options = numberOptions(-11, -7, 7, 12).map((option) =>
			option.id === 'a' ? { ...option, patterns: ['sizes-added-minus-put'] } : option,
		);
		const { wrong } = workItem(makeChoice({ options }));
		expect(wrong.map(({ answer, says }) => [answer, says])).toEqual([
			['A', '`-11`'],
			['C', '`7`'],
			['D', '`12`'],
		]);
		expect(wrong[0]?.sentence).toBe(
			'Consistent with adding the sizes and putting a minus in front, whatever the signs.',
		);
		expect(wrong[2]?.sentence).toBe('Not the answer of any pattern that the bank knows.');
	});

	test('lists common wrong numbers of a gridded item, none of them right', () => {
		const { wrong } = workItem(makeGridded({ expression: '-3 - (-8)' }));
		expect(wrong.length).toBeGreaterThan(2);
		expect(wrong.map(({ answer }) => answer)).not.toContain('5');
		expect(wrong.find(({ answer }) => answer === '−11')?.sentence).toMatch(
			/^Consistent with reading a minus followed by a negative sign as one single minus/,
		);
	});
});

test('every pattern has a sentence that reads on after "Consistent"', () => {
	for (const { sentence } of patterns) expect(sentence).toMatch(/^Consistent with [a-z].*\.$/);
});

test('every gridded item of the demo ends its work at its key', () => {
	const gridded = demoItems.flatMap(({ item }) =>
		item.kind === 'gridded' && !item.expression.includes('?') ? [item] : [],
	);
	expect(gridded.length).toBeGreaterThan(10);
	for (const item of gridded) {
		const { key, lines } = workItem(item);
		expect(lines.at(-1)?.line).toBe(key);
		expect(evaluate(parseExpression(key))).toBe(evaluate(parseExpression(item.expression)));
	}
});
