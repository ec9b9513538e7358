import { checkItem } from '../../item-bank/checks/check-item.ts';
import { checkBlueprint } from '../../item-bank/forms/check-blueprint.ts';
import type { Problem } from '../../item-bank/problem.ts';
import type { Blueprint, Item } from '../../item-bank/types.ts';
import { checkShape } from '../json-schemas.ts';

/** What even a draft may not have: everything else can be mended before approval. */
const refusedInDrafts: ReadonlySet<string> = new Set([
	'illegal-character',
	'key-mismatch',
	'unknown-framework',
	'unknown-standard',
	'alignment-repeated',
]);

/** What the checks have to say about an item: what keeps it out of the bank, and what only speaks against approval. */
export interface ItemFindings {
	/** The item cannot be kept, not even as a draft. */
	readonly refusals: readonly Problem[];
	/** Everything that speaks against approval, refusals included. */
	readonly problems: readonly Problem[];
}

/** Checks an item against its schema and then against every rule. */
export function examineItem(item: Item): ItemFindings {
	const shape = checkShape('item.schema.json', item);
	if (shape.length > 0) return { refusals: shape, problems: shape };
	const problems = checkItem(item);
	return { refusals: problems.filter(({ code }) => refusedInDrafts.has(code)), problems };
}

/** Everything that keeps a document from being a blueprint of the bank: its shape, or else what it contradicts itself in. */
export function examineBlueprint(document: unknown): readonly Problem[] {
	const shape = [...checkShape('blueprint.schema.json', document), ...checkCharacters(document)];
	return shape.length > 0 ? shape : checkBlueprint(document as Blueprint);
}

/** Characters that no XML document can hold, anywhere in a document; they could never be exported. */
export function checkCharacters(document: unknown, path = ''): readonly Problem[] {
	if (typeof document === 'string') {
		const found = illegal.exec(document);
		if (!found) return [];
		const point = found[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, '0');
		const message = `expected printable text, found the character U+${point} at position ${found.index}`;
		return [{ code: 'illegal-character', path, message }];
	}
	if (typeof document !== 'object' || document === null) return [];
	return Object.entries(document).flatMap(([key, value]) => checkCharacters(value, `${path}/${key}`));
}

/** Outside the Char production of XML 1.0, or a control character that has no place in a title. */
const illegal =
	/[\u0000-\u001F\u007F-\u009F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/;
