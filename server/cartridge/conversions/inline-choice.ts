import { gapSides, printSigns } from '../../../item-bank/items/kinds/inline-choice.ts';
import type { InlineChoiceItem } from '../../../item-bank/types.ts';
import type { Converted } from '../question.ts';

/** Shown where the gap is: a line to write on, as on paper. */
const gap = '____';

/** An inline choice as a choice below its statement. The sides are no expressions by themselves, so they are shown as text. */
export function convertInlineChoice(item: InlineChoiceItem, key: readonly string[]): Converted {
	const statement = gapSides(item)
		.map((side) => side.trim())
		.flatMap((side, index) => (index === 0 ? [side, gap] : [side]))
		.filter((piece) => piece !== '');
	return {
		asks: 'choice',
		added: [
			{ kind: 'paragraph', text: statement.join(' ') },
			{ kind: 'paragraph', text: 'What belongs on the line?' },
		],
		options: item.choices.map(({ id, math }) => ({ bank: id, content: { kind: 'text', text: printSigns(math) } })),
		right: item.choices.flatMap(({ id }, index) => (key.includes(id) ? [index] : [])),
	};
}
