import { findGridProfile } from '../../responses/grid-profiles.ts';
import { checkWidth } from '../grid.ts';
import { commonPractice, type Rule } from '../rule.ts';

/** The key fits into the answer grid. */
export const gridWidth: Rule = {
	severity: 'stop',
	guideline: commonPractice,
	find: ({ parts }) =>
		parts.flatMap(({ part, path, key }) => {
			const profile = part.kind === 'gridded' ? findGridProfile(part.grid) : undefined;
			return profile && 'key' in key ? checkWidth(key.key, profile, `${path}/grid`) : [];
		}),
};
