import { createRequire } from 'node:module';
import { Resvg } from '@resvg/resvg-js';

const require = createRequire(import.meta.url);

/** The font of every picture: installed fonts are never used, so that pictures are the same on every machine. */
const fontFile = require.resolve('@expo-google-fonts/source-serif-4/400Regular/SourceSerif4_400Regular.ttf');

/** An SVG document that cannot be turned into a picture. */
export class PictureError extends Error {
	readonly code = 'picture-unreadable-svg';

	constructor(cause: unknown) {
		super(`expected an SVG document that can be drawn, found one refused with: ${String(cause)}`, { cause });
		this.name = 'PictureError';
	}
}

/**
 * Turns an SVG document into a PNG on a white ground, `scale` pixels to the px (2 when left out). The same SVG gives the
 * same bytes. Throws {@link PictureError}.
 */
export function renderPng(svg: string, options: { readonly scale?: number } = {}): Uint8Array {
	try {
		const drawing = new Resvg(svg, {
			background: '#ffffff',
			fitTo: { mode: 'zoom', value: options.scale ?? 2 },
			font: { loadSystemFonts: false, fontFiles: [fontFile], serifFamily: 'Source Serif 4' },
		});
		return drawing.render().asPng();
	} catch (cause) {
		throw new PictureError(cause);
	}
}
