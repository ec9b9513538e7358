import { invariant } from '../../item-bank/invariant.ts';
import { partsOf } from '../../item-bank/items/parts.ts';
import type { FormRecord, ItemRecord } from '../../item-bank/items/record.ts';
import { getGridProfile } from '../../item-bank/responses/grid-profiles.ts';
import type { GridProfile, PartItem, StemBlock } from '../../item-bank/types.ts';
import { ExportInputError } from './export-errors.ts';
import type { ExportableRecord, GridStyle, PointStyle } from './exportable.ts';
import { fileStem, itemIdentifier, stimulusIdentifier } from './identifiers.ts';

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
	/** How a gridded item is answered here; without meaning for other kinds. */
	readonly gridStyle: GridStyle;
	/** Whether the item says, once answered, what is right and what the answer is consistent with. */
	readonly hasFeedback: boolean;
	/** The document that holds the stimulus, where the parts of a set share one; undefined where each part shows it itself. */
	readonly shared: SharedStimulus | undefined;
}

/** A stimulus in a document of its own. */
export interface SharedStimulus {
	/** On the platform. */
	readonly identifier: string;
	readonly title: string;
	/** File name stem, such as item-007-stimulus. */
	readonly stem: string;
}

/** How items are to be answered and shown; what is left out is as in {@link defaultManner}. */
export interface PlacingManner {
	readonly pointStyle?: PointStyle;
	readonly gridStyle?: GridStyle;
	readonly hasFeedback?: boolean;
	/** Whether the version has shared stimuli for sets. */
	readonly sharesStimuli?: boolean;
}

/** Hotspots, typed numbers, no feedback, and the stimulus shown by each part. */
export const defaultManner: Required<PlacingManner> = {
	pointStyle: 'hotspot',
	gridStyle: 'number',
	hasFeedback: false,
	sharesStimuli: false,
};

/** What an item shows above its stem: the stimulus of its set, unless that is a document of its own. */
export function stimulusWithin({ stimulus, shared }: Pick<Placement, 'stimulus' | 'shared'>): readonly StemBlock[] {
	return shared ? [] : stimulus;
}

/** The shared stimulus that is written with an item: by the first part of each set. */
export function stimulusBeside({ part, shared }: Pick<Placement, 'part' | 'shared'>): SharedStimulus | undefined {
	return part === 1 ? shared : undefined;
}

/**
 * Places every item of a form in order, parts of sets one by one. Throws {@link ExportInputError} when the items given are
 * not those of the form.
 */
export function placeForm(
	form: FormRecord,
	items: readonly ItemRecord[],
	manner: PlacingManner = {},
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
	return placeAll(found, profile, manner);
}

/** Places items without a form, in the order given, each with its own points and grid. Throws as {@link placeForm}. */
export function placeItems(items: readonly ItemRecord[], manner: PlacingManner = {}): readonly Placement[] {
	return placeAll(
		items.map((record) => ({ record, section: 0, points: undefined })),
		undefined,
		manner,
	);
}

interface Found {
	readonly record: ItemRecord;
	readonly section: number;
	/** The form's, instead of the item's own. */
	readonly points: number | undefined;
}

function placeAll(
	found: readonly Found[],
	profile: GridProfile | undefined,
	manner: PlacingManner,
): readonly Placement[] {
	checkFound(found);
	const whole = { ...defaultManner, ...manner };
	const placements = found.flatMap((each, at) =>
		partsOf(each.record.item).map((_, index) => place(each, at + 1, index, found.length, profile, whole)),
	);
	checkIdentifiers(placements.map(({ identifier }) => identifier));
	return placements;
}

function place(
	found: Found,
	position: number,
	index: number,
	last: number,
	profile: GridProfile | undefined,
	manner: Required<PlacingManner>,
): Placement {
	const { id, version, status, item } = found.record;
	const own = partsOf(item)[index];
	invariant(own, 'every part placed is one of its item');
	const part = item.kind === 'set' ? index + 1 : undefined;
	const stimulus = item.kind === 'set' ? item.stem : [];
	const { pointStyle, gridStyle, hasFeedback, sharesStimuli } = manner;
	const shared = {
		identifier: stimulusIdentifier(id, version),
		title: `For item ${position}`,
		stem: `${fileStem(position, last)}-stimulus`,
	};
	return {
		position,
		part,
		section: found.section,
		record: { id, version, status, item: own },
		stimulus,
		points: shareOf(own, partsOf(item), found.points),
		identifier: itemIdentifier(id, version, part),
		title: part === undefined ? `Item ${position}` : `Item ${position}, part ${part}`,
		stem: fileStem(position, last, part),
		profile: own.kind === 'gridded' ? (profile ?? getGridProfile(own.grid)) : undefined,
		pointStyle,
		gridStyle,
		hasFeedback,
		shared: sharesStimuli && stimulus.length > 0 ? shared : undefined,
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

/**
 * Some platforms do not tell capitals from small letters, so identifiers must differ without them too. Throws
 * {@link ExportInputError}.
 */
export function checkIdentifiers(identifiers: readonly string[]): void {
	const seen = new Map<string, string>();
	for (const identifier of identifiers) {
		const other = seen.get(identifier.toLowerCase());
		if (other !== undefined) {
			const message = `expected identifiers that differ in more than capitals, found "${other}" and "${identifier}"`;
			throw new ExportInputError('export-identifier-repeated', message);
		}
		seen.set(identifier.toLowerCase(), identifier);
	}
}
