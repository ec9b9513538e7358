import { expect, test } from 'vitest';
import { negativeWording } from '../../../../item-bank/checks/review/negative-wording.ts';
import { asking, found, offering } from '../found.ts';

test('a question asked negatively is pointed at, more mildly in capitals', () => {
	expect(found(negativeWording, asking('Which number is NOT greater than `-3`?'))).toMatchObject([
		{ path: '/stem/0/text', message: expect.stringContaining('where it can be') },
	]);
	expect(found(negativeWording, asking('Here are sums. Choose the one that is not negative.'))).toMatchObject([
		{ message: expect.stringContaining('in capitals') },
	]);
	expect(found(negativeWording, asking('Which are true except one?'))).toHaveLength(1);
	expect(found(negativeWording, asking("Which statement isn't true?"))).toHaveLength(1);
});

test('words that only look like it, stories and options are left alone', () => {
	expect(found(negativeWording, asking('Which note shows `-3`? Nothing else counts.'))).toEqual([]);
	expect(found(negativeWording, asking('The lift does not stop at `0`. Where does it stop?'))).toEqual([]);
	expect(found(negativeWording, offering('Is it not above zero?', 'It is above zero.'))).toEqual([]);
});
