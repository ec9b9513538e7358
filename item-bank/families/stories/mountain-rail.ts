import type { Situation } from './situation.ts';

/** A rail car on a mountain, by its height. */
export const railHeight: Situation = {
	id: 'rail-height',
	setting: 'mountain-rail',
	opening: 'Heights on a mountain railway are measured from the main station, which is at `0` metres.',
	levelUnit: 'metres',
	amountUnit: ['metre', 'metres'],
	levels: { lowest: -240, highest: 300, step: 5 },
	moves: { least: 15, most: 180 },
	at: 'A rail car was at {level}.',
	gains: ['it went up {amount}'],
	losses: ['it went down {amount}'],
	means: {
		negative: 'the rail car is {amount} below the main station',
		positive: 'the rail car is {amount} above the main station',
	},
	askLevel: 'At what height was the rail car then, in metres?',
	change: {
		first: 'At 9 a.m. a rail car was at {level}.',
		second: 'At 10 a.m. it was at {level}.',
		ask: 'What was the change in its height from 9 a.m. to 10 a.m., in metres?',
	},
	comparison: {
		first: 'Stop A is at {level}.',
		second: 'Stop B is at {level}.',
		askMore: 'How many metres higher is stop B than stop A?',
		askLess: 'How many metres lower is stop A than stop B?',
	},
	total: {
		start: 'A rail car left a stop on a mountain railway.',
		ask: 'How many metres did it go up and down altogether?',
	},
	rate: {
		loss: 'A rail car on a mountain railway went down {amount} each minute for {count} minutes.',
		onward: 'it went down {amount} each minute for {count} minutes',
		amounts: { least: 8, most: 25 },
		counts: { least: 3, most: 9 },
		ask: 'Which number shows the total change in its height, in metres?',
	},
	table: {
		caption: 'The table shows the height of a rail car at four times.',
		step: 'Part of the trip',
		change: 'Change in height (metres)',
		level: 'Height (metres)',
		moment: 'Time',
		moments: ['9 a.m.', '10 a.m.', '11 a.m.', 'Noon'],
		askOrder: 'Put the times in order from the lowest height to the greatest.',
		askLeast: 'At which time was the rail car lowest?',
		askBack: 'Which change would bring the rail car back to `0` metres?',
	},
};

/** Trains early or late by the timetable. */
export const railTimetable: Situation = {
	id: 'rail-timetable',
	setting: 'mountain-rail',
	opening: 'A station board shows how late trains are. A negative number of minutes means that a train is early.',
	levelUnit: 'minutes',
	amountUnit: ['minute', 'minutes'],
	levels: { lowest: -12, highest: 25, step: 1 },
	moves: { least: 3, most: 16 },
	at: 'The board showed {level} for a train.',
	gains: ['the train lost {amount}'],
	losses: ['the train made up {amount}'],
	means: { negative: 'the train is {amount} early', positive: 'the train is {amount} late' },
	askLevel: 'What did the board show for the train then, in minutes?',
	change: {
		first: 'At the lake stop, the board showed {level} for a train.',
		second: 'At the top stop, it showed {level} for the same train.',
		ask: 'What was the change from the lake stop to the top stop, in minutes?',
	},
	comparison: {
		first: 'The board showed {level} for train A.',
		second: 'It showed {level} for train B.',
		askMore: 'By how many minutes was the number for train B greater than the number for train A?',
		askLess: 'By how many minutes was the number for train A less than the number for train B?',
	},
	rate: {
		loss: 'A train on a mountain railway made up {amount} at each of {count} stops.',
		onward: 'the train made up {amount} at each of {count} stops',
		amounts: { least: 2, most: 4 },
		counts: { least: 3, most: 7 },
		ask: 'Lost minutes count as positive, minutes made up as negative. Which number shows the total change, in minutes?',
	},
	table: {
		caption: 'The table shows the number on the board for one train at four stops.',
		step: 'Part of the trip',
		change: 'Change (minutes)',
		level: 'Minutes late',
		moment: 'Stop',
		moments: ['Bridge', 'Quarry', 'Lake', 'Top'],
		askOrder: 'Put the stops in order from the least number of minutes to the greatest.',
		askLeast: 'At which stop was the number on the board least?',
		askBack: 'Which change would bring the number on the board back to `0` minutes?',
	},
};
