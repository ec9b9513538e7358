import { readFileSync } from 'node:fs';

/** Reads what the OpenType specification keeps in the tables cmap (format 4), hmtx and OS/2 of a font file. */
export function readFont(path: string) {
	const font = readFileSync(path);
	const tables = new Map<string, number>();
	for (let index = 0; index < font.readUInt16BE(4); index += 1) {
		const record = 12 + index * 16;
		tables.set(font.toString('latin1', record, record + 4), font.readUInt32BE(record + 8));
	}
	const table = (name: string) => tables.get(name) ?? 0;
	const unitsPerEm = font.readUInt16BE(table('head') + 18);
	const cmap = table('cmap');
	let map = 0;
	for (let index = 0; index < font.readUInt16BE(cmap + 2); index += 1) {
		const at = cmap + font.readUInt32BE(cmap + 8 + index * 8);
		if (font.readUInt16BE(at) === 4) map = at;
	}
	const doubled = font.readUInt16BE(map + 6);
	const glyphOf = (code: number) => {
		for (let at = 0; at < doubled; at += 2) {
			if (code > font.readUInt16BE(map + 14 + at)) continue;
			const start = font.readUInt16BE(map + 16 + doubled + at);
			const delta = font.readInt16BE(map + 16 + 2 * doubled + at);
			const rangeAt = map + 16 + 3 * doubled + at;
			const range = font.readUInt16BE(rangeAt);
			if (code < start) return 0;
			return ((range === 0 ? code : font.readUInt16BE(rangeAt + range + 2 * (code - start))) + delta) & 0xffff;
		}
		return 0;
	};
	return {
		advanceOf: (character: string) =>
			font.readUInt16BE(table('hmtx') + 4 * glyphOf(character.codePointAt(0) ?? 0)) / unitsPerEm,
		capHeight: font.readInt16BE(table('OS/2') + 88) / unitsPerEm,
	};
}
