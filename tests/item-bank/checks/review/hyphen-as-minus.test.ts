import { expect, test } from 'vitest';
import { hyphenAsMinus } from '../../../../item-bank/checks/review/hyphen-as-minus.ts';
import { makeGridded } from '../../../helpers/items.ts';

const asking = (text: string) => makeGridded({ stem: [{ kind: 'paragraph', text }] });

test('a negative number outside backticks is pointed at', () => {
	expect(hyphenAsMinus.find(asking('The gauge read -4 cm. What is that?'))).toMatchObject([{ path: '/stem/0/text' }]);
	expect(hyphenAsMinus.find(asking('Is (–7) right?'))).toHaveLength(1);
});

test('backticks, ranges and hyphenated words are left alone', () => {
	expect(hyphenAsMinus.find(asking('The gauge read `-4` cm on pages 3-5 of a two-page log. What is that?'))).toEqual(
		[],
	);
});
