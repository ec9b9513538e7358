import { expect, test } from 'vitest';
import { listCandidates } from '../../../item-bank/distractors/candidates.ts';
import { writeFeedback } from '../../../item-bank/distractors/feedback.ts';
import { listOptionSets } from '../../../item-bank/distractors/option-sets.ts';
import { parseExpression } from '../../../item-bank/expression/parse.ts';
import { patterns } from '../../../item-bank/patterns/index.ts';
import { subjectOf, twoNumbers } from '../../../item-bank/patterns/subject.ts';
import { listWrongAnswers } from '../../../item-bank/patterns/wrong-answers.ts';

const candidate = (value: number, weight: number) => ({ value, weight, patterns: [] });

test('the score of a set is the sum of products over pairs of options, halved by a lone sign', () => {
	// Right weighs 8: 8·4 + 8·3 + 4·3 = 68. Options −4, −2, 3, 5: two of each sign.
	const [set] = listOptionSets([candidate(-4, 4), candidate(5, 3), candidate(-2, 0)], 3, 3);
	expect(set).toMatchObject({ score: 68, keyPosition: 2, isLone: false, isKeyLone: false });
	// Options −2, 3, 5: (8·4 + 8·3 + 4·3) ÷ 2, and −2 is the only negative one.
	expect(listOptionSets([candidate(-2, 4), candidate(5, 3)], 3, 2)[0]).toMatchObject({
		score: 34,
		isLone: true,
		isKeyLone: false,
	});
	expect(listOptionSets([candidate(2, 4), candidate(5, 3)], -3, 2)[0]).toMatchObject({ isLone: true, isKeyLone: true });
});

test('there are as many sets as ways to choose, and zero is neither negative nor positive', () => {
	const five = [-4, -2, 0, 5, 6].map((value) => candidate(value, 1));
	expect(listOptionSets(five, 1, 3)).toHaveLength(10);
	expect(listOptionSets(five, 1, 5)).toHaveLength(1);
	expect(listOptionSets([candidate(0, 1), candidate(-2, 1)], -3, 2)[0]).toMatchObject({ isLone: false });
});

test('candidates are believable: no size beyond twice the key or all numbers together', () => {
	const subject = subjectOf(parseExpression('12 × (5 + (-5))'));
	const wrong = listWrongAnswers(subject).map(({ answer }) => answer);
	// Signs dropped: 12 × (5 + 5) = 120, more than 2 · (12 + 5 + 5) = 44.
	expect(wrong).toContain(120);
	const values = listCandidates([subject], 0).map(({ value }) => value);
	expect(values).toEqual(wrong.filter((value) => typeof value === 'number' && Math.abs(value) <= 44));
	expect(values.length).toBeGreaterThan(0);
});

test('patterns met in studies weigh more, and tick slips less where there is no line', () => {
	const weightOf = (value: number, ...walks: readonly Parameters<typeof listCandidates>[0][number][]) =>
		listCandidates([twoNumbers('add', -3, 5), ...walks], 2).find((one) => one.value === value)?.weight;
	expect(weightOf(1)).toBe(1);
	expect(weightOf(1, { kind: 'walk', start: -3, moves: [5], tickEvery: 1 })).toBe(3);
	expect(weightOf(-2)).toBe(4);
});

test('feedback is one sentence that begins "Consistent with"', () => {
	expect(writeFeedback([])).toBe('');
	for (const { id, sentence } of patterns) expect(writeFeedback([id])).toBe(sentence);
	expect(writeFeedback(patterns.map(({ id }) => id))).toMatch(/^Consistent with [^.]+\.$/);
});
