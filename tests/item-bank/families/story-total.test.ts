import { expect } from 'vitest';
import { storyTotal } from '../../../item-bank/families/stories/story-total.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(storyTotal, {
	first: { name: 'Total distance, basin level: |59| + |-27|', key: { kind: 'value', value: 86 } },
	holds: (item, asked) => {
		expect(item.context?.role).toBe('total-distance');
		expect(asked).toMatch(/^\|-?\d+\|( \+ \|-?\d+\|)+$/);
		expect(worthOf(item)).toBeGreaterThan(0);
	},
});
