import type { MarkupElement } from '../../../item-bank/markup/tree.ts';
import type { Figure } from '../../../item-bank/types.ts';

/** What one item kind contributes to its QTI document. */
export interface WrittenInteraction {
	/** The response declaration with its key. */
	readonly declaration: MarkupElement;
	/** Everything inside itemBody, stem included. */
	readonly body: readonly MarkupElement[];
	/** The standard response-processing template that scores it. */
	readonly template: 'match_correct' | 'map_response';
}

/** Draws a figure into the package and returns the img that shows it; the name is unique within the item. */
export type FigureWriter = (figure: Figure, name: string) => MarkupElement;
