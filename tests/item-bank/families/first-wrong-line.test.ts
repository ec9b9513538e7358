import { expect } from 'vitest';
import { firstWrongLine } from '../../../item-bank/families/reasoning/first-wrong-line.ts';
import { computeKey } from '../../../item-bank/items/key.ts';
import { optionTextsOf, rowsOf, testFamily, worthOf } from './family-laws.ts';

testFamily(firstWrongLine, {
	first: {
		name: 'First wrong line: -8 - 4 - 3 + 9 | -12 - 3 + 9 | 9 + 9 | 18',
		key: { kind: 'options', options: ['b'] },
	},
	impossible: [{ least: 40, largest: 5 }, 'sizes from 40 to 5'],
	holds: (item) => {
		const lines = rowsOf(item).map(([, work = '']) => worthOf(work));
		const wrong = lines.findIndex((value, at) => at > 0 && value !== lines[at - 1]);
		const key = computeKey(item);
		const [right] = key.kind === 'options' ? key.options : [];
		expect(optionTextsOf(item)['abcdef'.indexOf(right ?? '')]).toBe(`line ${wrong + 1}`);
	},
});
