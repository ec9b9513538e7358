import type { Situation } from './situation.ts';

/** The school garden fund, compared with its plan. */
export const fundPlan: Situation = {
	id: 'fund-plan',
	setting: 'garden-fund',
	opening: 'A garden fund is compared with its plan. A negative number of dollars means that the fund is below plan.',
	levelUnit: 'dollars',
	amountUnit: ['dollar', 'dollars'],
	levels: { lowest: -90, highest: 120, step: 1 },
	moves: { least: 8, most: 85 },
	at: 'The fund stood at {level}.',
	gains: ['a plant sale brought in {amount}', 'a market stall brought in {amount}', 'a gift added {amount}'],
	losses: ['soil cost {amount}', 'seeds cost {amount}', 'new tools cost {amount}'],
	means: { negative: 'the fund is {amount} below plan', positive: 'the fund is {amount} above plan' },
	askLevel: 'At how many dollars did the fund stand then?',
	change: {
		first: 'In March the fund stood at {level}.',
		second: 'In May it stood at {level}.',
		ask: 'What was the change from March to May, in dollars?',
	},
	comparison: {
		first: 'In April the fund stood at {level}.',
		second: 'In June it stood at {level}.',
		askMore: 'How many dollars more did the fund hold, compared with the plan, in June than in April?',
		askLess: 'How many dollars less did the fund hold, compared with the plan, in April than in June?',
	},
	rate: {
		loss: 'A garden fund paid {amount} for water each week for {count} weeks.',
		onward: 'water cost {amount} each week for {count} weeks',
		amounts: { least: 6, most: 15 },
		counts: { least: 3, most: 9 },
		ask: 'Which number shows the total change in the fund, in dollars?',
	},
	table: {
		caption: 'The table shows the fund in four months.',
		step: 'Week',
		change: 'Change (dollars)',
		level: 'Compared with the plan (dollars)',
		moment: 'Month',
		moments: ['March', 'April', 'May', 'June'],
		askOrder: 'Put the months in order from the least number of dollars to the greatest.',
		askLeast: 'In which month was the number of dollars least?',
		askBack: 'Which change would bring the fund back to `0` dollars?',
	},
};

/** Seedlings of a school garden, compared with a goal. */
export const seedlingGoal: Situation = {
	id: 'seedling-goal',
	setting: 'garden-fund',
	opening:
		'A garden club compares its number of seedlings with a goal. A negative number means fewer seedlings than the goal.',
	levelUnit: 'seedlings',
	amountUnit: ['seedling', 'seedlings'],
	levels: { lowest: -45, highest: 60, step: 1 },
	moves: { least: 5, most: 45 },
	at: 'One day, the comparison showed {level}.',
	gains: ['{amount} came up', '{amount} were added'],
	losses: ['{amount} were sold', '{amount} were given away'],
	means: { negative: 'there are {amount} fewer than the goal', positive: 'there are {amount} more than the goal' },
	askLevel: 'What did the comparison show then, in seedlings?',
	change: {
		first: 'In March the comparison showed {level}.',
		second: 'In April it showed {level}.',
		ask: 'What was the change from March to April, in seedlings?',
	},
	comparison: {
		first: 'For beans, the comparison showed {level}.',
		second: 'For peas, it showed {level}.',
		askMore: 'By how many seedlings was the number for peas greater than the number for beans?',
		askLess: 'By how many seedlings was the number for beans less than the number for peas?',
	},
	rate: {
		loss: 'A garden club sold {amount} each week for {count} weeks.',
		onward: '{amount} were sold each week for {count} weeks',
		amounts: { least: 4, most: 12 },
		counts: { least: 3, most: 9 },
		ask: 'Which number shows the total change in the number of seedlings?',
	},
	table: {
		caption: 'The table shows the comparison in four months.',
		step: 'Week',
		change: 'Change (seedlings)',
		level: 'Compared with the goal (seedlings)',
		moment: 'Month',
		moments: ['March', 'April', 'May', 'June'],
		askOrder: 'Put the months in order from the least number to the greatest.',
		askLeast: 'In which month was the number least?',
		askBack: 'Which change would bring the comparison back to `0` seedlings?',
	},
};
