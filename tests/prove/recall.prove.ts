import { expect, test } from 'vitest';
import { describeRecall, measureRecall } from '../../item-bank/analysis/simulation/measure-recall.ts';
import { demoItems, itemsOfDemoForm } from '../helpers/demo-bank.ts';

// The bars of tests/item-bank/analysis/recall.test.ts, with ten times the students and several rates of slips, printed as
// a table of what was planted against what was named.
test.each([
	['form A of the demo department', itemsOfDemoForm(0)],
	['form B of the demo department', itemsOfDemoForm(1)],
	['all 80 items of the demo department', demoItems],
])('planted patterns on %s are found again', (name, items) => {
	for (const slips of [0.05, 0.1, 0.2]) {
		const recall = measureRecall(items, { each: 2000, slips, leastItems: 3, seed: 'prove' });
		console.log([`${name}, ${slips * 100} % slips`, ...describeRecall(recall)].join('\n'));
		const reachable = recall.planted.filter(({ isReachable, items: shown }) => isReachable && shown >= 4);
		const all = reachable.reduce((sum, { students }) => sum + students, 0);
		// The bars are for 10 % of slips and fewer; above that the table is for reading.
		if (slips <= 0.1) {
			expect(reachable.reduce((sum, { found }) => sum + found, 0) / all).toBeGreaterThanOrEqual(0.8);
			expect(reachable.reduce((sum, { astray }) => sum + astray, 0) / all).toBeLessThanOrEqual(0.1);
			for (const { habit, named, students } of recall.others) {
				expect(named / students, habit).toBeLessThanOrEqual(habit.includes('guesses') ? 0.1 : 0.02);
			}
		}
	}
});
