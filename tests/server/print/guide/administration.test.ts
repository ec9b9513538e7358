import { expect, test } from 'vitest';
import { layAdministration, planMinutes } from '../../../../server/print/guide/administration.ts';
import { type Block, isMark, type Mark } from '../../../../server/print/page/marks.ts';
import { placeItems } from '../../../../server/print/placed-items.ts';
import { makeSet } from '../../../helpers/items.ts';
import { kindForm, kindItems } from '../all-kinds.ts';
import { demoForm, demoItems, formWith } from '../demo-forms.ts';

const form = demoForm('a');
const placed = placeItems(form, demoItems);
const textOf = (part: Block | Mark): string =>
	isMark(part) ? (part.kind === 'text' ? part.text : '') : part.children.map(textOf).join('');

function sheetText(students: readonly string[], grids: 'separate' | 'beside' = 'separate'): string {
	const pages = layAdministration({ form, placed, paper: 'a4', grids, students });
	return pages.flatMap(({ blocks }) => blocks.map(textOf)).join('\n');
}

test('time is a sum over the items, up to the next five minutes', () => {
	// Form A: 10 choice at 1.25, 3 multiple choice at 1.75, 7 gridded at 1.5: 12.5 + 5.25 + 10.5 = 28.25.
	expect(planMinutes(placed)).toBe(30);
	expect(planMinutes(placed.slice(0, 1))).toBe(5);
});

test('the sheet says what is read aloud, allowed, changed by supports, collected, made up and confidential', () => {
	const text = sheetText(['6A-01', '6A-02']);
	for (const heading of [
		'Read aloud',
		'Calculator and notes',
		'Supports that do not change what is measured',
		'Supports that change it',
		'Confidential',
		'Collected',
		'To make up',
		'Figures in words',
	]) {
		expect(text).toContain(heading);
	}
	expect(text).toContain('There are 2 with a printed student code and one blank spare.');
	expect(text).toContain('For a negative number put the minus sign in the first box.');
	expect(text).toContain('Forms built to one plan are not equated.');
});

test('the script follows where answers are marked', () => {
	expect(sheetText([])).toContain('Mark every answer on your answer sheet.');
	expect(sheetText([], 'beside')).toContain('Mark every answer beside the item.');
});

test('the script tells of the kinds on the form and of no others', () => {
	const pages = layAdministration({
		form: kindForm,
		placed: placeItems(kindForm, kindItems),
		paper: 'a4',
		grids: 'separate',
		students: [],
	});
	const every = pages.flatMap(({ blocks }) => blocks.map(textOf)).join('\n');
	const told = ['Mark the point on the line', 'Write the letters in order', 'the letter of its partner', '‘scorer’'];
	for (const sentence of [...told, 'items have parts with letters']) {
		expect(every).toContain(sentence);
		expect(sheetText([])).not.toContain(sentence);
	}
});

test('time counts the parts of a set and a minute to read what they share', () => {
	// Choice 1.25, gridded 1.5, and 1 for what they share: 3.75 each; 3 sets: 11.25.
	const sets = ['one', 'two', 'three'].map((id) => ({ id, version: 1, status: 'draft', item: makeSet() }) as const);
	expect(planMinutes(placeItems(formWith(sets), sets))).toBe(15);
	expect(planMinutes(placeItems(formWith(sets.slice(0, 1)), sets))).toBe(5);
});

test('figures are read from lines to mark, entries to match and parts of sets, under their labels', () => {
	const text = layAdministration({
		form: kindForm,
		placed: placeItems(kindForm, kindItems),
		paper: 'a4',
		grids: 'separate',
		students: [],
	})
		.flatMap(({ blocks }) => blocks.map(textOf))
		.join('\n');
	for (const label of ['2Horizontal', '3Vertical', '7 left ATop row', '12cHorizontal']) expect(text).toContain(label);
});
