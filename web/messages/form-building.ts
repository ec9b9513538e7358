import { en } from './en.ts';

const { figure, items } = en;

/** A sentence with a capital letter at its start. */
export function capital(sentence: string): string {
	return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}`;
}

/** English of the pages where forms are made from others or from blueprints, and compared. */
export const formBuildingText = {
	another: {
		title: 'Make another form from this one',
		copy: 'Form B with the same items',
		copyMeaning: 'A copy on the desk. Change the order, or swap items one by one.',
		like: 'Form B with like items',
		likeMeaning: 'The bank chooses other items that follow the same plan. No item is shared.',
		retake: 'A retake with new numbers',
		retakeMeaning:
			'Each item that a family can vary comes again with other numbers, as a draft for you to look at; the others stay.',
		progress: (at: number, all: number): string => `Item ${at} of ${all}`,
		make: 'Make it',
		making: 'Working…',
		titleOf: (title: string): string => nextTitle(title),
		retakeTitle: (title: string): string => `${title.slice(0, 112)}, retake`,
		impossible: 'The bank has too few items for a second form like this one:',
		kept: (count: number): string =>
			count === 0 ? '' : `${items(count)} stayed as they are: no family makes their shape.`,
		noFamily:
			'No family makes items of these shapes, so there are no new numbers to give. Swap items one by one instead.',
		made: (title: string): string => `“${title}” is on the desk, not yet in the bank.`,
	},
	build: {
		title: 'Build forms from a blueprint',
		lead: 'The bank looks for forms that meet every requirement, counts them again, and says what is proved. If it cannot be done, it says what stands in the way.',
		blueprint: 'Blueprint',
		noBlueprints:
			'No blueprint is in the bank yet. A blueprint says how many items of which standard, model and kind a form needs. Add one with “npm run zeropair -- blueprints add FILE”, or read one off a form: “blueprints of FORM”.',
		count: 'Forms',
		countWords: ['one form', 'two parallel forms', 'three parallel forms', 'four parallel forms'],
		seed: 'Seed',
		seedMeaning: 'another seed, other forms',
		like: 'Parallel to',
		likeNone: 'no earlier form',
		submit: 'Build',
		cancel: 'Stop',
		cancelled: 'Stopped. Nothing was kept.',
		working: (seconds: number): string => `Searching… ${seconds} s`,
		built: (count: number): string => (count === 1 ? 'One form meets the plan.' : `${count} forms meet the plan.`),
		proof: (status: string, unevenness: number, bound: number, compared: number): string => {
			if (unevenness === 0)
				return compared > 1
					? 'Proved: as even as forms can be. Only places of keys and the spread of difficulty may differ.'
					: 'Proved: it keeps the plan, and its target of difficulty to a step.';
			return status === 'optimal'
				? `Proved: an unevenness of ${figure(unevenness)} is the least possible.`
				: `The unevenness is ${figure(unevenness)}. That less than ${figure(bound)} is impossible is proved; between the two it is open.`;
		},
		departures: 'Order rules that could not be kept',
		keep: (count: number): string => (count === 1 ? 'Keep this form' : `Keep all ${count} forms`),
		kept: (count: number): string => (count === 1 ? 'The form is in the bank.' : `${count} forms are in the bank.`),
		desk: 'Lay it on the desk',
		impossible: 'No form can be built',
		together: 'These requirements cannot be met together; without any one of them the rest can:',
		reducible: 'These requirements cannot be met together; the search ended before it found the fewest:',
		alone: 'This requirement cannot be met:',
		supply: (inBank: number, usable: number): string => `${figure(inBank)} in the bank, ${figure(usable)} usable`,
		excludedCount: (count: number): string => `${items(count)} held back`,
		excluded: (item: string, reason: string): string => `${item}: ${reason}`,
		missing: 'With these new items it can be done:',
		makeMissing: 'Make them, build again and keep the forms',
		makeMissingMeaning: 'Families make the items; they come into the bank approved, with the forms, or not at all.',
		made: (count: number): string => `Made for this plan: ${items(count)}`,
		missingItem: (count: number, parts: readonly string[]): string => `${items(count)}: ${parts.join(', ')}`,
		nearest: 'The nearest form falls short of:',
		onForm: (number: number): string => `Form ${number}: `,
		shortfall: (requirement: string, found: string): string => `${requirement}; found ${found}`,
		openNearest: 'Lay the nearest form on the desk',
		notKept: (reason: string): string => `Nothing was kept. ${capital(reason)}`,
		undecided: 'No answer within the limits of the search',
	},
	compare: {
		title: 'Compare two forms',
		first: 'First form',
		second: 'Second form',
		choose: 'Choose two forms. Each measure is drawn on its own line, one dot a form.',
		measure: 'Measure',
		howTheyCompare: 'How the forms compare',
		line: 'On a line from 0',
		apart: 'Apart',
		same: 'same',
		allowed: 'Allowed',
		shared: (ids: readonly string[]): string =>
			ids.length === 0 ? 'No item stands on both.' : `On both: ${ids.join(', ')}.`,
		representation: 'Balance over standards (Webb, 1 is even)',
		caution: 'Forms that compare well are not equated.',
		onlyDifferent: 'Only what differs',
		reading: 'Comparing…',
		needTwo: 'It takes two forms to compare; the bank has fewer.',
	},
};

/** "Form A" becomes "Form B"; a title without a letter gets one. */
function nextTitle(title: string): string {
	const [, before = '', letter = ''] = /^(.*\bForm )([A-Y])$/.exec(title) ?? [];
	if (letter !== '') return before + String.fromCharCode(letter.charCodeAt(0) + 1);
	return `${title.slice(0, 112)}, Form B`;
}
