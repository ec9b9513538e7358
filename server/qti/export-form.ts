import type { FormRecord, ItemRecord } from '../../item-bank/items/record.ts';
import { writeAnswerRuns } from './answer-map.ts';
import { ExportRefusedError } from './export-errors.ts';
import type { GridStyle, PointStyle } from './exportable.ts';
import { packageIdentifier } from './identifiers.ts';
import type { ExportWatch } from './package/batches.ts';
import { buildPackage } from './package/build-package.ts';
import { type Placement, type PlacingManner, placeForm, placeItems } from './placement.ts';
import { type ExportReport, reportExport } from './report.ts';
import { findPublishedSchema, publishedFolder } from './validate/published.ts';
import { getVersionFacts, type QtiVersion } from './versions.ts';
import type { ImageFormat } from './write/images.ts';

/** How to export. */
export interface ExportOptions extends ExportWatch {
	readonly as: QtiVersion;
	readonly images: ImageFormat;
	/** How points on number lines are answered: by hotspots when left out, or by a choice of letters for platforms without them. */
	readonly points?: PointStyle;
	/** How gridded items are answered: by a number typed when left out, or column by column. */
	readonly grid?: GridStyle;
	/**
	 * Whether students are told, after answering, what is right, what their answer is consistent with, and the worked steps; puts
	 * keys into the package. No when left out.
	 */
	readonly hasFeedback?: boolean;
	/** Folder with published schemas, instead of ZEROPAIR_SCHEMAS or schemas/published. */
	readonly schemasFolder?: string;
}

/** A package that was found valid, with what goes beside it. */
export interface ExportResult {
	/** Suggested file name, such as spring-form-a-v1-qti-2.2.zip. */
	readonly fileName: string;
	/** The package as a ZIP archive. Same input, same bytes. */
	readonly bytes: Uint8Array;
	/** answer-map.csv: holds keys, goes beside the package and never into it. */
	readonly answerMap: string;
	readonly report: ExportReport;
}

/**
 * Writes a form as a QTI package, checks all of it and hands it over. Throws ExportInputError when form and items do not fit
 * together, {@link ExportRefusedError} naming item, element and line when anything is not valid, and ExportCancelledError;
 * then there is no package at all.
 */
export async function exportForm(
	input: { readonly form: FormRecord; readonly items: readonly ItemRecord[] },
	options: ExportOptions,
): Promise<ExportResult> {
	const { form } = input;
	return exportPlaced(form, placeForm(form, input.items, mannerOf(options)), `${form.id}-v${form.version}`, options);
}

/** Writes items without a form as a QTI package; points are not carried, since weights belong to a test. Throws as {@link exportForm}. */
export async function exportItems(items: readonly ItemRecord[], options: ExportOptions): Promise<ExportResult> {
	const placements = placeItems(items, mannerOf(options));
	const name = packageIdentifier(placements.map(({ identifier }) => identifier)).replace('package', 'items');
	return exportPlaced(undefined, placements, name, options);
}

async function exportPlaced(
	form: FormRecord | undefined,
	placements: readonly Placement[],
	name: string,
	options: ExportOptions,
): Promise<ExportResult> {
	const published = findPublishedSchema(publishedFolder(options.schemasFolder), options.as);
	// Worked out while the workers write; what is wrong with an item is theirs to tell.
	const answers = collectAnswerMap(form, placements).then(
		(text) => ({ text }),
		(error: unknown) => ({ error }),
	);
	const built = await buildPackage(form, placements, published, options);
	if (built.problems.length > 0) throw new ExportRefusedError(built.problems);
	const answerMap = await answers;
	if ('error' in answerMap) throw answerMap.error;
	return {
		fileName: `${name}-${options.as}.zip`,
		bytes: built.bytes,
		answerMap: answerMap.text,
		report: reportExport(form, placements, built.paths, published, options),
	};
}

function mannerOf({ as, points = 'hotspot', grid = 'number', hasFeedback = false }: ExportOptions): PlacingManner {
	const sharesStimuli = getVersionFacts(as).stimulusType !== undefined;
	return { pointStyle: points, gridStyle: grid, hasFeedback, sharesStimuli };
}

/** Lets the workers of a large export be served between runs of rows. */
async function collectAnswerMap(form: FormRecord | undefined, placements: readonly Placement[]): Promise<string> {
	const texts: string[] = [];
	for (const text of writeAnswerRuns(form, placements)) {
		texts.push(text);
		await new Promise((resolve) => setImmediate(resolve));
	}
	return texts.join('');
}
