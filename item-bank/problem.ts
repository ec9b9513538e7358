/** Something wrong with content. A value, never thrown; checks return all they find, in a stable order. */
export interface Problem {
	/** Kebab-case and permanent; listed in DEVELOPERS.md. */
	readonly code: string;
	/** JSON pointer into the checked document, '' for the whole of it. */
	readonly path: string;
	/** What was expected, what was found and where. */
	readonly message: string;
}
