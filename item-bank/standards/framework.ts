/** One standard of a framework. Its statement is our own paraphrase; the official text comes with a CASE document. */
export interface Standard {
	/** The printed code, unique within a framework and edition only. */
	readonly code: string;
	/** True where the framework prints no code and this one is ours. */
	readonly isOwnCode?: boolean;
	/** Code of the standard one level up. */
	readonly parent?: string;
	/** Heading above a standard that has no parent among ours. */
	readonly heading?: string;
	readonly grade: string;
	/** True where the standard is about positive numbers only: no signed item belongs to it. */
	readonly isPositiveOnly?: boolean;
	/** Our paraphrase. */
	readonly statement: string;
	/** Framework's own label, such as readiness. */
	readonly label?: string;
	/** Says so where the label is not from a source. */
	readonly labelSource?: string;
	/** Official address, a CASE item where there is one. */
	readonly uri?: string;
	/** CASE identifier. */
	readonly guid?: string;
	/** Where code and meaning were read. */
	readonly source: string;
}

/** One edition of one framework: the pair of id and edition is its key, because codes are reused between editions. */
export interface Framework {
	readonly id: string;
	readonly edition: string;
	readonly name: string;
	/** ISO 3166 code of where it applies. */
	readonly place: string;
	readonly note?: string;
	readonly labelMeanings?: Readonly<Record<string, string>>;
	readonly standards: readonly Standard[];
}
