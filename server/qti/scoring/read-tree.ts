import { XmlDocument, XmlElement, XmlText } from 'libxml2-wasm';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import { safeParsing } from '../validate/schema-set.ts';
import { getVersionFacts, qtiVersions } from '../versions.ts';
import { toOlderAttribute, toOlderElement } from '../vocabulary.ts';

/** A QTI document that the interpreter does not understand: it says so by name instead of leaving anything out. */
export class ScoringError extends Error {
	readonly code = 'scoring-unsupported';
	/** Name of the element it stopped at. */
	readonly element: string;

	constructor(element: string, message: string) {
		super(message);
		this.name = 'ScoringError';
		this.element = element;
	}
}

/**
 * Reads a QTI 2.1, 2.2 or 3.0 document into a markup tree under the names of 2.x, white space between elements left out. Throws
 * XmlParseError for text that is not XML and {@link ScoringError} for another vocabulary.
 */
export function readTree(xml: string): MarkupElement {
	const document = XmlDocument.fromString(xml, { option: safeParsing });
	try {
		const namespace = document.root.namespaceUri;
		const version = qtiVersions.find((each) => getVersionFacts(each).namespace === namespace);
		if (version === undefined) {
			const message = `expected a QTI 2.1, 2.2 or 3.0 document, found namespace "${namespace}"`;
			throw new ScoringError(document.root.name, message);
		}
		return readElement(document.root, getVersionFacts(version).hasNewerNames);
	} finally {
		document.dispose();
	}
}

/** An element with all below it, white space between elements left out; names of QTI 3.0 become those of 2.x where asked. */
export function readElement(node: XmlElement, isRenamed = false): MarkupElement {
	const attributes = Object.fromEntries(
		node.attrs.map(({ name, value }) => [isRenamed ? toOlderAttribute(name) : name, value]),
	);
	const children: (MarkupElement | string)[] = [];
	for (let child = node.firstChild; child; child = child.next) {
		if (child instanceof XmlElement) children.push(readElement(child, isRenamed));
		else if (child instanceof XmlText && child.content.trim() !== '') children.push(child.content);
	}
	return element(isRenamed ? toOlderElement(node.name) : node.name, attributes, children);
}

/** The child elements, all of them or those of one name. */
export function childrenOf(parent: MarkupElement, name?: string): readonly MarkupElement[] {
	return parent.children.filter(
		(child): child is MarkupElement => typeof child !== 'string' && (name === undefined || child.name === name),
	);
}

/** The only child of a name. Throws {@link ScoringError} when there is none or more than one. */
export function onlyChild(parent: MarkupElement, name: string): MarkupElement {
	const [first, ...more] = childrenOf(parent, name);
	if (first && more.length === 0) return first;
	throw new ScoringError(
		parent.name,
		`expected one <${name}> in <${parent.name}>, found ${first ? more.length + 1 : 0}`,
	);
}

/** The text of an element without children. */
export function textOf(node: MarkupElement): string {
	return node.children.filter((child) => typeof child === 'string').join('');
}
