import { checkFigure } from '../../../item-bank/figures/check-figure.ts';
import { chooseWindow } from '../../../item-bank/figures/number-line-window.ts';
import { placesOf } from '../../../item-bank/items/kinds/point.ts';
import { element } from '../../../item-bank/markup/tree.ts';
import type { NumberLineFigure, Option, PointItem } from '../../../item-bank/types.ts';
import { FigureTooSmallError } from './hotspots.ts';
import { lineImage } from './images.ts';
import type { WritingDesk, WrittenInteraction } from './interaction.ts';
import { declareResponse, identifyOptions, writeChoiceBody } from './options.ts';

/** A lettered point to choose. */
export interface LetteredPlace {
	/** Number on the line. */
	readonly at: number;
	/** Letter on the line. */
	readonly letter: string;
	/** Identifier of the option within the item, as an option id of the bank. */
	readonly id: string;
}

/** Most lettered points of one line. */
export const mostLetters = 5;

/**
 * A point item for platforms that take no pictures to click on: points of the line carry letters, and one is chosen. Throws
 * FigureTooSmallError where the letters have no room.
 */
export function writePointChoice(item: PointItem, value: number, desk: WritingDesk): WrittenInteraction {
	const places = letterPlaces(item, value);
	const line = letterLine(item.line, places);
	const [problem] = checkFigure(line);
	if (problem) throw new FigureTooSmallError(`expected room for lettered points on the line: ${problem.message}`);
	const options = places.map(({ id, letter }): Option => ({ id, content: { kind: 'text', text: `Point ${letter}` } }));
	const [choice, ...above] = [...writeChoiceBody(options, 1, desk)].reverse();
	const picture = element('p', {}, [desk.writeFigure(line, lineImage)]);
	const key = places.filter(({ at }) => at === value).map(({ id }) => id);
	return {
		declarations: [declareResponse('single', 'identifier', identifyOptions(options, key))],
		body: [...above.reverse(), picture, ...(choice ? [choice] : [])],
		scoring: 'match_correct',
	};
}

/**
 * The places that carry letters, from the smallest: the key, its opposite where the line has it, and ticks in a row around
 * the key. How many of the row lie below the key follows from its number, so that the place in the list tells nothing.
 */
export function letterPlaces(item: PointItem, value: number): readonly LetteredPlace[] {
	const marked = item.line.points ?? [];
	const free = placesOf(item).filter((place) => !marked.some(({ at }) => at === place));
	const opposite = free.filter((place) => place === -value && value !== 0);
	const length = mostLetters - opposite.length;
	const row = free.filter((place) => place !== -value || value === 0);
	const spot = row.indexOf(value);
	const below = (Math.abs(value) * 7 + free.length) % length;
	const start = Math.max(0, Math.min(spot - below, row.length - length));
	const taken = marked.map(({ label }) => label);
	const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].filter((letter) => !taken.includes(letter));
	return [...row.slice(start, start + length), ...opposite]
		.sort((one, other) => one - other)
		.map((at, index) => ({ at, letter: letters[index] ?? '', id: 'abcdefgh'.charAt(index) }));
}

/** The same line, window and all, with the letters on it. */
export function letterLine(line: NumberLineFigure, places: readonly LetteredPlace[]): NumberLineFigure {
	const points = [...(line.points ?? []), ...places.map(({ at, letter }) => ({ at, label: letter }))];
	return { ...line, ...chooseWindow(line), points };
}
