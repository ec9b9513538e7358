import type { EvidenceEntry } from '../../item-bank/types.ts';
import type { LineMarks } from '../elements/marks.ts';

const figures = new Intl.NumberFormat('en');

/** A number as text reads it: with a true minus and grouped thousands. */
function figure(value: number): string {
	return figures.format(value).replace('-', '−');
}

function many(count: number, one: string, more: string): string {
	return `${figure(count)} ${count === 1 ? one : more}`;
}

function percent(share: number): string {
	return `${Math.round(share * 100)} %`;
}

function range(min: number | undefined, max: number | undefined): string {
	if (min === undefined) return max === undefined ? 'any number' : `at most ${figure(max)}`;
	if (max === undefined) return `at least ${figure(min)}`;
	return min === max ? figure(min) : `${figure(min)} to ${figure(max)}`;
}

const columnNames = {
	symbols: 'symbols',
	counters: 'counters',
	'number-line': 'number line',
	story: 'story',
	table: 'table',
	total: 'all',
};

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
		page: { board: 'Board', find: 'Find', items: 'Item', forms: 'Forms', sittings: 'Sittings', reports: 'Reports' },
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
	board: {
		standard: 'Standard',
		column: (column: keyof typeof columnNames): string => columnNames[column],
		allStandards: 'All standards',
		grid: (framework: string): string => `Standards of ${framework} by model type`,
		none: 'none',
		lens: 'What the cells say',
		lenses: { supply: 'Supply', plan: 'Plan', evidence: 'Evidence' },
		lensSays: {
			supply: 'Items in the bank, in tallies of five.',
			plan: 'A bracket for what the blueprint asks, a dot for what the form delivers.',
			evidence: 'The share of points as a dot, its 95 % interval as a bar, and the number of responses.',
		},
		shown: 'What is shown',
		framework: 'Seen through',
		edition: 'Edition',
		frameworkNote: 'The same items, whichever framework they are seen through.',
		blueprint: 'Blueprint',
		form: 'Form',
		noChoice: 'none',
		planNote: 'Shown under Plan.',
		filters: 'Only these items',
		filterNote: 'Counts approved items unless another status is marked.',
		clear: 'All approved items',
		kind: 'Kind',
		dok: 'DOK',
		status: 'Status',
		points: 'Points',
		print: 'Print the board',
		save: 'Save as CSV',
		unseen: (count: number): string =>
			count === 1
				? '1 item that fits has no standard in this framework.'
				: `${figure(count)} items that fit have no standard in this framework.`,
		planEmpty: 'Choose a blueprint, a form, or both in the margin: the blueprint draws brackets, the form draws dots.',
		planNoBlueprint:
			'There is no blueprint in the bank yet. Forms have dots all the same; a blueprint adds the brackets.',
		planElsewhere: (framework: string): string =>
			`This blueprint is written in ${framework}: its brackets can be drawn only there.`,
		planThere: 'See the board through it',
		planMet: 'The form keeps to the blueprint in every cell.',
		planMissed: (count: number): string =>
			count === 1
				? 'The form misses 1 cell: the small number says by how many items.'
				: `The form misses ${figure(count)} cells: the small numbers say by how many items.`,
		unplaced: (count: number): string =>
			`${many(count, 'item', 'items')} of the form without a standard in this framework.`,
		evidenceEmpty: 'No responses yet',
		evidenceAdvice:
			'The first mark to make: give a form to a class, then read the responses in. Each cell then shows the share of right answers as a dot, how sure that is as a bar, and the number of responses.',
		evidenceStart: 'Choose a form to print or export',
		bankEmpty: 'The bank is empty',
		bankEmptyAdvice:
			'The first mark to make: write an item, or make some from a family. Choose a cell below to start where it is needed.',
		noStandards: 'This framework has no standards in the bank.',
		csv: {
			share: 'share of points',
			low: 'interval from',
			high: 'interval to',
			responses: 'responses',
			students: 'students',
			hidden: 'hidden',
			code: 'standard',
			statement: 'statement (paraphrased)',
			least: 'least',
			most: 'most',
			delivers: 'delivers',
			file: 'board',
		},
		wanted: (min: number | undefined, max: number | undefined): string => `wanted ${range(min, max)}`,
		delivers: (count: number): string => `form has ${figure(count)}`,
		off: (count: number): string => (count < 0 ? `${figure(-count)} short` : `${figure(count)} over`),
		offFigure: (count: number): string => (count > 0 ? `+${figure(count)}` : figure(count)),
		noPlan: 'not in the plan',
		noResponses: 'no responses',
		seeBelow: 'see the rows below',
		hiddenShort: 'hidden',
		hidden: {
			small: 'hidden: fewer than 10 students',
			protects: 'hidden, because a group of fewer than 10 students could be computed from it',
		},
		evidence: ({
			share = 0,
			low,
			high,
			earned = 0,
			possible = 0,
			responses = 0,
			students = 0,
		}: EvidenceEntry): string =>
			[
				`${percent(share)}, ${figure(earned)} of ${many(possible, 'point', 'points')}`,
				low === undefined || high === undefined ? '' : `95 % interval ${percent(low)} to ${percent(high)}`,
				`${many(responses, 'response', 'responses')} of ${many(students, 'student', 'students')}`,
			]
				.filter((part) => part !== '')
				.join('; '),
		sitting: 'Sittings',
		allSittings: 'all',
		sittingName: (form: string, group: string, date: string): string => `${date}, ${group}: ${form}`,
		sittingNote: 'Shown under Evidence.',
		evidenceFound: (students: number, sittings: number): string =>
			`${many(students, 'student', 'students')} in ${many(sittings, 'sitting', 'sittings')}.`,
		simulated: 'Simulated: these responses come from no child.',
		weighty: 'No weighty decision about a child rests on one score.',
		notSummed: 'Rows that group standards are not summed up: with a sum, hidden cells could be worked out.',
		evidenceElsewhere: 'There are responses, but to no item with a standard in this framework.',
		keys: 'Arrow keys move, Enter opens a cell, left and right fold a standard.',
		printed: (day: string): string => `Printed ${day}`,
	},
	make: {
		title: 'Make some from a family',
		none: 'No family makes items for this cell yet.',
		family: 'Family',
		count: 'How many',
		countWrong: (most: number): string => `Expected a whole number from 1 to ${most}.`,
		seed: 'Seed',
		show: 'Show them',
		standard: (code: string): string => `For ${code}; the same seed makes the same items.`,
		there: 'in the bank already',
		keep: (count: number): string => `Keep ${many(count, 'item', 'items')} as drafts`,
		kept: (count: number): string =>
			`${many(count, 'draft is', 'drafts are')} in the bank. Mark “draft” to see them on the board.`,
		keptBefore: 'These items are in the bank already; nothing was added.',
	},
	drawer: {
		title: (code: string, column: keyof typeof columnNames): string =>
			`${code}, ${column === 'total' ? 'all model types' : columnNames[column]}`,
		close: 'Close',
		source: 'Paraphrased; the framework has the official wording.',
		plan: 'Plan for this cell',
		evidence: 'Evidence in this cell, in percent of points',
		report: 'Report on coverage as PDF',
		onForm: (title: string, count: number): string => `On ${title}: ${many(count, 'item', 'items')}`,
		inBank: (count: number): string => `In the bank: ${many(count, 'item', 'items')}`,
		none: 'No item here yet. The first mark to make: write one, or loosen what is marked under “Only these items”.',
		withUnseen: 'Items without a standard in this framework are among them.',
		write: 'Write one here',
		find: 'See them in Find',
		add: 'Add to the form',
		addItem: (name: string): string => `Add to the form: ${name}`,
		onIt: 'on the form',
		isOnIt: (name: string): string => `on the form: ${name}`,
		section: 'Items are added at the end of',
		added: (name: string, form: string, count: number): string =>
			`“${name}” is on ${form}, which now has ${many(count, 'item', 'items')}.`,
		more: 'Show more',
		facts: (kind: string, dok: number, points: number, status: string): string =>
			`${kind}, DOK ${dok}, ${many(points, 'point', 'points')}${status === 'approved' ? '' : `, ${status}`}`,
	},
};

/** What every language says. */
export type Words = typeof en;
