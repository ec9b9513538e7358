import type { AnswerPlace } from '../../item-bank/forms/answer-places.ts';
import { placesOf } from '../../item-bank/items/kinds/point.ts';
import { mathematicsOf, tryEvaluate } from '../../item-bank/patterns/item-subjects.ts';
import type { MatchPair, Option, PartItem, PartResponse } from '../../item-bank/types.ts';
import { quoteCell } from './cell-text.ts';

/** How texts of answers are to be read. */
export interface AnswerReading {
	/** Numbers in answers to options and orders: places from 1 as shown, or the values shown. */
	readonly numbers: 'places' | 'values';
	/** What a platform calls options, and their ids (or the number of a place on a line) in the bank. */
	readonly options?: ReadonlyMap<string, string>;
}

/** A response, or what was expected instead of the text. */
export type ReadAnswer = { readonly response: PartResponse } | { readonly fault: string };

/**
 * Reads the text of one answer: letters of options in any case ("B", "ABC", "a, c"), a number as typed, a number on a line, an
 * order ("CADB", "4,2,1,3"), pairs ("a-c b-a", "AC BA", or the partners in left order "CAD"), or any text for an
 * explanation. The identifiers an export gives are understood as well. A blank text is an omission.
 */
export function readAnswerText({ item }: AnswerPlace, text: string, reading: AnswerReading): ReadAnswer {
	switch (item.kind) {
		case 'choice':
		case 'multiple-choice':
			return readOptions(item.options, text, reading);
		case 'inline-choice':
			return readInline(item, text, reading);
		case 'gridded':
			return text.length > 100
				? { fault: `expected a number, found ${quoteCell(text)}` }
				: { response: { kind: 'entry', text } };
		case 'point':
			return readPoint(item, text, reading);
		case 'order': {
			const ids = readIds(item.entries, text, reading);
			if (typeof ids === 'string') return { fault: ids };
			const isRepeated = new Set(ids).size < ids.length;
			const fault = `expected each entry once in an order, found ${quoteCell(text)}`;
			return isRepeated ? { fault } : { response: { kind: 'order', order: ids } };
		}
		case 'match':
			return readPairs(item, text, reading);
		case 'explanation':
			return { response: { kind: 'explanation', text: text.slice(0, 20_000) } };
		default:
			return item satisfies never;
	}
}

/** The response that says nothing. */
export function emptyResponse(item: PartItem): PartResponse {
	switch (item.kind) {
		case 'choice':
		case 'multiple-choice':
		case 'inline-choice':
			return { kind: 'choice', options: [] };
		case 'gridded':
			return { kind: 'entry', text: '' };
		case 'point':
			return { kind: 'point' };
		case 'order':
			return { kind: 'order', order: [] };
		case 'match':
			return { kind: 'match', pairs: [] };
		case 'explanation':
			return { kind: 'explanation', text: '' };
		default:
			return item satisfies never;
	}
}

function readOptions(options: readonly Option[], text: string, reading: AnswerReading): ReadAnswer {
	const ids = readIds(options, text, reading);
	if (typeof ids === 'string') return { fault: ids };
	return { response: { kind: 'choice', options: options.map(({ id }) => id).filter((id) => ids.includes(id)) } };
}

function readInline(
	item: Extract<PartItem, { kind: 'inline-choice' }>,
	text: string,
	reading: AnswerReading,
): ReadAnswer {
	const plain = (math: string): string =>
		math.replace(/[−–]/g, '-').replace(/≤/g, '<=').replace(/≥/g, '>=').replace(/\s/g, '');
	const shown = item.choices.find(({ math }) => plain(math) === plain(text));
	if (shown) return { response: { kind: 'choice', options: [shown.id] } };
	const options = item.choices.map(({ id, math }): Option => ({ id, content: { kind: 'mathematics', math } }));
	return readOptions(options, text, { ...reading, numbers: 'places' });
}

function readPoint(item: Extract<PartItem, { kind: 'point' }>, text: string, { options }: AnswerReading): ReadAnswer {
	if (text === '') return { response: { kind: 'point' } };
	const named = options?.get(text.toUpperCase());
	const tick = /^P(\d{1,3})$/i.exec(text)?.[1];
	const at = named ?? (tick === undefined ? text : String(placesOf(item)[Number(tick) - 1] ?? text));
	const digits = at.replace('−', '-');
	if (!/^[-+]?\d{1,4}$/.test(digits) || Math.abs(Number(digits)) > 1000) {
		return { fault: `expected a number on the line, found ${quoteCell(text)}` };
	}
	return { response: { kind: 'point', at: Number(digits) || 0 } };
}

