import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { inflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { drawFigure } from '../../../item-bank/figures/draw-figure.ts';
import { element } from '../../../item-bank/markup/tree.ts';
import type { Figure } from '../../../item-bank/types.ts';
import { PictureError, renderPng } from '../../../server/drawing/png.ts';
import { writeSvg } from '../../../server/drawing/svg.ts';
import { workerFile } from '../../../server/worker-file.ts';

const line: Figure = { kind: 'number-line', orientation: 'horizontal', arrows: [5, -8], arrowLabels: true };

interface Pixels {
	readonly width: number;
	readonly height: number;
	/** Red, green, blue, alpha from 0 to 255. */
	at(x: number, y: number): readonly number[];
}

/** A small reader of 8-bit RGBA pictures after the PNG specification (ISO/IEC 15948, 9.2 for the filters). */
function readPng(png: Uint8Array): Pixels {
	const bytes = Buffer.from(png);
	const data: Buffer[] = [];
	for (let at = 8; at < bytes.length; at += 12 + bytes.readUInt32BE(at)) {
		if (bytes.toString('latin1', at + 4, at + 8) === 'IDAT') {
			data.push(bytes.subarray(at + 8, at + 8 + bytes.readUInt32BE(at)));
		}
	}
	const [width, height] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
	expect([bytes[24], bytes[25]]).toEqual([8, 6]);
	const raw = inflateSync(Buffer.concat(data));
	const row = width * 4;
	const pixels = Buffer.alloc(row * height);
	for (let y = 0; y < height; y += 1) {
		const filter = raw[y * (row + 1)] ?? 0;
		for (let i = 0; i < row; i += 1) {
			const left = i < 4 ? 0 : (pixels[y * row + i - 4] ?? 0);
			const up = y === 0 ? 0 : (pixels[(y - 1) * row + i] ?? 0);
			const corner = i < 4 || y === 0 ? 0 : (pixels[(y - 1) * row + i - 4] ?? 0);
			const guess = [0, left, up, (left + up) >> 1, paeth(left, up, corner)][filter] ?? 0;
			pixels[y * row + i] = ((raw[y * (row + 1) + 1 + i] ?? 0) + guess) & 255;
		}
	}
	return { width, height, at: (x, y) => [...pixels.subarray((y * width + x) * 4, (y * width + x) * 4 + 4)] };
}

function paeth(a: number, b: number, c: number): number {
	const [pa, pb, pc] = [Math.abs(b - c), Math.abs(a - c), Math.abs(a + b - 2 * c)];
	return pa <= pb && pa <= pc ? a : pb <= pc ? b : c;
}

function darkPixels(pixels: Pixels): number {
	let dark = 0;
	for (let y = 0; y < pixels.height; y += 1) {
		for (let x = 0; x < pixels.width; x += 1) if ((pixels.at(x, y)[0] ?? 255) < 128) dark += 1;
	}
	return dark;
}

function sheet(family: string, text: string): string {
	const attributes = { x: 5, y: 30, 'font-family': family, 'font-size': 24, fill: '#000000' };
	const size = { width: 120, height: 40, viewBox: '0 0 120 40', xmlns: 'http://www.w3.org/2000/svg' };
	return writeSvg(element('svg', size, [element('text', attributes, [text])]));
}

test('is twice the size of the drawing, or as large as asked', () => {
	const drawing = drawFigure(line);
	const svg = writeSvg(drawing.root);
	expect(readPng(renderPng(svg))).toMatchObject({ width: drawing.width * 2, height: drawing.height * 2 });
	expect(readPng(renderPng(svg, { scale: 3 }))).toMatchObject({ width: drawing.width * 3, height: drawing.height * 3 });
});

test('is opaque everywhere, with a white corner', () => {
	const pixels = readPng(renderPng(writeSvg(drawFigure({ kind: 'counters', plus: 2, minus: 1 }).root)));
	for (let y = 0; y < pixels.height; y += 1) {
		for (let x = 0; x < pixels.width; x += 1)
			if (pixels.at(x, y)[3] !== 255) throw new Error(`see-through at ${x}, ${y}`);
	}
	expect(pixels.at(0, 0)).toEqual([255, 255, 255, 255]);
});

test('has the same bytes in another process', () => {
	const svg = writeSvg(drawFigure(line).root);
	const script = `import { renderPng } from ${JSON.stringify(workerFile('drawing/png').href)};
		import { createHash } from 'node:crypto';
		const chunks = []; for await (const chunk of process.stdin) chunks.push(chunk);
		process.stdout.write(createHash('sha256').update(renderPng(Buffer.concat(chunks).toString())).digest('hex'));`;
	const other = execFileSync(process.execPath, ['--input-type=module', '-e', script], { input: svg }).toString();
	expect(other).toBe(createHash('sha256').update(renderPng(svg)).digest('hex'));
});

test('sets text in the bundled font, which is wider than one missing letter and differs by character', () => {
	const minus = readPng(renderPng(sheet("'Source Serif 4', serif", '−8')));
	const hyphen = readPng(renderPng(sheet("'Source Serif 4', serif", '-8')));
	expect(darkPixels(minus)).toBeGreaterThan(100);
	expect(darkPixels(minus)).not.toBe(darkPixels(hyphen));
	expect(darkPixels(readPng(renderPng(sheet("'Source Serif 4', serif", ' '))))).toBe(0);
});

test('draws ink where each label of a number line stands', () => {
	const drawing = drawFigure(line);
	const pixels = readPng(renderPng(writeSvg(drawing.root)));
	const labels = drawing.root.children.filter((child) => typeof child !== 'string' && child.name === 'text');
	expect(labels.length).toBeGreaterThan(5);
	for (const label of labels) {
		if (typeof label === 'string') continue;
		const [x, y] = [Number(label.attributes.x) * 2, Number(label.attributes.y) * 2];
		let dark = 0;
		for (let dy = -20; dy < 0; dy += 1) {
			for (let dx = -12; dx < 12; dx += 1)
				if ((pixels.at(Math.round(x + dx), Math.round(y + dy))[0] ?? 255) < 128) dark += 1;
		}
		expect(dark, `label ${label.children[0]}`).toBeGreaterThan(10);
	}
});

test('refuses text that is no SVG', () => {
	expect(() => renderPng('<svg')).toThrow(PictureError);
});
