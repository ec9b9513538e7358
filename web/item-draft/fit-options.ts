import { type Candidate, listCandidates } from '../../item-bank/distractors/candidates.ts';
import type { NumberOption } from '../../item-bank/distractors/choose-distractors.ts';
import { chooseDistractors } from '../../item-bank/distractors/choose-distractors.ts';
import { findPatternsBehind } from '../../item-bank/patterns/explain-answer.ts';
import { findValue, subjectsOf } from '../../item-bank/patterns/item-subjects.ts';
import type { ChoiceItem, MultipleChoiceItem, Option, PartItem } from '../../item-bank/types.ts';

const letters = 'abcdefgh';

/** Wrong numbers that error patterns lead to, and those among them that make the best set. */
export interface DistractorOffer {
	readonly key: number;
	readonly candidates: readonly Candidate[];
	/** Values of the best set. */
	readonly best: readonly number[];
	readonly shortfall: string | undefined;
}

/** The item with its options and entries lettered a, b, c … as they stand; a key that names letters follows them. */
export function letterParts<Part extends PartItem>(part: Part): Part {
	switch (part.kind) {
		case 'choice':
		case 'multiple-choice': {
			const follow = (id: string): string => letters.charAt(part.options.findIndex((option) => option.id === id));
			const { key, rule } = part;
			const named = typeof key === 'string' ? follow(key) : key?.map(follow);
			const stated =
				rule.kind === 'stated' ? { ...rule, options: rule.options.map(follow).filter((id) => id !== '') } : rule;
			return { ...part, options: letter(part.options), rule: stated, ...(named === undefined ? {} : { key: named }) };
		}
		case 'order':
			return { ...part, entries: letter(part.entries) };
		case 'match':
			return { ...part, left: letter(part.left), right: letter(part.right) };
		case 'inline-choice':
			return { ...part, choices: letter(part.choices) };
		default:
			return part;
	}
}

function letter<Entry extends { readonly id: string }>(entries: readonly Entry[]): readonly Entry[] {
	return entries.map((entry, index) => ({ ...entry, id: letters.charAt(index) }));
}

/**
 * The item with its wrong options, or those named, carrying the patterns that lead to them. Items whose key is stated in words are
 * left as they are: no computation reads their options.
 */
export function fitPatterns<Part extends PartItem>(part: Part, ids?: readonly string[]): Part {
	if ((part.kind !== 'choice' && part.kind !== 'multiple-choice') || part.rule.kind === 'stated') return part;
	const options = part.options.map((option): Option => {
		if (ids !== undefined && !ids.includes(option.id)) return option;
		const { patterns: _before, ...bare } = option;
		const found = tryPatterns(part, option.id);
		return found.length > 0 ? { ...bare, patterns: found } : bare;
	});
	return { ...part, options };
}

/** The wrong numbers to offer an item whose answer is a number; undefined where it has no such answer yet. */
export function offerDistractors(part: PartItem, count = 3): DistractorOffer | undefined {
	try {
		const key = findValue(part);
		if (key === undefined) return undefined;
		const subjects = subjectsOf(part);
		const { options, shortfall } = chooseDistractors(subjects, key, { count });
		const best = options.filter(({ isKey }: NumberOption) => !isKey).map(({ value }) => value);
		return { key, candidates: listCandidates(subjects, key), best, shortfall };
	} catch {
		return undefined;
	}
}

/** The item with the key and the chosen wrong numbers as its options, in increasing order. */
export function takeDistractors<Part extends ChoiceItem | MultipleChoiceItem>(
	part: Part,
	{ key, candidates }: DistractorOffer,
	values: readonly number[],
): Part {
	const chosen = candidates.filter(({ value }) => values.includes(value));
	const faces = [{ value: key, patterns: [] as readonly string[] }, ...chosen].sort((a, b) => a.value - b.value);
	const options = faces.map(({ value, patterns }, index): Option => {
		const option = { id: letters.charAt(index), content: { kind: 'mathematics' as const, math: String(value) } };
		return patterns.length > 0 ? { ...option, patterns } : option;
	});
	return { ...part, options };
}

function tryPatterns(part: PartItem, id: string): readonly string[] {
	try {
		return findPatternsBehind(part, id);
	} catch {
		return [];
	}
}
