import { expect } from 'vitest';
import { explainOrder } from '../../../item-bank/families/reasoning/explain-order.ts';
import { testFamily } from './family-laws.ts';

testFamily(explainOrder, {
	first: { name: 'Explain the order of -15 and -13', key: { kind: 'rubric' } },
	impossible: [{ least: 90, largest: 4 }, 'sizes from 90 to 4'],
	holds: (item) => {
		if (item.kind !== 'explanation') throw new Error(item.name);
		const [, one = '', other = ''] = /^Explain the order of (-\d+) and (-\d+)$/.exec(item.name) ?? [];
		const less = Math.min(Number(one), Number(other));
		expect(item.rubric[0]?.descriptor).toContain(`\`${less} < `);
	},
});
