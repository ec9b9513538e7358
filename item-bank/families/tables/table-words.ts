import type { StemBlock } from '../../types.ts';
import { runningTotals } from '../number-rules.ts';
import type { NumberRule, NumberSlot } from '../numbers.ts';
import type { Situation } from '../stories/situation.ts';
import { levelSlot, staysWithin } from '../stories/story-plan.ts';

/** Changes in numbered rows. */
export function changeTable({ table }: Situation, changes: readonly number[]): StemBlock {
	const rows = changes.map((change, index) => [String(index + 1), `\`${change}\``]);
	return { kind: 'table', header: [table.step, table.change], rows };
}

/** Levels at four moments. */
export function levelTable({ table }: Situation, levels: readonly number[]): StemBlock {
	const rows = levels.map((level, index) => [table.moments[index] ?? '', `\`${level}\``]);
	return { kind: 'table', header: [table.moment, table.level], rows };
}

/** A moment within a sentence. */
export function inSentence(moment: string): string {
	return moment === 'Noon' || moment.startsWith('Run') ? moment.charAt(0).toLowerCase() + moment.slice(1) : moment;
}

/** A first level and three steps from level to level, no longer than things move in the situation. */
export function levelSlots(situation: Situation, largest: number): readonly NumberSlot[] {
	const { levels, moves } = situation;
	const step: NumberSlot = {
		least: Math.max(2, levels.step),
		most: Math.min(moves.most, 2 * largest),
		step: levels.step,
		sign: 'any',
	};
	return [levelSlot(situation, largest), step, step, step];
}

/** A rule about the levels that {@link levelSlots} lead to. */
export function ofLevels({ name, holds }: NumberRule): NumberRule {
	return { name, holds: (numbers) => holds(runningTotals(numbers)) };
}

/** Levels no larger than asked for, and within what the situation can reach. */
export function levelsWithin(situation: Situation, largest: number): readonly NumberRule[] {
	return [
		ofLevels(staysWithin(situation, (levels) => levels)),
		ofLevels({
			name: `levels are of a size from 2 to ${largest}`,
			holds: (levels) => levels.every((level) => Math.abs(level) > 1 && Math.abs(level) <= largest),
		}),
		ofLevels({ name: 'the levels differ in size', holds: (levels) => new Set(levels.map(Math.abs)).size === 4 }),
	];
}
