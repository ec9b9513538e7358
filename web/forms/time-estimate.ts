import { countWords } from '../../item-bank/difficulty/reading.ts';
import type { Item } from '../../item-bank/types.ts';

/** Words a minute at which students of these grades read a test: common practice, no source. */
const wordsAMinute = 120;

/** Minutes one item takes on average, reading included. Common practice, no source: replace it by what classes needed. */
export function estimateMinutes(item: Item): number {
	return countWords(item) / wordsAMinute + workingMinutes(item);
}

/** From and to, whole minutes, a fifth either side of the sum. */
export function minutesOfForm(items: readonly Item[]): { readonly from: number; readonly to: number } {
	const sum = items.reduce((total, item) => total + estimateMinutes(item), 0);
	return { from: Math.floor(sum * 0.8), to: Math.ceil(sum * 1.2) };
}

function workingMinutes(item: Item): number {
	switch (item.kind) {
		case 'choice':
		case 'inline-choice':
		case 'point':
			return 1;
		case 'gridded':
			return 1.5;
		case 'multiple-choice':
		case 'order':
		case 'match':
			return 2;
		case 'explanation':
			return 4;
		case 'set':
			return item.parts.reduce((total, part) => total + workingMinutes(part), 0);
		default:
			return item satisfies never;
	}
}
