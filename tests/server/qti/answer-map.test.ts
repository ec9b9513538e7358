import { expect, test } from 'vitest';
import type { ItemRecord } from '../../../item-bank/items/record.ts';
import { writeAnswerMap } from '../../../server/qti/answer-map.ts';
import { placeForm, placeItems } from '../../../server/qti/placement.ts';
import { sampleForm, sampleItems } from './sample-form.ts';

test('the answer map names position, item, version, platform identifier, options and key, and warns in every row', () => {
	const lines = writeAnswerMap(sampleForm, placeForm(sampleForm, sampleItems)).split('\r\n');
	expect(lines[0]).toBe(
		'\ufeffnotice,position,part,section,item,version,platform item,title,kind,points,key,item score,option identifiers,option ids in the bank,text of A,text of B,text of C,text of D',
	);
	expect(lines[1]).toBe(
		'holds keys: keep confidential,1,,Choose,tide-gauge-drop,2,item-4954a7d8cc99,Item 1,choice,1,A,"1 for the key, otherwise 0",A B C D,a b c d,−11,−3 centimetres,3,11',
	);
	expect(lines[2]).toMatch(
		/^holds keys: keep confidential,2,,Choose,lift-lines,1,item-c21fcf1ef3b8,Item 2,multiple-choice,2,A C,"1 for the key, otherwise 0",A B C,c a b,"Horizontal/,
	);
	expect(lines[3]).toBe(
		'holds keys: keep confidential,3,,Write,cold-storage-counters,1,item-b666a2fdde7e,Item 3,gridded,3,-5,"1 for every spelling of the key, otherwise 0",,,,,,',
	);
	expect(lines).toHaveLength(5);
});

test.each([
	['=1+1', "'=1+1"],
	['@total', "'@total"],
	['+tide', "'+tide"],
	['-tide', "'-tide"],
	['\tindented', "'\tindented"],
	['-5', '-5'],
	['+5', '+5'],
	['−5', '−5'],
])('a text %j is written as %j, so that no spreadsheet runs it and numbers stay numbers', (text, written) => {
	const [first] = sampleItems;
	if (first?.item.kind !== 'choice') throw new Error('no choice item');
	const options = first.item.options.map((option, index) =>
		index === 1 ? { ...option, content: { kind: 'text' as const, text, worth: '-3' } } : option,
	);
	const record: ItemRecord = { ...first, item: { ...first.item, options } };
	const [, row = ''] = writeAnswerMap(undefined, placeItems([record])).split('\r\n');
	expect(row.split(',')[16]).toBe(written);
});

test('texts with commas, quotes and line ends stay one cell', () => {
	const form = {
		...sampleForm,
		form: {
			...sampleForm.form,
			sections: sampleForm.form.sections.map((section) => ({ ...section, title: 'a, "b"\nc' })),
		},
	};
	expect(writeAnswerMap(form, placeForm(form, sampleItems))).toContain(',"a, ""b""\nc",');
});
