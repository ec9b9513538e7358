import { figuresOf } from '../../items/figures.ts';
import type { Item } from '../../types.ts';
import { commonPractice, type Rule } from '../rule.ts';

/** An item said to give counters, a number line or a table holds one; one said to give a story has a context. */
export const givenModel: Rule = {
	severity: 'stop',
	guideline: commonPractice,
	find: ({ item }) => {
		const missing = missingModel(item);
		if (missing === undefined) return [];
		const message = `the item gives "${item.given}", so expected ${missing}, found none`;
		return [{ code: 'given-not-found', path: '/given', message }];
	},
};

function missingModel(item: Item): string | undefined {
	const kinds = () => figuresOf(item).map(({ figure }) => figure.kind);
	switch (item.given) {
		case 'symbols':
			return undefined;
		case 'counters':
			return kinds().some((kind) => kind === 'counters' || kind === 'counter-groups') ? undefined : 'a counters figure';
		case 'number-line':
			return kinds().includes('number-line') ? undefined : 'a number line figure';
		case 'table':
			return item.stem.some(({ kind }) => kind === 'table') ? undefined : 'a table in the stem';
		case 'story':
			return item.context ? undefined : 'a context with setting and role';
		default:
			return item.given satisfies never;
	}
}
