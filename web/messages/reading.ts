import { en } from './en.ts';

function many(count: number, one: string): string {
	return `${en.figure(count)} ${one}${count === 1 ? '' : 's'}`;
}

/** What the page that reads a file of responses says, in English. */
export const readingText = {
	title: 'Read a file of responses',
	lead: 'A CSV file of answer sheets, of the learning platform or of a spreadsheet. Only the columns you take are read: names, addresses and everything else are discarded before anything is kept, and the file itself is not kept.',
	back: 'All sittings',
	steps: { sitting: 'Who sat what, when', file: 'The file', columns: 'What the columns are', try: 'Try, then read' },
	form: 'Form',
	group: 'Class',
	groupByColumn: 'A column of the file names the class',
	groupFound: (column: number): string => `Column ${column} names the class of each row.`,
	date: 'Day',
	mode: 'Responses come from',
	modes: { paper: 'answer sheets', platform: 'the learning platform', hand: 'a spreadsheet filled by hand' },
	choose: 'choose',
	noForms: 'No form is in the bank yet. Make one under Forms, then read what students answered.',
	noGroups: 'No class is in the bank yet. Add one with its student codes:',
	file: 'File of responses',
	drop: 'Drop the CSV file here, or choose it',
	map: 'Answer map of the export',
	mapNote:
		'Only for results of a learning platform: the CSV written beside the package, which says which platform name is which item and option.',
	codes: 'Names to codes',
	codesNote:
		'Only where the file has names in place of codes: one line a student, the name as the file has it, a comma, the code. Used while reading and never kept.',
	codesFile: 'or from a file',
	codesBad: (lines: readonly number[]): string =>
		`expected a name, a comma and a code of capital letters, digits and hyphens, found something else on line ${lines.join(', ')}`,
	codesCount: (count: number): string => (count === 1 ? '1 student named' : `${en.figure(count)} students named`),
	tooLarge: (size: number): string =>
		`expected at most 32 MB from a browser, found ${en.figure(Math.round(size / 1_048_576))} MB. The command line reads any size:`,
	command: (
		file: string,
		{ form, group, date }: { readonly form: string; readonly group: string; readonly date: string },
	): string =>
		`npm run zeropair -- responses read "${file}" --form ${form || 'FORM'} --group ${group || 'GROUP'} --date ${date || 'DATE'} --map MAP --dry-run`,
	empty: 'expected a file with rows, found an empty one',
	needForm: 'Choose the form first: the columns are matched with its places.',
	looking: 'Looking at the file…',
	understood: (encoding: string, delimiter: string, columns: number): string =>
		`Understood as ${encoding}, cells parted by ${delimiter}, ${en.figure(columns)} columns.`,
	delimiters: { ',': 'commas', ';': 'semicolons', '\t': 'tabs', '|': 'upright bars' } as Readonly<
		Record<string, string>
	>,
	noStudent:
		'No column holds student codes that the bank knows. Say which column is the student; if it holds names, add the list of names and codes below.',
	layout: 'Rows',
	layouts: { wide: 'a row a student, a column an item', long: 'a row a response' },
	columnTable: 'Columns of the file and what each is used for',
	number: 'No.',
	heading: 'Heading',
	use: 'Used as',
	useOf: (column: number, heading: string): string => `Column ${column}, ${heading}: used as`,
	uses: { discarded: 'discarded', student: 'student', group: 'class', place: 'place on the form', answer: 'response' },
	place: (label: string, kind: string): string => `place ${label}, ${kind}`,
	discardedCount: (count: number): string =>
		count === 0
			? 'No column is discarded.'
			: `${en.figure(count)} ${count === 1 ? 'column is' : 'columns are'} discarded.`,
	missing: {
		student: 'Say which column is the student.',
		items: 'Say for at least one column which place of the form it answers.',
		place: 'Say which column names the place on the form.',
		answer: 'Say which column holds the response.',
	},
	more: 'How cells are read',
	delimiter: 'Cells are parted by',
	delimiterFound: 'what the file shows',
	headingRows: 'Rows up to the headings',
	holds: 'Cells hold',
	holdsWhat: {
		responses: 'responses, such as B, −50 or 4,2,1',
		points: 'points',
		shares: 'shares of the points, 0 to 1',
		ratings: 'ratings of explanations',
	},
	numbers: 'A number for an option is',
	numbersAre: { places: 'its place, 1 for the first', values: 'its value' },
	blanks: 'An empty cell is',
	blanksAtEnd: 'Empty cells after the last response are',
	states: {
		correct: 'right',
		partly: 'partly right',
		incorrect: 'not right',
		omitted: 'left out',
		'not-reached': 'not reached',
		invalid: 'invalid',
		unrated: 'waiting for a reader',
	} as Readonly<Record<string, string>>,
	omitted: 'Also left out',
	notReached: 'Also not reached',
	invalid: 'Also invalid',
	codesHint: 'texts such as 99 or X',
	repeats: 'A student who comes twice',
	repeatsDo: { refuse: 'is rejected', first: 'the first row counts', last: 'the last row counts' },
	newStudents: 'A code the class does not have',
	newStudentsDo: { refuse: 'is rejected', keep: 'is taken' },
	preview: 'The first rows as they would be read',
	faultAt: (line: number, fault: string): string => `Line ${en.figure(line)}: ${fault}`,
	unreadable: 'cannot be read',
	moreFaults: (count: number): string => `and ${en.figure(count)} more cells that cannot be read as responses.`,
	pointsHint: 'If the cells hold points in place of responses, say so under "How cells are read".',
	noRows: 'expected rows below the headings, found none',
	strayPlaces: (headings: readonly string[]): string =>
		`Headed like places, but the form has none of that name: ${headings.join(', ')}. They are discarded; is it the right form?`,
	line: 'Line',
	student: 'Student',
	onto: 'If the sitting has responses already',
	ontos: {
		nothing: 'stop',
		add: 'add other students and places, keep what is there',
		replace: 'replace what is there (every row must fit)',
	},
	tryIt: 'Try: nothing is kept',
	read: 'Read',
	reading: 'Reading the file…',
	needGroup: 'expected a class, found none chosen',
	needDate: 'expected a day, found none',
	wouldBe: 'What reading would do. Nothing is kept yet.',
	wasRead: 'What was read',
	counts: (students: number, answers: number, rows: number): string =>
		`${many(students, 'student')} and ${many(answers, 'response')} from ${many(rows, 'row')}.`,
	stateCounts: (counts: readonly string[]): string => `Of them ${counts.join(', ')}.`,
	absent: (codes: readonly string[]): string => `Absent, left out: ${codes.join(', ')}.`,
	unchanged: (count: number): string => `${many(count, 'row')} in the bank already, exactly like this.`,
	rejected: (count: number): string => (count === 1 ? '1 row is not taken' : `${en.figure(count)} rows are not taken`),
	rejectedTable: 'Rows that are not taken, and why',
	reason: 'Why',
	firstOf: (shown: number, all: number): string =>
		`The first ${en.figure(shown)} of ${en.figure(all)}; the file below has all.`,
	saveRejected: 'Rejected rows as CSV',
	rejectedFile: 'rejected-rows.csv',
	told: (students: number): string => `Read: ${many(students, 'student')}.`,
	undoSome:
		'What was added to a sitting that was there before cannot be taken back by itself; purge the student or the sitting.',
	next: {
		report: 'Class report',
		board: 'On the board',
		entry: 'Class grid',
		scoring: 'Score explanations',
	},
	packOf: (count: number): string =>
		count === 1 ? 'Meeting pack on this sitting' : `Meeting pack on the ${en.figure(count)} sittings read here`,
	anotherFile: 'To read the next class, choose its form, class and file above; the pack will hold both.',
} as const;
