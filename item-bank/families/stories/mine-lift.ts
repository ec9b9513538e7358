import type { Situation } from './situation.ts';

/** A lift in a mine, by its level. */
export const liftLevel: Situation = {
	id: 'lift-level',
	setting: 'mine-lift',
	opening: 'Levels in a mine are measured from the ground, which is at `0` metres.',
	levelUnit: 'metres',
	amountUnit: ['metre', 'metres'],
	levels: { lowest: -180, highest: 15, step: 1 },
	moves: { least: 12, most: 140 },
	at: 'A lift was at {level}.',
	gains: ['it went up {amount}'],
	losses: ['it went down {amount}'],
	means: { negative: 'the lift is {amount} below the ground', positive: 'the lift is {amount} above the ground' },
	askLevel: 'At what level was the lift then, in metres?',
	change: {
		first: 'At 7 a.m. a lift was at {level}.',
		second: 'At 8 a.m. it was at {level}.',
		ask: 'What was the change in its level from 7 a.m. to 8 a.m., in metres?',
	},
	comparison: {
		first: 'Tunnel A is at {level}.',
		second: 'Tunnel B is at {level}.',
		askMore: 'How many metres higher is tunnel B than tunnel A?',
		askLess: 'How many metres lower is tunnel A than tunnel B?',
	},
	total: { start: 'A mine lift stood at a tunnel.', ask: 'How many metres did it travel altogether?' },
	rate: {
		loss: 'A mine lift went down {amount} each second for {count} seconds.',
		onward: 'it went down {amount} each second for {count} seconds',
		amounts: { least: 2, most: 6 },
		counts: { least: 7, most: 15 },
		ask: 'Which number shows the total change in its level, in metres?',
	},
	table: {
		caption: 'The table shows the level of a lift at four times.',
		step: 'Move',
		change: 'Change in level (metres)',
		level: 'Level (metres)',
		moment: 'Time',
		moments: ['7 a.m.', '8 a.m.', '9 a.m.', '10 a.m.'],
		askOrder: 'Put the times in order from the lowest level to the highest.',
		askLeast: 'At which time was the lift lowest?',
		askBack: 'Which change would bring the lift back to `0` metres?',
	},
};

/** Water in a pump basin of a mine, above or below a mark. */
export const basinLevel: Situation = {
	id: 'basin-level',
	setting: 'mine-lift',
	opening: 'A pump keeps the water in a basin below a mine lift near a zero mark.',
	levelUnit: 'centimetres',
	amountUnit: ['centimetre', 'centimetres'],
	levels: { lowest: -85, highest: 95, step: 1 },
	moves: { least: 8, most: 70 },
	at: 'The water was at {level}.',
	gains: ['the water rose {amount}'],
	losses: ['the pump lowered the water by {amount}'],
	means: {
		negative: 'the water is {amount} below the zero mark',
		positive: 'the water is {amount} above the zero mark',
	},
	askLevel: 'At what level was the water then, in centimetres?',
	change: {
		first: 'On Monday the water was at {level}.',
		second: 'On Tuesday it was at {level}.',
		ask: 'What was the change in its level from Monday to Tuesday, in centimetres?',
	},
	comparison: {
		first: 'The water was at {level} on Monday.',
		second: 'It was at {level} on Friday.',
		askMore: 'How many centimetres higher was the water on Friday than on Monday?',
		askLess: 'How many centimetres lower was the water on Monday than on Friday?',
	},
	total: {
		start: 'A pump works in a basin below a mine lift.',
		ask: 'How many centimetres did the water rise and fall altogether?',
	},
	rate: {
		loss: 'A pump below a mine lift lowered the water in a basin by {amount} each hour for {count} hours.',
		onward: 'the pump lowered the water by {amount} each hour for {count} hours',
		amounts: { least: 3, most: 12 },
		counts: { least: 4, most: 7 },
		ask: 'Which number shows the total change in the water level, in centimetres?',
	},
	table: {
		caption: 'The table shows the level of the water on four days.',
		step: 'Day',
		change: 'Change (centimetres)',
		level: 'Level (centimetres)',
		moment: 'Day',
		moments: ['Monday', 'Tuesday', 'Wednesday', 'Thursday'],
		askOrder: 'Put the days in order from the lowest level to the highest.',
		askLeast: 'On which day was the water lowest?',
		askBack: 'Which change would bring the water back to `0` centimetres?',
	},
};
