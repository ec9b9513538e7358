import { element, type MarkupElement, type MarkupNode } from '../../item-bank/markup/tree.ts';

/** Elements that QTI 3.0 takes over from HTML under their own names, among those the exports use. */
const htmlNames: ReadonlySet<string> = new Set(
	'p table caption thead tbody tr th td img object div span ul ol li'.split(' '),
);

// Every name is met thousands of times in an export, and there are about a hundred of them.
const newerElements = new Map<string, string>();
const newerAttributes = new Map<string, string>();
const olderElements = new Map<string, string>();
const olderAttributes = new Map<string, string>();

/** The name of a QTI 2.x element in QTI 3.0: choiceInteraction becomes qti-choice-interaction; names of HTML stay. */
export function toNewerElement(name: string): string {
	return recall(newerElements, name, () => (htmlNames.has(name) ? name : `qti-${toNewerAttribute(name)}`));
}

/** The name of a QTI 2.x attribute in QTI 3.0: mapKey becomes map-key; names with a prefix stay. */
export function toNewerAttribute(name: string): string {
	return recall(newerAttributes, name, () =>
		name.includes(':') ? name : name.replaceAll(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`),
	);
}

/** The way back from {@link toNewerElement}. */
export function toOlderElement(name: string): string {
	return recall(olderElements, name, () => (name.startsWith('qti-') ? toOlderAttribute(name.slice(4)) : name));
}

/** The way back from {@link toNewerAttribute}; data- attributes keep their names. */
export function toOlderAttribute(name: string): string {
	return recall(olderAttributes, name, () =>
		/:|^data-/.test(name) ? name : name.replaceAll(/-([a-z])/g, (_, letter: string) => letter.toUpperCase()),
	);
}

/**
 * The same document under the names of QTI 3.0. Writers use one vocabulary, that of 2.x; values such as directedPair keep
 * their spelling (qti-facts.md of the reference folder, Names).
 */
export function renameToNewer(root: MarkupElement): MarkupElement {
	return renameTree(root, toNewerElement, toNewerAttribute);
}

/** An XPath over QTI 2.x names, prefix q, as an XPath over those of QTI 3.0. */
export function renamePath(path: string): string {
	return path
		.replaceAll(/\bq:([A-Za-z]+)/g, (_, name: string) => `q:${toNewerElement(name)}`)
		.replaceAll(/@([A-Za-z]+)\b(?![:-])/g, (_, name: string) => `@${toNewerAttribute(name)}`);
}

function renameTree(
	node: MarkupElement,
	nameElement: (name: string) => string,
	nameAttribute: (name: string) => string,
): MarkupElement {
	const attributes: Record<string, string> = {};
	for (const name in node.attributes) attributes[nameAttribute(name)] = node.attributes[name] ?? '';
	const children = node.children.map(
		(child): MarkupNode => (typeof child === 'string' ? child : renameTree(child, nameElement, nameAttribute)),
	);
	return element(nameElement(node.name), attributes, children);
}

function recall(known: Map<string, string>, name: string, make: () => string): string {
	const found = known.get(name);
	if (found !== undefined) return found;
	const made = make();
	known.set(name, made);
	return made;
}
