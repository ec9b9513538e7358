import { expect } from 'vitest';
import { storyChanges } from '../../../item-bank/families/stories/story-changes.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(storyChanges, {
	first: { name: 'Several changes, tide level: 4 - 53 + 41 - 27', key: { kind: 'value', value: -35 } },
	holds: (item, asked) => {
		expect(item.context?.role).toBe('position');
		expect(asked.match(/\d+/g)?.length).toBeGreaterThanOrEqual(3);
		expect(worthOf(item)).toBe(worthOf(asked));
	},
});
