import { expect } from 'vitest';
import { storyChange } from '../../../item-bank/families/stories/story-change.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(storyChange, {
	first: { name: 'Change, room temperature: -16 - (-13)', key: { kind: 'options', options: ['b'] } },
	holds: (item, asked) => {
		expect(item.context?.role).toBe('change');
		expect(asked).toMatch(/^-?\d+ - (\d+|\(-\d+\))$/);
		expect(worthOf(item)).toBe(worthOf(asked));
	},
});
