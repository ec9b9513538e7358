import { readFacts } from '../../../item-bank/checks/facts.ts';
import type { Rule } from '../../../item-bank/checks/rule.ts';
import type { Problem } from '../../../item-bank/problem.ts';
import type { Item, StemBlock } from '../../../item-bank/types.ts';
import { makeChoice, makeGridded } from '../../helpers/items.ts';

/** What one rule has to say of an item. */
export function found(rule: Rule, item: Item): readonly Problem[] {
	return rule.find(readFacts(item));
}

/** A gridded item that asks in these words. */
export function asking(...texts: readonly string[]): Item {
	return makeGridded({ stem: texts.map((text): StemBlock => ({ kind: 'paragraph', text })) });
}

/** A choice among texts, b the right one. */
export function offering(...texts: readonly string[]): ReturnType<typeof makeChoice> {
	return makeChoice({
		options: texts.map((text, index) => ({ id: 'abcdefgh'.charAt(index), content: { kind: 'text', text } })),
		rule: { kind: 'stated', options: ['b'], reason: 'Said so.' },
	});
}
