import { expect, test } from 'vitest';
import { layAdministration, planMinutes } from '../../../../server/print/guide/administration.ts';
import { type Block, isMark, type Mark } from '../../../../server/print/page/marks.ts';
import { placeItems } from '../../../../server/print/placed-items.ts';
import { demoForm, demoItems } from '../demo-forms.ts';

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
