import { expect, test } from 'vitest';
import { knownStandard } from '../../../../item-bank/checks/stops/known-standard.ts';
import { makeGridded } from '../../../helpers/items.ts';
import { align } from '../alignment.ts';
import { found } from '../found.ts';

const under = (changes: Parameters<typeof align>[0]) =>
	makeGridded({ alignments: [align({ primary: true, ...changes })] });

test('an unknown edition is refused, and an unknown code with near ones', () => {
	expect(found(knownStandard, under({ edition: '1999' }))).toMatchObject([
		{ code: 'unknown-framework', path: '/alignments/0' },
	]);
	const [problem] = found(knownStandard, under({ code: '6.3D' }));
	expect(problem).toMatchObject({ code: 'unknown-standard', path: '/alignments/0/code' });
	expect(problem?.message).toContain('did you mean 6.3(D)?');
});

test('a code as its framework prints it is left alone', () => {
	expect(found(knownStandard, under({ code: '6.3(D)' }))).toEqual([]);
});
