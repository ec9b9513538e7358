import type { Item, Option, StemBlock } from '../../item-bank/types.ts';

/** A field in which two versions of an item differ, each as lines to read. */
export interface Difference {
	readonly field: string;
	readonly before: readonly string[];
	readonly after: readonly string[];
}

/** Two versions that grew from one, field by field: who changed what. */
export interface Divergence extends Difference {
	/** theirs: only the other version changed it; mine: only ours; both: a person has to choose. */
	readonly changedBy: 'theirs' | 'mine' | 'both';
}

type Fields = Readonly<Record<string, unknown>>;

/** The fields in which two items differ, in the order of the second. */
export function compareItems(before: Item, after: Item): readonly Difference[] {
	return differingFields(before, after).map((field) => ({
		field,
		before: describeField(before, field),
		after: describeField(after, field),
	}));
}

/** The fields in which two items differ that were both made from a third. */
export function compareBranches(base: Item | undefined, theirs: Item, mine: Item): readonly Divergence[] {
	return compareItems(theirs, mine).map((difference) => {
		const { field } = difference;
		const isSame = (item: Item): boolean => base !== undefined && isAlike(fieldOf(base, field), fieldOf(item, field));
		const changedBy = isSame(mine) ? 'theirs' : isSame(theirs) ? 'mine' : 'both';
		return { ...difference, changedBy };
	});
}

/** The item of ours with the fields named taken from the other. */
export function takeFields(mine: Item, theirs: Item, fields: readonly string[]): Item {
	const merged: Record<string, unknown> = { ...mine };
	for (const field of fields) {
		const value = fieldOf(theirs, field);
		if (value === undefined) delete merged[field];
		else merged[field] = value;
	}
	// A field is taken whole from an item of the same kind; where the kind itself differs the caller offers all or nothing.
	return merged as unknown as Item;
}

/** Whether two documents say the same, whatever the order of their fields. */
export function isAlike(a: unknown, b: unknown): boolean {
	if (a === b) return true;
	if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
	if (Array.isArray(a) !== Array.isArray(b)) return false;
	const [first, second] = [a as Fields, b as Fields];
	const names = new Set([...Object.keys(first), ...Object.keys(second)]);
	return [...names].every((name) => isAlike(first[name], second[name]));
}

function differingFields(before: Item, after: Item): readonly string[] {
	const names = new Set([...Object.keys(after), ...Object.keys(before)]);
	return [...names].filter((name) => !isAlike(fieldOf(before, name), fieldOf(after, name)));
}

function fieldOf(item: Item, field: string): unknown {
	return (item as unknown as Fields)[field];
}

function describeField(item: Item, field: string): readonly string[] {
	const value = fieldOf(item, field);
	if (value === undefined) return [];
	if (field === 'stem') return (value as readonly StemBlock[]).map(describeBlock);
	if (['options', 'entries', 'left', 'right'].includes(field)) return (value as readonly Option[]).map(describeOption);
	if (Array.isArray(value)) return value.map(describeValue);
	return [describeValue(value)];
}

function describeBlock(block: StemBlock): string {
	switch (block.kind) {
		case 'paragraph':
			return block.text;
		case 'mathematics':
			return `\`${block.math}\``;
		case 'figure':
			return describeValue(block.figure);
		case 'table':
			return [block.header, ...block.rows].map((row) => row.join(' | ')).join(' / ');
	}
}

function describeOption({ id, content, patterns = [] }: Option): string {
	const shown =
		content.kind === 'mathematics'
			? `\`${content.math}\``
			: content.kind === 'text'
				? content.text
				: describeValue(content.figure);
	return `${id.toUpperCase()} ${shown}${patterns.length === 0 ? '' : ` (${patterns.join(', ')})`}`;
}

/** A value as plain text: fields by name, lists with commas. */
function describeValue(value: unknown): string {
	if (Array.isArray(value)) return value.map(describeValue).join(', ');
	if (typeof value !== 'object' || value === null) return String(value).replace(/^-(?=\d)/, '−');
	return Object.entries(value)
		.map(([name, inner]) => `${name} ${describeValue(inner)}`)
		.join('; ');
}
