import { expect, test } from 'vitest';
import { printableText } from '../../../../item-bank/checks/stops/printable-text.ts';
import { asking, found } from '../found.ts';

test.each([
	['a control character', 'What is\u0000 this?', 'U+0000'],
	['a lone surrogate', 'What is \ud800 this?', 'U+D800'],
	['a noncharacter', 'What is \uffff this?', 'U+FFFF'],
])('%s is refused, as no XML document can hold it', (_name, text, point) => {
	const problems = found(printableText, asking(text));
	expect(problems).toEqual([expect.objectContaining({ code: 'illegal-character', path: '/stem/0/text' })]);
	expect(problems[0]?.message).toContain(point);
});

test('blanks only are refused, in names too', () => {
	expect(found(printableText, asking('  '))).toMatchObject([{ code: 'text-blank', path: '/stem/0/text' }]);
	expect(found(printableText, { ...asking('What?'), name: ' ' })).toMatchObject([{ path: '/name' }]);
});

test('accents, minus signs and characters beyond the first plane are text', () => {
	expect(found(printableText, asking('Is café 😀 at −5 °C?'))).toEqual([]);
});
