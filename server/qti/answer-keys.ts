import { describeFigure } from '../../item-bank/figures/describe-figure.ts';
import { writeNumber } from '../../item-bank/figures/marks.ts';
import { invariant } from '../../item-bank/invariant.ts';
import { entryListsOf } from '../../item-bank/items/entries.ts';
import { computeKey } from '../../item-bank/items/key.ts';
import { printSigns } from '../../item-bank/items/kinds/inline-choice.ts';
import { placesOf } from '../../item-bank/items/kinds/point.ts';
import { printRichText } from '../../item-bank/markup/rich-text.ts';
import { columnSymbols, encodeGrid } from '../../item-bank/responses/grid.ts';
import type { ExplanationItem, OptionContent, PointItem } from '../../item-bank/types.ts';
import {
	columnIdentifier,
	entryIdentifier,
	optionIdentifier,
	symbolIdentifier,
	tickIdentifier,
} from './identifiers.ts';
import type { Placement } from './placement.ts';
import { writeMathematics } from './write/blocks.ts';
import { identifyPair } from './write/match.ts';
import { identifyOptions } from './write/options.ts';
import { letterPlaces } from './write/point-choice.ts';

/** One thing a student can mark, order or match. */
export interface AnswerOption {
	/** On the platform. */
	readonly identifier: string;
	/** In the bank: an option id, or the number of a place on a line, minus signs as U+2212. */
	readonly bank: string;
	/** What students read or see; '' for the ticks of a line, whose numbers say it. */
	readonly text: string;
}

/** How results of one item are to be read. */
export interface AnswerKey {
	/** In the platform's words: identifiers, or the number typed. */
	readonly right: string;
	/** What earns how much of the item's score, which runs from 0 to 1. */
	readonly scoring: string;
	readonly options: readonly AnswerOption[];
}

const whole = '1 for the key, otherwise 0';

/** The key of an item at its place. Throws ItemKeyError for an item without one. */
export function describeKey(placement: Placement): AnswerKey {
	const { item } = placement.record;
	const key = computeKey(item);
	switch (item.kind) {
		case 'choice':
		case 'multiple-choice': {
			invariant(key.kind === 'options', 'the key of a choice is options');
			const right = identifyOptions(item.options, key.options).join(' ');
			const isShared = item.kind === 'multiple-choice' && item.credit === 'parts';
			const share = `1/${key.options.length}`;
			const scoring = isShared ? `${share} for each right option, -${share} for each wrong one, never below 0` : whole;
			return { right, scoring, options: listOptions(placement) };
		}
		case 'gridded':
			invariant(key.kind === 'value', 'the key of a gridded item is a value');
			if (placement.gridStyle === 'columns') return describeColumns(key.value, placement);
			return { right: String(key.value), scoring: '1 for every spelling of the key, otherwise 0', options: [] };
		case 'point':
			invariant(key.kind === 'value', 'the key of a point is a value');
			return describePoint(item, key.value, placement);
		case 'order':
			invariant(key.kind === 'order', 'the key of an order is an order');
			return {
				right: key.order.map((id) => optionIdentifier(item.entries.findIndex((entry) => entry.id === id))).join(' '),
				scoring: '1 for the whole order, otherwise 0',
				options: listOptions(placement),
			};
		case 'match': {
			invariant(key.kind === 'pairs', 'the key of a match is pairs');
			const scoring =
				item.credit === 'parts' ? `1/${key.pairs.length} for each right pair` : '1 for all pairs, otherwise 0';
			const right = key.pairs.map((pair) => identifyPair(item, pair)).join('; ');
			return { right, scoring, options: listOptions(placement) };
		}
		case 'inline-choice':
			invariant(key.kind === 'options', 'the key of an inline choice is an option');
			return {
				right: identifyOptions(item.choices, key.options).join(' '),
				scoring: whole,
				options: item.choices.map(({ id, math }, index) => ({
					identifier: optionIdentifier(index),
					bank: id,
					text: printSigns(math),
				})),
			};
		case 'explanation':
			return { right: '', scoring: describeRubric(item), options: [] };
		default:
			return item satisfies never;
	}
}

function describeColumns(value: number, { profile }: Placement): AnswerKey {
	invariant(profile, 'a gridded item has a grid');
	const [plainest = []] = encodeGrid(value, profile);
	const marks = [...new Set(plainest.flatMap((_, column) => columnSymbols(profile, column)))];
	return {
		right: plainest.map(([mark], column) => `${columnIdentifier(column)} ${symbolIdentifier(mark)}`).join('; '),
		scoring: '1 for every gridding of the key that the grid allows, otherwise 0',
		options: [undefined, ...marks].map((mark) => ({
			identifier: symbolIdentifier(mark),
			bank: mark === undefined ? 'blank' : mark.replace('-', '−'),
			text: '',
		})),
	};
}

function describePoint(item: PointItem, value: number, { pointStyle }: Placement): AnswerKey {
	if (pointStyle === 'choice') {
		const places = letterPlaces(item, value);
		const options = places.map(({ at, letter }, index) => ({
			identifier: optionIdentifier(index),
			bank: writeNumber(at),
			text: `Point ${letter}`,
		}));
		const spot = places.findIndex(({ at }) => at === value);
		return { right: optionIdentifier(spot), scoring: whole, options };
	}
	const places = placesOf(item);
	const options = places.map((at, index) => ({ identifier: tickIdentifier(index), bank: writeNumber(at), text: '' }));
	return { right: tickIdentifier(places.indexOf(value)), scoring: whole, options };
}

/** What a scorer enters for each level of the rubric. */
function describeRubric({ rubric, points: most }: ExplanationItem): string {
	const levels = rubric.map(({ points, descriptor }) => {
		const entered = String(Math.round((points / most) * 1e6) / 1e6);
		return `enter ${entered} for ${points} of ${most} (${printRichText(descriptor)})`;
	});
	return `rated by a scorer: ${levels.join('; ')}`;
}

function listOptions({ record }: Placement): readonly AnswerOption[] {
	return entryListsOf(record.item).flatMap(({ path, entries }) =>
		entries.map(({ id, content }, index) => ({
			identifier: identifyEntry(path, index),
			bank: id,
			text: describeContent(content),
		})),
	);
}

function identifyEntry(path: string, index: number): string {
	if (path === '/left') return entryIdentifier('left', index);
	return path === '/right' ? entryIdentifier('right', index) : optionIdentifier(index);
}

function describeContent(content: OptionContent): string {
	switch (content.kind) {
		case 'mathematics':
			return writeMathematics(content.math);
		case 'text':
			return printRichText(content.text);
		case 'figure':
			return describeFigure(content.figure);
	}
}
