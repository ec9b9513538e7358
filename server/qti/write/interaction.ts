import type { FigureDrawing } from '../../../item-bank/figures/marks.ts';
import type { MarkupElement } from '../../../item-bank/markup/tree.ts';
import type { Figure, StemBlock } from '../../../item-bank/types.ts';

/** What one item kind contributes to its QTI document. */
export interface WrittenInteraction {
	/** The response declaration with its key. */
	readonly declaration: MarkupElement;
	/** Everything inside itemBody, stem included. */
	readonly body: readonly MarkupElement[];
	/** The standard response-processing template that scores it; undefined where a person does. */
	readonly template: 'match_correct' | 'map_response' | undefined;
}

/** Draws a figure into the package and returns the img that shows it; the name is unique within the item. */
export type FigureWriter = (figure: Figure, name: string) => MarkupElement;

/** Puts a drawing into the package with one pixel to each px, for coordinates to be counted on, and returns its address and type. */
export type PictureWriter = (
	drawing: FigureDrawing,
	name: string,
) => { readonly data: string; readonly type: 'image/png' | 'image/svg+xml' };

/** What a writer works with beside the item itself. */
export interface WritingDesk {
	/** What stands above the answer: the stimulus of the set if there is one, then the stem. */
	readonly stem: readonly StemBlock[];
	readonly writeFigure: FigureWriter;
	readonly writePicture: PictureWriter;
}
