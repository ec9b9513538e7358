import type { PartKey } from '../../item-bank/items/key.ts';

/** A right answer in letters or as a number with a true minus. */
export function printKey(key: PartKey): string {
	switch (key.kind) {
		case 'value':
			return String(key.value).replace('-', '−');
		case 'options':
			return key.options.map((id) => id.toUpperCase()).join(', ');
		case 'order':
			return key.order.map((id) => id.toUpperCase()).join(', ');
		case 'pairs':
			return key.pairs.map(({ left, right }) => `${left.toUpperCase()}–${right.toUpperCase()}`).join(', ');
		case 'rubric':
			return 'by the rubric';
	}
}
