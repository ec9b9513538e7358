import type { FormRecord, ItemRecord } from '../../item-bank/items/record.ts';
import { getGridProfile } from '../../item-bank/responses/grid-profiles.ts';
import type { GridProfile } from '../../item-bank/types.ts';
import { ExportInputError, ExportRefusedError } from './export-errors.ts';
import { checkExportable, type ExportableRecord, isExportable } from './exportable.ts';
import { fileStem, itemIdentifier } from './identifiers.ts';

/** One item at its place in an export. Plain data, so that it can be handed to a worker. */
export interface Placement {
	/** Counted from 1 over the whole export. */
	readonly position: number;
	/** Index of the form's section; 0 without a form. */
	readonly section: number;
	readonly record: ExportableRecord;
	/** What the item is worth here: the form's points, or the item's own. */
	readonly points: number;
	/** Identifier of the item on the platform. */
	readonly identifier: string;
	/** Neutral title that students may see. */
	readonly title: string;
	/** File name stem, such as item-007. */
	readonly stem: string;
	/** Grid rules of a gridded item; undefined for other kinds. */
	readonly profile: GridProfile | undefined;
}

/**
 * Places every item of a form in order. Throws {@link ExportInputError} when the items given are not those of the form, and
 * {@link ExportRefusedError} naming every item that cannot be written as QTI.
 */
export function placeForm(form: FormRecord, items: readonly ItemRecord[]): readonly Placement[] {
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
	return placeAll(found, profile);
}

/** Places items without a form, in the order given, each with its own points and grid. Throws as {@link placeForm}. */
export function placeItems(items: readonly ItemRecord[]): readonly Placement[] {
	return placeAll(
		items.map((record) => ({ record, section: 0, points: undefined })),
		undefined,
	);
}

interface Found {
	readonly record: ItemRecord;
	readonly section: number;
	readonly points: number | undefined;
}

function placeAll(found: readonly Found[], profile: GridProfile | undefined): readonly Placement[] {
	const stemAt = (at: number): string => fileStem(at + 1, found.length);
	const problems = found.flatMap(({ record }, at) => checkExportable(record, `items/${stemAt(at)}.xml`));
	if (problems.length > 0) throw new ExportRefusedError(problems);
	const placed = found.flatMap(({ record: { item, ...facts }, section, points }, at) =>
		isExportable(item) ? [place({ ...facts, item }, at, stemAt(at), section, points ?? item.points, profile)] : [],
	);
	checkPlacements(placed);
	return placed;
}

function place(
	record: ExportableRecord,
	at: number,
	stem: string,
	section: number,
	points: number,
	profile: GridProfile | undefined,
): Placement {
	const { item } = record;
	return {
		position: at + 1,
		section,
		record,
		points,
		identifier: itemIdentifier(record.id, record.version),
		title: `Item ${at + 1}`,
		stem,
		profile: item.kind === 'gridded' ? (profile ?? getGridProfile(item.grid)) : undefined,
	};
}

function checkPlacements(placed: readonly Placement[]): void {
	if (placed.length === 0)
		throw new ExportInputError('export-empty', 'expected at least one item to export, found none');
	const seen = new Map<string, Placement>();
	for (const placement of placed) {
		const other = seen.get(placement.identifier);
		if (other) {
			const { id, version } = placement.record;
			const message = `expected each item once, found version ${version} of "${id}" at positions ${other.position} and ${placement.position}`;
			throw new ExportInputError('export-item-repeated', message);
		}
		seen.set(placement.identifier, placement);
	}
}
