import { largeType, type PageFrame, type PaperName, pageFrame, standardType, type TypeScale } from '../page/paper.ts';

/** How a booklet is set. */
export interface BookletStyle {
	readonly paper: PaperName;
	readonly large: boolean;
	readonly columns: 1 | 2;
	readonly type: TypeScale;
	readonly frame: PageFrame;
}

/** The style of a booklet; large print has one column. */
export function bookletStyle(paper: PaperName, large: boolean, columns: 1 | 2): BookletStyle {
	return {
		paper,
		large,
		columns: large ? 1 : columns,
		type: large ? largeType : standardType,
		frame: pageFrame(paper),
	};
}
