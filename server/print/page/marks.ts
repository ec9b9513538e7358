/** Fonts of printed matter: items speak in the serif, the bank in the sans. */
export type FontName = 'serif' | 'serif-bold' | 'serif-italic' | 'sans' | 'sans-bold';

/** How a shape is painted: grey tones as #rrggbb with equal parts, stroke width and dashes in points. */
export interface Paint {
	readonly fill?: string;
	readonly stroke?: string;
	readonly width?: number;
	readonly dash?: readonly number[];
}

/** One drawing call. Points at 72 to the inch, x to the right and y down from the top left corner; text stands on its baseline y. */
export type Mark =
	| {
			readonly kind: 'text';
			readonly x: number;
			readonly y: number;
			readonly text: string;
			readonly font: FontName;
			readonly size: number;
			readonly tone?: string;
	  }
	| {
			readonly kind: 'rect';
			readonly x: number;
			readonly y: number;
			readonly width: number;
			readonly height: number;
			readonly rounding?: number;
			readonly paint: Paint;
	  }
	| {
			readonly kind: 'circle';
			readonly x: number;
			readonly y: number;
			readonly radius: number;
			readonly paint: Paint;
	  }
	| {
			readonly kind: 'line';
			readonly x1: number;
			readonly y1: number;
			readonly x2: number;
			readonly y2: number;
			readonly paint: Paint;
	  }
	| { readonly kind: 'polygon'; readonly points: readonly (readonly [number, number])[]; readonly paint: Paint }
	| { readonly kind: 'rects'; readonly rects: readonly Rect[]; readonly paint: Paint };

/** An upright rectangle by its top left corner, points. */
export interface Rect {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

/** The standard structure types that printed matter uses (ISO 32000-1, 14.8.4). */
export type Tag =
	/** No structure type: marks without meaning, such as rules, which are painted apart from the content. */
	| 'Artifact'
	| 'Sect'
	| 'H1'
	| 'H2'
	| 'H3'
	| 'H4'
	| 'P'
	| 'Span'
	| 'L'
	| 'LI'
	| 'Lbl'
	| 'LBody'
	| 'Table'
	| 'TR'
	| 'TH'
	| 'TD'
	| 'Figure'
	| 'Formula'
	| 'Caption';

/** A piece of a page with its meaning for screen readers; children stand in reading order. */
export interface Block {
	readonly tag: Tag;
	/** What a Figure shows, or how a Formula is read aloud. */
	readonly alt?: string;
	/** Of a header cell. */
	readonly scope?: 'Row' | 'Column';
	/** Outline of a Figure on its page, points: left, top, right, bottom. */
	readonly bounds?: readonly [number, number, number, number];
	readonly children: readonly (Block | Mark)[];
}

/** One page, points. Artifacts are what is no content: rules, page numbers. */
export interface Page {
	readonly width: number;
	readonly height: number;
	readonly blocks: readonly Block[];
	readonly artifacts: readonly Mark[];
}

/** Pages with what a reader is told of them. */
export interface PrintDocument {
	readonly title: string;
	readonly subject: string;
	/** Made one by one while they are painted, so that a class set never stands in memory as a whole. */
	readonly pages: Iterable<Page>;
}

/** Black of every letter and line. */
export const black = '#000000';
/** Paper. */
export const white = '#ffffff';
/** Hairlines and things that may fade on a copier without loss. */
export const grey = '#808080';

/** Millimetres of a length in points. */
export function toMm(points: number): number {
	return (points * 25.4) / 72;
}

/** Points of a length in millimetres. */
export function fromMm(mm: number): number {
	return (mm * 72) / 25.4;
}

/** Whether a child of a block is a drawing call and no block. */
export function isMark(child: Block | Mark): child is Mark {
	return 'kind' in child;
}