/** Ids of the options a text names, in the order of the text, or what was expected. */
function readIds(options: readonly Option[], text: string, reading: AnswerReading): readonly string[] | string {
	const tokens = splitTokens(text);
	const ids: string[] = [];
	for (const token of tokens) {
		const found = findOption(options, token, reading);
		if (found === undefined) return `expected ${describeOptions(options, reading)}, found ${quoteCell(text)}`;
		ids.push(...found);
	}
	return ids;
}

function findOption(options: readonly Option[], token: string, reading: AnswerReading): readonly string[] | undefined {
	const named = reading.options?.get(token.toUpperCase());
	if (named !== undefined) return [named];
	const isOffered = (letter: string): boolean => options.some(({ id }) => id === letter);
	if (/^[-+−]?\d+$/.test(token)) {
		const number = Number(token.replace('−', '-'));
		const option =
			reading.numbers === 'places' ? options[number - 1] : options.find((each) => worthOf(each) === number);
		return option === undefined ? undefined : [option.id];
	}
	const letters = [...token.toLowerCase()];
	return letters.every(isOffered) ? letters : undefined;
}

function worthOf({ content }: Option): number | undefined {
	const mathematics = mathematicsOf(content);
	return mathematics === undefined || mathematics.kind === 'statement' ? undefined : tryEvaluate(mathematics);
}

function readPairs(item: Extract<PartItem, { kind: 'match' }>, text: string, reading: AnswerReading): ReadAnswer {
	const tokens = splitTokens(text.replace(/[-–—:=>→/]+/g, ' '));
	const fault = `expected pairs such as A-${item.right[0]?.id.toUpperCase()}, found ${quoteCell(text)}`;
	const pairs: MatchPair[] = [];
	const sided = tokens.map((token) => readSide(item, token, reading));
	if (tokens.length > 0 && sided.every((each) => each !== undefined)) {
		for (let at = 0; at < sided.length; at += 2) {
			const [left, right] = [sided[at], sided[at + 1]];
			if (left?.side !== 'left' || right?.side !== 'right') return { fault };
			pairs.push({ left: left.id, right: right.id });
		}
		return { response: { kind: 'match', pairs } };
	}
	const letters = tokens.map((token) => token.toLowerCase());
	const joined =
		letters.every((token) => token.length === 1) && !/[-–—:=>→/]/.test(text) ? [letters.join('')] : letters;
	const isList = joined.length === 1 && (joined[0]?.length ?? 0) === item.left.length && item.left.length !== 2;
	const found = isList
		? [...(joined[0] ?? '')].map((right, index) => [item.left[index]?.id ?? '', right])
		: pairUp(letters);
	for (const [left = '', right = ''] of found) {
		if (!item.left.some(({ id }) => id === left) || !item.right.some(({ id }) => id === right)) return { fault };
		pairs.push({ left, right });
	}
	return { response: { kind: 'match', pairs } };
}

/** Two letters at a time, however they are spaced. */
function pairUp(letters: readonly string[]): readonly (readonly string[])[] {
	const all = [...letters.join('')];
	return Array.from({ length: Math.ceil(all.length / 2) }, (_unused, index) => all.slice(index * 2, index * 2 + 2));
}

function readSide(
	item: Extract<PartItem, { kind: 'match' }>,
	token: string,
	{ options }: AnswerReading,
): { readonly side: 'left' | 'right'; readonly id: string } | undefined {
	const [, letter, digits] = /^([LR])(\d{1,2})$/i.exec(token) ?? [];
	if (letter === undefined) return undefined;
	const side = letter.toUpperCase() === 'L' ? 'left' : 'right';
	const id = options?.get(token.toUpperCase()) ?? item[side][Number(digits) - 1]?.id;
	return id === undefined ? undefined : { side, id };
}

function splitTokens(text: string): readonly string[] {
	return text.split(/[\s,;|[\](){}&]+/).filter((token) => token !== '');
}

function describeOptions(options: readonly Option[], { numbers }: AnswerReading): string {
	const letters = options.map(({ id }) => id.toUpperCase()).join(', ');
	return numbers === 'places'
		? `letters among ${letters} or numbers from 1 to ${options.length}`
		: `letters among ${letters} or the values shown`;
}

/** Whether the text is a whole number at all; used to tell people of entries that are none. */
export function isWholeNumber(text: string): boolean {
	return /^[-−+]?\d+$/.test(text);
}
