import { invariant } from '../../../item-bank/invariant.ts';

/**
 * Says which characters a TrueType font has glyphs for, from format 4 of its cmap table (OpenType 1.9, "cmap"): the
 * characters up to U+FFFF.
 */
export function readCoverage(font: Buffer): (codePoint: number) => boolean {
	const cmap = findTable(font, 'cmap');
	const count = font.readUInt16BE(cmap + 2);
	const offsets = Array.from({ length: count }, (_, index) => cmap + font.readUInt32BE(cmap + 4 + index * 8 + 4));
	const at = offsets.find((offset) => font.readUInt16BE(offset) === 4);
	invariant(at !== undefined, 'expected a font with a cmap of format 4');
	const double = font.readUInt16BE(at + 6);
	const ends = at + 14;
	const starts = ends + double + 2;
	const deltas = starts + double;
	const ranges = deltas + double;
	return (codePoint) => {
		if (codePoint > 0xffff) return false;
		for (let step = 0; step < double; step += 2) {
			if (codePoint > font.readUInt16BE(ends + step)) continue;
			const start = font.readUInt16BE(starts + step);
			if (codePoint < start) return false;
			const range = font.readUInt16BE(ranges + step);
			if (range === 0) return ((codePoint + font.readUInt16BE(deltas + step)) & 0xffff) !== 0;
			return font.readUInt16BE(ranges + step + range + (codePoint - start) * 2) !== 0;
		}
		return false;
	};
}

function findTable(font: Buffer, tag: string): number {
	const tables = font.readUInt16BE(4);
	for (let index = 0; index < tables; index += 1) {
		const entry = 12 + index * 16;
		if (font.toString('latin1', entry, entry + 4) === tag) return font.readUInt32BE(entry + 8);
	}
	throw new Error(`expected a font with a table ${tag}`);
}
