import { expect, test } from 'vitest';
import { unexplainedDistractor } from '../../../../item-bank/checks/review/unexplained-distractor.ts';
import { makeChoice, makeMultipleChoice, numberOptions } from '../../../helpers/items.ts';
import { found, offering } from '../found.ts';

test('a wrong option without error patterns is pointed at, with those the bank finds', () => {
	const notes = found(unexplainedDistractor, makeChoice({ options: numberOptions(-11, -7, 9) }));
	expect(notes.map(({ path }) => path)).toEqual(['/options/0', '/options/2']);
	expect(notes[0]?.message).toContain('the bank finds');
	expect(notes[0]?.message).toContain('sizes-added-minus-put');
	expect(notes[1]?.message).toContain('the bank knows none');
});

test('the key, wrong options with patterns, and words without a worth are left alone', () => {
	const options = makeChoice().options.map((option) =>
		option.id === 'b' ? option : { ...option, patterns: ['signs-dropped'] },
	);
	expect(found(unexplainedDistractor, makeChoice({ options }))).toEqual([]);
	expect(found(unexplainedDistractor, offering('It rose.', 'It fell.', 'It stood still.'))).toEqual([]);
	expect(found(unexplainedDistractor, makeMultipleChoice())).toHaveLength(2);
});
