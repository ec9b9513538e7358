import type { OrderRules } from '../types.ts';
import type { ItemTraits } from './item-traits.ts';

/** A place where an order rule is not kept. */
export interface OrderBreach {
	readonly rule: 'within' | 'sameAnswerInARow';
	/** Position on the form, 1 for the first, of the item that breaks the rule. */
	readonly position: number;
}

/** Answer of an item as neighbours are compared: key place among options where there is one, else the answer. */
export function neighbourAnswer({ keyPlace, answer }: ItemTraits): string | undefined {
	return keyPlace === undefined ? answer : `option ${keyPlace}`;
}

/**
 * Where items in form order break the order rules of a blueprint. Anchors may stand out of order, since their places are
 * fixed. Same answers are the same number, or the key at the same option of neighbouring choice items.
 */
export function orderBreaches(
	sections: readonly (readonly ItemTraits[])[],
	rules: OrderRules,
	anchors: ReadonlySet<string>,
): readonly OrderBreach[] {
	const breaches: OrderBreach[] = [];
	let position = 0;
	let inARow = 0;
	let lastAnswer: string | undefined;
	for (const items of sections) {
		let hardest = 0;
		for (const item of items) {
			position += 1;
			if (!anchors.has(item.id)) {
				if (rules.within !== 'free' && item.difficulty < hardest) breaches.push({ rule: 'within', position });
				hardest = Math.max(hardest, item.difficulty);
			}
			const answer = neighbourAnswer(item);
			inARow = answer !== undefined && answer === lastAnswer ? inARow + 1 : 1;
			lastAnswer = answer;
			if (rules.sameAnswerInARow !== undefined && inARow > rules.sameAnswerInARow) {
				breaches.push({ rule: 'sameAnswerInARow', position });
			}
		}
	}
	return breaches;
}
