import { findGridProfile, gridProfiles } from '../../responses/grid-profiles.ts';
import { commonPractice, type Rule } from '../rule.ts';

/** The answer grid is one the bank knows. */
export const knownGrid: Rule = {
	severity: 'stop',
	guideline: commonPractice,
	find: ({ parts }) =>
		parts.flatMap(({ part, path }) => {
			if (part.kind !== 'gridded' || findGridProfile(part.grid)) return [];
			const known = gridProfiles.map(({ id }) => id).join(', ');
			const message = `expected a grid profile among ${known}, found "${part.grid}"`;
			return [{ code: 'unknown-grid-profile', path: `${path}/grid`, message }];
		}),
};
