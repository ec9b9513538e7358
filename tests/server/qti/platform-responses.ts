import { computeKey } from '../../../item-bank/items/key.ts';
import { placesOf } from '../../../item-bank/items/kinds/point.ts';
import { type Score, score } from '../../../item-bank/items/score.ts';
import { acceptedEntries } from '../../../item-bank/responses/entry.ts';
import { columnCount, columnSymbols, encodeGrid, type GridColumns } from '../../../item-bank/responses/grid.ts';
import type { MatchItem, MatchPair, PartItem, PartResponse } from '../../../item-bank/types.ts';
import type { Placement } from '../../../server/qti/placement.ts';
import type { PlatformResponses } from '../../../server/qti/scoring/interpret-item.ts';
import { letterPlaces } from '../../../server/qti/write/point-choice.ts';
import { drawFrom } from './random-draw.ts';

/** One response, as a platform holds it and as the bank scores it. */
export interface PairedResponse {
	/** Members of RESPONSE, or of a response a column of an answer grid, and SCORE where a person entered one. Blanks around a typed number are gone, as the export report says they must be. */
	readonly held: PlatformResponses;
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
/** More orders or matchings than this are drawn from, instead of all being tried. */
const mostTried = 130;

/**
 * Every subset of options, every tick, order and matching where there are few enough, many of them otherwise; for entries
 * every accepted spelling, near misses of each, and a list of odd texts; for explanations every level, and none.
 */
export function pairResponses(placement: Placement): readonly PairedResponse[] {
	const { item } = placement.record;
	return respond(item, placement).map(({ held, response, rated, columns }) => ({
		held: columns ?? (rated === undefined ? { RESPONSE: held } : { RESPONSE: held, SCORE: [rated] }),
		score: score(item, response, placement.profile),
	}));
}

/**
 * Whether points on the platform are those of the bank. Shares without an end are rounded after twelve places, and shares that
 * cancel each other leave a last place of binary fractions; everything else is exact.
 */
export function isEarned(earned: number, { state, points }: Score, item: PartItem): boolean {
	const isShared = 'credit' in item && item.credit === 'parts';
	const isRounded = state === 'partly' || (isShared && state === 'incorrect');
	return isRounded ? Math.abs(earned - points) < 1e-9 : earned === points;
}

interface Given {
	readonly held: readonly string[];
	readonly response: PartResponse;
	readonly rated?: string;
	/** Instead of what is held, for an answer grid. */
	readonly columns?: PlatformResponses;
}

// Identifiers are spelled out here once more: taken from the writers, a wrong one would agree with itself.
const letter = (ids: readonly string[], id: string): string => 'ABCDEFGH'.charAt(ids.indexOf(id));

function respond(item: PartItem, placement: Placement): readonly Given[] {
	switch (item.kind) {
		case 'choice':
		case 'multiple-choice': {
			const ids = item.options.map(({ id }) => id);
			return subsets(ids)
				.filter((options) => item.kind === 'multiple-choice' || options.length < 2)
				.map((options) => ({
					held: options.map((id) => letter(ids, id)).reverse(),
					response: { kind: 'choice', options },
				}));
		}
		case 'inline-choice': {
			const ids = item.choices.map(({ id }) => id);
			return [[], ...ids.map((id) => [id])].map((options) => ({
				held: options.map((id) => letter(ids, id)),
				response: { kind: 'choice', options },
			}));
		}
		case 'gridded':
			if (placement.gridStyle === 'columns') return griddingsFor(placement);
			return entriesFor(placement).map((text) => ({
				held: text.trim() === '' ? [] : [text.trim()],
				response: { kind: 'entry', text },
			}));
		case 'point':
			return [{ held: [], response: { kind: 'point' } }, ...marksOn(placement)];
		case 'order': {
			const ids = item.entries.map(({ id }) => id);
			const all = permutations(ids);
			const key = computeKey(item);
			const right = key.kind === 'order' ? [key.order] : [];
			const orders = [[], ids.slice(1), ...right, ...few(all, ids.length)];
			return orders.map((order) => ({
				held: order.map((id) => letter(ids, id)),
				response: { kind: 'order', order },
			}));
		}
		case 'match':
			return matchings(item).map((pairs) => ({
				held: pairs.map((pair) => namePair(item, pair)).reverse(),
				response: { kind: 'match', pairs },
			}));
		case 'explanation':
			return [
				{ held: [], response: { kind: 'explanation', text: '' } },
				{ held: ['Because'], response: { kind: 'explanation', text: 'Because' } },
				...item.rubric.map(({ points }) => ({
					held: ['Because'],
					response: { kind: 'explanation' as const, text: 'Because', rating: points },
					rated: String(points / item.points),
				})),
			];
	}
}

function marksOn({ record: { item }, pointStyle }: Placement): readonly Given[] {
	const key = computeKey(item);
	if (item.kind !== 'point' || key.kind !== 'value') throw new Error('expected a point item');
	if (pointStyle === 'choice') {
		return letterPlaces(item, key.value).map(({ at }, index) => ({
			held: ['ABCDEFGH'.charAt(index)],
			response: { kind: 'point', at },
		}));
	}
	return placesOf(item).map((at, index) => ({ held: [`P${index + 1}`], response: { kind: 'point', at } }));
}

/** No pair, the key, the key but for one pair, and ways to give some entries on the left different ones on the right. */
function matchings(item: MatchItem): readonly (readonly MatchPair[])[] {
	const key = computeKey(item);
	const right = key.kind === 'pairs' ? key.pairs : [];
	const all: (readonly MatchPair[])[] = [];
	const grow = (pairs: readonly MatchPair[], index: number): void => {
		const entry = item.left[index];
		// More would never be tried: beyond that, the draws below take over.
		if (all.length > 4000) return;
		if (!entry) {
			all.push(pairs);
			return;
		}
		for (const { id } of item.right) {
			if (!pairs.some((pair) => pair.right === id)) grow([...pairs, { left: entry.id, right: id }], index + 1);
		}
		grow(pairs, index + 1);
	};
	grow([], 0);
	return [[], right, ...right.map((_, index) => right.filter((_pair, at) => at !== index)), ...few(all, right.length)];
}

function namePair(item: MatchItem, { left, right }: MatchPair): string {
	const place = (ids: readonly { readonly id: string }[], id: string): number =>
		ids.findIndex((each) => each.id === id) + 1;
	return `L${place(item.left, left)} R${place(item.right, right)}`;
}

function few<T>(all: readonly T[], seed: number): readonly T[] {
	if (all.length <= mostTried) return all;
	const draw = drawFrom(seed + all.length);
	return Array.from({ length: mostTried }, () => draw.pick(all));
}

/** Every gridding of the key and of its opposite, each with one column changed, and many states at random. */
function griddingsFor({ record, profile }: Placement): readonly Given[] {
	const key = computeKey(record.item);
	if (key.kind !== 'value' || !profile) throw new Error('expected a gridded item with a grid');
	const draw = drawFrom(key.value + profile.digitColumns);
	const listed = [...encodeGrid(key.value, profile), ...encodeGrid(-key.value, profile)];
	const drawMark = (column: number): GridColumns[number] =>
		draw.chance(0.4) ? [] : [draw.pick(columnSymbols(profile, column))];
	const count = columnCount(profile);
	const blank: GridColumns = Array.from({ length: count }, () => []);
	const near = listed.flatMap((columns) =>
		columns.map((_, changed) => columns.map((marks, column) => (column === changed ? drawMark(column) : marks))),
	);
	const drawn = Array.from({ length: 60 }, () => blank.map((_, column) => drawMark(column)));
	return [blank, ...listed, ...near, ...drawn].map((columns, index) => ({
		held: [],
		columns: holdColumns(columns, index),
		response: { kind: 'grid', columns },
	}));
}

/** A grid as a platform holds it; what is blank was never touched, or given back, by turns. */
export function holdColumns(columns: GridColumns, turn: number): PlatformResponses {
	return Object.fromEntries(
		columns.map(([mark], index) => {
			const blank = (turn + index) % 2 === 0 ? [] : ['BLANK'];
			const name = mark === '-' ? 'MINUS' : mark === '+' ? 'PLUS' : `D${mark}`;
			return [`COLUMN-${index + 1}`, mark === undefined ? blank : [name]];
		}),
	);
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

function permutations<T>(list: readonly T[]): readonly (readonly T[])[] {
	if (list.length === 0) return [[]];
	return list.flatMap((first, index) =>
		permutations(list.filter((_, at) => at !== index)).map((rest) => [first, ...rest]),
	);
}
