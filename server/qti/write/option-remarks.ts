import { computeKey } from '../../../item-bank/items/key.ts';
import { placesOf } from '../../../item-bank/items/kinds/point.ts';
import { listWrongAnswers } from '../../../item-bank/patterns/wrong-answers.ts';
import type { Option, PartItem, PointItem } from '../../../item-bank/types.ts';
import { joinSentences, listWrongNotes } from '../../../item-bank/worked/wrong-notes.ts';
import { optionIdentifier, tickIdentifier } from '../identifiers.ts';
import type { Placement } from '../placement.ts';
import { letterPlaces } from './point-choice.ts';

/** What is said to whoever chose an option. */
export interface OptionRemark {
	/** Of the option on the platform. */
	readonly identifier: string;
	/** Rich text. */
	readonly text: string;
}

/**
 * A remark on each option that can be chosen: right, or not right and what that is consistent with, where the bank knows a
 * pattern. One answer never shows which idea a student followed, so nothing more is said. Undefined for kinds without options.
 */
export function listOptionRemarks(placement: Placement): readonly OptionRemark[] | undefined {
	const { item } = placement.record;
	switch (item.kind) {
		case 'choice':
			return remarkOnOptions(item, item.options);
		case 'multiple-choice':
			return remarkOnOptions(item, item.options, item.options.map(nameOption));
		case 'inline-choice':
			return remarkOnOptions(item, item.choices);
		case 'point':
			return remarkOnPlaces(item, placement);
		default:
			return undefined;
	}
}

function remarkOnOptions(
	item: PartItem,
	options: readonly { readonly id: string }[],
	names: readonly string[] = [],
): readonly OptionRemark[] {
	const key = computeKey(item);
	const notes = listWrongNotes(item, key);
	return options.map(({ id }, index) => {
		const isRight = key.kind === 'options' && key.options.includes(id);
		const sentence = notes.find(({ answer }) => answer === id.toUpperCase())?.sentence ?? '';
		const known = sentence.startsWith('Consistent with') ? ` ${sentence}` : '';
		return { identifier: optionIdentifier(index), text: judge(isRight, names[index]) + known };
	});
}

function judge(isRight: boolean, name?: string): string {
	if (name === undefined) return isRight ? 'This is the right answer.' : 'This is not the right answer.';
	return isRight ? `${name} is right.` : `${name} is not right.`;
}

/** Platforms need not show the letters of options, so what an option shows is its name. */
function nameOption({ content }: Option, index: number): string {
	switch (content.kind) {
		case 'mathematics':
			return `\`${content.math}\``;
		case 'text':
			return `“${content.text}”`;
		case 'figure':
			return `The figure of option ${index + 1}`;
	}
}

function remarkOnPlaces(item: PointItem, { pointStyle }: Placement): readonly OptionRemark[] {
	const key = computeKey(item);
	const right = key.kind === 'value' ? key.value : Number.NaN;
	const wrong = new Map(listWrongAnswers(item).map(({ answer, patterns }) => [answer, patterns] as const));
	const isLettered = pointStyle === 'choice';
	const places = isLettered ? letterPlaces(item, right).map(({ at }) => at) : placesOf(item);
	return places.map((at, index) => {
		const known = at === right ? '' : joinSentences(wrong.get(at) ?? []);
		return {
			identifier: isLettered ? optionIdentifier(index) : tickIdentifier(index),
			text: judge(at === right) + (known === '' ? '' : ` ${known}`),
		};
	});
}
