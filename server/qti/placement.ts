import { invariant } from '../../item-bank/invariant.ts';
import { partsOf } from '../../item-bank/items/parts.ts';
import type { FormRecord, ItemRecord } from '../../item-bank/items/record.ts';
import { getGridProfile } from '../../item-bank/responses/grid-profiles.ts';
import type { GridProfile, PartItem, StemBlock } from '../../item-bank/types.ts';
import { ExportInputError } from './export-errors.ts';
import type { ExportableRecord, PointStyle } from './exportable.ts';
import { fileStem, itemIdentifier } from './identifiers.ts';

/** One item, or one part of a set, at its place in an export. Plain data, so that it can be handed to a worker. */
export interface Placement {
	/** Counted from 1 over the whole export; the parts of a set share one. */
	readonly position: number;
	/** Counted from 1 within a set; undefined for an item by itself. */
	readonly part: number | undefined;
	/** Index of the form's section; 0 without a form. */
	readonly section: number;
	readonly record: ExportableRecord;
	/** What a set shows above the stem of each of its parts; empty for an item by itself. */
	readonly stimulus: readonly StemBlock[];
	/** What the item is worth here: the form's points, or the item's own. Points a form gives a set are shared out by those of its parts. */
	readonly points: number;
	/** Identifier of the item on the platform. */
	readonly identifier: string;
	/** Neutral title that students may see. */
	readonly title: string;
	/** File name stem, such as item-007. */
	readonly stem: string;
	/** Grid rules of a gridded item; undefined for other kinds. */
	readonly profile: GridProfile | undefined;
	/** How a point item is answered here; without meaning for other kinds. */
	readonly pointStyle: PointStyle;
}

/**
 * Places every item of a form in order, parts of sets one by one. Throws {@link ExportInputError} when the items given are
 * not those of the form.
 */
export function placeForm(
	form: FormRecord,
	items: readonly ItemRecord[],
	pointStyle: PointStyle = 'hotspot',
): readonly Placement[] {
	const records = new Map(items.map((record) => [`${record.id} ${record.version}`, record]));
	const listed = form.form.sections.flatMap((section, index) => section.items.map((entry) => ({ entry, index })));
	const profile = getGridProfile(form.form.gridProfile);
	const found = listed.map(({ entry, index }, at) => {
		const record = records.get(`${entry.item} ${entry.version}`);
		if (!record) {
			const message = `expected version ${entry.version} of item "${entry.item}" for position ${at + 1}, found none`;
			throw new ExportInputError('export-item-missing', message);
		}
		return { record, section: index, points: entry.points };
	});
	return placeAll(found, { profile, pointStyle });
}

/** Places items without a form, in the order given, each with its own points and grid. Throws as {@link placeForm}. */
export function placeItems(items: readonly ItemRecord[], pointStyle: PointStyle = 'hotspot'): readonly Placement[] {
	return placeAll(
		items.map((record) => ({ record, section: 0, points: undefined })),
		{ profile: undefined, pointStyle },
	);
}

interface Found {
	readonly record: ItemRecord;
	readonly section: number;
	/** The form's, instead of the item's own. */
	readonly points: number | undefined;
}

interface Manner {
	/** The form's grid, instead of the item's own. */
	readonly profile: GridProfile | undefined;
	readonly pointStyle: PointStyle;
}

function placeAll(found: readonly Found[], manner: Manner): readonly Placement[] {
	checkFound(found);
	return found.flatMap((each, at) =>
		partsOf(each.record.item).map((_, index) => place(each, at + 1, index, found.length, manner)),
	);
}

function place(found: Found, position: number, index: number, last: number, manner: Manner): Placement {
	const { id, version, status, item } = found.record;
	const own = partsOf(item)[index];
	invariant(own, 'every part placed is one of its item');
	const part = item.kind === 'set' ? index + 1 : undefined;
	return {
		position,
		part,
		section: found.section,
		record: { id, version, status, item: own },
		stimulus: item.kind === 'set' ? item.stem : [],
		points: shareOf(own, partsOf(item), found.points),
		identifier: itemIdentifier(id, version, part),
		title: part === undefined ? `Item ${position}` : `Item ${position}, part ${part}`,
		stem: fileStem(position, last, part),
		profile: own.kind === 'gridded' ? (manner.profile ?? getGridProfile(own.grid)) : undefined,
		pointStyle: manner.pointStyle,
	};
}

function shareOf(own: PartItem, parts: readonly PartItem[], given: number | undefined): number {
	if (given === undefined) return own.points;
	if (parts.length === 1) return given;
	return (own.points * given) / parts.reduce((sum, { points }) => sum + points, 0);
}

function checkFound(found: readonly Found[]): void {
	if (found.length === 0)
		throw new ExportInputError('export-empty', 'expected at least one item to export, found none');
	const seen = new Map<string, number>();
	found.forEach(({ record: { id, version } }, at) => {
		const identifier = itemIdentifier(id, version);
		const other = seen.get(identifier);
		if (other !== undefined) {
			const message = `expected each item once, found version ${version} of "${id}" at positions ${other} and ${at + 1}`;
			throw new ExportInputError('export-item-repeated', message);
		}
		seen.set(identifier, at + 1);
	});
}
