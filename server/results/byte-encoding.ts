import { ResultFileError } from './result-errors.ts';

/** How the bytes of a file stand for characters. */
export type Encoding = 'utf-8' | 'windows-1252' | 'utf-16le' | 'utf-16be';

/** A file that can be read from the start any number of times, piece by piece. */
export type ByteSource = () => AsyncIterable<Uint8Array> | Iterable<Uint8Array>;

/** What the bytes of a file were found to be. */
export interface EncodingFinding {
	readonly encoding: Encoding;
	/** Line of the first bytes that are no UTF-8 in a file that otherwise is; its characters read as U+FFFD there. */
	readonly mixedAt?: number;
}

/**
 * Finds the encoding of a file: by its byte-order mark; UTF-8 where all of it is; Windows-1252 where bytes above 127 never
 * form UTF-8; UTF-8 with a warning where both are found. Reads all of the file, keeps none of it. Throws ResultFileError
 * for an empty file, and for a workbook or archive.
 */
export async function findEncoding(source: ByteSource): Promise<EncodingFinding> {
	const scan = scanUtf8();
	let first: Uint8Array | undefined;
	for await (const bytes of source()) {
		if (bytes.length === 0) continue;
		if (first === undefined) {
			first = bytes;
			const marked = findMark(bytes);
			if (marked) return { encoding: marked };
			refuseForeign(bytes);
		}
		scan.take(bytes);
	}
	if (first === undefined)
		throw new ResultFileError('results-empty', 'expected a file of responses, found an empty file');
	const { sequences, faults, faultLine } = scan.end();
	if (faults === 0) return { encoding: 'utf-8' };
	return sequences === 0 ? { encoding: 'windows-1252' } : { encoding: 'utf-8', mixedAt: faultLine };
}

function findMark([a, b]: Uint8Array): Encoding | undefined {
	if (a === 0xff && b === 0xfe) return 'utf-16le';
	return a === 0xfe && b === 0xff ? 'utf-16be' : undefined;
}

function refuseForeign(bytes: Uint8Array): void {
	const [a, b, c, d] = bytes;
	const isArchive = a === 0x50 && b === 0x4b && (c === 3 || c === 5);
	const isOldWorkbook = a === 0xd0 && b === 0xcf && c === 0x11 && d === 0xe0;
	if (isArchive || isOldWorkbook || bytes.subarray(0, 512).includes(0)) {
		const found = isArchive || isOldWorkbook ? 'a workbook or archive' : 'bytes that are no text';
		throw new ResultFileError(
			'results-not-text',
			`expected text with a row on each line, found ${found}: save the sheet as CSV and read that`,
		);
	}
}

interface Utf8Scan {
	readonly take: (bytes: Uint8Array) => void;
	readonly end: () => { readonly sequences: number; readonly faults: number; readonly faultLine: number };
}

/** Counts well-formed sequences of several bytes and faults, RFC 3629 without its limits on overlong forms. */
function scanUtf8(): Utf8Scan {
	let [line, sequences, faults, faultLine, awaited] = [1, 0, 0, 0, 0];
	const fail = (): void => {
		if (faults === 0) faultLine = line;
		faults += 1;
		awaited = 0;
	};
	return {
		take(bytes) {
			for (let at = 0; at < bytes.length; at += 1) {
				const byte = bytes[at] as number;
				if (awaited > 0) {
					if ((byte & 0xc0) === 0x80) {
						awaited -= 1;
						if (awaited === 0) sequences += 1;
						continue;
					}
					fail();
				}
				if (byte < 0x80) {
					if (byte === 10) line += 1;
				} else if (byte >= 0xc2 && byte <= 0xdf) awaited = 1;
				else if (byte >= 0xe0 && byte <= 0xef) awaited = 2;
				else if (byte >= 0xf0 && byte <= 0xf4) awaited = 3;
				else fail();
			}
		},
		end() {
			if (awaited > 0) fail();
			return { sequences, faults, faultLine };
		},
	};
}

/** The text of a file, piece by piece, without its byte-order mark. */
export async function* decodeText(source: ByteSource, encoding: Encoding): AsyncGenerator<string> {
	const decoder = new TextDecoder(encoding);
	for await (const bytes of source()) {
		const text = decoder.decode(bytes, { stream: true });
		if (text !== '') yield text;
	}
	const rest = decoder.decode();
	if (rest !== '') yield rest;
}
