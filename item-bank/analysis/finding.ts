/** Why a figure is not given. */
export type RefusalReason =
	/** Fewer students or responses than the figure can be computed from, or than may be shown. */
	| 'too-few-students'
	| 'too-few-items'
	/** Everybody has the same score, so nothing can be related to it. */
	| 'no-variance'
	/** The figure is defined for items that are right or wrong only. */
	| 'not-right-or-wrong'
	/** Students without a score on every item; see keepComplete. */
	| 'incomplete'
	/** The equations have no finite solution for these responses. */
	| 'no-solution'
	/** What the figure is about is not in the data, such as options of an item answered with a number. */
	| 'not-applicable';

/** A figure that is not given, with why: a value, so that no sum ever meets NaN. */
export interface Refusal {
	readonly kind: 'refused';
	readonly reason: RefusalReason;
	/** What was expected and what was found, for a teacher. */
	readonly message: string;
}

/** A figure, or why there is none. */
export type Finding<T> = { readonly kind: 'found'; readonly value: T } | Refusal;

/** A figure that is there. */
export function found<T>(value: T): Finding<T> {
	return { kind: 'found', value };
}

/** A figure that is not. */
export function refuse(reason: RefusalReason, message: string): Refusal {
	return { kind: 'refused', reason, message };
}

/** The value of a finding; undefined where it was refused. */
export function foundValue<T>(finding: Finding<T>): T | undefined {
	return finding.kind === 'found' ? finding.value : undefined;
}
