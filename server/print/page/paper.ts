import { fromMm } from './marks.ts';

/** Paper a school has. */
export type PaperName = 'a4' | 'letter';

/** Width and height in millimetres: ISO 216 A4, and 8.5 by 11 inches. */
export const paperSizes: Readonly<Record<PaperName, { readonly width: number; readonly height: number }>> = {
	a4: { width: 210, height: 297 },
	letter: { width: 215.9, height: 279.4 },
};

/** Sizes of type in points, leading as a multiple of the size. */
export interface TypeScale {
	/** Items, as students read them. */
	readonly item: number;
	readonly title: number;
	readonly heading: number;
	/** Instructions of the bank. */
	readonly text: number;
	/** Page numbers and the like. */
	readonly small: number;
	readonly leading: number;
	/** How much larger than drawn figures are set. */
	readonly figure: number;
}

/**
 * Standard print: items at 13.5 points. Common practice, no source; above the 12 points that are usual for these grades.
 */
export const standardType: TypeScale = {
	item: 13.5,
	title: 24,
	heading: 12,
	text: 11.5,
	small: 9,
	leading: 1.35,
	figure: 1,
};

/**
 * Large print: nothing below 18 points, which is where large text begins in WCAG 2.2 (definition of "large scale"); the
 * numbers of figures are drawn at 12 points, so figures are set half as large again.
 */
export const largeType: TypeScale = {
	item: 20,
	title: 30,
	heading: 19,
	text: 18,
	small: 18,
	leading: 1.35,
	figure: 1.5,
};

/** A page and the part of it that is printed on, points. */
export interface PageFrame {
	readonly width: number;
	readonly height: number;
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
	/** How far a figure may reach into the margins at the sides. */
	readonly bleed: number;
}

/** Margins of 16 mm, and room for a line at the foot. The widest figure (178 mm) fits between them on both papers. */
export function pageFrame(paper: PaperName, isLandscape = false): PageFrame {
	const { width, height } = paperSizes[paper];
	const [wide, high] = isLandscape ? [height, width] : [width, height];
	const side = 16;
	return {
		width: fromMm(wide),
		height: fromMm(high),
		left: fromMm(side),
		top: fromMm(16),
		right: fromMm(wide - side),
		bottom: fromMm(high - 20),
		// The widest figure in large print is 266.7 mm, on paper of 279.4 mm.
		bleed: isLandscape ? fromMm(10) : 0,
	};
}
