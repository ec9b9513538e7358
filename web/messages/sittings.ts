import { en } from './en.ts';

/** What the page of sittings says, in English. */
export const sittingText = {
	title: 'Sittings',
	readFile: 'Read a file of responses',
	student: 'One student code',
	table: 'Sittings: which class sat which form when, and how many responses there are',
	columns: {
		day: 'Day',
		group: 'Class',
		form: 'Form',
		students: 'Students',
		answers: 'Responses',
		more: 'What they show',
	},
	simulated: 'simulated',
	unrated: (count: number): string => `${en.figure(count)} wait for a scorer`,
	onBoard: 'On the board',
	onBoardOf: (group: string, day: string): string => `On the board: ${group}, ${day}`,
	classReport: 'Class report',
	classReportOf: (group: string, day: string): string => `Class report: ${group}, ${day}`,
	responses: 'Responses',
	responsesOf: (group: string, day: string): string => `Responses: ${group}, ${day}`,
	none: 'There is no such sitting',
	all: 'Reports on all sittings',
	allKinds: { pack: 'Meeting pack', coverage: 'Coverage', items: 'Items', form: 'Forms', patterns: 'Error patterns' },
	shared: 'Reports are copies for sharing: groups under 10 students are hidden.',
	empty: 'No responses yet',
	emptyAdvice:
		'The first mark to make: give a form to a class (Forms), then read the responses of its sheets, of the learning platform or of a spreadsheet, or enter them by hand.',
	byHand: {
		title: 'Type the responses of a class',
		advice: 'Starts a sitting; its grid opens, and every response you type is kept at once.',
		form: 'Form',
		group: 'Class',
		date: 'Day',
		start: 'Start',
		noForms: 'There is no form yet: build one first.',
		noGroups: 'There is no class yet: add one with npm run zeropair -- groups add.',
		dateProblem: 'expected the day the form was sat',
	},
};
