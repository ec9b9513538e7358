import { renderPngs } from '../../drawing/pngs.ts';
import { ExportCancelledError } from '../export-errors.ts';
import { packFiles, type ZipSegment } from './write-zip.ts';

/** What is being done: items written and checked, figures turned into pictures, the package put together. */
export type ExportStage = 'items' | 'pictures' | 'package';

/** Who hears how far an export is, and who may give it up. */
export interface ExportWatch {
	readonly onProgress?: (stage: ExportStage, done: number, total: number) => void;
	/** Gives the export up; it then throws ExportCancelledError. */
	readonly signal?: AbortSignal;
}

// Small enough to stop soon and show progress, large enough that handing over costs nothing beside the work.
const batchSize = 100;

/**
 * Has things written by the workers of a pool, a hundred at a time; what comes back is in the order of the things. Throws
 * ExportCancelledError, and what the workers throw.
 */
export async function writeInBatches<Thing, Written>(
	things: readonly Thing[],
	workers: number,
	write: (batch: readonly Thing[]) => Promise<Written>,
	{ onProgress, signal }: ExportWatch,
): Promise<readonly Written[]> {
	const count = Math.ceil(things.length / batchSize);
	const written: Written[] = [];
	let next = 0;
	let done = 0;
	const work = async (): Promise<void> => {
		for (let index = next; index < count; index = next) {
			next += 1;
			throwIfCancelled(signal);
			const batch = things.slice(index * batchSize, (index + 1) * batchSize);
			written[index] = await write(batch);
			done += batch.length;
			onProgress?.('items', done, things.length);
		}
	};
	// Twice as many lines as workers, so that none waits for its next batch.
	await Promise.all(Array.from({ length: workers * 2 }, work));
	return written;
}

/** Draws pictures as PNG and packs them: one part of the archive, or none. Throws ExportCancelledError. */
export async function packPictures(
	batches: readonly { readonly pictures: readonly { readonly path: string; readonly svg: string }[] }[],
	{ onProgress, signal }: ExportWatch,
): Promise<readonly ZipSegment[]> {
	const pictures = batches.flatMap((batch) => batch.pictures);
	if (pictures.length === 0) return [];
	try {
		const pngs = await renderPngs(
			pictures.map(({ svg }) => svg),
			(done, total) => onProgress?.('pictures', done, total),
			signal,
		);
		return [packFiles(pictures.map(({ path }, index) => ({ path, bytes: pngs[index] ?? new Uint8Array() })))];
	} catch (error) {
		throw signal?.aborted ? new ExportCancelledError(error) : error;
	}
}

/** Throws ExportCancelledError when the signal says so. */
export function throwIfCancelled(signal: AbortSignal | undefined): void {
	if (signal?.aborted) throw new ExportCancelledError(signal.reason);
}
