import { create } from 'xmlbuilder2';
import type { XMLBuilder } from 'xmlbuilder2/lib/interfaces.js';
import type { MarkupElement, MarkupNode } from '../item-bank/markup/tree.ts';

const xmlNamespace = 'http://www.w3.org/XML/1998/namespace';
const declarationNamespace = 'http://www.w3.org/2000/xmlns/';

/** What is wrong with a markup tree that cannot be written as XML. */
export interface XmlFault {
	readonly code: 'xml-illegal-character' | 'xml-illegal-name' | 'xml-unknown-prefix' | 'xml-unwritable';
	/** The path of element names from the root, ending in @name for an attribute. */
	readonly where: string;
	/** The character that cannot be written, where the fault is a character. */
	readonly codePoint?: number | undefined;
}

/** A markup tree that cannot be written as XML. */
export class XmlError extends Error implements XmlFault {
	readonly code: XmlFault['code'];
	readonly where: string;
	readonly codePoint: number | undefined;

	constructor(fault: XmlFault, message: string, options?: ErrorOptions) {
		super(message, options);
		this.name = 'XmlError';
		this.code = fault.code;
		this.where = fault.where;
		this.codePoint = fault.codePoint;
	}
}

/** Namespace addresses by prefix; '' holds the default namespace. */
type Scope = ReadonlyMap<string, string>;

/** A step of the path from the root, kept as a chain so that it costs nothing until an error needs it. */
interface Step {
	readonly name: string;
	readonly above: Step | undefined;
}

// Complement of the Char production of XML 1.0, section 2.2; under the u flag a lone surrogate is a code point of its own.
const illegal = /[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/u;
// NCName of Namespaces in XML 1.0, within the characters this project uses for names.
const qualifiedName = /^(?:[A-Za-z_][\w.-]*:)?[A-Za-z_][\w.-]*$/;

/**
 * Writes a markup tree as XML text, without added whitespace; the same tree gives the same text. With `declaration` the
 * text opens with the XML declaration, UTF-8. Throws {@link XmlError} for what XML cannot hold.
 */
export function writeXml(root: MarkupElement, options: { readonly declaration?: boolean } = {}): string {
	const document = create({ encoding: 'UTF-8' });
	appendMarkup(document, root);
	try {
		return document.end({ wellFormed: true, headless: options.declaration !== true });
	} catch (cause) {
		const message = `expected markup that makes well-formed XML, found in <${root.name}>: ${String(cause)}`;
		throw new XmlError({ code: 'xml-unwritable', where: root.name }, message, { cause });
	}
}

/**
 * Appends a markup node to an xmlbuilder2 node. Prefixes must be declared by xmlns:prefix attributes on the node or
 * above it in the appended tree. Throws {@link XmlError}.
 */
export function appendMarkup(parent: XMLBuilder, node: MarkupNode): void {
	appendNode(parent, node, new Map([['xml', xmlNamespace]]), undefined);
}

function appendNode(parent: XMLBuilder, node: MarkupNode, outer: Scope, above: Step | undefined): void {
	if (typeof node === 'string') {
		checkText(node, above, undefined);
		if (node !== '') parent.txt(referToLost(node, /[&\r]/g));
		return;
	}
	const step: Step = { name: node.name, above };
	checkName(node.name, step, undefined);
	const scope = openScope(node, outer);
	const prefix = prefixOf(node.name);
	const namespace = prefix === '' ? scope.get('') : lookUp(prefix, scope, step);
	// xmlbuilder2 looks namespaces up and rebuilds elements when it is not told them: half the time of writing.
	const built = namespace === undefined ? parent.ele(node.name) : parent.ele(namespace, node.name);
	for (const name in node.attributes) {
		const written = node.attributes[name] ?? '';
		checkName(name, step, name);
		checkText(written, step, name);
		const value = referToLost(written, /[&\t\n\r]/g);
		const attributePrefix = prefixOf(name);
		if (attributePrefix === 'xmlns' || (name === 'xmlns' && prefix !== '')) {
			built.att(declarationNamespace, name, value);
		} else if (attributePrefix !== '') {
			built.att(lookUp(attributePrefix, scope, step), name, value);
		} else if (name !== 'xmlns') {
			built.att(name, value);
		}
	}
	for (const child of node.children) appendNode(built, child, scope, step);
}

/**
 * xmlbuilder2 takes text that looks like a reference for one, so "&lt;" would be read back as "<", and leaves line ends raw,
 * which readers normalise away (XML 1.0, 2.11 and 3.3.3). References written here pass through it unchanged.
 */
function referToLost(text: string, lost: RegExp): string {
	return text.replace(lost, (character) => (character === '&' ? '&amp;' : `&#${character.codePointAt(0)};`));
}

function openScope(node: MarkupElement, outer: Scope): Scope {
	let inner: Map<string, string> | undefined;
	for (const name in node.attributes) {
		if (name !== 'xmlns' && !name.startsWith('xmlns:')) continue;
		inner ??= new Map(outer);
		inner.set(name.slice(6), node.attributes[name] ?? '');
	}
	return inner ?? outer;
}

function prefixOf(name: string): string {
	const colon = name.indexOf(':');
	return colon < 0 ? '' : name.slice(0, colon);
}

function lookUp(prefix: string, scope: Scope, step: Step): string {
	const namespace = scope.get(prefix);
	if (namespace !== undefined) return namespace;
	const where = pathTo(step);
	throw new XmlError(
		{ code: 'xml-unknown-prefix', where },
		`expected xmlns:${prefix} on or above ${where}, found none`,
	);
}

function checkName(name: string, step: Step, attribute: string | undefined): void {
	if (qualifiedName.test(name)) return;
	const where = pathTo(step, attribute);
	const message = `expected a name of XML at ${where}, found ${JSON.stringify(name)}`;
	throw new XmlError({ code: 'xml-illegal-name', where }, message);
}

function checkText(text: string, step: Step | undefined, attribute: string | undefined): void {
	const found = illegal.exec(text);
	if (found) throw characterError(text, found.index, step, attribute);
}

function characterError(text: string, index: number, step: Step | undefined, attribute: string | undefined): XmlError {
	const codePoint = text.codePointAt(index) ?? 0;
	const where = pathTo(step, attribute);
	const written = `U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}`;
	const message = `expected characters that XML 1.0 can hold at ${where}, found ${written} at position ${index}`;
	return new XmlError({ code: 'xml-illegal-character', where, codePoint }, message);
}

function pathTo(step: Step | undefined, attribute?: string): string {
	const names: string[] = attribute === undefined ? [] : [`@${attribute}`];
	for (let at = step; at; at = at.above) names.unshift(at.name);
	return names.join('/');
}
