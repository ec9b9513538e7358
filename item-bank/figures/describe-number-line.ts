import type { NumberLineFigure } from '../types.ts';
import { layScale, type NumberLineScale } from './number-line-scale.ts';
import { arrowStops } from './number-line-window.ts';

/**
 * Says how the line lies, which ticks are labelled, and where arrows and points are. Positions are told as numbers only
 * where a label can be read, elsewhere in ticks from the nearest label; lengths of arrows only where they are written.
 */
export function describeNumberLine(figure: NumberLineFigure): string {
	const scale = layScale(figure);
	const name = figure.orientation === 'horizontal' ? 'Horizontal' : 'Vertical';
	const overview = `${name} number line with ${scale.ticks.length} evenly spaced ticks.`;
	return [overview, describeLabels(scale), ...describeArrows(figure, scale), ...describePoints(figure, scale)].join(
		' ',
	);
}

/** A number as it is said: "negative 5". */
export function sayNumber(value: number): string {
	return value < 0 ? `negative ${-value}` : String(value);
}

function describeLabels(scale: NumberLineScale): string {
	const { labelled, ticks } = scale;
	const [first] = labelled;
	const last = labelled.at(-1);
	if (first === undefined || last === undefined) return 'No tick is labelled.';
	const step = (labelled[1] ?? first) - first;
	const isEven = labelled.length > 2 && labelled.every((value, index) => value === first + index * step);
	if (isEven) {
		const every = step / scale.tickEvery;
		const which = every === 1 ? 'Every tick is' : `One tick in ${every} is`;
		const range = `from ${sayNumber(first)} to ${sayNumber(last)} in steps of ${step}`;
		if (every === 1 && labelled.length < ticks.length) return `${labelled.length} ticks are labelled, ${range}.`;
		const before = ticks.indexOf(first);
		const after = ticks.length - 1 - ticks.indexOf(last);
		const [low, high] = scale.orientation === 'horizontal' ? ['left of', 'right of'] : ['below', 'above'];
		const beyond = [
			before > 0 ? `${countTicks(before)} ${low} ${sayNumber(first)}` : '',
			after > 0 ? `${countTicks(after)} ${high} ${sayNumber(last)}` : '',
		].filter((part) => part !== '');
		return `${which} labelled, ${range}${beyond.length === 0 ? '' : `, with ${beyond.join(' and ')}`}.`;
	}
	const from = scale.orientation === 'horizontal' ? 'from the left' : 'from the bottom';
	const places = labelled.map((value) => `${sayNumber(value)} at tick ${ticks.indexOf(value) + 1}`);
	return `Labelled, counting ticks ${from}: ${joinList(places)}.`;
}

function describeArrows(figure: NumberLineFigure, scale: NumberLineScale): readonly string[] {
	const arrows = figure.arrows ?? [];
	const stops = arrowStops(figure);
	return arrows.map((length, index) => {
		const name = arrows.length === 1 ? 'An arrow' : `Arrow ${index + 1}`;
		const start = index === 0 ? `starts at ${sayPlace(stops[0] ?? 0, scale)}` : `starts where arrow ${index} ends`;
		const points = `points ${directionOf(length, scale)}`;
		if (figure.arrowLabels) {
			return `${name} ${start}, ${points} and is labelled ${length > 0 ? 'positive' : 'negative'} ${Math.abs(length)}.`;
		}
		return `${name} ${start}, ${points} and ends at ${sayPlace(stops[index + 1] ?? 0, scale)}.`;
	});
}

function describePoints(figure: NumberLineFigure, scale: NumberLineScale): readonly string[] {
	return (figure.points ?? []).map((point) => {
		const name = point.label === undefined ? 'A point' : `Point ${point.label}`;
		return `${name} is at ${sayPlace(point.at, scale)}.`;
	});
}

function sayPlace(value: number, scale: NumberLineScale): string {
	if (scale.labelled.includes(value)) return sayNumber(value);
	const nearest = [...scale.labelled].sort((a, b) => Math.abs(a - value) - Math.abs(b - value) || a - b)[0];
	if (nearest === undefined) {
		const from = scale.orientation === 'horizontal' ? 'from the left' : 'from the bottom';
		return `${sayTick((value - scale.from) / scale.tickEvery + 1)} ${from}`;
	}
	const ticks = Math.abs(value - nearest) / scale.tickEvery;
	const [low, high] = scale.orientation === 'horizontal' ? ['left of', 'right of'] : ['below', 'above'];
	const side = `${value < nearest ? low : high} ${sayNumber(nearest)}`;
	// Off the ticks a position is not to be read, only seen to lie between two of them.
	if (Number.isInteger(ticks)) return `the ${ordinalOf(ticks)} tick ${side}`;
	return ticks < 1
		? `a place between ${sayNumber(nearest)} and the next tick ${side}`
		: `a place past the ${ordinalOf(Math.floor(ticks))} tick ${side}`;
}

function sayTick(position: number): string {
	return Number.isInteger(position) ? `tick ${position}` : `a place past tick ${Math.floor(position)}`;
}

function directionOf(length: number, scale: NumberLineScale): string {
	if (scale.orientation === 'horizontal') return length > 0 ? 'right' : 'left';
	return length > 0 ? 'up' : 'down';
}

function countTicks(count: number): string {
	return count === 1 ? '1 more tick' : `${count} more ticks`;
}

function ordinalOf(count: number): string {
	const tens = count % 100;
	if (tens >= 11 && tens <= 13) return `${count}th`;
	return `${count}${['th', 'st', 'nd', 'rd'][count % 10] ?? 'th'}`;
}

function joinList(parts: readonly string[]): string {
	if (parts.length < 2) return parts.join('');
	return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}
