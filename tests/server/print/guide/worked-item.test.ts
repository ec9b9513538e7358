import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../../item-bank/expression/evaluate.ts';
import { parseExpression } from '../../../../item-bank/expression/parse.ts';
import { score } from '../../../../item-bank/items/score.ts';
import { patterns } from '../../../../item-bank/patterns/index.ts';
import { workItem } from '../../../../server/print/guide/worked-item.ts';
import {
	makeChoice,
	makeExplanation,
	makeGridded,
	makeInlineChoice,
	makeMatch,
	makeMultipleChoice,
	makeOrder,
	makePoint,
	numberOptions,
} from '../../../helpers/items.ts';
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

describe('the work of other kinds', () => {
	test('ends at the number to mark, and lists only wrong numbers that can be marked', () => {
		const { key, lines, wrong } = workItem(makePoint({ line: { ...makePoint().line, from: -8, to: 4 } }));
		expect(key).toBe('−7');
		expect(lines.at(-1)?.line).toBe('−7');
		const answers = wrong.map(({ answer }) => answer);
		expect(answers).toContain('−1');
		// The pattern that leads to 7 has no tick to mark.
		expect(answers).not.toContain('7');
		expect(workItem(makePoint()).wrong.map(({ answer }) => answer)).toContain('7');
	});

	test('puts entries in order and names the order that ignores signs', () => {
		// By size 2, 4, 7, 9: D, A, B, C.
		const { key, lines, wrong } = workItem(makeOrder());
		expect(key).toBe('C, A, D, B');
		expect(lines.map(({ line, note }) => `${line} ${note}`)).toEqual(['−9 < −4 < 2 < 7 From least to greatest.']);
		expect(wrong.map(({ answer }) => answer)).toContain('D, A, B, C');
		const falling = workItem(makeOrder({ direction: 'descending' }));
		expect(falling.key).toBe('B, D, A, C');
		expect(falling.wrong.map(({ answer }) => answer)).toContain('C, B, A, D');
	});

	test('works each entry to match to its partner and says how parts count', () => {
		const { key, lines, scoring, wrong } = workItem(makeMatch({ credit: 'parts' }));
		expect(key).toBe('A–C, B–A, C–D');
		expect(lines.filter(({ isStart }) => isStart).map(({ line, note }) => `${line}: ${note}`)).toEqual([
			'−3 + 8: A goes with C.',
			'3 + (−8): B goes with A.',
			'−3 + (−8): C goes with D.',
		]);
		expect(lines.filter((_, index) => lines[index + 1]?.isStart !== false).map(({ line }) => line)).toEqual([
			'5',
			'−5',
			'−11',
		]);
		expect(scoring).toBe('Credit in parts: each right pair earns 1 of 3 equal shares of the points.');
		expect(workItem(makeMatch()).scoring).toMatch(/^All pairs right/);
		const right = new Set(['A–C', 'B–A', 'C–D']);
		expect(wrong.length).toBeGreaterThan(2);
		expect(wrong.filter(({ answer }) => right.has(answer))).toEqual([]);
		// Dropping every negative sign makes 3 + 8 of -3 + 8.
		expect(wrong.find(({ answer }) => answer === 'A–B')?.sentence).toContain('dropping every negative sign');
	});

	test('shares of an item say what the scoring does', () => {
		const item = makeMultipleChoice({ credit: 'parts', points: 2 });
		expect(workItem(item).scoring).toContain('each right letter earns 1 of 2 equal shares');
		expect(score(item, { kind: 'choice', options: ['a'] }).points).toBe(1);
		expect(score(item, { kind: 'choice', options: ['a', 'b'] }).points).toBe(0);
		const match = makeMatch({ credit: 'parts' });
		expect(score(match, { kind: 'match', pairs: [{ left: 'a', right: 'c' }] }).points).toBe(1);
	});

	test('completes a statement and explains wrong choices', () => {
		const { key, lines, wrong } = workItem(makeInlineChoice());
		expect(key).toBe('A');
		expect(lines[0]?.line).toBe('−8 < −3');
		expect(wrong.map(({ answer, says }) => [answer, says])).toEqual([
			['B', '>'],
			['C', '='],
		]);
		expect(wrong[0]?.sentence).toContain('ordering numbers by their distance from zero');
	});

	test('hands a scorer the rubric', () => {
		const { key, rubric, lines, scoring } = workItem(makeExplanation());
		expect([key, lines]).toEqual(['rubric', []]);
		expect(rubric.map(({ points }) => points)).toEqual([2, 1, 0]);
		expect(scoring).toContain('A scorer gives');
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
