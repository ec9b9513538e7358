import { expect } from 'vitest';
import { explainSituation } from '../../../item-bank/families/reasoning/explain-situation.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(explainSituation, {
	first: { name: 'Explain the sign, rail height: -40 + 95', key: { kind: 'rubric' } },
	holds: (item) => {
		if (item.kind !== 'explanation') throw new Error(item.name);
		const [, expression = ''] = /: (.+)$/.exec(item.name) ?? [];
		expect(item.rubric[0]?.descriptor).toContain(`\`${worthOf(expression)}\``);
	},
});
