import { expect, test } from 'vitest';
import { formReadingGrade } from '../../../../item-bank/checks/form/form-reading-grade.ts';
import { makeGridded } from '../../../helpers/items.ts';
import { foundOn } from '../placed.ts';

const heavy = 'Geological investigations necessitate considerable preparatory calculations regarding elevation.';
const saying = (text: string, count: number) =>
	Array.from({ length: count }, () => makeGridded({ stem: [{ kind: 'paragraph', text }] }));

test('words that read harder than the grade tested are pointed at, all items together', () => {
	expect(foundOn(formReadingGrade, saying(heavy, 15))).toMatchObject([
		{ code: 'review-form-reading-grade', path: '', message: expect.stringContaining('grade 6 or below') },
	]);
});

test('fewer than a hundred words, and plain ones, are left alone', () => {
	expect(foundOn(formReadingGrade, saying(heavy, 8))).toEqual([]);
	expect(foundOn(formReadingGrade, saying('The lift goes down. How deep is it?', 30))).toEqual([]);
});
