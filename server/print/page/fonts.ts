import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';
import { readCoverage } from './coverage.ts';
import type { FontName } from './marks.ts';

const require = createRequire(import.meta.url);

const files: Readonly<Record<FontName, string>> = {
	serif: 'source-serif-4/400Regular/SourceSerif4_400Regular.ttf',
	'serif-bold': 'source-serif-4/600SemiBold/SourceSerif4_600SemiBold.ttf',
	'serif-italic': 'source-serif-4/400Regular_Italic/SourceSerif4_400Regular_Italic.ttf',
	sans: 'source-sans-3/400Regular/SourceSans3_400Regular.ttf',
	'sans-bold': 'source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
};

/** Names of the fonts of printed matter. */
export const fontNames = Object.keys(files) as readonly FontName[];

/** Path of the font file on this machine. */
export function fontFile(font: FontName): string {
	return require.resolve(`@expo-google-fonts/${files[font]}`);
}

const measure = new PDFDocument({ autoFirstPage: false, font: null as never });
const widths = new Map<FontName, Map<string, number>>();
for (const font of fontNames) {
	measure.registerFont(font, fontFile(font));
	widths.set(font, new Map());
}

/** Most texts whose widths are remembered for each font. */
const remembered = 20_000;

/** Width of one line of text, points. */
export function textWidth(text: string, font: FontName, size: number): number {
	const known = widths.get(font) ?? new Map<string, number>();
	let width = known.get(text);
	if (width === undefined) {
		width = measure.font(font).fontSize(1000).widthOfString(text);
		if (known.size >= remembered) known.clear();
		known.set(text, width);
	}
	return (width * size) / 1000;
}

const coverages = new Map<FontName, (codePoint: number) => boolean>();

/** Characters of a text that a font has no glyph for, each once, in order. */
export function missingCharacters(text: string, font: FontName): readonly string[] {
	let covers = coverages.get(font);
	if (!covers) {
		covers = readCoverage(readFileSync(fontFile(font)));
		coverages.set(font, covers);
	}
	const isCovered = covers;
	return [...new Set(text)].filter((character) => !isCovered(character.codePointAt(0) ?? 0));
}

/** Height of capital letters and digits in ems, both families (OS/2 table, sCapHeight: 670 and 660 of 1000). */
export const capHeight = 0.66;
