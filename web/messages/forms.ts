import { en } from './en.ts';

const { figure, items, range } = en;

function capital(sentence: string): string {
	return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}`;
}

/** English of the pages about forms. */
export const formsText = {
	list: {
		title: 'Forms',
		lead: 'A form is one test: items of the bank in order, in sections.',
		create: 'New form',
		build: 'Build from a blueprint',
		compare: 'Compare two forms',
		head: { form: 'Form', items: 'Items', version: 'Version', given: 'Given', state: 'On this desk' },
		givenWords: (times: number): string =>
			times === 0 ? 'not given yet' : times === 1 ? 'given once' : `given ${figure(times)} times`,
		unsaved: 'unsaved work',
		onlyHere: 'not in the bank yet',
		untitled: 'Form without a title',
		emptyTitle: 'The first form',
		empty:
			'There is no form yet. Take one of two ways: start an empty form and pick its items one by one, or let the bank build forms from a blueprint, which says how many items of which kind the test needs.',
		discard: 'Give up',
		discarded: (title: string): string => `Unsaved work on “${title}” was given up.`,
	},
	desk: {
		forms: 'All forms',
		firstSection: 'Section 1',
		title: 'Title of the form',
		titlePlaceholder: 'Unit check: integers, Form A',
		titleMissing: 'A form needs a title: say the unit and which form it is.',
		grid: 'Answer grid',
		gridMeaning: 'for every gridded item',
		save: 'Save',
		saving: 'Saving…',
		saved: (version: number): string => `saved as version ${version}`,
		told: (version: number): string => `Saved as version ${version}.`,
		unsaved: (version: number): string =>
			version === 0 ? 'not in the bank yet' : `unsaved work since version ${version}`,
		waiting: 'The bank does not answer. Your work is kept in this browser and is saved as soon as the bank answers.',
		notKept: 'This browser keeps nothing between visits: save before you close the page.',
		discard: 'Back to the saved version',
		discarded: 'Went back to the saved version',
		undo: 'Undo',
		redo: 'Redo',
		undid: (what: string): string => `Undone: ${what}`,
		redid: (what: string): string => `Done again: ${what}`,
		full: 'Show the items in full',
		keys: 'Show keys and worked steps',
		see: 'See it as a student',
		print: 'Print',
		export: 'Export',
		give: 'Give to a class',
		another: 'Make another form',
		compare: 'Compare',
		more: 'Use this form',
		computed: 'What the bank computed',
		notFound: (id: string): string => `No form “${id}” is in the bank, and no unsaved work on one is in this browser.`,
		saveFirst: 'There is unsaved work on the desk. What follows uses the form as saved.',
		saveFirstNew: 'This form is not in the bank yet. Save it first.',
		titleChanged: 'Title changed',
		gridChanged: 'Answer grid changed',
		firstMark:
			'Nothing on this form yet. Add the first item: choose “Add items” below, search, and press “Add”. What the bank computes of the form appears beside it as you go.',
		elsewhere: 'This form was changed in another window of this browser. What stands here is older.',
		takeElsewhere: 'Show that state',
		notSaved: (reason: string): string => `Not saved, nothing lost. ${capital(reason)}`,
		givings: (lines: readonly string[]): string => `Given ${lines.join('; ')}.`,
		giving: (group: string, date: string, version: number): string => `to ${group} on ${date} (version ${version})`,
		added: (name: string, position: number): string => `“${name}” is item ${position} now.`,
		alreadyThere: (name: string): string => `“${name}” is on this form already.`,
		addFailed: (id: string, reason: string): string => `“${id}” was not added. ${capital(reason)}`,
		did: { added: 'item added' },
	},
	outline: {
		keyboard: 'Arrow keys go through the items. Alt with an arrow key moves the item, Delete takes it out.',
		hint: 'Alt ↑ ↓ moves an item, Delete takes it out.',
		sectionTitle: (number: number): string => `Title of section ${number}`,
		sectionWithoutTitle: 'A section needs a title; students read it above the items.',
		sectionUp: (title: string): string => `Move section up: ${title}`,
		sectionDown: (title: string): string => `Move section down: ${title}`,
		sectionRemove: (title: string): string => `Remove section, keep its items: ${title}`,
		newSection: (number: number): string => `Section ${number}`,
		addSection: 'Add a section',
		addItems: (title: string): string => `Add items to “${title}”`,
		emptySection: 'No items in this section yet.',
		itemsOf: (title: string): string => `Items of ${title}`,
		item: (position: number): string => `Item ${position}`,
		unknownItem: (id: string, version: number): string => `${id}, version ${version}: not in the bank`,
		points: 'points',
		pointsHere: 'Points on this form',
		pointsRange: 'Points are a whole number from 1 to 10.',
		drag: 'Drag to move',
		moveUp: 'Move up',
		moveDown: 'Move down',
		swap: 'Swap for a like item',
		remove: 'Remove',
		openItem: 'Open the item',
		isFirst: 'This is the first item already.',
		isLast: 'This is the last item already.',
		movedTo: (name: string, position: number, all: number, section: string): string =>
			`${name} is item ${position} of ${all} now, in ${section}.`,
		removed: (position: number, name: string): string => `Item ${position}, “${name}”, was taken out.`,
		did: {
			moved: 'item moved',
			removed: 'item taken out',
			putBack: 'item put back',
			points: 'points changed',
			sectionAdded: 'section added',
			sectionMoved: 'section moved',
			sectionRemoved: 'section removed',
			sectionRenamed: 'section renamed',
		},
	},
	finder: {
		title: (section: string): string => `Add items to “${section}”`,
		close: 'Done',
		search: 'Words, numbers or an id',
		placeholder: 'tide gauge, −7, srm-add-005',
		model: 'Gives',
		kind: 'Kind',
		any: 'any',
		drafts: 'also drafts',
		found: (shown: number, total: number): string =>
			total === 0
				? 'No item found.'
				: shown === total
					? `${items(total)} found.`
					: `${items(total)} found, ${shown} shown.`,
		nothing: 'Nothing fits. Take words away, choose “any”, or tick “also drafts”.',
		hits: 'Items found',
		more: 'Show more',
		add: 'Add',
		addNamed: (name: string): string => `Add ${name}`,
		taken: 'on it',
		isTaken: (name: string): string => `${name} is on the form`,
	},
	facts: {
		plan: 'Plan',
		against: 'Hold it against',
		noBlueprint: 'no blueprint',
		choosePlan: 'Choose a blueprint to see what the form still needs.',
		planMet: 'Every requirement is met.',
		planShort: (count: number): string =>
			`${figure(count)} ${count === 1 ? 'requirement falls' : 'requirements fall'} short.`,
		wanted: (min: number | undefined, max: number | undefined): string => `wanted ${range(min, max)}`,
		gap: (found: number, min: number | undefined, max: number | undefined, unit: string): string => {
			if (unit === 'mean') return '';
			if (min !== undefined && found < min) return `: ${figure(min - found)} more needed`;
			return max !== undefined && found > max ? `: ${figure(found - max)} too many` : '';
		},
		breach: (requirement: string, found: string): string => `${capital(requirement)}. Found: ${found}.`,
		size: 'Length',
		items: 'items',
		points: 'points',
		time: 'time, estimated',
		timeBasis: 'from the kinds of items and the words to read; common practice, no source',
		minutes: (from: number, to: number): string => `${from} to ${to} min`,
		words: 'words to read',
		longest: (position: number): string => `longest, item ${position}`,
		difficulty: 'Difficulty, estimated',
		noDifficulty: 'No item yet.',
		difficultyMean: (mean: number): string => `mean ${figure(mean)} on a scale of 1 to 10, before anybody has answered`,
		difficultyWords: (mean: number, scores: readonly number[]): string =>
			`Estimated difficulty on a scale of 1 to 10: mean ${figure(mean)}; item by item ${scores.join(', ')}`,
		keyPlaces: 'Keys at each option',
		noKeyPlaces: 'No item with one key among options yet.',
		option: (letter: string): string => `option ${letter}`,
		signs: 'Signs of the answers',
		negative: 'negative',
		zero: 'zero',
		positive: 'positive',
		noNumber: 'not one number',
		look: 'To look at',
		nothingYet:
			'Items that give each other away, repeat numbers or settings, or ask for the same answer in a row show here.',
		nothingFound: 'Nothing found that repeats or gives away.',
		note: (code: string, message: string, position: number | undefined): string => {
			if (code === 'review-form-same-answer') return `Item ${position} has the same answer as the one before it.`;
			if (code === 'review-form-key-in-a-row')
				return `Up to item ${position} the key stands at the same option too often in a row.`;
			return `${capital(message)}.`;
		},
	},
	conflict: {
		title: (mine: number, theirs: number): string =>
			`Somebody saved version ${theirs} while you worked on version ${mine}`,
		lead: 'Nothing is lost: both are below. Choose how to go on; you can undo the choice.',
		mine: 'Yours, on this desk',
		theirs: (version: number): string => `Version ${version}, in the bank`,
		onlyMine: 'Only on yours',
		onlyTheirs: 'Only on theirs',
		differs: 'Different on both',
		none: 'none',
		moved: (count: number): string => `${items(count)} at another place`,
		changed: (count: number): string => `${items(count)} in another version or with other points`,
		titles: (mine: string, theirs: string): string => `title: yours “${mine}”, theirs “${theirs}”`,
		grid: 'another answer grid',
		sections: 'other sections',
		keepMine: 'Go on with mine',
		keepTheirs: 'Go on with theirs',
		keepBoth: (count: number): string => `Go on with theirs and add my ${items(count)}`,
		took: 'took the version in the bank',
		joined: 'put both together',
	},
	swap: {
		title: (position: number, name: string): string => `In place of item ${position}, “${name}”`,
		searching: 'Looking for like items…',
		none: 'No other approved item is left in the bank.',
		unsaved: 'This item is not in the saved form yet. Save, then the bank can look for like ones.',
		same: 'like it in every way',
		breaksPlan: 'does not keep the plan',
		likeness: (value: number): string => `likeness ${Math.round(value)} of 100`,
		take: 'Take this one',
		took: 'item swapped',
		told: (old: string, name: string): string => `“${name}” stands in the place of “${old}”.`,
		close: 'Keep the item',
	},
	preview: {
		title: (title: string): string => `As a student sees it: ${title}`,
		of: (position: number, all: number): string => `Item ${position} of ${all}`,
		back: 'Back',
		next: 'Next',
		close: 'Close',
		empty: 'No item to show yet.',
	},
	give: {
		title: 'Give to a class',
		lead: 'The bank remembers which class had which version when. Blueprints can then keep items away that were used lately.',
		group: 'Class',
		date: 'Day',
		submit: 'Record it',
		noGroups:
			'No class is in the bank yet. Add one with “npm run zeropair -- groups add FILE”: a name and student codes, no names of students.',
		pick: 'Choose a class.',
		day: 'Give a day such as 2026-09-14.',
		told: (group: string, date: string): string => `Given to ${group} on ${date}.`,
		held: (group: string, date: string): string => `Will be recorded: given to ${group} on ${date}.`,
		withdrawn: 'Not recorded.',
	},
	another: {
		title: 'Make another form from this one',
		copy: 'Form B with the same items',
		copyMeaning: 'A copy on the desk. Change the order, or swap items one by one.',
		like: 'Form B with like items',
		likeMeaning: 'The bank chooses other items that follow the same plan. No item is shared.',
		retake: 'A retake with new numbers',
		retakeMeaning:
			'Items that were generated come again with other numbers, as drafts for you to look at; the others stay.',
		make: 'Make it',
		making: 'Working…',
		titleOf: (title: string): string => nextTitle(title),
		retakeTitle: (title: string): string => `${title}, retake`,
		impossible: 'The bank has too few items for a second form like this one:',
		kept: (count: number): string => (count === 0 ? '' : `${items(count)} had no family and stayed the same.`),
		noFamily: 'No item of this form was generated, so there are no new numbers to give.',
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
		missingItem: (count: number, parts: readonly string[]): string => `${items(count)}: ${parts.join(', ')}`,
		nearest: 'The nearest form falls short of:',
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
		line: 'On a line from 0',
		apart: 'Apart',
		same: 'same',
		allowed: (most: number): string => `at most ${figure(most)} allowed`,
		shared: (ids: readonly string[]): string =>
			ids.length === 0 ? 'No item stands on both.' : `On both: ${ids.join(', ')}.`,
		representation: 'Balance over standards (Webb, 1 is even)',
		caution: 'Forms that compare well are not equated.',
		onlyDifferent: 'Only what differs',
		reading: 'Comparing…',
		needTwo: 'It takes two forms to compare; the bank has fewer.',
	},
	dialogClose: 'Close',
};

/** "Form A" becomes "Form B"; a title without a letter gets one. */
function nextTitle(title: string): string {
	const [, before = '', letter = ''] = /^(.*\bForm )([A-Y])$/.exec(title) ?? [];
	if (letter !== '') return before + String.fromCharCode(letter.charCodeAt(0) + 1);
	return `${title.slice(0, 112)}, Form B`;
}
