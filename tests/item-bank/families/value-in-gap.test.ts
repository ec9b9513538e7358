import { expect } from 'vitest';
import { valueInGap } from '../../../item-bank/families/symbols/value-in-gap.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(valueInGap, {
	first: { name: 'Value: |-11|', key: { kind: 'options', options: ['b'] } },
	impossible: [{ least: 20, largest: 4 }, 'sizes from 20 to 4'],
	holds: (item) => {
		if (item.kind !== 'inline-choice') throw new Error(item.name);
		const wanted = worthOf(item.statement.replace(' = _', ''));
		expect(item.choices.filter(({ math }) => worthOf(math) === wanted)).toHaveLength(1);
	},
});
