import { en } from './en.ts';

/** What the pages say on which responses come in, in English. */
export const inText = {
	entry: {
		title: (group: string, form: string, day: string): string => `${group}, ${day}: ${form}`,
		keys: 'Letters as on the form (B, or A C), numbers as written (-50), orders and pairs by letters. / is omitted, // not reached, ? unreadable. Enter goes down, arrows move, a block from a spreadsheet can be pasted.',
		table: 'Responses: a row a student, a column a place of the form',
		student: 'Student',
		cell: (code: string, label: string): string => `${code}, place ${label}`,
		place: (label: string, name: string): string => `Place ${label}: ${name}`,
		saved: 'Everything typed is in the bank.',
		saving: (count: number): string =>
			`${en.figure(count)} ${count === 1 ? 'response is' : 'responses are'} on the way to the bank.`,
		kept: (count: number): string =>
			`The bank does not answer. ${en.figure(count)} ${count === 1 ? 'response is' : 'responses are'} kept in this browser and sent when it does.`,
		notKept: 'This browser keeps nothing: do not close the page before all is sent.',
		refused: (count: number): string =>
			`${en.figure(count)} ${count === 1 ? 'response was' : 'responses were'} not understood and ${count === 1 ? 'is' : 'are'} not in the bank:`,
		resumed: (count: number): string =>
			`${en.figure(count)} ${count === 1 ? 'response' : 'responses'} typed earlier ${count === 1 ? 'was' : 'were'} not sent yet; sent now.`,
		undo: 'Take the last one back',
		taken: (code: string, label: string): string => `Taken back: ${code}, place ${label}`,
		pasteOver: (rows: number, columns: number): string =>
			`Pasted ${en.figure(rows)} × ${en.figure(columns)}; what lay beyond the grid was left out.`,
		noStudents: 'This class has no student codes yet',
		noStudentsAdvice: 'Add them with npm run zeropair -- groups add, then type the responses here.',
		done: (count: number, all: number): string => `${en.figure(count)} of ${en.figure(all)}`,
		count: 'Filled',
	},
	toReports: 'Class report',
	toScoring: 'Score explanations',
	toSittings: 'All sittings',
};
