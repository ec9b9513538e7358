import type { FormRecord, ItemRecord } from '../../item-bank/items/record.ts';
import type { Alignment } from '../../item-bank/types.ts';
import { ExportInputError, ExportRefusedError } from '../qti/export-errors.ts';
import { type ExportWatch, packPictures, throwIfCancelled, writeInBatches } from '../qti/package/batches.ts';
import { joinSegments, mostFiles } from '../qti/package/write-zip.ts';
import type { ImageFormat } from '../qti/write/images.ts';
import { writeCartridgeMap } from './answer-map.ts';
import { cartridgePoolSize, runCartridgeJob } from './cartridge-pool.ts';
import { type ChosenQuestions, chooseQuestions, type Uncarried } from './choose-questions.ts';
import { type CartridgeReport, reportCartridge } from './report.ts';
import { weighQuestions } from './weights.ts';

/** How to write a cartridge. */
export interface CartridgeOptions extends Uncarried, ExportWatch {
	readonly images: ImageFormat;
}

/** A cartridge that was found valid, with what goes beside it. */
export interface CartridgeResult {
	/** Suggested file name, such as spring-form-a-v1-cc-1.1.imscc. */
	readonly fileName: string;
	/** A ZIP archive. Same input, same bytes. */
	readonly bytes: Uint8Array;
	/** answer-map.csv: holds keys, goes beside the cartridge and never into it. */
	readonly answerMap: string;
	readonly report: CartridgeReport;
}

/**
 * Writes a form as QTI 1.2.1 in a Common Cartridge 1.1, checks all of it and hands it over. Throws NotCarriedError with the list
 * when items need a choice that was not made, ExportInputError when form and items do not fit together, ExportRefusedError
 * when anything is not valid, and ExportCancelledError; then there is no cartridge at all.
 */
export async function exportCartridge(
	{ form, items }: { readonly form: FormRecord; readonly items: readonly ItemRecord[] },
	options: CartridgeOptions,
): Promise<CartridgeResult> {
	throwIfCancelled(options.signal);
	const chosen = await chooseQuestions(form, items, options, options.signal);
	const weighing = weighQuestions(chosen.questions);
	const batches = await writeInBatches(
		chosen.questions,
		cartridgePoolSize,
		(questions) =>
			runCartridgeJob('questions', { kind: 'questions', batch: { questions, weighing, images: options.images } }),
		options,
	);
	throwIfCancelled(options.signal);
	const images = batches.flatMap((batch) => batch.images);
	const problems = batches.flatMap((batch) => batch.problems);
	if (problems.length > 0) throw new ExportRefusedError(problems);
	if (images.length + 2 > mostFiles) {
		throw new ExportInputError('export-too-large', `expected at most ${mostFiles} files, found ${images.length + 2}`);
	}
	throwIfCancelled(options.signal);
	const framing = runCartridgeJob('frame', {
		kind: 'frame',
		frame: {
			form,
			identifiers: chosen.questions.map(({ identifier }) => identifier),
			items: chosen.questions.map(({ record }) => record.id),
			texts: batches.flatMap(({ texts }) => texts),
			images,
			alignments: collectAlignments(chosen, items),
		},
	});
	// Worked out while the worker checks.
	const answerMap = writeCartridgeMap(form, chosen.questions, weighing);
	const frame = await framing;
	throwIfCancelled(options.signal);
	if (frame.problems.length > 0) throw new ExportRefusedError(frame.problems);
	const segments = [frame.segment, ...batches.map(({ segment }) => segment), ...(await packPictures(batches, options))];
	const bytes = joinSegments(segments);
	options.onProgress?.('package', 1, 1);
	return {
		fileName: `${form.id}-v${form.version}-cc-1.1.imscc`,
		bytes,
		answerMap,
		report: reportCartridge(chosen, {
			weighing,
			images: options.images,
			files: segments.flatMap(({ entries }) => entries.map(({ path }) => path)),
			sections: form.form.sections.length,
		}),
	};
}

/** Standards of the items that are there, each once, in the order they first appear. */
function collectAlignments({ questions }: ChosenQuestions, items: readonly ItemRecord[]): readonly Alignment[] {
	const held = new Set(questions.map(({ record }) => `${record.id} ${record.version}`));
	const found = new Map<string, Alignment>();
	for (const { id, version, item } of items) {
		if (!held.has(`${id} ${version}`)) continue;
		for (const alignment of item.alignments) {
			const name = `${alignment.framework} ${alignment.edition} ${alignment.code}`;
			if (!found.has(name)) found.set(name, alignment);
		}
	}
	return [...found].sort(([one], [other]) => (one < other ? -1 : 1)).map(([, alignment]) => alignment);
}
