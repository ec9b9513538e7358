import { computeKey } from '../../../item-bank/items/key.ts';
import type { Score } from '../../../item-bank/items/score.ts';
import { score } from '../../../item-bank/items/score.ts';
import { acceptedEntries } from '../../../item-bank/responses/entry.ts';
import { optionIdentifier } from '../../../server/qti/identifiers.ts';
import type { Placement } from '../../../server/qti/placement.ts';

/** One response, as a platform holds it and as the bank scores it. */
export interface PairedResponse {
	/** Members of RESPONSE. Blanks around a typed number are gone, as the export report says they must be. */
	readonly held: readonly string[];
	readonly score: Score;
}

const wrongEntries = [
	'',
	'0',
	'-0',
	'1',
	'-1',
	'+',
	'-',
	'−',
	'--5',
	'5.0',
	'5-',
	'1e3',
	'５',
	'٥',
	'five',
	'0x5',
	'5 5',
	'99999',
	'999999',
	'0000000',
	'5,0',
	'(5)',
];

/** Every subset of the options; for entries every accepted spelling, near misses of each, and a list of odd texts. */
export function pairResponses(placement: Placement): readonly PairedResponse[] {
	const { item } = placement.record;
	if (item.kind === 'gridded') {
		return entriesFor(placement).map((text) => ({
			held: text.trim() === '' ? [] : [text.trim()],
			score: score(item, { kind: 'entry', text }, placement.profile),
		}));
	}
	const ids = item.options.map(({ id }) => id);
	return subsets(ids)
		.filter((options) => item.kind === 'multiple-choice' || options.length < 2)
		.map((options) => ({
			held: options.map((id) => optionIdentifier(ids.indexOf(id))).reverse(),
			score: score(item, { kind: 'choice', options }),
		}));
}

function entriesFor({ record, profile }: Placement): readonly string[] {
	const key = computeKey(record.item);
	if (key.kind !== 'value' || !profile) throw new Error('expected a gridded item with a grid');
	const accepted = acceptedEntries(key.value, profile);
	const opposite = acceptedEntries(-key.value, profile);
	const near = accepted.flatMap((text) => [
		`0${text}`,
		`${text}0`,
		`${text}.0`,
		` ${text} `,
		`- ${text}`,
		text.slice(0, -1),
		`${text}x`,
	]);
	const numbers = Array.from({ length: 41 }, (_, index) => String(key.value + index - 20));
	return [...new Set([...accepted, ...opposite, ...near, ...numbers, ...wrongEntries])];
}

function subsets<T>(list: readonly T[]): readonly (readonly T[])[] {
	return Array.from({ length: 2 ** list.length }, (_, mask) => list.filter((_, index) => (mask >> index) % 2 === 1));
}
