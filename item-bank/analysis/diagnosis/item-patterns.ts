import { optionsOf } from '../../items/asked.ts';
import { findKey } from '../../items/key.ts';
import { findPatternsBehind } from '../../patterns/explain-answer.ts';
import { findPattern } from '../../patterns/index.ts';
import { mathematicsOf, tryEvaluate } from '../../patterns/item-subjects.ts';
import type { PatternId } from '../../patterns/pattern.ts';
import { listWrongAnswers } from '../../patterns/wrong-answers.ts';
import type { Item, OrderItem } from '../../types.ts';

/** What wrong ideas show in the answers to one item. */
export interface ItemPatterns {
	/** For each wrong answer, spelled as in a score table, the patterns that lead to it. */
	readonly byAnswer: ReadonlyMap<string, readonly PatternId[]>;
	/** Patterns that lead to some answer a student can give here. */
	readonly visible: readonly PatternId[];
	/**
	 * How likely somebody without any of the ideas gives one particular wrong answer: one over the options for a choice, as
	 * a guess; 1 in 20 for an answer made freely. Our choice, no source; on the cautious side for choices.
	 */
	readonly chance: number;
}

const freeChance = 0.05;

/**
 * The patterns behind every wrong answer to an item. Choices by their options, gridded items and points by the numbers the
 * patterns lead to, orders by the order they lead to, gaps by the patterns their choices carry. Other kinds show none.
 */
export function readItemPatterns(item: Item): ItemPatterns {
	const byAnswer = new Map<string, readonly PatternId[]>();
	for (const { answer, patterns } of listAnswers(item)) {
		if (patterns.length > 0) byAnswer.set(answer, patterns);
	}
	return { byAnswer, visible: [...new Set([...byAnswer.values()].flat())], chance: chanceOf(item) };
}

interface PatternedAnswer {
	readonly answer: string;
	readonly patterns: readonly PatternId[];
}

function listAnswers(item: Item): readonly PatternedAnswer[] {
	switch (item.kind) {
		case 'choice':
			return optionsOf(item).map(({ id }) => ({ answer: id, patterns: findPatternsBehind(item, id) }));
		case 'gridded':
		case 'point':
			return listWrongAnswers(item).flatMap(({ answer, patterns }) =>
				typeof answer === 'number' ? [{ answer: String(answer), patterns }] : [],
			);
		case 'inline-choice': {
			const finding = findKey(item);
			const right = 'key' in finding && finding.key.kind === 'options' ? finding.key.options : [];
			return item.choices
				.filter(({ id }) => !right.includes(id))
				.map(({ id, patterns = [] }) => ({
					answer: id,
					patterns: patterns.flatMap((name) => findPattern(name)?.id ?? []),
				}));
		}
		case 'order':
			return listOrders(item);
		case 'multiple-choice':
		case 'match':
		case 'explanation':
		case 'set':
			return [];
		default:
			return item satisfies never;
	}
}

function listOrders(item: OrderItem): readonly PatternedAnswer[] {
	const worths = item.entries.map(({ id, content }) => {
		const mathematics = mathematicsOf(content);
		const worth = mathematics === undefined || mathematics.kind === 'statement' ? undefined : tryEvaluate(mathematics);
		return { id, worth };
	});
	const numbers = worths.flatMap(({ worth }) => worth ?? []);
	if (numbers.length !== item.entries.length || new Set(numbers).size !== numbers.length) return [];
	return listWrongAnswers({ kind: 'ordering', numbers }).flatMap(({ answer, patterns }) => {
		if (typeof answer === 'number') return [];
		const rising = answer.map((number) => worths.find(({ worth }) => worth === number)?.id ?? '');
		return [{ answer: (item.direction === 'ascending' ? rising : rising.toReversed()).join(' '), patterns }];
	});
}

function chanceOf(item: Item): number {
	if (item.kind === 'choice') return 1 / item.options.length;
	return item.kind === 'inline-choice' ? 1 / item.choices.length : freeChance;
}
