import { encodeGrid, type GridColumns } from '../../item-bank/responses/grid.ts';
import type { GridProfile } from '../../item-bank/types.ts';

/** What a student is told about a grid, in the order of doing; each sentence follows from the profile. */
export function gridRules(profile: GridProfile): readonly string[] {
	return [
		'Write one digit in each box. Leave no empty box inside the number.',
		...signRules(profile),
		profile.zeros === 'strict'
			? 'Do not write zeros in front of the number.'
			: 'Zeros in front of the number do not change it. You do not need them.',
		'Fill one bubble below each box that you used. Leave the other columns empty.',
		'Only the bubbles are scored, not the boxes.',
	];
}

function signRules(profile: GridProfile): readonly string[] {
	const plus = profile.symbols.includes('+') ? ' A plus sign may be left out.' : '';
	switch (profile.signColumn) {
		case 'none':
			return ['Every answer is zero or more: there is no place for a sign.'];
		case 'first': {
			const place =
				profile.placement === 'left-when-negative'
					? ' Start a negative number in the box right after the sign.'
					: ' The digits may stand in any boxes after it.';
			return [`For a negative number put the minus sign in the first box.${place}${plus}`];
		}
		case 'floating':
			return [`For a negative number put the minus sign in the box right before the first digit.${plus}`];
		default:
			return profile.signColumn satisfies never;
	}
}

/** The plainest way to grid a value, as far left as it may stand; undefined when it does not fit. */
export function plainGridding(value: number, profile: GridProfile): GridColumns | undefined {
	return encodeGrid(value, profile)[0];
}

/** Values that the worked example shows: a positive and a negative number that every shipped grid can hold. */
export function exampleValues(profile: GridProfile): readonly number[] {
	return [58, -37].filter((value) => plainGridding(value, profile) !== undefined);
}
