import { describe, expect, test } from 'vitest';
import { element } from '../../../item-bank/markup/tree.ts';
import { placeItems } from '../../../server/qti/placement.ts';
import { readTree } from '../../../server/qti/scoring/read-tree.ts';
import {
	renamePath,
	renameToNewer,
	toNewerAttribute,
	toNewerElement,
	toOlderAttribute,
	toOlderElement,
} from '../../../server/qti/vocabulary.ts';
import { writeItem } from '../../../server/qti/write/item.ts';
import { writeShapedXml } from '../../../server/qti/write/shaped-xml.ts';
import { speakPiece } from '../../../server/qti/write/speak-piece.ts';
import { randomItems } from './random-items.ts';

test.each([
	['choiceInteraction', 'qti-choice-interaction'],
	['assessmentItemRef', 'qti-assessment-item-ref'],
	['isNull', 'qti-is-null'],
	['value', 'qti-value'],
	['prompt', 'qti-prompt'],
	['p', 'p'],
	['object', 'object'],
])('element %s of 2.x is %s in 3.0, and back', (older, newer) => {
	expect(toNewerElement(older)).toBe(newer);
	expect(toOlderElement(newer)).toBe(older);
});

test.each([
	['responseIdentifier', 'response-identifier'],
	['identifier', 'identifier'],
	['xml:lang', 'xml:lang'],
	['xsi:schemaLocation', 'xsi:schemaLocation'],
])('attribute %s of 2.x is %s in 3.0, and back', (older, newer) => {
	expect(toNewerAttribute(older)).toBe(newer);
	expect(toOlderAttribute(newer)).toBe(older);
});

test('data attributes are the same in both', () => {
	expect(toNewerAttribute('data-catalog-idref')).toBe('data-catalog-idref');
	expect(toOlderAttribute('data-catalog-idref')).toBe('data-catalog-idref');
});

test('values keep their spelling', () => {
	const renamed = renameToNewer(element('responseDeclaration', { baseType: 'directedPair' }, ['directedPair']));
	expect(renamed).toEqual(element('qti-response-declaration', { 'base-type': 'directedPair' }, ['directedPair']));
});

test('rules are rewritten with their names', () => {
	expect(
		renamePath("/q:assessmentItem/q:itemBody//q:p[@baseType != 'directedPair'][@xsi:schemaLocation][@data-x]"),
	).toBe("/q:qti-assessment-item/q:qti-item-body//q:p[@base-type != 'directedPair'][@xsi:schemaLocation][@data-x]");
});

test('an item read back in 3.0 differs from the same in 2.2 by addresses and catalogs alone', () => {
	for (const placement of placeItems(randomItems(60, 93))) {
		const read = (version: 'qti-2.2' | 'qti-3.0'): string => {
			const tree = readTree(writeShapedXml(writeItem(placement, version, 'png').root));
			return JSON.stringify(tree)
				.replaceAll(/,?"data-catalog-idref":"catalog-\d+"/g, '')
				.replaceAll(/"(?:schemaLocation|template)":"[^"]*"/g, '')
				.replaceAll(/,?\{"name":"catalogInfo".*?\]\}\]\}\]\}\]\}/g, '');
		};
		// A gap is beside spans in 3.0, where a word of it is spoken otherwise than it looks.
		if (placement.record.item.kind !== 'inline-choice') expect(read('qti-3.0')).toBe(read('qti-2.2'));
	}
});

describe('a piece of a statement is spoken', () => {
	test.each([
		['−7', 'negative 7'],
		['−7 − 4 =', 'negative 7 minus 4 equals'],
		['12 × (−3) ≤', '12 times open parenthesis negative 3 close parenthesis is less than or equal to'],
		['|−17 − 8| =', 'the absolute value of negative 17 minus 8 end of absolute value equals'],
		['−(3 + 4) =', 'the opposite of open parenthesis 3 plus 4 close parenthesis equals'],
		['| = 5', 'end of absolute value equals 5'],
		['<', 'is less than'],
		['−', 'minus'],
		['÷', 'divided by'],
		['', ''],
	])('%s', (piece, spoken) => {
		expect(speakPiece(piece)).toBe(spoken);
	});

	test('after a missing number a minus is an operation', () => {
		expect(speakPiece('− 3 = 4', true)).toBe('minus 3 equals 4');
		expect(speakPiece('−3', false)).toBe('negative 3');
	});
});
