import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawFigure } from '../../../item-bank/figures/draw-figure.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import { placeForm } from '../../../server/qti/placement.ts';
import { writeItem } from '../../../server/qti/write/item.ts';
import { breakLines, startsItemLine, startsManifestLine } from '../../../server/qti/write/lines.ts';
import { listItem, writeManifest } from '../../../server/qti/write/manifest.ts';
import { writeShapedPart, writeShapedXml } from '../../../server/qti/write/shaped-xml.ts';
import { writeTest } from '../../../server/qti/write/test.ts';
import { writeXml } from '../../../server/xml.ts';
import { drawFrom } from './random-draw.ts';
import { randomFigure } from './random-figures.ts';
import { randomForm, randomItems } from './random-items.ts';

function expectSame(root: MarkupElement): void {
	expect(writeShapedXml(root)).toBe(writeXml(root));
	const declared = writeXml(root, { declaration: true });
	expect(writeShapedXml(root, { declaration: true })).toBe(declared);
	for (const startsLine of [startsItemLine, startsManifestLine]) {
		expect(writeShapedXml(root, { startsLine })).toBe(breakLines(writeXml(root), startsLine));
		expect(writeShapedXml(root, { declaration: true, startsLine })).toBe(breakLines(declared, startsLine));
	}
}

describe('the shaped writer gives the very text of writeXml', () => {
	test('for items, tests and manifests of both versions', () => {
		const items = randomItems(150, 61);
		const form = randomForm(items, 61);
		const placements = placeForm(form, items);
		for (const version of ['qti-2.1', 'qti-2.2'] as const) {
			for (const placement of placements) expectSame(writeItem(placement, version, 'svg').root);
			const listed = placements.map((placement) => listItem(placement, 'svg'));
			expectSame(writeManifest(form, listed, version));
			expectSame(writeTest(form, listed, version));
		}
	});

	test('for figures', () => {
		const draw = drawFrom(62);
		for (let count = 0; count < 150; count += 1) expectSame(drawFigure(randomFigure(draw)).root);
	});

	test('for any texts and values that XML can hold', () => {
		const text = fc
			.string({ unit: 'grapheme' })
			.filter((each) => !/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/.test(each));
		const odd = fc.constantFrom('&lt;', ']]>', 'a\tb\nc\rd', '"\'', '', ' ', 'slot(0)', '\u{1d465}', '&#13;');
		const texts = fc.oneof(text, odd);
		const tree = fc.letrec<{ node: MarkupElement }>((tie) => ({
			node: fc
				.record({
					name: fc.constantFrom('p', 'td', 'x:string', 'img', 'file'),
					attributes: fc.dictionary(fc.constantFrom('a', 'b', 'x:c', 'xml:lang'), texts),
					children: fc.array(fc.oneof({ depthSize: 'small' }, texts, tie('node')), { maxLength: 4 }),
				})
				.map(({ name, attributes, children }) => element(name, attributes, children)),
		}));
		fc.assert(
			fc.property(tree.node, (node) => {
				expectSame(element('root', { xmlns: 'urn:one', title: 't', 'xmlns:x': 'urn:two', 'x:late': 'v' }, [node]));
			}),
			{ numRuns: 300 },
		);
	});
});

test.each([
	['an illegal character in a text', element('p', {}, ['\u0001'])],
	['an illegal character in a value', element('p', { a: '\ud800' })],
	['an unknown prefix', element('y:p')],
	['an illegal name', element('1p')],
])('%s is refused with the error of writeXml', (_, node) => {
	const root = element('root', { xmlns: 'urn:one' }, [node]);
	const messageOf = (write: (root: MarkupElement) => string): string => {
		try {
			return write(root);
		} catch (error) {
			return String(error);
		}
	};
	expect(messageOf(writeShapedXml)).toBe(messageOf(writeXml));
	expect(messageOf(writeShapedXml)).toContain('XmlError');
});

test.each([
	['of ordinary tags', element('resource', { href: 'a' }, [element('file', { href: 'a' }), element('p', {}, ['b'])])],
	['left to writeXml', element('resource', {}, [element('file', { xmlns: 'urn:two' }), element('file')])],
])('a part %s is written as it stands in its document', (_, part) => {
	const root = element('manifest', { xmlns: 'urn:one', title: 't' }, [part]);
	const whole = writeShapedXml(root, { startsLine: startsManifestLine });
	expect(whole).toContain(`>\n${writeShapedPart(part, root, startsManifestLine)}</manifest>`);
	expect(writeShapedPart(part, root, startsManifestLine)).toContain('>\n<file');
});

test('declarations below the root are left to writeXml', () => {
	expectSame(element('root', { xmlns: 'urn:one' }, [element('p', { xmlns: 'urn:two' }, ['text'])]));
});
