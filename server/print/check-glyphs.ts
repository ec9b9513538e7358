import { parseMathematics } from '../../item-bank/expression/parse.ts';
import { printMathematics } from '../../item-bank/expression/print.ts';
import type { FormRecord } from '../../item-bank/items/record.ts';
import { textsOf } from '../../item-bank/items/texts.ts';
import { printRichText } from '../../item-bank/markup/rich-text.ts';
import { missingCharacters } from './page/fonts.ts';
import type { FontName } from './page/marks.ts';
import type { PlacedItem } from './placed-items.ts';
import { PrintGlyphError } from './print-errors.ts';

/** Fonts that every text must have glyphs in: students read items in the serif, teachers read all in the sans. */
const fonts: readonly FontName[] = ['serif', 'serif-bold', 'serif-italic', 'sans', 'sans-bold'];

/** Throws PrintGlyphError for the first text with characters that the printed fonts lack. */
export function checkGlyphs(form: FormRecord, placed: readonly PlacedItem[]): void {
	const { title, sections } = form.form;
	for (const text of [title, ...sections.map((section) => section.title)]) check(text, `form "${form.id}"`);
	for (const { record } of placed) {
		for (const { kind, text, path } of textsOf(record.item)) {
			const printed =
				kind === 'rich'
					? printRichText(text)
					: kind === 'mathematics'
						? printMathematics(parseMathematics(text))
						: text;
			check(printed, `item "${record.id}" at ${path}`);
		}
	}
}

function check(text: string, place: string): void {
	const missing = fonts.flatMap((font) => missingCharacters(text.replace(/[\n\t]/g, ' '), font));
	if (missing.length > 0) throw new PrintGlyphError([...new Set(missing)], place);
}
