import { expect, test } from 'vitest';
import { printItemName } from '../../../item-bank/items/item-name.ts';

test.each([
	['Point at -6, horizontal line', 'Point at −6, horizontal line'],
	['Difference, negative minus negative: -5 - (-12)', 'Difference, negative minus negative: −5 − (−12)'],
	['Expressions equal to |-3 + 11|', 'Expressions equal to |−3 + 11|'],
	['Missing number: ? - 8 = -3', 'Missing number: ? − 8 = −3'],
	['Two-step sum in a mid-2 well-known lift', 'Two-step sum in a mid-2 well-known lift'],
])('prints the name %s as %s', (name, printed) => {
	expect(printItemName(name)).toBe(printed);
});
