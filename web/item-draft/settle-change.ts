import { workOf } from '../../item-bank/items/asked.ts';
import type { Item, PartItem, SetItem } from '../../item-bank/types.ts';
import { isAlike } from './compare-items.ts';
import { changeAt, type Path, valueAt } from './edit-item.ts';
import { fitPatterns, letterParts } from './fit-options.ts';
import { followExpression } from './follow-expression.ts';

/**
 * What follows from a change at a place: letters stay in order, a stem that shows the expression shows the new one, wrong
 * options carry the patterns that lead to them, and a set is worth the sum of its parts.
 */
export function settleChange(before: Item, changed: Item, path: Path): Item {
	if (changed.kind !== 'set') return settlePart(before.kind === 'set' ? undefined : before, changed, path);
	const place = path[0] === 'parts' && path.length > 2 ? path.slice(0, 2) : undefined;
	if (place === undefined) return sumPoints(changed);
	const part = valueAt(changed, place) as PartItem;
	const settled = settlePart(valueAt(before, place) as PartItem | undefined, part, path.slice(2));
	const whole = changeAt(changed, place, settled);
	return whole.kind === 'set' ? sumPoints(whole) : whole;
}

function sumPoints(item: SetItem): SetItem {
	const points = item.parts.reduce((sum, part) => sum + part.points, 0);
	return points === item.points ? item : { ...item, points };
}

function settlePart(before: PartItem | undefined, changed: PartItem, path: Path): PartItem {
	const lettered = letterParts(changed);
	const [old, now] = [before && workOf(before), workOf(lettered)];
	const isExpression = path.at(-1) === 'expression' && old !== undefined && now !== undefined;
	return refit(before, isExpression ? followExpression(lettered, old, now) : lettered);
}

/** Patterns are computed anew only where something they depend on has changed: a tag somebody set by hand stays. */
function refit(before: PartItem | undefined, part: PartItem): PartItem {
	if (part.kind !== 'choice' && part.kind !== 'multiple-choice') return part;
	if (before?.kind !== part.kind) return fitPatterns(part);
	const figures = ({ stem }: PartItem): unknown => stem.filter(({ kind }) => kind === 'figure');
	if (!isAlike(before.rule, part.rule) || !isAlike(figures(before), figures(part))) return fitPatterns(part);
	const isKnown = (content: unknown): boolean => before.options.some((option) => isAlike(option.content, content));
	const fresh = part.options.filter(({ content }) => !isKnown(content)).map(({ id }) => id);
	return fresh.length === 0 ? part : fitPatterns(part, fresh);
}
