import { expect, test } from 'vitest';
import { directive } from '../../../../item-bank/checks/review/directive.ts';
import { makeChoice, makeGridded, makeSet } from '../../../helpers/items.ts';
import { asking, found } from '../found.ts';

test('a stem that neither asks nor instructs is pointed at, in parts of a set too', () => {
	const silent = [{ kind: 'paragraph' as const, text: 'The gauge read `-4` centimetres.' }];
	expect(found(directive, makeGridded({ stem: silent }))).toMatchObject([{ code: 'review-directive', path: '/stem' }]);
	expect(found(directive, makeSet({ parts: [makeChoice(), makeGridded({ stem: silent, points: 2 })] }))).toMatchObject([
		{ path: '/parts/1/stem' },
	]);
});

test('verbs that only tell a story are no instruction', () => {
	expect(found(directive, asking('The workers place an order. The show of work is in order.'))).toHaveLength(1);
});

test('a question or an instruction is enough', () => {
	for (const text of [
		'What is `3 - 8`?',
		'Work out `3 - 8`.',
		'For each sum, mark its place.',
		'Look at the line, then place a point at `-3`.',
		'In your own words, show why.',
	]) {
		expect(found(directive, asking(text)), text).toEqual([]);
	}
});
