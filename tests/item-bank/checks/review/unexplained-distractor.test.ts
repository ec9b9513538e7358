import { expect, test } from 'vitest';
import { unexplainedDistractor } from '../../../../item-bank/checks/review/unexplained-distractor.ts';
import { makeChoice } from '../../../helpers/items.ts';

test('a wrong option without error patterns is pointed at', () => {
	expect(unexplainedDistractor.find(makeChoice()).map(({ path }) => path)).toEqual([
		'/options/0',
		'/options/2',
		'/options/3',
	]);
});

test('the key, and wrong options with patterns, are left alone', () => {
	const options = makeChoice().options.map((option) =>
		option.id === 'b' ? option : { ...option, patterns: ['signs-dropped'] },
	);
	expect(unexplainedDistractor.find(makeChoice({ options }))).toEqual([]);
});
