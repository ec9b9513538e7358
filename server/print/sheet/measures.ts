import type { Fiducial } from '../../../item-bank/types.ts';
import { type PaperName, paperSizes } from '../page/paper.ts';

/** Sizes of what is marked on a sheet, millimetres, and of its letters, points. */
export interface SheetMeasures {
	/** Outer diameter of a bubble. */
	readonly bubble: number;
	/** Between the centres of neighbouring bubbles, across and down. */
	readonly pitch: number;
	/** Between choice rows. */
	readonly rowStep: number;
	/** Height of a box to write in. */
	readonly box: number;
	/** From the left edge of a choice row to its first bubble's centre. */
	readonly label: number;
	/** Height of the line with the number of a grid. */
	readonly heading: number;
	/** Between fields beside each other, and under each other. */
	readonly gap: number;
	/** Least height of what stands above the fields, and the height above a student code field that has its page to itself. */
	readonly head: number;
	readonly codeHead: number;
	readonly symbolSize: number;
	readonly labelSize: number;
	readonly textSize: number;
	readonly titleSize: number;
	/** Columns of symbols under one character of a bubbled student code, and the most characters. */
	readonly codeColumns: number;
	readonly codeCharacters: number;
}

/**
 * Bubbles 6.4 mm apart: circles of 24 CSS px (6.35 mm) around their centres do not meet, which is the spacing that WCAG
 * 2.2, success criterion 2.5.8, asks of targets on a screen. For paper: common practice, no source.
 */
const standardMeasures: SheetMeasures = {
	bubble: 4.8,
	pitch: 6.4,
	rowStep: 6.8,
	box: 8,
	label: 11,
	heading: 6,
	gap: 9,
	head: 32,
	codeHead: 30,
	symbolSize: 7.5,
	labelSize: 12,
	textSize: 9.5,
	titleSize: 15,
	codeColumns: 4,
	codeCharacters: 12,
};

/** Large print: letters of 18 points in every bubble. */
const largeMeasures: SheetMeasures = {
	bubble: 8.2,
	pitch: 9.6,
	rowStep: 12,
	box: 11.5,
	label: 17,
	heading: 9,
	gap: 9,
	head: 56,
	codeHead: 36,
	symbolSize: 18,
	labelSize: 20,
	textSize: 18,
	titleSize: 20,
	codeColumns: 8,
	codeCharacters: 6,
};

/** The measures of standard or large print. */
export function measuresFor(large: boolean): SheetMeasures {
	return large ? largeMeasures : standardMeasures;
}

/** Where sheets hold something, millimetres. */
export interface SheetFrame {
	readonly width: number;
	readonly height: number;
	readonly left: number;
	readonly right: number;
	readonly top: number;
	/** Lower end of the fields. */
	readonly bottom: number;
}

const fiducialSize = 6;
const fiducialInset = 12;
const side = 17;

/** The frame of a sheet: between the fiducial marks. */
export function sheetFrame(paper: PaperName): SheetFrame {
	const { width, height } = paperSizes[paper];
	return { width, height, left: side, right: width - side, top: 9, bottom: height - 18 };
}

/** The four marks of every page that is read back. */
export function fiducialsOf(paper: PaperName): readonly Fiducial[] {
	const { width, height } = paperSizes[paper];
	const [left, right] = [fiducialInset, round(width - fiducialInset)];
	const [top, bottom] = [fiducialInset, round(height - fiducialInset)];
	return [
		{ corner: 'top-left', x: left, y: top, size: fiducialSize, isOpen: false },
		{ corner: 'top-right', x: right, y: top, size: fiducialSize, isOpen: false },
		{ corner: 'bottom-left', x: left, y: bottom, size: fiducialSize, isOpen: true },
		{ corner: 'bottom-right', x: right, y: bottom, size: fiducialSize, isOpen: false },
	];
}

/** Millimetres to the hundredth, so that a geometry has one text form. */
export function round(mm: number): number {
	return Math.round(mm * 100) / 100;
}
