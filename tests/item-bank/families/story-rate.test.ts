import { expect } from 'vitest';
import { storyRate } from '../../../item-bank/families/stories/story-rate.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(storyRate, {
	first: { name: 'Level after steady change, fund plan: 29 + 9 × (-13)', key: { kind: 'value', value: -88 } },
	holds: (item, asked) => {
		expect(asked).toMatch(/\d+ × \(-\d+\)$/);
		expect(worthOf(item)).toBe(worthOf(asked));
	},
});
