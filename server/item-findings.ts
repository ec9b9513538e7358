import { reviewItem } from '../item-bank/checks/review-item.ts';
import { EvaluationError } from '../item-bank/expression/evaluation-error.ts';
import { parseMathematics } from '../item-bank/expression/parse.ts';
import { stepRows } from '../item-bank/expression/steps.ts';
import { ExpressionSyntaxError } from '../item-bank/expression/syntax-error.ts';
import { workOf } from '../item-bank/items/asked.ts';
import { findKey } from '../item-bank/items/key.ts';
import type { Item, ItemFindings } from '../item-bank/types.ts';
import { checkShape } from './json-schemas.ts';

/** Everything the bank computes of a document that may be an item: problems, and as far as they can be had, key and worked steps. */
export function findOut(document: unknown): ItemFindings {
	const shape = checkShape('item.schema.json', document);
	if (shape.length > 0) return { problems: shape };
	const item = document as Item;
	const finding = findKey(item);
	const steps = workItem(item);
	const notes = reviewItem(item);
	const stops = notes.filter(({ severity }) => severity === 'stop');
	return {
		problems: stops.map(({ code, path, message }) => ({ code, path, message })),
		notes,
		...('key' in finding ? { key: finding.key } : {}),
		...(steps ? { steps } : {}),
	};
}

/** The worked steps of the item's expression; undefined where it has none that can be worked. */
function workItem(item: Item): ItemFindings['steps'] {
	const text = workOf(item);
	if (text === undefined) return undefined;
	try {
		const mathematics = parseMathematics(text);
		return mathematics.kind === 'statement' ? undefined : stepRows(mathematics);
	} catch (error) {
		if (error instanceof ExpressionSyntaxError || error instanceof EvaluationError) return undefined;
		throw error;
	}
}
