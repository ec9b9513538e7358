import { expect, test } from 'vitest';
import { directive } from '../../../../item-bank/checks/review/directive.ts';
import { makeChoice, makeGridded, makeSet } from '../../../helpers/items.ts';

test('a stem that neither asks nor instructs is pointed at, in parts of a set too', () => {
	const silent = [{ kind: 'paragraph' as const, text: 'The gauge read `-4` centimetres.' }];
	expect(directive.find(makeGridded({ stem: silent }))).toMatchObject([{ path: '/stem' }]);
	expect(directive.find(makeSet({ parts: [makeChoice(), makeGridded({ stem: silent, points: 2 })] }))).toMatchObject([
		{ path: '/parts/1/stem' },
	]);
});

test('a question or an instruction is enough', () => {
	expect(directive.find(makeGridded())).toEqual([]);
	expect(directive.find(makeGridded({ stem: [{ kind: 'paragraph', text: 'Work out `3 - 8`.' }] }))).toEqual([]);
});
