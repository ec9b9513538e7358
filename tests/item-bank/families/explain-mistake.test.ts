import { expect } from 'vitest';
import { explainMistake } from '../../../item-bank/families/reasoning/explain-mistake.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(explainMistake, {
	first: { name: 'Explain the mistake: 6 - (-9) = 3', key: { kind: 'rubric' } },
	impossible: [{ least: 40, largest: 4 }, 'sizes from 40 to 4'],
	holds: (item) => {
		if (item.kind !== 'explanation') throw new Error(item.name);
		const [, left = '', right = ''] = /^Explain the mistake: (.+) = (.+)$/.exec(item.name) ?? [];
		expect(worthOf(left)).not.toBe(Number(right));
		expect(item.rubric[0]?.descriptor).toContain(`\`${worthOf(left)}\``);
	},
});
