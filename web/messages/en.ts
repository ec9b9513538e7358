import type { LineMarks } from '../elements/marks.ts';

const figures = new Intl.NumberFormat('en');

/** A number as text reads it: with a true minus and grouped thousands. */
function figure(value: number): string {
	return figures.format(value).replace('-', '−');
}

function many(count: number, one: string, more: string): string {
	return `${figure(count)} ${count === 1 ? one : more}`;
}

function range(min: number | undefined, max: number | undefined): string {
	if (min === undefined) return max === undefined ? 'any number' : `at most ${figure(max)}`;
	if (max === undefined) return `at least ${figure(min)}`;
	return min === max ? figure(min) : `${figure(min)} to ${figure(max)}`;
}

/** English. */
export const en = {
	figure,
	range,
	items: (count: number): string => many(count, 'item', 'items'),
	points: (count: number): string => many(count, 'point', 'points'),
	models: { symbols: 'symbols', counters: 'counters', 'number-line': 'number line', story: 'story', table: 'table' },
	kinds: {
		choice: 'choice',
		'multiple-choice': 'multiple choice',
		gridded: 'gridded',
		point: 'point',
		order: 'order',
		match: 'match',
		'inline-choice': 'inline choice',
		explanation: 'explanation',
		set: 'set',
	},
	statuses: { draft: 'draft', approved: 'approved', retired: 'retired' },
	sign: { plus: 'plus', minus: 'minus' },
	line: {
		empty: 'nothing to show yet',
		say: ({ at, wanted, interval }: LineMarks): string =>
			[
				at === undefined ? '' : figure(at),
				wanted === undefined ? '' : `wanted ${range(wanted.min, wanted.max)}`,
				interval === undefined ? '' : `between ${figure(interval.low)} and ${figure(interval.high)}`,
			]
				.filter((part) => part !== '')
				.join(', '),
		count: (count: number): string => `${figure(count)} behind it`,
	},
	frame: {
		name: 'Zeropair',
		skip: 'Skip to the page',
		pages: 'Pages',
		page: { board: 'Board', find: 'Find', items: 'Item', forms: 'Forms', sittings: 'Sittings' },
		title: (page: string): string => `${page} · Zeropair`,
		ink: 'Ink',
		inks: { system: 'as the system', paper: 'on paper', slate: 'on slate' },
		confidential: 'The bank on this machine. Keys and items are confidential.',
		unknownPage: 'Nothing is at this address',
		unknownPageAdvice: 'The pages are named above; the board is the first of them.',
		missingPage: 'This page is not part of this build',
		lost: 'The bank does not answer. Start it again with npm start; this page goes on by itself when it does. Nothing you see is lost.',
		found: 'The bank answers again.',
		undo: 'Undo',
		undone: 'Taken back.',
		undoFailed: (reason: string): string => `It could not be taken back. ${reason}`,
		dismiss: 'Dismiss',
		reading: 'Reading the bank…',
		again: 'Try again',
	},
};

/** What every language says. */
export type Words = typeof en;
