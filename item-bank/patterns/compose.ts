import type { Slips } from './slips.ts';

/**
 * The slips of somebody who follows two wrong ideas: on every piece of work the first where it applies, otherwise the
 * second; where the first only changes what is worked with, the second is made on that. Answers are marked on a grid
 * last, so a slip there comes on top of both.
 */
export function composeSlips(first: Slips, second: Slips): Slips {
	return {
		twoNumbers: (given) => {
			const reached = first.twoNumbers?.(given);
			if (typeof reached === 'number') return reached;
			return second.twoNumbers?.(reached ?? given) ?? reached;
		},
		oppositeNumber: (of) => first.oppositeNumber?.(of) ?? second.oppositeNumber?.(of),
		absoluteValue: (of) => first.absoluteValue?.(of) ?? second.absoluteValue?.(of),
		regrouping: (expression) => {
			const regrouped = first.regrouping?.(expression);
			return second.regrouping?.(regrouped ?? expression) ?? regrouped;
		},
		ordering: (numbers) => first.ordering?.(numbers) ?? second.ordering?.(numbers),
		distance: (from, to) => first.distance?.(from, to) ?? second.distance?.(from, to),
		counterSet: (set) => first.counterSet?.(set) ?? second.counterSet?.(set),
		walk: (walk) => first.walk?.(walk) ?? second.walk?.(walk),
		gridEntry: (value) => first.gridEntry?.(value) ?? second.gridEntry?.(value),
	};
}
