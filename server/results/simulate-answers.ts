import { readItemPatterns } from '../../item-bank/analysis/diagnosis/item-patterns.ts';
import { type AnswerPlace, scoreAnswer } from '../../item-bank/forms/answer-places.ts';
import { computeKey, type PartKey } from '../../item-bank/items/key.ts';
import type { PatternId } from '../../item-bank/patterns/pattern.ts';
import type { Random } from '../../item-bank/random/random.ts';
import type { PartItem } from '../../item-bank/types.ts';
import type { AnswerCell } from './answer-cell.ts';
import { readAnswerText } from './answer-text.ts';

/** A student who was made up. */
export interface SimulatedStudent {
	/** Wrong ideas followed wherever they lead to an answer; the first that does wins. */
	readonly patterns: readonly PatternId[];
	/** Of 100 answers without such an idea, how many are right. */
	readonly rightOf100: number;
}

/** A place with everything needed to answer it in several ways. */
export interface SimulatedPlace {
	readonly place: AnswerPlace;
	readonly right: string;
	/** Answers by the patterns that lead to them. */
	readonly byPattern: ReadonlyMap<PatternId, readonly string[]>;
	/** Wrong answers without an idea. */
	readonly slips: readonly string[];
}

/** Of 100 answers of somebody who follows an idea, how many slip back to what anybody might say. */
const slipsOf100 = 15;
const omissionsOf100 = 3;

/** Makes a place ready; the patterns of an item are worked out once for all students. */
export function preparePlace(place: AnswerPlace): SimulatedPlace {
	const { item } = place;
	const right = rightText(item);
	const byPattern = new Map<PatternId, string[]>();
	for (const [answer, patterns] of readItemPatterns(item).byAnswer) {
		for (const pattern of patterns) byPattern.set(pattern, [...(byPattern.get(pattern) ?? []), answer]);
	}
	return { place, right, byPattern, slips: slipTexts(item, right) };
}

/** What a made-up student answers at a place. Never for children: sittings with such answers are marked as simulated. */
export function simulateAnswer(student: SimulatedStudent, prepared: SimulatedPlace, random: Random): AnswerCell {
	const { place } = prepared;
	const text = chooseText(student, prepared, random);
	const read = readAnswerText(place, text.replace(/=/g, '-'), { numbers: 'places' });
	const response = 'fault' in read ? undefined : read.response;
	const given =
		response === undefined || text === ''
			? ({ kind: 'mark', mark: text === '' ? 'omitted' : 'invalid' } as const)
			: ({ kind: 'response', response } as const);
	return { raw: text, given, score: scoreAnswer(place, given), isBlank: text === '' };
}

function chooseText(student: SimulatedStudent, { right, byPattern, slips }: SimulatedPlace, random: Random): string {
	if (random.nextInteger(1, 100) <= omissionsOf100) return '';
	const led = student.patterns.flatMap((pattern) => byPattern.get(pattern) ?? []);
	const isSlip = random.nextInteger(1, 100) <= slipsOf100;
	const [followed] = led;
	if (followed !== undefined && !isSlip) return followed;
	const isRight = random.nextInteger(1, 100) <= student.rightOf100;
	return isRight || slips.length === 0 ? right : random.pick(slips);
}

/** The right answer as a score table spells it; an explanation has none and is left to scorers. */
function rightText(item: PartItem): string {
	const key: PartKey = computeKey(item);
	switch (key.kind) {
		case 'options':
			return key.options.join(' ');
		case 'value':
			return String(key.value);
		case 'order':
			return key.order.join(' ');
		case 'pairs':
			return key.pairs.map(({ left, right }) => `${left}-${right}`).join(' ');
		case 'rubric':
			return 'I worked it out on the line.';
		default:
			return key satisfies never;
	}
}

function slipTexts(item: PartItem, right: string): readonly string[] {
	switch (item.kind) {
		case 'choice':
			return item.options.map(({ id }) => id).filter((id) => id !== right);
		case 'inline-choice':
			return item.choices.map(({ id }) => id).filter((id) => id !== right);
		case 'multiple-choice':
			return item.options.map(({ id }) => id).filter((id) => id !== right);
		case 'gridded':
		case 'point': {
			const value = Number(right);
			return [value + 1, value - 1, -value, value + 10].filter((each) => each !== value).map(String);
		}
		case 'order': {
			const ids = right.split(' ');
			return [[...ids].reverse().join(' '), [ids[1], ids[0], ...ids.slice(2)].join(' ')];
		}
		case 'match': {
			const [first, second, ...rest] = right.split(' ');
			const swapped = [`${first?.[0]}-${second?.[2]}`, `${second?.[0]}-${first?.[2]}`, ...rest];
			return [swapped.join(' ')];
		}
		case 'explanation':
			return ['I do not know.'];
		default:
			return item satisfies never;
	}
}
