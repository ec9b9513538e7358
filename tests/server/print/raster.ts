import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

/** A grey picture: one byte a dot, 0 black to 255 white, row by row. */
export interface Raster {
	readonly width: number;
	readonly height: number;
	readonly dots: Uint8Array;
}

/** Dots in a millimetre at 300 to the inch. */
export const dotsPerMm = 300 / 25.4;

/** Pages of a PDF as pdftoppm (Poppler) draws them at 300 dots to the inch, in grey. */
export function rasterise(pdf: Uint8Array, first: number, last: number): readonly Raster[] {
	const args = ['-r', '300', '-gray', '-f', String(first), '-l', String(last), '-'];
	return readPictures(execFileSync('pdftoppm', args, { input: pdf, maxBuffer: 400_000_000 }));
}

/** Every picture of a file of binary portable greymaps (PGM, P5) one after the other. */
export function readPictures(file: Buffer): readonly Raster[] {
	const pictures: Raster[] = [];
	let at = 0;
	while (at < file.length) {
		const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(file.toString('latin1', at, at + 60));
		if (!head) throw new Error(`expected a greymap at byte ${at}`);
		const [width, height] = [Number(head[1]), Number(head[2])];
		const start = at + head[0].length;
		pictures.push({ width, height, dots: file.subarray(start, start + width * height) });
		at = start + width * height;
	}
	return pictures;
}

/** Smallest box around the dark dots of a window, all in millimetres; undefined when there are none. */
export function findInk(
	raster: Raster,
	window: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number } | undefined {
	const [fromX, toX] = [window.x, window.x + window.width].map((mm) => Math.round(mm * dotsPerMm));
	const [fromY, toY] = [window.y, window.y + window.height].map((mm) => Math.round(mm * dotsPerMm));
	let [left, top, right, bottom] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, -1, -1];
	for (let y = fromY ?? 0; y < (toY ?? 0); y += 1) {
		for (let x = fromX ?? 0; x < (toX ?? 0); x += 1) {
			if ((raster.dots[y * raster.width + x] ?? 255) >= 128) continue;
			left = Math.min(left, x);
			right = Math.max(right, x + 1);
			top = Math.min(top, y);
			bottom = Math.max(bottom, y + 1);
		}
	}
	if (right < 0) return undefined;
	return { left: left / dotsPerMm, top: top / dotsPerMm, right: right / dotsPerMm, bottom: bottom / dotsPerMm };
}

/** A photocopy of a photocopy: black and white drawn together, edges blurred, noise from a seed over all. */
export function photocopy(raster: Raster, seed: number): Raster {
	const { width, height } = raster;
	let dots: Uint8Array = raster.dots.map((dot) => 70 + Math.round(dot * 0.52));
	for (let pass = 0; pass < 2; pass += 1) dots = blur({ width, height, dots });
	let state = seed >>> 0;
	const random = () => {
		state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
		return state / 2 ** 32;
	};
	const noisy = dots.map((dot) => {
		const noise = (random() + random() + random() - 1.5) * 46;
		return Math.max(0, Math.min(255, Math.round(dot + noise)));
	});
	return { width, height, dots: noisy };
}

function blur({ width, height, dots }: Raster): Uint8Array {
	const out = new Uint8Array(dots);
	for (let y = 1; y < height - 1; y += 1) {
		for (let x = 1; x < width - 1; x += 1) {
			let sum = 0;
			for (let row = -width; row <= width; row += width) {
				const middle = y * width + x + row;
				sum += (dots[middle - 1] ?? 0) + (dots[middle] ?? 0) + (dots[middle + 1] ?? 0);
			}
			out[y * width + x] = Math.round(sum / 9);
		}
	}
	return out;
}

/** A part of a picture, millimetres. */
export function crop(raster: Raster, x: number, y: number, width: number, height: number): Raster {
	const [left, top, wide, high] = [x, y, width, height].map((mm) => Math.round(mm * dotsPerMm)) as [
		number,
		number,
		number,
		number,
	];
	const dots = new Uint8Array(wide * high);
	for (let row = 0; row < high; row += 1) {
		const from = (top + row) * raster.width + left;
		dots.set(raster.dots.subarray(from, from + wide), row * wide);
	}
	return { width: wide, height: high, dots };
}

let isPrepared = false;

/** Texts of every Data Matrix that a code reader (zxing-wasm, its module taken from the package) finds. */
export async function readCodes(raster: Raster): Promise<readonly string[]> {
	if (!isPrepared) {
		const file = new URL(import.meta.resolve('zxing-wasm/reader/zxing_reader.wasm'));
		const wasmBinary = new Uint8Array(readFileSync(file)).buffer;
		await prepareZXingModule({ overrides: { wasmBinary }, fireImmediately: true });
		isPrepared = true;
	}
	const { width, height, dots } = raster;
	const data = new Uint8ClampedArray(width * height * 4);
	dots.forEach((dot, index) => data.fill(dot, index * 4, index * 4 + 3).fill(255, index * 4 + 3, index * 4 + 4));
	const picture = { width, height, data, colorSpace: 'srgb' } as unknown as ImageData;
	const found = await readBarcodes(picture, { formats: ['DataMatrix'], tryHarder: true });
	return found.map(({ text }) => text);
}
