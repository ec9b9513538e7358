import { type Explanation, explainAnswer } from '../patterns/explain-answer.ts';
import { findPattern } from '../patterns/index.ts';
import type { Item } from '../types.ts';
import { type Finding, found, refuse } from './finding.ts';
import { type Interval, wilsonInterval } from './intervals.ts';
import { type ItemColumn, stateCodes } from './score-table.ts';

/** One wrong answer that several students gave. */
export interface FrequentAnswer {
	/** As in the score table: a number, an option id. */
	readonly answer: string;
	readonly count: number;
	/** Of all who were given the item: the share of the class, with Wilson's interval. */
	readonly share: number;
	readonly interval: Interval;
	/** Of all wrong answers. */
	readonly shareOfWrong: number;
	/** What the answer is consistent with; undefined for answers that are not explained, such as orders. */
	readonly explanation: Explanation | undefined;
}

/**
 * The most frequent wrong answers to an item, the most frequent first and ties by the answer, with what each is consistent
 * with: patterns as one group where the item does not tell them apart, those that no numbers of the kind tell apart, and
 * weaker pairs (see explainAnswer). State reports review the top five (reference/trade.md, section 3). Refuses an item
 * nobody was given. An item without wrong answers gives an empty list.
 */
export function listFrequentAnswers(column: ItemColumn, item: Item, most = 5): Finding<readonly FrequentAnswer[]> {
	const { answers, states, points, distinctAnswers } = column;
	const counts = new Float64Array(distinctAnswers.length);
	let [given, wrong] = [0, 0];
	for (let place = 0; place < answers.length; place += 1) {
		if (states[place] !== stateCodes['not-given']) given += 1;
		if (states[place] !== stateCodes.answered || points[place] === column.item.maximum) continue;
		wrong += 1;
		const answer = answers[place] as number;
		if (answer >= 0) counts[answer] = (counts[answer] as number) + 1;
	}
	if (given === 0) return refuse('too-few-students', `expected responses to item "${column.item.id}", found none`);
	const listed = distinctAnswers
		.map((answer, at) => ({ answer, count: counts[at] as number }))
		.filter(({ count }) => count > 0)
		.sort((a, b) => b.count - a.count || compareAnswers(a.answer, b.answer));
	return found(
		listed.slice(0, most).map(({ answer, count }) => ({
			answer,
			count,
			share: count / given,
			interval: wilsonInterval(count, given),
			shareOfWrong: count / wrong,
			explanation: explain(item, answer),
		})),
	);
}

function compareAnswers(first: string, second: string): number {
	return Number(first) - Number(second) || (first < second ? -1 : 1);
}

function explain(item: Item, answer: string): Explanation | undefined {
	switch (item.kind) {
		case 'gridded':
		case 'point':
			return /^-?[0-9]+$/.test(answer) ? explainAnswer(item, Number(answer)) : undefined;
		case 'choice':
			return item.options.some(({ id }) => id === answer) ? explainAnswer(item, answer) : undefined;
		case 'inline-choice': {
			const tagged = item.choices.find(({ id }) => id === answer)?.patterns;
			const patterns = (tagged ?? []).flatMap((id) => findPattern(id)?.id ?? []);
			return tagged && { isRight: false, patterns, inseparable: [], pairs: [] };
		}
		case 'multiple-choice':
		case 'order':
		case 'match':
		case 'explanation':
		case 'set':
			return undefined;
		default:
			return item satisfies never;
	}
}
