import type { Situation } from './situation.ts';

/** The charge of a battery on the test bench of a robotics club. */
export const batteryCharge: Situation = {
	id: 'battery-charge',
	setting: 'battery-bench',
	opening: 'A test bench shows battery charge in units above or below a reference level.',
	levelUnit: 'units',
	amountUnit: ['unit', 'units'],
	levels: { lowest: -40, highest: 50, step: 1 },
	moves: { least: 4, most: 38 },
	at: 'A battery read {level}.',
	gains: ['charging added {amount}'],
	losses: ['a test used {amount}'],
	means: {
		negative: 'the charge is {amount} below the reference level',
		positive: 'the charge is {amount} above the reference level',
	},
	askLevel: 'What did the battery read then, in units?',
	change: {
		first: 'A battery read {level} in the morning.',
		second: 'It read {level} in the afternoon.',
		ask: 'What was the change from morning to afternoon, in units?',
	},
	comparison: {
		first: 'Battery A reads {level}.',
		second: 'Battery B reads {level}.',
		askMore: 'By how many units is the reading of battery B greater than the reading of battery A?',
		askLess: 'By how many units is the reading of battery A less than the reading of battery B?',
	},
	rate: {
		loss: 'On a test bench, a motor used {amount} of a battery each minute for {count} minutes.',
		onward: 'a motor used {amount} each minute for {count} minutes',
		amounts: { least: 2, most: 9 },
		counts: { least: 3, most: 9 },
		ask: 'Which number shows the total change in the charge, in units?',
	},
	table: {
		caption: 'The table shows the charge of one battery at four times.',
		step: 'Test',
		change: 'Change (units)',
		level: 'Reading (units)',
		moment: 'Time',
		moments: ['1 p.m.', '2 p.m.', '3 p.m.', '4 p.m.'],
		askOrder: 'Put the times in order from the lowest reading to the highest.',
		askLeast: 'At which time was the reading lowest?',
		askBack: 'Which change would bring the battery back to `0` units?',
	},
};

/** A robot that runs along a track on the test bench. */
export const robotTrack: Situation = {
	id: 'robot-track',
	setting: 'battery-bench',
	opening:
		'A robot moves along a straight track beside a battery bench. Places ahead of the start line are positive, and places behind it are negative.',
	levelUnit: 'centimetres',
	amountUnit: ['centimetre', 'centimetres'],
	levels: { lowest: -95, highest: 120, step: 1 },
	moves: { least: 8, most: 90 },
	at: 'The robot was at {level}.',
	gains: ['it moved forward {amount}'],
	losses: ['it moved back {amount}'],
	means: {
		negative: 'the robot is {amount} behind the start line',
		positive: 'the robot is {amount} ahead of the start line',
	},
	askLevel: 'At what place was the robot then, in centimetres?',
	change: {
		first: 'Before a run the robot was at {level}.',
		second: 'After the run it was at {level}.',
		ask: 'What was the change in its place, in centimetres?',
	},
	comparison: {
		first: 'After a first run the robot was at {level}.',
		second: 'After a second run it was at {level}.',
		askMore: 'How many centimetres farther forward was the robot after the second run than after the first?',
		askLess: 'How many centimetres farther back was the robot after the first run than after the second?',
	},
	total: {
		start: 'A robot stood on a track beside a battery bench.',
		ask: 'How many centimetres did it move altogether?',
	},
	rate: {
		loss: 'A robot beside a battery bench moved back {amount} each second for {count} seconds.',
		onward: 'it moved back {amount} each second for {count} seconds',
		amounts: { least: 4, most: 12 },
		counts: { least: 3, most: 9 },
		ask: 'Which number shows the total change in its place, in centimetres?',
	},
	table: {
		caption: 'The table shows where the robot was after four runs.',
		step: 'Move',
		change: 'Change in place (centimetres)',
		level: 'Place (centimetres)',
		moment: 'After',
		moments: ['Run A', 'Run B', 'Run C', 'Run D'],
		askOrder: 'Put the runs in order from the lowest number to the highest.',
		askLeast: 'After which run was the number least?',
		askBack: 'Which change would bring the robot back to `0` centimetres?',
	},
};
