/** A cell as the person who filled it meant it, or why it cannot be taken for anything. */
export type CellText = { readonly text: string } | { readonly fault: 'formula' | 'spreadsheet-error' | 'unreadable' };

/**
 * Undoes what spreadsheets do to a value: blanks around it (no-break and zero-width ones too), an apostrophe or ="…" that keeps
 * it from being converted, =-5 for −5, dashes in front of digits for a minus sign. A real formula or an error value has lost what was
 * typed; a replacement character was lost to a wrong encoding.
 */
export function readCell(cell: string): CellText {
	let text = trimCell(cell);
	if (text.startsWith("'")) text = trimCell(text.slice(1));
	if (text.startsWith('=')) {
		const inner = /^="([^"]*)"$/.exec(text)?.[1] ?? /^=([-+−]?\d+)$/.exec(text)?.[1];
		// "=" alone is an answer where a relation is asked for.
		if (inner === undefined && text !== '=') return { fault: 'formula' };
		text = inner === undefined ? text : trimCell(inner);
	}
	if (/^#(REF!|NAME\?|VALUE!|DIV\/0!|NUM!|NULL!|N\/A|#+)$/i.test(text)) return { fault: 'spreadsheet-error' };
	if (text.includes('\uFFFD')) return { fault: 'unreadable' };
	return { text: text.replace(/^[‐‑‒–—﹣－](?=\d)/, '-') };
}

/** Without blanks, byte-order marks and zero-width characters around it. */
export function trimCell(cell: string): string {
	return cell.replace(/^[\s\u200B-\u200D\u2060\uFEFF]+|[\s\u200B-\u200D\u2060\uFEFF]+$/g, '');
}

/** What a fault of a cell means, for a person. */
export function describeCellFault(fault: 'formula' | 'spreadsheet-error' | 'unreadable', cell: string): string {
	const shown = quoteCell(cell);
	switch (fault) {
		case 'formula':
			return `expected a response, found the formula ${shown}`;
		case 'spreadsheet-error':
			return `expected a response, found the spreadsheet's error ${shown}: what was typed is lost, enter it as text`;
		case 'unreadable':
			return `expected text in the encoding of the file, found ${shown}: the file mixes encodings here`;
	}
}

/** A cell between quotation marks, cut where it is long. */
export function quoteCell(cell: string): string {
	return `"${cell.length > 60 ? `${cell.slice(0, 60)}…` : cell}"`;
}
