import { expect, test } from 'vitest';
import { readingGrade } from '../../../../item-bank/checks/review/reading-grade.ts';
import { makeSet } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const plain = 'The lift goes up. ';
const heavy = 'Geological investigations necessitate considerable preparatory calculations regarding elevation. ';
const telling = (sentence: string, times: number) =>
	makeSet({ stem: [{ kind: 'paragraph', text: sentence.repeat(times).trim() }] });

test('a hundred words that read harder than the grade tested are pointed at', () => {
	expect(found(readingGrade, telling(heavy, 12))).toMatchObject([
		{ code: 'review-reading-grade', path: '/stem', message: expect.stringContaining('grade 6 or below') },
	]);
});

test('plain words, and fewer than a hundred, are left alone', () => {
	expect(found(readingGrade, telling(plain, 30))).toEqual([]);
	expect(found(readingGrade, telling(heavy, 8))).toEqual([]);
});
