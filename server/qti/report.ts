import type { FormRecord } from '../../item-bank/items/record.ts';
import type { ExportOptions } from './export-form.ts';
import type { Placement } from './placement.ts';
import type { PublishedSchema } from './validate/published.ts';
import type { QtiVersion } from './versions.ts';

/** A schema the package was checked against, or one it could not be. */
export interface SchemaCheck {
	readonly schema: string;
	/** False where the published schema is not installed; `npm run schemas` installs it. */
	readonly checked: boolean;
}

/** What an export holds, how it was checked, and what a teacher must know before using it. */
export interface ExportReport {
	readonly as: QtiVersion;
	/** Number of items. */
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
		items: placements.length,
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
	const kinds = new Set(placements.map(({ record }) => record.item.kind));
	const notes: string[] = [];
	if (kinds.has('gridded')) {
		notes.push(
			'Gridded items become numeric entry: placement in the grid is not enforced. Every spelling the grid allows (hyphen or minus sign, leading zeros) earns the points.',
			'Blanks typed around a number are ignored here; a platform that keeps them scores the entry as wrong.',
		);
	}
	if (kinds.has('multiple-choice')) notes.push('Multiple choice earns all points or none, as in the bank.');
	notes.push(
		form
			? 'Each item scores 0 or 1; its points are the weight in the test. A platform that ignores weights counts every item once.'
			: 'Each item scores 0 or 1; points are not carried, because weights belong to a test.',
	);
	if (options.images === 'svg' && placements.some(hasFigure)) {
		notes.push('Figures are SVG: sharp at any size, but not every platform shows them. PNG is the default.');
	}
	notes.push('answer-map.csv holds keys: keep it apart from the package and confidential.');
	return notes;
}

function describeWarnings(placements: readonly Placement[]): readonly string[] {
	return placements
		.filter(({ record }) => record.status !== 'approved')
		.map(
			({ record, title }) => `${title} ("${record.id}" version ${record.version}) is ${record.status}, not approved.`,
		);
}

function hasFigure({ record: { item } }: Placement): boolean {
	const inOptions = item.kind !== 'gridded' && item.options.some(({ content }) => content.kind === 'figure');
	return inOptions || item.stem.some(({ kind }) => kind === 'figure');
}
