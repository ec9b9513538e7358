import type { CounterGroupsFigure, CounterSign, CountersFigure } from '../types.ts';
import { blocksOf, type CounterSet, columnsOf, splitCounters } from './counters.ts';

/** Says which counters stand in which row, which are ringed, framed or crossed out. Never a total or a value. */
export function describeCounters(figure: CountersFigure): string {
	const { starting, added } = splitCounters(figure);
	const sentences: string[] = [];
	if (starting.plus > 0 || starting.minus > 0) sentences.push(...describeRows(starting));
	const ringed = figure.ringedPairs ?? 0;
	if (ringed > 0) {
		sentences.push(`${ringed} ${ringed === 1 ? 'pair is' : 'pairs are'} ringed, each one plus above one minus.`);
	}
	if (added.plus > 0) {
		const opening = sentences.length > 0 ? 'Apart from these, in a dashed frame' : 'In a dashed frame';
		sentences.push(`${opening}: ${countOf(added.plus, 'plus')} above ${countOf(added.minus, 'minus')}.`);
	}
	sentences.push(...describeCrossed(starting, added));
	return sentences.join(' ');
}

/** Says how many groups are framed and what stands in each. Never the total. */
export function describeCounterGroups(figure: CounterGroupsFigure): string {
	const each = countOf(figure.each, figure.sign);
	if (figure.groups === 1) return `1 group in a frame: ${each}.`;
	return `${figure.groups} groups, each in a frame. In each group: ${each}.`;
}

function describeRows(set: CounterSet): readonly string[] {
	const isWrapped = blocksOf(set) > 1;
	if (set.plus === 0 || set.minus === 0) {
		const all = set.minus === 0 ? countOf(set.plus, 'plus') : countOf(set.minus, 'minus');
		return [isWrapped ? `${all}, in rows of ${columnsOf(set)}.` : `One row: ${all}.`];
	}
	const [plus, minus] = [countOf(set.plus, 'plus'), countOf(set.minus, 'minus')];
	if (isWrapped) return [`${plus} and ${minus}, in rows of ${columnsOf(set)}, each row of plus above a row of minus.`];
	return [`Top row: ${plus}.`, `Bottom row: ${minus}.`];
}

function describeCrossed(starting: CounterSet, added: CounterSet): readonly string[] {
	const places: string[] = [];
	const name = (set: CounterSet, where: string) => {
		if (set.crossedPlus > 0) places.push(`${countOf(set.crossedPlus, 'plus')}${where}`);
		if (set.crossedMinus > 0) places.push(`${countOf(set.crossedMinus, 'minus')}${where}`);
	};
	name(starting, added.plus > 0 ? ' outside the dashed frame' : '');
	name(added, ' in the dashed frame');
	return places.length === 0 ? [] : [`Crossed out: ${places.join(' and ')}.`];
}

function countOf(count: number, sign: CounterSign): string {
	return `${count} ${count === 1 ? 'counter' : 'counters'} marked ${sign}`;
}
