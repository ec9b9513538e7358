import fc from 'fast-check';
import { XmlDocument, type XmlElement } from 'libxml2-wasm';
import { expect, test } from 'vitest';
import { element, type MarkupElement, type MarkupNode } from '../../item-bank/markup/tree.ts';
import { writeXml, XmlError } from '../../server/xml.ts';

function errorOf(root: MarkupElement): XmlError {
	try {
		writeXml(root);
	} catch (error) {
		if (error instanceof XmlError) return error;
		throw error;
	}
	throw new Error('expected an error, found none');
}

test('writes elements, attributes and mixed text without adding whitespace', () => {
	const root = element('p', { id: 'a' }, ['one ', element('b', {}, ['two']), ' three']);
	expect(writeXml(root)).toBe('<p id="a">one <b>two</b> three</p>');
});

test('opens with the declaration when asked', () => {
	expect(writeXml(element('p'), { declaration: true })).toBe('<?xml version="1.0" encoding="UTF-8"?><p/>');
});

test('keeps default namespaces, prefixed declarations and prefixed attributes', () => {
	const root = element(
		'item',
		{
			xmlns: 'urn:outer',
			'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
			'xsi:schemaLocation': 'urn:outer outer.xsd',
			'xml:lang': 'en',
		},
		[element('body', {}, [element('math', { xmlns: 'urn:inner' }, [element('mn', {}, ['5'])]), element('rest')])],
	);
	expect(writeXml(root)).toBe(
		'<item xmlns="urn:outer" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" ' +
			'xsi:schemaLocation="urn:outer outer.xsd" xml:lang="en"><body><math xmlns="urn:inner"><mn>5</mn></math>' +
			'<rest/></body></item>',
	);
});

test('escapes markup characters in text and attributes', () => {
	expect(writeXml(element('p', { a: '<"&>' }, ['a < b & c ]]> "d"']))).toBe(
		'<p a="&lt;&quot;&amp;&gt;">a &lt; b &amp; c ]]&gt; "d"</p>',
	);
});

test.each([
	['a control character', '\u0001', 0x1],
	['U+FFFE', '\uFFFE', 0xfffe],
	['a lone high surrogate', '\uD800', 0xd800],
	['a lone low surrogate', '\uDC00', 0xdc00],
])('refuses %s with its place and code point', (_name, character, codePoint) => {
	const inText = errorOf(element('p', {}, [element('b', {}, [`ab${character}c`])]));
	expect(inText).toMatchObject({ code: 'xml-illegal-character', where: 'p/b', codePoint });
	expect(inText.message).toContain('position 2');
	const inAttribute = errorOf(element('p', { title: `${character}` }));
	expect(inAttribute).toMatchObject({ code: 'xml-illegal-character', where: 'p/@title', codePoint });
});

test('writes line ends and tabs of attributes, and carriage returns of text, as references', () => {
	expect(writeXml(element('p', { title: 'a\tb\nc\rd' }, ['a\tb\nc\rd']))).toBe(
		'<p title="a&#9;b&#10;c&#13;d">a\tb\nc&#13;d</p>',
	);
});

test('writes text that looks like a reference as the characters it is', () => {
	expect(writeXml(element('p', { title: '&lt;&#10;' }, ['&lt; &amp; &#10;']))).toBe(
		'<p title="&amp;lt;&amp;#10;">&amp;lt; &amp;amp; &amp;#10;</p>',
	);
});

test.each(['', 'a b', '1a', 'a:b:c', '<x'])('refuses the name %j', (name) => {
	expect(errorOf(element('p', {}, [element(name)])).code).toBe('xml-illegal-name');
	expect(errorOf(element('p', { [name]: '' })).code).toBe('xml-illegal-name');
});

test('refuses a prefix that nothing declares', () => {
	expect(errorOf(element('p', {}, [element('m:b')]))).toMatchObject({ code: 'xml-unknown-prefix', where: 'p/m:b' });
	expect(errorOf(element('p', { 'm:b': '' })).code).toBe('xml-unknown-prefix');
});

const legalText = fc
	.array(
		fc.oneof(
			fc.constantFrom(
				'<',
				'>',
				'&',
				'"',
				"'",
				']]>',
				'&amp;',
				'−',
				'&#10;',
				'\n',
				'\t',
				'\r',
				' ',
				'\u{1F600}',
				'\uFFFD',
			),
			fc.string({ unit: 'grapheme' }),
		),
		{ minLength: 1, maxLength: 6 },
	)
	.map((parts) => parts.join(''));

const tree: fc.Arbitrary<MarkupElement> = fc.letrec<{ node: MarkupElement }>((tie) => ({
	node: fc
		.tuple(
			fc.constantFrom('a', 'b', 'long-name', 'c.d_e'),
			fc.dictionary(fc.constantFrom('x', 'y', 'data-z'), legalText),
			fc.array(fc.oneof({ maxDepth: 4 }, legalText, tie('node')), { maxLength: 4 }),
		)
		.map(([name, attributes, children]) => element(name, attributes, joinTexts(children))),
})).node;

/** A reader cannot tell two neighbouring texts from one, nor an empty text from none. */
function joinTexts(nodes: readonly MarkupNode[]): readonly MarkupNode[] {
	const joined: MarkupNode[] = [];
	for (const node of nodes) {
		const last = joined.at(-1);
		if (node === '') continue;
		if (typeof node === 'string' && typeof last === 'string') joined[joined.length - 1] = last + node;
		else joined.push(node);
	}
	return joined;
}

function read(node: XmlElement): MarkupElement {
	const children: MarkupNode[] = [];
	for (let child = node.firstChild; child; child = child.next) {
		children.push('attrs' in child ? read(child as XmlElement) : child.content);
	}
	return element(node.name, Object.fromEntries(node.attrs.map((attr) => [attr.name, attr.content])), children);
}

test('what is written is read back the same by an independent reader (libxml2)', () => {
	fc.assert(
		fc.property(tree, (root) => {
			const document = XmlDocument.fromString(writeXml(root, { declaration: true }));
			try {
				expect(read(document.root)).toEqual(root);
			} finally {
				document.dispose();
			}
		}),
		{ numRuns: 200 },
	);
});
