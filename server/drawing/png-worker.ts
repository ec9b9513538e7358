import { parentPort } from 'node:worker_threads';
import { renderPng } from './png.ts';

/** One SVG document to turn into a picture, by its place in the list. */
export interface PngTask {
	readonly index: number;
	readonly svg: string;
}

/** A finished picture, or why there is none. */
export type PngResult =
	| { readonly index: number; readonly png: Uint8Array<ArrayBuffer> }
	| { readonly index: number; readonly error: string };

parentPort?.on('message', ({ index, svg }: PngTask) => {
	try {
		const png = new Uint8Array(renderPng(svg));
		parentPort?.postMessage({ index, png } satisfies PngResult, [png.buffer]);
	} catch (error) {
		parentPort?.postMessage({
			index,
			error: String(error instanceof Error ? error.message : error),
		} satisfies PngResult);
	}
});
