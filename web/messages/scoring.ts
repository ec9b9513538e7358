import { en } from './en.ts';

const two = (value: number): string => value.toFixed(2).replace('-', '−');

/** What the page that scores explanations says, in English. */
export const scoringText = {
	title: (group: string, form: string): string => `Score explanations. ${group}: ${form}`,
	lead: 'One response at a time, against the rubric. A number key gives the points and goes on to the next response without points; the arrow keys go back and forth; another number replaces what you gave.',
	place: 'Item',
	placeName: (label: string, waiting: number): string =>
		waiting > 0 ? `${label} (${en.figure(waiting)} wait)` : label,
	reader: 'Who scores',
	readers: { first: 'first reader', second: 'second reader', agreed: 'both, where they differ' },
	readerNote: {
		first: 'These points count until two readers agree on others.',
		second: 'You do not see what the first reader gave, so that agreement means something.',
		agreed: 'Only responses on which the two readers differ. What you agree on counts.',
	},
	asked: 'What was asked',
	response: (at: number, all: number, code: string): string =>
		`Response ${en.figure(at)} of ${en.figure(all)}, ${code}`,
	empty: 'nothing was written',
	given: (points: number): string => `Given: ${en.figure(points)}.`,
	notGiven: 'No points yet.',
	differ: (first: number, second: number): string =>
		`First reader ${en.figure(first)}, second reader ${en.figure(second)}.`,
	rubric: 'Points by the rubric',
	back: 'Back',
	on: 'On',
	done: (count: number): string => `All ${en.figure(count)} have points.`,
	left: (count: number): string => `${en.figure(count)} without points.`,
	noDifferences: 'The two readers differ nowhere, or the second reader has not begun.',
	nobody: 'Nobody has answered this item yet. Read a file of responses or enter them in the class grid.',
	noExplanations: 'This form asks for no explanation, so there is nothing to score by a rubric.',
	later: 'How far two readers agree is shown when you have scored everything, or under "both, where they differ".',
	agreement: 'How far the two readers agree',
	noPairs:
		'No response has points of both readers yet. Choose "second reader" and score some; every fifth is a good beginning.',
	table: 'Responses by points of the first reader (rows) and the second (columns)',
	firstHead: 'First gave',
	secondHead: (points: number): string => `second gave ${en.figure(points)}`,
	exact: (share: number, count: number): string =>
		`The same points for ${Math.round(share * 100)} % of ${en.figure(count)} responses read by both.`,
	kappa: (kappa: number): string =>
		`Kappa ${two(kappa)}: ${
			kappa <= 0
				? 'no more agreement than luck alone would give.'
				: `of the agreement that luck alone would not give, the two reached ${Math.round(kappa * 100)} %.`
		}`,
	weighted: (kappa: number): string =>
		`Weighted kappa ${two(kappa)}: the same, with far differences counting more than near ones.`,
	noKappa: 'Kappa cannot be given: both readers gave everybody the same points, so luck alone would agree.',
	advice:
		'Where the table has counts off its diagonal, read those responses together against the rubric before points count.',
	entry: 'Class grid',
	report: 'Class report',
	allSittings: 'All sittings',
};
