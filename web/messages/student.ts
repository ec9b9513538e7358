import { en } from './en.ts';

/** What the page about one student code says, in English. */
export const studentText = {
	title: 'A student code',
	lead: 'Everything the bank holds about one code: nothing else is kept about a child, and no name.',
	code: 'Student code',
	show: 'Show',
	needCode: (found: string): string =>
		`expected a code of capital letters, digits and hyphens such as 7A-01, found "${found}"`,
	nothing: (code: string): string => `The bank holds nothing about ${code}.`,
	groups: (names: readonly string[]): string => (names.length === 0 ? 'In no class.' : `In ${names.join(', ')}.`),
	noSittings: 'No responses.',
	sitting: (form: string, date: string): string => `${form}, ${date}`,
	earned: (points: number, most: number, count: number): string =>
		`${en.figure(points)} of ${en.figure(most)} points in ${en.figure(count)} responses.`,
	caution:
		'Too few responses to judge a child by: one sitting shows what was answered on one day. No weighty decision rests on it.',
	columns: { place: 'Place', raw: 'As it came in', state: 'Stands as', points: 'Points', ratings: 'Readers' },
	table: (form: string): string => `Responses to ${form}`,
	reader: { first: 'first', second: 'second', agreed: 'agreed' } as Readonly<Record<string, string>>,
	readerGave: (reader: string, points: number): string => `${reader} ${en.figure(points)}`,
	of: (points: number, most: number): string => `${en.figure(points)} of ${en.figure(most)}`,
	rescored: (count: number): string => `scored ${en.figure(count)} times; the newest is shown, the file has all`,
	export: 'Export',
	exportNote:
		'All of it as the bank holds it (JSON), or the responses as a table (CSV). Hand these over only as local rules allow.',
	asJson: 'Everything as JSON',
	asCsv: 'Responses as CSV',
	csvHead: ['form', 'date', 'place', 'as it came in', 'stands as', 'points', 'possible'],
	purge: 'Delete for good',
	purgeLead: (code: string, sittings: number, answers: number): string =>
		`Deletes ${code} from its classes, ${en.figure(answers)} responses in ${en.figure(sittings)} sittings with all scores and points of readers, here and in every backup the bank knows of. Copies nobody has told the bank of are out of its reach. It cannot be taken back; export first if local rules ask for it.`,
	purgeSittingLead: (students: number, answers: number): string =>
		`Deletes ${en.figure(answers)} responses of ${en.figure(students)} students with all scores and points of readers, here and in every backup the bank knows of. The class and the form stay. It cannot be taken back.`,
	confirm: (what: string): string => `Type ${what} to confirm`,
	backups: 'Backups the bank does not know of, one file a line',
	mismatch: (wanted: string, found: string): string => `expected "${wanted}", found "${found}"`,
	doPurge: (what: string): string => `Delete ${what} for good`,
	purging: 'Deleting, here and in backups…',
	purged: (answers: number): string => `Deleted: ${en.figure(answers)} responses.`,
	places: 'What was reached',
	file: 'File',
	found: 'What was done',
	foundIs: {
		purged: 'deleted there too',
		nothing: 'held nothing of it',
		missing: 'no longer there',
		refused: 'could not be opened',
	} as Readonly<Record<string, string>>,
	all: 'All sittings',
};
