/** One record of a CSV file (RFC 4180): its cells, or what is wrong with it. */
export interface CsvRecord {
	/** Line on which it begins, 1 for the first. */
	readonly line: number;
	readonly cells: readonly string[];
	readonly fault?: CsvFault;
}

/** What can be wrong with the quotes of a record; the rest of its line is passed over. */
export type CsvFault = 'quote-inside' | 'text-after-quote' | 'quote-open' | 'too-long';

/** Longest record in characters: a quote that is never closed would otherwise swallow the rest of the file. */
export const longestRecord = 200_000;

const quote = 34;
const carriageReturn = 13;
const lineFeed = 10;

/**
 * Reads records out of text that comes in pieces. Strict about quotes: one opens only at the start of a cell, and after the
 * closing one the cell ends. Lines end with LF, CR LF or CR. Lines without anything are passed over.
 */
export class CsvReader {
	readonly #delimiter: number;
	readonly #emit: (record: CsvRecord) => void;
	#state: 'start' | 'plain' | 'quoted' | 'closing' | 'skip' = 'start';
	#cells: string[] = [];
	#cell = '';
	#length = 0;
	#line = 1;
	#startLine = 1;
	#quoteLine = 1;
	#wasReturn = false;

	/** delimiter: one character. emit is told of every record in order. */
	constructor(delimiter: string, emit: (record: CsvRecord) => void) {
		this.#delimiter = delimiter.charCodeAt(0);
		this.#emit = emit;
	}

	/** Takes the next piece of text. */
	take(text: string): void {
		let from = 0;
		for (let at = 0; at < text.length; at += 1) {
			const code = text.charCodeAt(at);
			if (this.#wasReturn) {
				this.#wasReturn = false;
				if (code === lineFeed) {
					from = at + 1;
					continue;
				}
			}
			if (this.#state === 'quoted') {
				if (code === quote) {
					this.#cell += text.slice(from, at);
					this.#state = 'closing';
					from = at + 1;
				} else if (code === lineFeed) {
					this.#line += 1;
					if (this.#length + this.#cell.length + at - from > longestRecord) this.#fail('too-long');
				}
				continue;
			}
			if (code === lineFeed || code === carriageReturn) {
				if (this.#state !== 'skip') this.#endCell(text.slice(from, at));
				this.#endRecord();
				this.#wasReturn = code === carriageReturn;
				from = at + 1;
			} else if (this.#state === 'skip') continue;
			else if (code === this.#delimiter) {
				this.#endCell(text.slice(from, at));
				from = at + 1;
			} else if (code === quote) {
				if (this.#state === 'start') {
					this.#state = 'quoted';
					this.#quoteLine = this.#line;
					from = at + 1;
				} else if (this.#state === 'closing') {
					this.#cell += '"';
					this.#state = 'quoted';
					from = at + 1;
				} else this.#fail('quote-inside');
			} else if (this.#state === 'closing') this.#fail('text-after-quote');
			else this.#state = 'plain';
		}
		if (this.#state === 'plain' || this.#state === 'quoted') {
			this.#cell += text.slice(from);
			if (this.#length + this.#cell.length > longestRecord) this.#fail('too-long');
		}
	}

	/** The text has ended. */
	end(): void {
		if (this.#state === 'quoted') this.#fail('quote-open');
		if (this.#state === 'skip') return;
		if (this.#state === 'start' && this.#cells.length === 0) return;
		this.#endCell('');
		this.#endRecord();
	}

	#endCell(rest: string): void {
		if (this.#state !== 'closing') this.#cell += rest;
		this.#cells.push(this.#cell);
		this.#length += this.#cell.length;
		this.#cell = '';
		this.#state = 'start';
		if (this.#length > longestRecord) this.#fail('too-long');
	}

	#endRecord(): void {
		const isBlank = this.#cells.every((cell) => cell === '');
		if (this.#state !== 'skip' && !(isBlank && this.#cells.length <= 1))
			this.#emit({ line: this.#startLine, cells: this.#cells });
		this.#line += 1;
		this.#begin();
	}

	#begin(): void {
		this.#state = 'start';
		this.#cells = [];
		this.#cell = '';
		this.#length = 0;
		this.#startLine = this.#line;
	}

	#fail(fault: CsvFault): void {
		const line = fault === 'quote-open' ? this.#quoteLine : this.#startLine;
		this.#emit({ line, cells: this.#cells, fault });
		this.#cells = [];
		this.#cell = '';
		this.#state = 'skip';
	}
}

/** Records of text that comes in pieces, in runs of those that each piece completed. */
export async function* readRecords(
	text: AsyncIterable<string>,
	delimiter: string,
): AsyncGenerator<readonly CsvRecord[]> {
	let run: CsvRecord[] = [];
	const reader = new CsvReader(delimiter, (record) => run.push(record));
	for await (const piece of text) {
		reader.take(piece);
		if (run.length > 0) yield run;
		run = [];
	}
	reader.end();
	if (run.length > 0) yield run;
}

/** What a fault of quotes means, for a person. */
export function describeFault(fault: CsvFault): string {
	switch (fault) {
		case 'quote-inside':
			return 'expected a quotation mark only around a whole cell, found one inside a cell';
		case 'text-after-quote':
			return 'expected the cell to end after its closing quotation mark, found more text';
		case 'quote-open':
			return 'expected a closing quotation mark, found the end of the file';
		case 'too-long':
			return `expected a row of at most ${longestRecord} characters, found a longer one: a quotation mark is probably never closed`;
	}
}
