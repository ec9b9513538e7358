import { chooseWindow } from '../../figures/number-line-window.ts';
import type { Problem } from '../../problem.ts';
import type { PointItem, PointResponse } from '../../types.ts';
import { worthAt } from '../compute.ts';
import { checkTyped, type KeyFinding, keyUnless } from '../item-key.ts';
import type { Outcome } from '../outcome.ts';

/** Key of a point item: the value of its expression, which must lie on a tick of the line and not be marked there already. */
export function findPointKey(item: PointItem): KeyFinding<{ kind: 'value'; value: number }> {
	const value = worthAt(item.expression, '/expression');
	const typed = item.key === undefined ? undefined : String(item.key);
	const problems = [
		...checkTyped(String(value), typed, `the expression "${item.expression}" is worth`),
		...checkPlace(item, value),
	];
	return keyUnless(problems, { kind: 'value', value });
}

/** The numbers a student can mark: the ticks of the line, from the smallest. */
export function placesOf(item: PointItem): readonly number[] {
	const { from, to, tickEvery } = chooseWindow(item.line);
	return Array.from({ length: Math.floor((to - from) / tickEvery) + 1 }, (_unused, index) => from + index * tickEvery);
}

/** A mark counts when it is at the key; a place that is no tick cannot be marked. */
export function scorePoint(item: PointItem, value: number, { at }: PointResponse): Outcome {
	if (at === undefined) return { state: 'omitted' };
	if (!placesOf(item).includes(at)) return { state: 'invalid', reason: 'place-not-offered' };
	return { state: at === value ? 'correct' : 'incorrect' };
}

function checkPlace(item: PointItem, value: number): readonly Problem[] {
	const { from, to, tickEvery } = chooseWindow(item.line);
	if (!placesOf(item).includes(value)) {
		const message = `the key ${value} is not on a tick of the line from ${from} to ${to} in steps of ${tickEvery}`;
		return [{ code: 'point-off-line', path: '/line', message }];
	}
	if (item.line.points?.some(({ at }) => at === value)) {
		const message = `expected a line on which the key ${value} is still unmarked, found a point there`;
		return [{ code: 'point-already-marked', path: '/line/points', message }];
	}
	return [];
}
