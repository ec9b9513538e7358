import { parseMathematics } from '../expression/parse.ts';
import { printMathematics } from '../expression/print.ts';
import { speakMathematics } from '../expression/speak.ts';
import { numberNode } from '../expression/tree.ts';
import { mathematicsOf } from '../items/compute.ts';
import type { PartKey } from '../items/key.ts';
import { printSigns } from '../items/kinds/inline-choice.ts';
import { placesOf } from '../items/kinds/point.ts';
import { findPatternsBehind } from '../patterns/explain-answer.ts';
import { findPattern, patterns } from '../patterns/index.ts';
import { looksTrueUnder } from '../patterns/statement-under.ts';
import { subjectOf } from '../patterns/subject.ts';
import { listWrongAnswers } from '../patterns/wrong-answers.ts';
import type { GriddedItem, InlineChoiceItem, MatchItem, Option, OrderItem, PartItem, PointItem } from '../types.ts';
import { worthOf } from './worked-lines.ts';

/** A wrong answer and what it is consistent with, a sentence. */
export interface WrongAnswerNote {
	/** Letters of options or entries, or a number as printed. */
	readonly answer: string;
	/** How a number is read aloud. */
	readonly spoken?: string;
	/** What an option says, as rich text; left out for figures. */
	readonly says?: string;
	readonly sentence: string;
}

/** Most wrong numbers listed for an item: those that most patterns lead to. */
const mostWrongNumbers = 6;

const unknownIdea = 'Not the answer of any pattern that the bank knows.';

/** Wrong answers of an item with what they are consistent with; none for kinds whose answers are not foreseen. */
export function listWrongNotes(item: PartItem, key: PartKey): readonly WrongAnswerNote[] {
	switch (item.kind) {
		case 'gridded':
			return wrongNumbers(item);
		case 'point': {
			const places = placesOf(item);
			return wrongNumbers(item, (value) => places.includes(value));
		}
		case 'choice':
		case 'multiple-choice':
			return wrongOptions(item, key);
		case 'inline-choice':
			return wrongChoices(item, key);
		case 'order':
			return wrongOrders(item);
		case 'match':
			return wrongPairs(item, key);
		case 'explanation':
			return [];
		default:
			return item satisfies never;
	}
}

/** Sentences of patterns as one: "Consistent with a; with b; with c." */
export function joinSentences(ids: readonly string[]): string {
	const parts = ids.flatMap((id) => {
		const sentence = findPattern(id)?.sentence;
		return sentence === undefined ? [] : [sentence.replace(/^Consistent with /, 'with ').replace(/\.$/, '')];
	});
	return parts.length === 0 ? '' : `Consistent ${parts.join('; or ')}.`;
}

function wrongNumbers(
	item: GriddedItem | PointItem,
	isOffered: (value: number) => boolean = () => true,
): readonly WrongAnswerNote[] {
	const numbers = listWrongAnswers(item).flatMap(({ answer, patterns: ids }) =>
		typeof answer === 'number' && isOffered(answer) ? [{ answer, ids }] : [],
	);
	const common = [...numbers].sort((a, b) => b.ids.length - a.ids.length).slice(0, mostWrongNumbers);
	return numbers
		.filter((entry) => common.includes(entry))
		.map(({ answer, ids }) => ({
			answer: printMathematics(numberNode(answer)),
			spoken: speakMathematics(numberNode(answer)),
			sentence: joinSentences(ids),
		}));
}

function wrongOptions(
	item: Extract<PartItem, { readonly kind: 'choice' | 'multiple-choice' }>,
	key: PartKey,
): readonly WrongAnswerNote[] {
	const right = key.kind === 'options' ? key.options : [];
	return item.options
		.filter(({ id }) => !right.includes(id))
		.map((option) => {
			const ids = option.patterns ?? findPatternsBehind(item, option.id);
			const sentence = joinSentences(ids) || unknownIdea;
			return { answer: option.id.toUpperCase(), sentence, ...saysOf(option) };
		});
}

function saysOf({ content }: Option): { readonly says?: string } {
	if (content.kind === 'figure') return {};
	return { says: content.kind === 'text' ? content.text : `\`${content.math}\`` };
}

/** A choice is wrong because it makes the statement false; a pattern is behind it when the statement looks true under it. */
function wrongChoices(item: InlineChoiceItem, key: PartKey): readonly WrongAnswerNote[] {
	const right = key.kind === 'options' ? key.options : [];
	const figures = item.stem.flatMap((block) => (block.kind === 'figure' ? [block.figure] : []));
	return item.choices
		.filter(({ id }) => !right.includes(id))
		.map((choice) => {
			const statement = parseMathematics(item.statement.replace('_', choice.math));
			const found = patterns.filter(
				({ slips }) => statement.kind === 'statement' && looksTrueUnder(slips, statement, figures),
			);
			const ids = choice.patterns ?? found.map(({ id }) => id);
			const sentence = joinSentences(ids) || unknownIdea;
			return { answer: choice.id.toUpperCase(), says: printSigns(choice.math), sentence };
		});
}

/** Orders that patterns lead to, as letters in the direction the item asks for. */
function wrongOrders({ entries, direction }: OrderItem): readonly WrongAnswerNote[] {
	const letters = new Map(entries.map((entry) => [worthOf(entry), entry.id.toUpperCase()]));
	const found = listWrongAnswers({ kind: 'ordering', numbers: [...letters.keys()] });
	return found.flatMap(({ answer, patterns: ids }) => {
		if (typeof answer === 'number') return [];
		const order = answer.map((value) => letters.get(value) ?? '');
		const answers = (direction === 'ascending' ? order : order.reverse()).join(', ');
		return [{ answer: answers, sentence: joinSentences(ids) }];
	});
}

/** Wrong partners that a pattern leads to from what stands on the left. */
function wrongPairs({ left, right, partners }: MatchItem, key: PartKey): readonly WrongAnswerNote[] {
	const pairs = key.kind === 'pairs' ? key.pairs : [];
	if (partners !== 'same-value') return [];
	return left.flatMap((entry) => {
		const mathematics = parseMathematics(mathematicsOf(entry, ''));
		if (mathematics.kind === 'statement') return [];
		const wrong = listWrongAnswers(subjectOf(mathematics));
		return right.flatMap((other): readonly WrongAnswerNote[] => {
			if (pairs.some((pair) => pair.left === entry.id && pair.right === other.id)) return [];
			const worth = worthOf(other);
			const ids = wrong.find(({ answer }) => answer === worth)?.patterns ?? [];
			const answer = `${entry.id}–${other.id}`.toUpperCase();
			return ids.length === 0 ? [] : [{ answer, sentence: joinSentences(ids) }];
		});
	});
}
