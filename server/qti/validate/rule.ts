/** A rule that no XML Schema can state: elements of which its condition holds are at fault. */
export interface Rule {
	readonly code: string;
	/** XPath 1.0 of the elements it looks at; the prefix q is the QTI namespace, cp the manifest's. */
	readonly at: string;
	/** XPath 1.0 condition, relative to such an element. */
	readonly fault: string;
	/** What was expected of the element. */
	readonly expected: string;
}
