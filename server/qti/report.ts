import type { FormRecord } from '../../item-bank/items/record.ts';
import type { ExportOptions } from './export-form.ts';
import type { Placement } from './placement.ts';
import type { PublishedSchema } from './validate/published.ts';
import type { QtiVersion } from './versions.ts';
import { listImages } from './write/images.ts';

/** A schema the package was checked against, or one it could not be. */
export interface SchemaCheck {
	readonly schema: string;
	/** False where the published schema is not installed; `npm run schemas` installs it. */
	readonly checked: boolean;
}

/** What an export holds, how it was checked, and what a teacher must know before using it. */
export interface ExportReport {
	readonly as: QtiVersion;
	/** Number of items of the bank; a set counts once. */
	readonly items: number;
	/** Paths within the package, in the order they stand there. */
	readonly files: readonly string[];
	readonly validated: readonly SchemaCheck[];
	readonly notes: readonly string[];
	readonly warnings: readonly string[];
}

/** Describes a finished export. */
export function reportExport(
	form: FormRecord | undefined,
	placements: readonly Placement[],
	files: readonly string[],
	published: PublishedSchema | undefined,
	options: ExportOptions,
): ExportReport {
	const label = options.as.replace('qti-', 'QTI ');
	return {
		as: options.as,
		items: placements.at(-1)?.position ?? 0,
		files,
		validated: [
			{ schema: `export profile ${label}: items, test, manifest`, checked: true },
			{ schema: `published ${label}: items, test`, checked: published !== undefined },
		],
		notes: describeNotes(form, placements, options),
		warnings: describeWarnings(placements),
	};
}

function describeNotes(
	form: FormRecord | undefined,
	placements: readonly Placement[],
	options: ExportOptions,
): readonly string[] {
	const notes = [...describeKinds(placements)];
	notes.push(
		form
			? 'Each item scores from 0 to 1; its points are the weight in the test. A platform that ignores weights counts every item once.'
			: 'Each item scores from 0 to 1; points are not carried, because weights belong to a test.',
	);
	if (options.images === 'svg' && placements.some((placement) => listImages(placement, 'svg').length > 0)) {
		notes.push('Figures are SVG: sharp at any size, but not every platform shows them. PNG is the default.');
	}
	if (options.hasFeedback) {
		notes.push(
			'The package holds the keys, worked steps and what wrong answers are consistent with: keep it confidential until the items are given. Items are handed in one by one, so that each can say what is right after it was answered; platforms differ in when they show it.',
		);
	}
	notes.push('answer-map.csv holds keys: keep it apart from the package and confidential.');
	return notes;
}

/** What becomes of the kinds of items that are there. */
function describeKinds(placements: readonly Placement[]): readonly string[] {
	const holds = (test: (item: Placement['record']['item']) => boolean): boolean =>
		placements.some(({ record }) => test(record.item));
	const hasFeedback = placements.some((placement) => placement.hasFeedback);
	const shares = holds(({ kind, ...item }) => 'credit' in item && item.credit === 'parts');
	const notes: string[] = [];
	if (placements.some(({ record, gridStyle }) => record.item.kind === 'gridded' && gridStyle === 'columns')) {
		notes.push(
			'Gridded items become one list of marks for each column; every gridding of the key that the grid allows earns the points.',
		);
	} else if (holds(({ kind }) => kind === 'gridded')) {
		notes.push(
			'Gridded items become numeric entry: placement in the grid is not enforced. Every spelling the grid allows (hyphen or minus sign, leading zeros) earns the points.',
			'Blanks typed around a number are ignored here; a platform that keeps them scores the entry as wrong.',
		);
	}
	if (holds((item) => item.kind === 'multiple-choice' && item.credit !== 'parts')) {
		notes.push('Multiple choice earns all points or none, as in the bank, where an item gives no credit in parts.');
	}
	if (shares) notes.push('Credit in parts is given by the same shares as in the bank, rounded after twelve places.');
	if (holds(({ kind }) => kind === 'point')) {
		notes.push(
			placements.some(({ pointStyle }) => pointStyle === 'choice')
				? 'Points on number lines become a choice among up to five lettered points: easier than marking any tick.'
				: 'Points on number lines become areas to click on, one for each tick. Not every platform takes them; a choice among lettered points is the other way.',
		);
	}
	if (holds(({ kind }) => kind === 'order')) {
		notes.push('Orders begin as the entries stand: a platform may count an order nobody touched as an answer.');
	}
	if (holds(({ kind }) => kind === 'explanation')) {
		notes.push(
			`Explanations are scored by a person, who enters a number from 0 to 1; answer-map.csv gives it for each level of the rubric. The rubric is ${hasFeedback ? 'in the package, marked as for scorers alone' : 'not in the package'}.`,
		);
	}
	if (placements.some(({ part }) => part !== undefined)) {
		notes.push(
			placements.some(({ shared }) => shared !== undefined)
				? 'Sets become one item a part, kept together in the test; the shared material is a document of its own that each part names.'
				: 'Sets become one item a part, each with the shared material above it, kept together in the test.',
		);
	}
	return notes;
}

function describeWarnings(placements: readonly Placement[]): readonly string[] {
	return placements
		.filter(({ record, part }) => record.status !== 'approved' && (part ?? 1) === 1)
		.map(
			({ record: { id, version, status }, position }) =>
				`Item ${position} ("${id}" version ${version}) is ${status}, not approved.`,
		);
}
