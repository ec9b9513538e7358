import type { NumberRule, NumberSlot } from '../numbers.ts';
import type { Situation } from './situation.ts';

/** Levels of a situation within sizes asked for. */
export function levelSlot({ levels }: Situation, largest: number): NumberSlot {
	const { lowest, highest, step } = levels;
	const sign = highest < 0 ? 'minus' : lowest > 0 ? 'plus' : 'any';
	return { least: Math.max(2, step), most: Math.min(largest, Math.max(-lowest, highest)), step, sign };
}

/** Moves of a situation within sizes asked for. */
export function moveSlot({ levels, moves }: Situation, largest: number, sign: NumberSlot['sign'] = 'any'): NumberSlot {
	return { least: moves.least, most: Math.min(largest, moves.most), step: levels.step, sign };
}

/** Levels that stay within what the situation can reach. */
export function staysWithin(
	{ levels }: Situation,
	reached: (numbers: readonly number[]) => readonly number[],
): NumberRule {
	return {
		name: `levels stay from ${levels.lowest} to ${levels.highest}`,
		holds: (numbers) => reached(numbers).every((level) => level >= levels.lowest && level <= levels.highest),
	};
}
