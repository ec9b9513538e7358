import { describe, expect, test } from 'vitest';
import type { TakenColumn } from '../../../item-bank/types.ts';
import {
	choicesOf,
	chooseColumn,
	listChoices,
	mappingOf,
	missingChoice,
	readCodeLines,
	readWords,
} from '../../../web/results-in/column-choices.ts';

const columns: readonly TakenColumn[] = [
	{ number: 1, heading: 'Name', as: 'discarded' },
	{ number: 2, heading: 'Code', as: 'student' },
	{ number: 3, heading: 'Q1', as: 'item', place: '1' },
	{ number: 4, heading: 'Q2', as: 'item', place: '2.1' },
];

describe('what columns are taken for', () => {
	const choices = choicesOf({ columns });

	test('begins with what the bank made of them, and becomes a mapping by column numbers', () => {
		expect(mappingOf(choices, 'wide', { holds: 'points', student: 'Code', place: 9 })).toEqual({
			holds: 'points',
			layout: 'wide',
			student: 2,
			items: [
				{ column: 3, place: '1' },
				{ column: 4, place: '2.1' },
			],
		});
		expect(missingChoice(choices, 'wide')).toBeUndefined();
	});

	test('a place, the code and the class stand in one column only; the other is let go', () => {
		const moved = chooseColumn(choices, 1, 'student');
		expect([...moved.values()]).toEqual(['student', 'discarded', 'item 1', 'item 2.1']);
		expect([...chooseColumn(moved, 4, 'item 1').values()]).toEqual(['student', 'discarded', 'discarded', 'item 1']);
		expect([...chooseColumn(choices, 3, 'discarded').values()]).toEqual([
			'discarded',
			'student',
			'discarded',
			'item 2.1',
		]);
	});

	test('what is missing is named', () => {
		expect(missingChoice(chooseColumn(choices, 2, 'discarded'), 'wide')).toBe('student');
		expect(missingChoice(choices, 'long')).toBe('place');
		const long = chooseColumn(chooseColumn(choices, 3, 'place'), 4, 'discarded');
		expect(missingChoice(long, 'long')).toBe('answer');
		expect(mappingOf(chooseColumn(long, 4, 'answer'), 'long', {})).toEqual({
			layout: 'long',
			student: 2,
			place: 3,
			answer: 4,
		});
		expect(missingChoice(chooseColumn(chooseColumn(choices, 3, 'discarded'), 4, 'discarded'), 'wide')).toBe('items');
	});

	test('places can be chosen in a wide file, columns of places in a long one', () => {
		expect(listChoices('wide', ['1', '2.1'])).toEqual(['discarded', 'student', 'group', 'item 1', 'item 2.1']);
		expect(listChoices('long', ['1'])).toEqual(['discarded', 'student', 'group', 'place', 'answer']);
	});
});

test('words and lists of codes are read as people type them', () => {
	expect(readWords(' omit , -,,n/a ')).toEqual(['omit', '-', 'n/a']);
	expect(readWords('')).toEqual([]);
	expect(readCodeLines('Ana Bell; 7A-01\n\nBo\t7A-02\n')).toEqual([
		['Ana Bell', '7A-01'],
		['Bo', '7A-02'],
	]);
});
