import { invariant } from '../../../item-bank/invariant.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import { writeXml, XmlError } from '../../xml.ts';
import { breakLines, type LineStart } from './lines.ts';

/** An opening tag as xmlbuilder2 writes it, without its last bracket, cut where attribute values stand. */
interface TagShape {
	/** In the order of the tree. */
	readonly names: readonly string[];
	/** The place of each value in the tag, by the order of the tree. */
	readonly order: readonly number[];
	readonly pieces: readonly string[];
	readonly startsLine: boolean;
	/** Tags of the same element with other attributes. */
	readonly next: TagShape | undefined;
}

/** The tags seen below one set of namespace declarations, by element name. */
interface ShapeBook {
	readonly declarations: Readonly<Record<string, string>>;
	readonly startsLine: LineStart;
	readonly shapes: Map<string, TagShape>;
}

/** How a document is written. */
export interface ShapedOptions {
	/** Opens with the XML declaration. */
	readonly declaration?: boolean;
	/** Elements that start a line; none unless told. */
	readonly startsLine?: LineStart;
}

const books = new Map<LineStart, Map<string, ShapeBook>>();
const startsNoLine: LineStart = () => false;
// The values of the element at hand, in the order of the tree: one list for all spares a list for each.
const values: string[] = [];
const escapes: Readonly<Record<string, string>> = {
	'&': '&amp;',
	'<': '&lt;',
	'>': '&gt;',
	'"': '&quot;',
	'\t': '&#9;',
	'\n': '&#10;',
	'\r': '&#13;',
};
// The surrogates let every text beyond the basic plane be looked at closely.
const unusual = /[^\t\n\u0020-\u0025\u0027-\u003b=\u003f-\ud7ff\ue000-\ufffd]/;
const unusualValue = /[^\u0020-\u0021\u0023-\u0025\u0027-\u003b=\u003f-\ud7ff\ue000-\ufffd]/;
const illegal = /[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/u;

/**
 * Writes a markup tree to the very text that writeXml gives, for trees that declare all their namespaces on the root. Building
 * every node in xmlbuilder2 takes ten times as long as all the rest of an export; so xmlbuilder2 writes each kind of tag once,
 * and values are put into the tags it wrote. No content is kept, only tags. Whatever is unusual, faults included, is left to
 * writeXml. Throws XmlError.
 */
export function writeShapedXml(root: MarkupElement, options: ShapedOptions = {}): string {
	const { declaration = false, startsLine = startsNoLine } = options;
	const book = openBook(root, startsLine);
	const written = writeNode(root, book, findShape(root, book, `/${root.name}`));
	if (written === undefined) return breakLines(writeXml(root, { declaration }), startsLine);
	if (!declaration) return written;
	return `<?xml version="1.0" encoding="UTF-8"?>${startsLine(root.name) ? '\n' : ''}${written}`;
}

/** Writes an element as it stands somewhere below a root, whose declarations it relies on. Throws XmlError. */
export function writeShapedPart(node: MarkupElement, root: MarkupElement, startsLine = startsNoLine): string {
	const book = openBook(root, startsLine);
	const written = writeNode(node, book, findShape(node, book, node.name));
	if (written !== undefined) return written;
	const whole = writeXml(element(root.name, book.declarations, [node]));
	return breakLines(whole.slice(whole.indexOf('>') + 1, whole.lastIndexOf('</')), startsLine);
}

function writeNode(node: MarkupElement, book: ShapeBook, shape: TagShape | undefined): string | undefined {
	if (!shape) return undefined;
	const { order, pieces } = shape;
	let text = pieces[0] ?? '';
	for (let place = 0; place < order.length; place += 1) {
		const value = values[order[place] ?? 0] ?? '';
		const escaped = unusualValue.test(value) ? escapeText(value, /[&<>"\t\n\r]/g) : value;
		if (escaped === undefined) return undefined;
		text += escaped + pieces[place + 1];
	}
	let inside = '';
	// A line starts between two tags only: nothing is added to text.
	let isAfterTag = true;
	for (const child of node.children) {
		if (typeof child === 'string') {
			const inner = unusual.test(child) ? escapeText(child, /[&<>\r]/g) : child;
			if (inner === undefined) return undefined;
			inside += inner;
			if (child !== '') isAfterTag = false;
		} else {
			const childShape = findShape(child, book, child.name);
			const inner = writeNode(child, book, childShape);
			if (inner === undefined) return undefined;
			inside += isAfterTag && childShape?.startsLine ? `\n${inner}` : inner;
			isAfterTag = true;
		}
	}
	return inside === '' ? `${text}/>` : `${text}>${inside}</${node.name}>`;
}

function escapeText(text: string, lost: RegExp): string | undefined {
	return illegal.test(text) ? undefined : text.replace(lost, (character) => escapes[character] ?? character);
}

function openBook(root: MarkupElement, startsLine: LineStart): ShapeBook {
	let key = root.name;
	for (const name in root.attributes) if (isDeclaration(name)) key += ` ${name}=${root.attributes[name]}`;
	const shelf = books.get(startsLine) ?? new Map<string, ShapeBook>();
	books.set(startsLine, shelf);
	const known = shelf.get(key);
	if (known) return known;
	const declared = Object.entries(root.attributes).filter(([name]) => isDeclaration(name));
	const book = { declarations: Object.fromEntries(declared), startsLine, shapes: new Map<string, TagShape>() };
	shelf.set(key, book);
	return book;
}

function isDeclaration(name: string): boolean {
	return name === 'xmlns' || name.startsWith('xmlns:');
}

/**
 * The tag of an element, learned when first met, with the element's values laid out for it. The key of a root opens with a
 * slash. Undefined where writeXml has to judge.
 */
function findShape(node: MarkupElement, book: ShapeBook, key: string): TagShape | undefined {
	const first = book.shapes.get(key);
	for (let shape = first; shape; shape = shape.next) if (layValues(node, shape.names)) return shape;
	const isRoot = key.startsWith('/');
	const names = Object.keys(node.attributes);
	if (!isRoot && names.some(isDeclaration)) return undefined;
	try {
		const shape = learnShape(node.name, names, isRoot, book, first);
		book.shapes.set(key, shape);
		layValues(node, names);
		return shape;
	} catch (error) {
		if (error instanceof XmlError) return undefined;
		throw error;
	}
}

/** Lays the values of an element out, if it has attributes of these names in this order. */
function layValues({ attributes }: MarkupElement, names: readonly string[]): boolean {
	let index = 0;
	for (const name in attributes) {
		if (names[index] !== name) return false;
		values[index] = attributes[name] ?? '';
		index += 1;
	}
	return index === names.length;
}

/** Has xmlbuilder2 write the tag with marks for its values, and cuts it at them. */
function learnShape(
	name: string,
	names: readonly string[],
	isRoot: boolean,
	book: ShapeBook,
	next: TagShape | undefined,
): TagShape {
	const marked = Object.fromEntries(
		names.map((each, index) => [
			each,
			isRoot && isDeclaration(each) ? (book.declarations[each] ?? '') : `slot(${index})`,
		]),
	);
	const tag = element(name, marked);
	const text = isRoot ? writeXml(tag) : writeXml(element('shape', book.declarations, [tag]));
	const from = isRoot ? 0 : text.indexOf(`<${name}`, 1);
	const written = text.slice(from, text.indexOf('/>', from));
	invariant(from >= 0 && written.startsWith(`<${name}`), `a tag of ${name} is written`);
	const order = [...written.matchAll(/slot\((\d+)\)/g)].map(([, index]) => Number(index));
	return { names, order, pieces: written.split(/slot\(\d+\)/), startsLine: book.startsLine(name), next };
}
