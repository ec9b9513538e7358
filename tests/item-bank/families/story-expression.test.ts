import { expect } from 'vitest';
import { storyExpression } from '../../../item-bank/families/stories/story-expression.ts';
import { optionTextsOf, testFamily, worthOf } from './family-laws.ts';

testFamily(storyExpression, {
	first: { name: 'Expression, room temperature: -19 + 3', key: { kind: 'options', options: ['b'] } },
	holds: (item, asked) => {
		expect(item.context?.role).toBe('position');
		expect(optionTextsOf(item).map(worthOf)).toContain(worthOf(asked));
	},
});
