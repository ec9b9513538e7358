import { expect, test } from 'vitest';
import { readableMathematics } from '../../../../item-bank/checks/stops/readable-mathematics.ts';
import { makeGridded } from '../../../helpers/items.ts';
import { asking, found } from '../found.ts';

test('an open backtick and mathematics that cannot be read are refused where they stand', () => {
	expect(found(readableMathematics, asking('What is `-3?'))).toMatchObject([
		{ code: 'rich-text', path: '/stem/0/text' },
	]);
	const math = makeGridded({
		stem: [
			{ kind: 'paragraph', text: 'Work it out.' },
			{ kind: 'mathematics', math: '3 ++ x' },
		],
	});
	expect(found(readableMathematics, math)).toMatchObject([{ code: 'expression-syntax', path: '/stem/1/math' }]);
});

test('closed backticks, doubled signs and expressions of the staff are left alone', () => {
	expect(found(readableMathematics, asking('What is `3 - -8`, an x or a y?'))).toEqual([]);
	expect(found(readableMathematics, makeGridded({ expression: '3 ++ x' }))).toEqual([]);
});
