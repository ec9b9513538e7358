import type { Alignment } from '../../../item-bank/types.ts';

/** An alignment; give what the test is about. */
export const align = (changes: Partial<Alignment> = {}): Alignment => ({
	framework: 'teks-math',
	edition: '2012',
	code: '6.3(D)',
	grade: '6',
	extent: 'full',
	...changes,
});
