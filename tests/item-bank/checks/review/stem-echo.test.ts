import { expect, test } from 'vitest';
import { stemEcho } from '../../../../item-bank/checks/review/stem-echo.ts';
import { makeChoice } from '../../../helpers/items.ts';
import { found, offering } from '../found.ts';

const asked = (text: string, ...texts: readonly string[]) =>
	makeChoice({ ...offering(...texts), stem: [{ kind: 'paragraph', text }] });

test('a word of the stem that only the right option repeats is pointed at', () => {
	const item = asked(
		'What do zero pairs leave as it is?',
		'the count of counters',
		'a set without its pairs',
		'the picture',
	);
	expect(found(stemEcho, item)).toMatchObject([{ path: '/options/1', message: expect.stringContaining('"pair"') }]);
});

test('a word that other options repeat too, and short words, are left alone', () => {
	expect(found(stemEcho, asked('Which pairs fit?', 'no pairs', 'the pairs', 'one'))).toEqual([]);
	expect(found(stemEcho, asked('Which set is it?', 'one', 'this set', 'none'))).toEqual([]);
});
