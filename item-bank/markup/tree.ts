/** An element of the markup tree: plain data, written as SVG, HTML or QTI at the edges. Attribute values are text; elements of other vocabularies keep their own names. */
export interface MarkupElement {
	readonly name: string;
	readonly attributes: Readonly<Record<string, string>>;
	readonly children: readonly MarkupNode[];
}

/** A node of the markup tree: an element, or text. */
export type MarkupNode = MarkupElement | string;

/** Builds an element; numbers become decimal text, undefined attributes are left out. */
export function element(
	name: string,
	attributes: Readonly<Record<string, string | number | undefined>> = {},
	children: readonly MarkupNode[] = [],
): MarkupElement {
	const written: Record<string, string> = {};
	// Drawing makes a great many elements; listing the entries first took most of its time.
	for (const key in attributes) {
		const value = attributes[key];
		if (value !== undefined) written[key] = typeof value === 'string' ? value : String(value);
	}
	return { name, attributes: written, children };
}
