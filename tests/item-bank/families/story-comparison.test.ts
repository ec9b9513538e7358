import { expect } from 'vitest';
import { storyComparison } from '../../../item-bank/families/stories/story-comparison.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(storyComparison, {
	first: { name: 'Comparison, basin level: 32 - (-48)', key: { kind: 'options', options: ['d'] } },
	holds: (item) => {
		expect(item.context?.role).toBe('comparison');
		expect(worthOf(item)).toBeGreaterThan(0);
	},
});
