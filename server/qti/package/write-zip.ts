import { crc32 } from 'node:zlib';
import { deflateSync } from 'fflate';

/** One file of a ZIP archive, compressed already. Plain data, so that workers can compress. */
export interface ZipPart {
	/** Relative path, lower-case ASCII, / between folders. */
	readonly path: string;
	readonly deflated: Uint8Array;
	/** Bytes before compression. */
	readonly size: number;
	readonly crc: number;
}

/**
 * Compresses one file. By fflate, not by zlib: zlib's bytes depend on the processor and on the version of Node, and the same
 * export must give the same bytes everywhere.
 */
export function deflatePart(path: string, bytes: Uint8Array): ZipPart {
	return { path, deflated: deflateSync(bytes), size: bytes.length, crc: crc32(bytes) };
}

/** Most entries an archive can hold without the 64-bit extension, which some readers lack. */
export const mostEntries = 65_535;

// 1 January 2000, 00:00, as DOS writes dates: a fixed date keeps the bytes the same in every time zone.
const fixedDate = (20 << 9) | (1 << 5) | 1;
const versionNeeded = 20;
const deflateMethod = 8;

/**
 * Puts compressed files together as a ZIP archive, in the order given (APPNOTE.TXT 4.3.7, 4.3.12, 4.3.16). Sizes stand in
 * the local headers, so that readers that stream can open it.
 */
export function writeZip(parts: readonly ZipPart[]): Uint8Array {
	const paths = parts.map(({ path }) => Buffer.from(path, 'latin1'));
	const local = sum(parts.map((part, index) => 30 + (paths[index]?.length ?? 0) + part.deflated.length));
	const central = sum(paths.map((path) => 46 + path.length));
	const bytes = Buffer.alloc(local + central + 22);
	const offsets: number[] = [];
	let at = 0;
	parts.forEach((part, index) => {
		const path = paths[index] ?? Buffer.alloc(0);
		offsets.push(at);
		at = bytes.writeUInt32LE(0x04034b50, at);
		at = writeEntry(bytes, at, part, path.length);
		at += path.copy(bytes, at);
		bytes.set(part.deflated, at);
		at += part.deflated.length;
	});
	parts.forEach((part, index) => {
		const path = paths[index] ?? Buffer.alloc(0);
		at = bytes.writeUInt32LE(0x02014b50, at);
		at = bytes.writeUInt16LE(versionNeeded, at);
		at = writeEntry(bytes, at, part, path.length);
		// Comment length, disk, internal and external attributes: none.
		at += 10;
		at = bytes.writeUInt32LE(offsets[index] ?? 0, at);
		at += path.copy(bytes, at);
	});
	at = bytes.writeUInt32LE(0x06054b50, at);
	at += 4;
	at = bytes.writeUInt16LE(parts.length, at);
	at = bytes.writeUInt16LE(parts.length, at);
	at = bytes.writeUInt32LE(central, at);
	bytes.writeUInt32LE(local, at);
	return bytes;
}

/** The fields that local and central headers share, from "version needed" to "extra field length". */
function writeEntry(bytes: Buffer, from: number, part: ZipPart, pathLength: number): number {
	let at = bytes.writeUInt16LE(versionNeeded, from);
	at = bytes.writeUInt16LE(0, at);
	at = bytes.writeUInt16LE(deflateMethod, at);
	at = bytes.writeUInt16LE(0, at);
	at = bytes.writeUInt16LE(fixedDate, at);
	at = bytes.writeUInt32LE(part.crc, at);
	at = bytes.writeUInt32LE(part.deflated.length, at);
	at = bytes.writeUInt32LE(part.size, at);
	at = bytes.writeUInt16LE(pathLength, at);
	return bytes.writeUInt16LE(0, at);
}

function sum(sizes: readonly number[]): number {
	return sizes.reduce((total, size) => total + size, 0);
}
