import { commonPractice, type Rule } from '../rule.ts';

/** A set is worth what its parts are worth together. */
export const setPoints: Rule = {
	severity: 'stop',
	guideline: commonPractice,
	find: ({ item }) => {
		if (item.kind !== 'set') return [];
		const sum = item.parts.reduce((points, part) => points + part.points, 0);
		const message = `the parts are worth ${sum} points together, but the set says ${item.points}`;
		return sum === item.points ? [] : [{ code: 'set-points', path: '/points', message }];
	},
};
