import type { Situation } from './situation.ts';

/** Water at a tide gauge, above or below a zero mark. */
export const tideLevel: Situation = {
	id: 'tide-level',
	setting: 'tide-gauge',
	opening: 'A tide gauge shows how far the water is above or below a zero mark.',
	levelUnit: 'centimetres',
	amountUnit: ['centimetre', 'centimetres'],
	levels: { lowest: -120, highest: 150, step: 1 },
	moves: { least: 12, most: 95 },
	at: 'The gauge read {level}.',
	gains: ['the water rose {amount}'],
	losses: ['the water fell {amount}'],
	means: {
		negative: 'the water is {amount} below the zero mark',
		positive: 'the water is {amount} above the zero mark',
	},
	askLevel: 'What did the gauge read then, in centimetres?',
	change: {
		first: 'At 6 a.m. the gauge read {level}.',
		second: 'At noon it read {level}.',
		ask: 'What was the change in the reading from 6 a.m. to noon, in centimetres?',
	},
	comparison: {
		first: 'It read {level} at 3 a.m.',
		second: 'It read {level} at 9 a.m.',
		askMore: 'How many centimetres higher was the water at 9 a.m. than at 3 a.m.?',
		askLess: 'How many centimetres lower was the water at 3 a.m. than at 9 a.m.?',
	},
	total: {
		start: 'The water at a tide gauge was at the zero mark.',
		ask: 'How many centimetres did the water rise and fall altogether?',
	},
	rate: {
		loss: 'The water at a tide gauge fell {amount} each hour for {count} hours.',
		onward: 'the water fell {amount} each hour for {count} hours',
		amounts: { least: 6, most: 18 },
		counts: { least: 3, most: 5 },
		ask: 'Which number shows the total change in the water level, in centimetres?',
	},
	table: {
		caption: 'The table shows four readings of a tide gauge.',
		step: 'Hour',
		change: 'Change (centimetres)',
		level: 'Reading (centimetres)',
		moment: 'Time',
		moments: ['6 a.m.', '8 a.m.', '10 a.m.', 'Noon'],
		askOrder: 'Put the times in order from the lowest reading to the highest.',
		askLeast: 'At which time was the water lowest?',
		askBack: 'Which change would bring the reading back to `0` centimetres?',
	},
};

/** A sensor on a line, below the surface of the water. */
export const floatDepth: Situation = {
	id: 'float-depth',
	setting: 'tide-gauge',
	opening:
		'A sensor hangs from a float beside a tide gauge. The surface of the water is at `0` metres, and levels below it are negative.',
	levelUnit: 'metres',
	amountUnit: ['metre', 'metres'],
	levels: { lowest: -60, highest: -2, step: 1 },
	moves: { least: 4, most: 40 },
	at: 'The sensor was at {level}.',
	gains: ['it was pulled up {amount}'],
	losses: ['it was let down {amount}'],
	means: { negative: 'the sensor is {amount} below the surface', positive: 'the sensor is {amount} above the surface' },
	askLevel: 'At what level was the sensor then, in metres?',
	change: {
		first: 'On Monday the sensor was at {level}.',
		second: 'On Tuesday it was at {level}.',
		ask: 'What was the change in its level from Monday to Tuesday, in metres?',
	},
	comparison: {
		first: 'A first sensor is at {level}.',
		second: 'A second sensor is at {level}.',
		askMore: 'How many metres higher is the second sensor than the first?',
		askLess: 'How many metres lower is the first sensor than the second?',
	},
	total: {
		start: 'A sensor hangs below a float beside a tide gauge.',
		ask: 'How many metres did it move altogether?',
	},
	rate: {
		loss: 'A sensor below a float was let down {amount} each minute for {count} minutes.',
		onward: 'it was let down {amount} each minute for {count} minutes',
		amounts: { least: 2, most: 8 },
		counts: { least: 3, most: 7 },
		ask: 'Which number shows the total change in its level, in metres?',
	},
	table: {
		caption: 'The table shows the level of the sensor on four days.',
		step: 'Move',
		change: 'Change in level (metres)',
		level: 'Level (metres)',
		moment: 'Day',
		moments: ['Monday', 'Tuesday', 'Wednesday', 'Thursday'],
		askOrder: 'Put the days in order from the lowest level to the highest.',
		askLeast: 'On which day was the sensor lowest?',
		askBack: 'Which change would bring the sensor back to `0` metres?',
	},
};
