/** Levels a situation can reach, in steps. */
export interface LevelBounds {
	readonly lowest: number;
	readonly highest: number;
	/** Every level and change is a multiple of it. */
	readonly step: number;
}

/** Sizes from least to most. */
export interface SizeBounds {
	readonly least: number;
	readonly most: number;
}

/**
 * A situation with signed numbers, as data. In texts, {level} stands for a signed number with its unit, {amount} for a
 * size with its unit, {count} for a number of times. Clauses begin small and end without a full stop.
 */
export interface Situation {
	/** Kebab-case. */
	readonly id: string;
	/** Where it plays; items carry it. */
	readonly setting: string;
	/** What is measured and what zero is; '' where everybody knows. */
	readonly opening: string;
	/** Unit after a level, such as °C. */
	readonly levelUnit: string;
	/** Unit after a size: of one, and of any other number. */
	readonly amountUnit: readonly [string, string];
	readonly levels: LevelBounds;
	readonly moves: SizeBounds;
	/** First sentence of a story about one thing. */
	readonly at: string;
	/** Clauses of a gain or a rise; a story with several takes one after the other. */
	readonly gains: readonly [string, ...string[]];
	/** Clauses of a loss or a fall. */
	readonly losses: readonly [string, ...string[]];
	/** Clauses that say in words what a negative and a positive level mean, with {amount}. */
	readonly means: { readonly negative: string; readonly positive: string };
	readonly askLevel: string;
	/** Two levels of one thing at two moments, and the question about the change. */
	readonly change: { readonly first: string; readonly second: string; readonly ask: string };
	/** Two things side by side, the second greater; asked about from either side. */
	readonly comparison: {
		readonly first: string;
		readonly second: string;
		readonly askMore: string;
		readonly askLess: string;
	};
	/** Where the size of every move counts; left out where nothing moves. */
	readonly total?: { readonly start: string; readonly ask: string };
	/** The same loss again and again: a sentence, and a clause that goes on from a level, with {amount} and {count}. */
	readonly rate: {
		readonly loss: string;
		readonly onward: string;
		readonly amounts: SizeBounds;
		readonly counts: SizeBounds;
		readonly ask: string;
	};
	/** Column headings of a table of changes, a table of levels, and what its rows are called. */
	readonly table: TableWords;
}

/** Words for tables of a situation. */
export interface TableWords {
	/** Says what a table of levels shows. */
	readonly caption: string;
	/** Heading of the first column of changes, such as Move, whose rows are numbered. */
	readonly step: string;
	/** Heading of a column of changes with its unit. */
	readonly change: string;
	/** Heading of a column of levels with its unit. */
	readonly level: string;
	/** Heading of the first column of levels at several moments, and the moments in order. */
	readonly moment: string;
	readonly moments: readonly [string, string, string, string];
	/** Asks to put the moments in order by their levels, the least first. */
	readonly askOrder: string;
	/** Asks for the moment of the least level. */
	readonly askLeast: string;
	/** Asks for the change that leads back to zero. */
	readonly askBack: string;
}

/** What a situation is called in the names of items. */
export function titleOf({ id }: Situation): string {
	return id.replaceAll('-', ' ');
}
