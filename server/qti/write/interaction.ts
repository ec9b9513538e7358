import type { FigureDrawing } from '../../../item-bank/figures/marks.ts';
import type { MarkupElement } from '../../../item-bank/markup/tree.ts';
import type { Figure, StemBlock } from '../../../item-bank/types.ts';
import type { SupportWriter } from './catalogs.ts';

/** What one item kind contributes to its QTI document. */
export interface WrittenInteraction {
	/** The response declarations with their keys; one, but for an answer grid. */
	readonly declarations: readonly MarkupElement[];
	/** Everything inside itemBody, stem included. */
	readonly body: readonly MarkupElement[];
	/** What scores it: a standard response-processing template, a person, or rules of its own. */
	readonly scoring: 'match_correct' | 'map_response' | 'person' | OwnScoring;
}

/** Response processing written out, which sets SCORE. */
export interface OwnScoring {
	/** Declarations of further outcomes that the rules set. */
	readonly outcomes: readonly MarkupElement[];
	readonly rules: readonly MarkupElement[];
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
	/** What stands above the answer: the stimulus of the set if it is shown here, then the stem. */
	readonly stem: readonly StemBlock[];
	readonly writeFigure: FigureWriter;
	readonly writePicture: PictureWriter;
	/** Ties an element to its catalog. */
	readonly support: SupportWriter;
}
