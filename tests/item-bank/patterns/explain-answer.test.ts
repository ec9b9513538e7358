import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseExpression } from '../../../item-bank/expression/parse.ts';
import { explainAnswer, findPatternsBehind, UnknownOptionError } from '../../../item-bank/patterns/explain-answer.ts';
import { getPattern, patterns } from '../../../item-bank/patterns/index.ts';
import { findWrongAnswer } from '../../../item-bank/patterns/pattern.ts';
import { findRightAnswer, subjectOf, twoNumbers } from '../../../item-bank/patterns/subject.ts';
import { listWrongAnswers } from '../../../item-bank/patterns/wrong-answers.ts';
import { makeChoice, makeGridded, makeMultipleChoice } from '../../helpers/items.ts';

const explain = (text: string, answer: number) => explainAnswer(subjectOf(parseExpression(text)), answer);

describe('explaining a wrong answer', () => {
	test('names every pattern that leads to it, as one group', () => {
		// 3 − (−8): worked by hand in the trade reference, section 5; signs dropped is 3 − 8 as well.
		expect(explain('3 - (-8)', -5).patterns).toEqual([
			'signs-dropped',
			'second-minus-lost',
			'operation-changed-sign-kept',
			'direction-by-operation',
		]);
	});

	test('says which of them no other numbers would tell apart', () => {
		// "For a − (−b), B02, B10 and B13 always agree": trade reference, section 5.
		expect(explain('3 - (-8)', -5).inseparable).toEqual([
			['signs-dropped', 'second-minus-lost', 'operation-changed-sign-kept', 'direction-by-operation'],
		]);
		expect(explain('-3 - (-8)', -11).inseparable).toEqual([
			['second-minus-lost', 'leading-minus-parked', 'operation-changed-sign-kept', 'direction-by-operation'],
		]);
		const merged = explain('-4 + (-4)', 0);
		expect(merged.patterns).toEqual([
			'leading-minus-parked',
			'sizes-subtracted-first-sign-kept',
			'larger-minus-smaller',
			'direction-by-operation',
		]);
	});

	test('on a grid, a reversed subtraction and a sign left off look the same', () => {
		const { patterns: behind, inseparable } = explainAnswer(makeGridded({ expression: '-6 - 4' }), 10);
		expect(behind).toEqual(['two-minuses-make-plus', 'subtraction-reversed', 'sign-left-off']);
		expect(inseparable).toEqual([['two-minuses-make-plus', 'subtraction-reversed', 'sign-left-off']]);
	});

	test('offers two patterns together as weaker, worked by hand', () => {
		// 2 + (−5): right for plus makes 7, and the start tick counted makes 6.
		const { patterns: behind, pairs } = explain('2 + (-5)', 6);
		expect(behind).toEqual([]);
		expect(pairs).toContainEqual(['direction-by-operation', 'start-tick-counted']);
		// −6 − 4: the operation changed makes −2, and the sign left off makes 2.
		const onGrid = explainAnswer(makeGridded({ expression: '-6 - 4' }), 2);
		expect(onGrid.patterns).not.toContain('operation-changed-sign-kept');
		expect(onGrid.pairs).toContainEqual(['operation-changed-sign-kept', 'sign-left-off']);
		// −2 − 3 + (−4): the operation changed makes −2 + 3 = 1, then right for plus makes 1 + 4 = 5.
		expect(explain('-2 - 3 + (-4)', 5).pairs).toContainEqual(['operation-changed-sign-kept', 'direction-by-operation']);
	});

	test('names a pair once, also where either idea may come first', () => {
		const named = explain('-2 - 3 + (-4)', 5).pairs.map((pair) => [...pair].sort().join(' '));
		expect(new Set(named).size).toBe(named.length);
	});

	test('has nothing to say of a right answer, and no pattern for a number that none leads to', () => {
		expect(explain('3 - 8', -5)).toEqual({ isRight: true, patterns: [], inseparable: [], pairs: [] });
		expect(explain('3 - 8', 777)).toEqual({ isRight: false, patterns: [], inseparable: [], pairs: [] });
	});

	test('explains an order as well as a number', () => {
		expect(explainAnswer({ kind: 'ordering', numbers: [-8, -7] }, [-7, -8]).patterns).toEqual(['order-by-size']);
		expect(explainAnswer({ kind: 'ordering', numbers: [-8, -7] }, [-8, -7]).isRight).toBe(true);
	});
});

