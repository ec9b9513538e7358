/** Why a form cannot be printed as asked. */
export type PrintInputCode =
	| 'print-form-empty'
	| 'print-item-missing'
	| 'print-student-empty'
	| 'print-student-repeated'
	| 'print-student-spelling';

/** What was asked to be printed does not fit together. */
export class PrintInputError extends Error {
	readonly code: PrintInputCode;

	constructor(fault: { readonly code: PrintInputCode; readonly message: string }) {
		super(fault.message);
		this.name = 'PrintInputError';
		this.code = fault.code;
	}
}

/** A text has characters that the printed fonts lack. */
export class PrintGlyphError extends Error {
	readonly code = 'print-glyph-missing';
	readonly characters: readonly string[];
	/** Where the text stands, such as item "srm-add-005". */
	readonly place: string;

	constructor(characters: readonly string[], place: string) {
		const named = characters.map((character) => {
			const point = (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
			return `"${character}" (U+${point})`;
		});
		super(`expected characters that the printed fonts have, found ${named.join(', ')} in ${place}`);
		this.name = 'PrintGlyphError';
		this.characters = characters;
		this.place = place;
	}
}

/** Something does not fit on a page of the paper asked for. */
export class PrintRoomError extends Error {
	readonly code: 'print-figure-too-wide' | 'print-item-too-tall';
	/** Id of the item. */
	readonly item: string;
	/** What it needs and what there is, millimetres. */
	readonly needed: number;
	readonly available: number;

	constructor(facts: Pick<PrintRoomError, 'code' | 'item' | 'needed' | 'available'>) {
		const { code, item, needed, available } = facts;
		const what = code === 'print-figure-too-wide' ? 'a figure' : 'an item';
		const way = code === 'print-figure-too-wide' ? 'wide' : 'tall';
		const sizes = `${Math.round(available)} mm, found ${Math.ceil(needed)} mm`;
		super(`expected ${what} at most ${sizes} ${way} in item "${item}"`);
		this.name = 'PrintRoomError';
		this.code = code;
		this.item = item;
		this.needed = needed;
		this.available = available;
	}
}

/** The printing was given up before its end; there are no files. */
export class PrintCancelledError extends Error {
	readonly code = 'print-cancelled';

	constructor(cause?: unknown) {
		super('the printing was given up before its end; nothing was made', cause === undefined ? undefined : { cause });
		this.name = 'PrintCancelledError';
	}
}
