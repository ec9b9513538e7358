import type { GridProfile } from '../types.ts';

/**
 * The grids the bank ships. Each combines rules found in published gridding directions of several programs; none is the
 * sheet of one program. Names are ours.
 */
export const gridProfiles: readonly GridProfile[] = [
	{
		id: 'plain-sign-first',
		name: 'Sign first, digits anywhere',
		digitColumns: 4,
		signColumn: 'first',
		symbols: ['-'],
		placement: 'any',
		zeros: 'lenient',
		basis: [
			'minus in the first column, no blank between digits, one mark a column: a consortium paper grid (excerpt)',
			'no sign marked means positive, any run of consecutive boxes, extra zeros fine when the value is unchanged: Texas Algebra I gridding rules (quoted by a district)',
		],
	},
	{
		id: 'left-sign-first',
		name: 'Sign first, negatives to the left',
		digitColumns: 4,
		signColumn: 'first',
		symbols: ['-', '+'],
		placement: 'left-when-negative',
		zeros: 'strict',
		basis: [
			'negatives left-justified, positives left, right or middle, no needless zeros: a consortium paper grid (excerpt)',
			'a plus to mark as well as a minus: our choice, no source',
		],
	},
	{
		id: 'floating-sign',
		name: 'Sign beside the number',
		digitColumns: 4,
		signColumn: 'floating',
		symbols: ['-'],
		placement: 'any',
		zeros: 'lenient',
		basis: [
			'one column more when a minus is needed, first digit left or last digit right, no blank between digits: Florida grade 7 to 10 gridding directions',
			'extra zeros fine when the value is unchanged: Texas gridding rules',
		],
	},
];

/** The profile with this id, or undefined. */
export function findGridProfile(id: string): GridProfile | undefined {
	return gridProfiles.find((profile) => profile.id === id);
}

/** Thrown when a grid profile is named that the bank does not ship. */
export class UnknownGridProfileError extends Error {
	readonly code = 'unknown-grid-profile';
	readonly id: string;

	constructor(id: string) {
		super(`expected a grid profile among ${gridProfiles.map((profile) => profile.id).join(', ')}, found "${id}"`);
		this.id = id;
	}
}

/** The profile with this id. Throws {@link UnknownGridProfileError}. */
export function getGridProfile(id: string): GridProfile {
	const profile = findGridProfile(id);
	if (!profile) throw new UnknownGridProfileError(id);
	return profile;
}
