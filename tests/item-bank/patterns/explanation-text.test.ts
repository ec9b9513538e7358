import { expect, test } from 'vitest';
import { parseExpression } from '../../../item-bank/expression/parse.ts';
import { explainAnswer } from '../../../item-bank/patterns/explain-answer.ts';
import { describeExplanation } from '../../../item-bank/patterns/explanation-text.ts';
import { subjectOf } from '../../../item-bank/patterns/subject.ts';

const describeAnswer = (text: string, answer: number, most?: number) =>
	describeExplanation(explainAnswer(subjectOf(parseExpression(text)), answer), most);

test('says what an answer is consistent with, its sources, and what cannot be told apart', () => {
	expect(describeAnswer('-5 - (-12)', 17, 0).slice(0, 4)).toEqual([
		'Consistent with taking any two minus signs in a sum or difference together as a plus. Source: Bofferding 2010.',
		'Consistent with changing subtraction to addition and changing the signs of both numbers. Source: common practice, no source.',
		'One answer to this item does not tell these ideas apart.',
		'No other numbers of this kind tell apart: two minuses anywhere make a plus; the first number is flipped too.',
	]);
});

test('calls pairs weaker, and counts those it leaves out', () => {
	const lines = describeAnswer('2 + (-5)', 6, 1);
	expect(lines[0]).toBe('No single pattern leads to this answer.');
	expect(lines[1]).toMatch(/^Weaker, two ideas together: .+, and then .+\.$/);
	expect(lines.at(-1)).toMatch(/^There are \d+ more such pairs\.$/);
	expect(describeAnswer('2 + (-5)', 6, 99).every((line) => !line.startsWith('There are'))).toBe(true);
});

test('has plain words for right answers and for those that nothing explains, and never says that a student has an idea', () => {
	expect(describeAnswer('3 - 8', -5)).toEqual(['This is the right answer.']);
	expect(describeAnswer('3 - 8', 777)).toEqual(['No pattern leads to this answer, and no two together.']);
	for (const answer of [-11, 0, 5, 11]) expect(describeAnswer('3 - 8', answer).join(' ')).not.toMatch(/\bhas\b/);
});
