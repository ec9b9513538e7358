import { crc32, deflateRawSync } from 'node:zlib';

/** A file to put into a ZIP archive. */
export interface ZipFile {
	/** Relative path, lower-case ASCII, / between folders. */
	readonly path: string;
	readonly bytes: Uint8Array;
}

/** Where a file stands in a segment. */
export interface ZipEntry {
	readonly path: string;
	/** Of its local header, from the start of the segment. */
	readonly offset: number;
	readonly isDeflated: boolean;
	readonly crc: number;
	/** Bytes as stored. */
	readonly packed: number;
	/** Bytes as given. */
	readonly size: number;
}

/** A run of files of an archive with their local headers. Plain data, so that workers can compress. */
export interface ZipSegment {
	readonly bytes: Uint8Array<ArrayBuffer>;
	readonly entries: readonly ZipEntry[];
}

/** Most files an archive can hold without the 64-bit extension, which some readers lack. */
export const mostFiles = 65_535;

// 1 January 2000, 00:00, as DOS writes dates: a fixed date keeps the bytes the same at every hour and in every time zone.
const fixedDate = (20 << 9) | (1 << 5) | 1;
const versionNeeded = 20;

// A window larger than the file finds nothing more, and setting one up takes longer than compressing an item.
const smallFile = 8192;
// Level 3 takes two thirds of the time of the usual 6 on these files and leaves them three in a hundred larger.
const smallWindow = { windowBits: 13, memLevel: 5, chunkSize: 4096, level: 3 };
const largeWindow = { level: 3 };

/** Compresses files in the order given; pictures, which are compressed already, are stored (APPNOTE.TXT 4.3.7). */
export function packFiles(files: readonly ZipFile[]): ZipSegment {
	const packed = files.map(({ path, bytes }) => {
		const isDeflated = !path.endsWith('.png');
		const content = isDeflated ? deflateRawSync(bytes, bytes.length <= smallFile ? smallWindow : largeWindow) : bytes;
		return { path, isDeflated, content, crc: crc32(bytes), size: bytes.length };
	});
	const total = packed.reduce((sum, { path, content }) => sum + 30 + path.length + content.length, 0);
	const bytes = Buffer.from(new ArrayBuffer(total));
	let at = 0;
	const entries = packed.map(({ content, ...facts }): ZipEntry => {
		const entry = { ...facts, offset: at, packed: content.length };
		at = bytes.writeUInt32LE(0x04034b50, at);
		at = writeFacts(bytes, at, entry);
		at += bytes.write(entry.path, at, 'latin1');
		bytes.set(content, at);
		at += content.length;
		return entry;
	});
	return { bytes: new Uint8Array(bytes.buffer), entries };
}

/** Puts segments together as a ZIP archive, in the order given (APPNOTE.TXT 4.3.12, 4.3.16). */
export function joinSegments(segments: readonly ZipSegment[]): Uint8Array {
	const entries = segments.flatMap((segment) => segment.entries);
	const local = segments.reduce((sum, { bytes }) => sum + bytes.length, 0);
	const central = entries.reduce((sum, { path }) => sum + 46 + path.length, 0);
	const bytes = Buffer.alloc(local + central + 22);
	let start = 0;
	let at = local;
	for (const segment of segments) {
		bytes.set(segment.bytes, start);
		for (const entry of segment.entries) {
			at = bytes.writeUInt32LE(0x02014b50, at);
			at = bytes.writeUInt16LE(versionNeeded, at);
			at = writeFacts(bytes, at, entry);
			// Comment length, disk, internal and external attributes: none.
			at += 10;
			at = bytes.writeUInt32LE(start + entry.offset, at);
			at += bytes.write(entry.path, at, 'latin1');
		}
		start += segment.bytes.length;
	}
	at = bytes.writeUInt32LE(0x06054b50, at) + 4;
	at = bytes.writeUInt16LE(entries.length, at);
	at = bytes.writeUInt16LE(entries.length, at);
	at = bytes.writeUInt32LE(central, at);
	bytes.writeUInt32LE(local, at);
	return bytes;
}

/** The fields that local and central headers share, from "version needed" to "extra field length". Sizes stand in front of the data, so that readers that stream can open the archive. */
function writeFacts(bytes: Buffer, from: number, entry: ZipEntry): number {
	let at = bytes.writeUInt16LE(versionNeeded, from);
	at = bytes.writeUInt16LE(0, at);
	at = bytes.writeUInt16LE(entry.isDeflated ? 8 : 0, at);
	at = bytes.writeUInt16LE(0, at);
	at = bytes.writeUInt16LE(fixedDate, at);
	at = bytes.writeUInt32LE(entry.crc, at);
	at = bytes.writeUInt32LE(entry.packed, at);
	at = bytes.writeUInt32LE(entry.size, at);
	at = bytes.writeUInt16LE(entry.path.length, at);
	return bytes.writeUInt16LE(0, at);
}
