import { parseMathematics } from '../../../item-bank/expression/parse.ts';
import { printMathematics } from '../../../item-bank/expression/print.ts';
import { speakMathematics } from '../../../item-bank/expression/speak.ts';
import { printRichText, speakRichText } from '../../../item-bank/markup/rich-text.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';

/** What a catalog holds for an element: how it is read aloud, or what a figure shows. */
export type Support = 'spoken' | 'long-description';

/**
 * The attributes that tie an element to the catalog with a text: none where the version has no catalogs, or where the element
 * shows that text already.
 */
export type SupportWriter = (support: Support, text: () => string, shown: string) => Readonly<Record<string, string>>;

/** No catalogs, as in QTI 2.x. */
export const noSupport: SupportWriter = () => ({});

/** The catalogs of one document in the making. */
export interface CatalogBook {
	readonly support: SupportWriter;
	/** The catalogInfo, or nothing where no element needs one. */
	write(): readonly MarkupElement[];
}

/** A book of catalogs named catalog-1, catalog-2 …; elements with the same text share one. */
export function openCatalogs(): CatalogBook {
	const names = new Map<string, string>();
	const catalogs: MarkupElement[] = [];
	return {
		support: (support, text, shown) => {
			const written = text();
			if (written === shown) return {};
			const key = `${support} ${written}`;
			const known = names.get(key);
			const name = known ?? `catalog-${names.size + 1}`;
			if (known === undefined) {
				names.set(key, name);
				const content = element('htmlContent', {}, [written]);
				catalogs.push(element('catalog', { id: name }, [element('card', { support }, [content])]));
			}
			return { 'data-catalog-idref': name };
		},
		write: () => (catalogs.length === 0 ? [] : [element('catalogInfo', {}, catalogs)]),
	};
}

/** Attributes and text of an element that shows a rich text. */
export function writeSpokenText(text: string, support: SupportWriter): SpokenText {
	const shown = printRichText(text);
	return [support('spoken', () => speakRichText(text), shown), [shown]];
}

/** Attributes and text of an element that shows one expression or statement, minus signs as U+2212. */
export function writeSpokenMathematics(text: string, support: SupportWriter): SpokenText {
	const mathematics = parseMathematics(text);
	const shown = printMathematics(mathematics);
	return [support('spoken', () => speakMathematics(mathematics), shown), [shown]];
}

/** Attributes and content of an element. */
export type SpokenText = readonly [attributes: Readonly<Record<string, string>>, content: readonly [string]];