describe('explaining a response to an item', () => {
	test('takes an option by its id', () => {
		const item = makeChoice();
		expect(findPatternsBehind(item, 'd')).toEqual(['signs-dropped']);
		expect(findPatternsBehind(item, 'a')).toEqual([
			'leading-minus-parked',
			'sizes-added-minus-put',
			'product-rule-in-sum',
		]);
		expect(explainAnswer(item, 'b').isRight).toBe(true);
		expect(() => explainAnswer(item, 'e')).toThrow(UnknownOptionError);
		expect(() => explainAnswer(makeGridded(), 'a')).toThrow(/answered with a number/);
	});

	test('takes a statement that looks true under a pattern', () => {
		const item = makeMultipleChoice();
		expect(findPatternsBehind(item, 'b')).toEqual(['order-by-size']);
		expect(findPatternsBehind(item, 'd')).toEqual(['order-by-size']);
		expect(explainAnswer(item, 'a').isRight).toBe(true);
	});

	test('works backwards from an unknown', () => {
		const item = makeGridded({ expression: '-8 + ? = 5' });
		expect(findPatternsBehind(item, -3)).toEqual(findPatternsBehind(twoNumbers('subtract', 5, -8), -3));
		expect(findPatternsBehind(item, -3)).toContain('second-minus-lost');
	});

	test('reads the figure of the stem', () => {
		const item = makeChoice({
			given: 'counters',
			stem: [{ kind: 'figure', figure: { kind: 'counters', plus: 3, minus: 8 } }],
			rule: { kind: 'same-value', expression: '3 + (-8)' },
		});
		expect(findPatternsBehind(item, 11)).toContain('all-counters-counted');
		expect(findPatternsBehind(item, -8)).toEqual(['majority-colour-only']);
	});

	test('holds a form against the form a pattern works with, where forms are asked for', () => {
		const options = ['7 - 4', '-4 - (-7)', '-7 - (-4)'].map((math, index) => ({
			id: 'abc'.charAt(index),
			content: { kind: 'mathematics' as const, math },
		}));
		const figure = { kind: 'counters' as const, plus: 0, minus: 7, removed: { sign: 'minus' as const, count: 4 } };
		const item = makeChoice({
			given: 'counters',
			answerIn: 'expression',
			stem: [{ kind: 'figure', figure }],
			options,
			rule: { kind: 'shown' },
		});
		expect(findPatternsBehind(item, 'a')).toContain('signs-dropped');
		expect(findPatternsBehind(item, 'a')).not.toContain('subtraction-reversed');
		expect(findPatternsBehind(item, 'b')).toContain('subtraction-reversed');
		expect(findPatternsBehind(item, 'b')).not.toContain('signs-dropped');
	});

	test('has nothing to hold against words', () => {
		const words = ['up', 'down'].map((text, index) => ({
			id: 'ab'.charAt(index),
			content: { kind: 'text' as const, text },
		}));
		const item = makeChoice({ options: words, rule: { kind: 'stated', options: ['a'], reason: 'why' } });
		expect(explainAnswer(item, 'b')).toEqual({ isRight: false, patterns: [], inseparable: [], pairs: [] });
	});
});

describe('laws', () => {
	const operators = ['add', 'subtract', 'multiply', 'divide'] as const;
	const number = fc.integer({ min: -20, max: 20 });
	const subject = fc
		.tuple(fc.constantFrom(...operators), number, number)
		.map(([operator, left, right]) => twoNumbers(operator, left, right));

	test('a pattern explains exactly the wrong answer it leads to', () => {
		fc.assert(
			fc.property(subject, fc.integer({ min: -45, max: 45 }), (asked, answer) => {
				const expected = patterns.filter((pattern) => findWrongAnswer(pattern, asked) === answer).map(({ id }) => id);
				if (findRightAnswer(asked) !== answer) expect(findPatternsBehind(asked, answer)).toEqual(expected);
			}),
		);
	});

	test('every wrong answer listed is explained by its patterns, and pairs never repeat what one pattern does', () => {
		fc.assert(
			fc.property(subject, (asked) => {
				for (const { answer, patterns: ids } of listWrongAnswers(asked)) {
					const explanation = explainAnswer(asked, answer);
					expect(explanation.patterns).toEqual(ids);
					for (const id of explanation.pairs.flat()) expect(ids).not.toContain(id);
					for (const group of explanation.inseparable) for (const id of group) expect(ids).toContain(id);
					expect(ids.map((id) => getPattern(id).id)).toEqual(ids);
				}
			}),
			{ numRuns: 40 },
		);
	});
});
