import type { Reading } from '../../responses/grid.ts';
import type { GriddedItem } from '../../types.ts';
import { worthAt } from '../compute.ts';
import { checkTyped, type KeyFinding, keyUnless } from '../item-key.ts';
import type { Outcome } from '../outcome.ts';

/** Key of a gridded item: the value of its expression. */
export function findGriddedKey(item: GriddedItem): KeyFinding<{ kind: 'value'; value: number }> {
	const value = worthAt(item.expression, '/expression');
	const typed = item.key === undefined ? undefined : String(item.key);
	const problems = checkTyped(String(value), typed, `the expression "${item.expression}" is worth`);
	return keyUnless(problems, { kind: 'value', value });
}

/** A grid or an entry counts by the value it is read as. */
export function scoreReading(value: number, reading: Reading): Outcome {
	switch (reading.kind) {
		case 'omitted':
			return { state: 'omitted' };
		case 'invalid':
			return { state: 'invalid', reason: reading.reason };
		case 'valid':
			return { state: reading.value === value ? 'correct' : 'incorrect' };
	}
}
