import { expect } from 'vitest';
import { storyPosition } from '../../../item-bank/families/stories/story-position.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(storyPosition, {
	first: { name: 'Level after a change, basin level: 27 - 38', key: { kind: 'value', value: -11 } },
	holds: (item, asked) => {
		expect(item.context?.role).toBe('position');
		expect(asked.match(/\d+/g)).toHaveLength(2);
		expect(worthOf(item)).toBe(worthOf(asked));
	},
});
