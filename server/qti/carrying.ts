import type { Item } from '../../item-bank/types.ts';

/** Every version a form can be looked at for before it is taken out: QTI packages, and QTI 1.2.1 in a Common Cartridge. */
export const packageVersions = ['qti-2.1', 'qti-2.2', 'qti-3.0', 'cc-1.1'] as const;

/** A version of {@link packageVersions}. */
export type PackageVersion = (typeof packageVersions)[number];

/** The name of each version as people say it. */
export const versionNames: Readonly<Record<PackageVersion, string>> = {
	'qti-2.1': 'QTI 2.1',
	'qti-2.2': 'QTI 2.2',
	'qti-3.0': 'QTI 3.0',
	'cc-1.1': 'Common Cartridge 1.1',
};

/** What becomes of one thing in one version. */
export interface Carriage {
	/** carried: always; converted: into another kind, and only when asked. */
	readonly how: 'carried' | 'converted';
	/** What it becomes there. */
	readonly as: string;
	/** What is lost on the way; nothing where it is empty. */
	readonly lost: readonly string[];
}

/** One row of the table: an item of this sort, or a side of the form. */
export interface CarryingRow {
	readonly label: string;
	readonly by: Readonly<Record<PackageVersion, Carriage>>;
}

const carried = (as: string, ...lost: readonly string[]): Carriage => ({ how: 'carried', as, lost });
const converted = (as: string, ...lost: readonly string[]): Carriage => ({ how: 'converted', as, lost });
const twoBoxes = 'two boxes to mark, because a single choice there needs three options';
const oneMark = 'that only one mark can be set';

/** A row whose QTI versions agree, but for what is said of the newest. */
function row(label: string, qti: Carriage, cartridge: Carriage, newest: Carriage = qti): CarryingRow {
	return { label, by: { 'qti-2.1': qti, 'qti-2.2': qti, 'qti-3.0': newest, 'cc-1.1': cartridge } };
}

/**
 * What each version carries of items: the one place that says so. The table of README.md is made from it, and so are the table
 * before an export and the choices of a cartridge.
 */
export const itemCarrying = {
	choice: row('choice', carried('choice'), carried('choice')),
	'choice-of-two': row('choice of two options', carried('choice'), converted(twoBoxes, oneMark)),
	'multiple-choice': row('multiple choice', carried('multiple choice'), carried('multiple response')),
	'multiple-choice-parts': row(
		'multiple choice, credit in parts',
		carried('multiple choice, with shares'),
		carried('multiple response', 'credit in parts: all points or none'),
	),
	gridded: row(
		'gridded',
		carried('numeric entry, spellings listed', 'placement in the grid, but for the column style'),
		carried('entry, spellings listed', 'placement in the grid'),
		carried('numeric entry, spellings listed', 'placement in the grid, but for the column style'),
	),
	point: row(
		'point',
		carried('areas to click on, one a tick'),
		converted('choice among lettered points', 'marking any tick: at most five are offered'),
	),
	order: row(
		'order',
		carried('order'),
		converted('choice among whole orders', 'putting in order: at most four orders are offered'),
	),
	match: row(
		'match',
		carried('match'),
		converted('choice among whole lists of pairs', 'pairing: at most four lists are offered'),
	),
	'match-parts': row(
		'match, credit in parts',
		carried('match, with shares'),
		converted('one choice for each entry on the left', 'that each entry on the right is used once'),
	),
	'inline-choice': row(
		'inline choice',
		carried('inline choice'),
		converted('choice below the statement', 'the gap to fill within the statement'),
	),
	'inline-choice-of-two': row(
		'inline choice of two',
		carried('inline choice'),
		converted(twoBoxes, 'the gap to fill within the statement', oneMark),
	),
	explanation: row('explanation', carried('extended text, scored by a person'), carried('essay, scored by a person')),
	set: row(
		'set',
		carried('one item a part, shared text above each'),
		converted('one item a part, shared text above each', 'that the parts stay together'),
		carried('one item a part, with a shared stimulus'),
	),
} as const satisfies Readonly<Record<string, CarryingRow>>;

/** What each version carries of the form around its items. */
export const formCarrying: readonly CarryingRow[] = [
	row('sections of the form', carried('sections'), carried('one section', 'titles and bounds of sections')),
	row('points', carried('weights in the test'), carried('whole weights from 1 to 99')),
	row(
		'standards',
		carried('metadata of each item'),
		carried('metadata of the cartridge', 'which item is held to which standard'),
	),
	row(
		'figures',
		carried('PNG or SVG, with text alternatives'),
		carried('PNG or SVG, with text alternatives'),
		carried('PNG or SVG, with text alternatives and catalogs'),
	),
];

/** The rows of items, by name. */
export type CarryingTrait = keyof typeof itemCarrying;

/** The row an item belongs to; a set by itself, whatever its parts are. */
export function traitOf(item: Item): CarryingTrait {
	switch (item.kind) {
		case 'choice':
			return item.options.length === 2 ? 'choice-of-two' : 'choice';
		case 'multiple-choice':
			return item.credit === 'parts' ? 'multiple-choice-parts' : 'multiple-choice';
		case 'match':
			return item.credit === 'parts' ? 'match-parts' : 'match';
		case 'inline-choice':
			return item.choices.length === 2 ? 'inline-choice-of-two' : 'inline-choice';
		case 'gridded':
		case 'point':
		case 'order':
		case 'explanation':
		case 'set':
			return item.kind;
		default:
			return item satisfies never;
	}
}

/** What becomes of an item in a version. */
export function carriageOf(item: Item, version: PackageVersion): Carriage {
	return itemCarrying[traitOf(item)].by[version];
}

/** The table of README.md: what each version carries, as Markdown. */
export function describeCarrying(): string {
	const cells = [
		['', ...packageVersions.map((version) => versionNames[version])],
		...[...Object.values<CarryingRow>(itemCarrying), ...formCarrying].map(({ label, by }) => [
			label,
			...packageVersions.map((version) => describeCarriage(by[version])),
		]),
	];
	const [head = [], ...rows] = cells.map((line) => `| ${line.join(' | ')} |`);
	return [head, '|---|---|---|---|---|', ...rows].join('\n');
}

/** One cell of the table in words. */
export function describeCarriage({ how, as, lost }: Carriage): string {
	return `${how === 'converted' ? 'converted: ' : ''}${as}${lost.length === 0 ? '' : `; loses ${lost.join(', ')}`}`;
}
