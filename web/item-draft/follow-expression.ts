import type { PartItem, StemBlock } from '../../item-bank/types.ts';

/** The item with a changed expression written also where its stem showed the one before, word for word. */
export function followExpression<Part extends PartItem>(part: Part, before: string, after: string): Part {
	if (before === after || before.trim() === '') return part;
	const stem = part.stem.map((block): StemBlock => {
		if (block.kind === 'mathematics' && block.math === before) return { ...block, math: after };
		if (block.kind !== 'paragraph') return block;
		return { ...block, text: block.text.replaceAll(`\`${before}\``, `\`${after}\``) };
	});
	return { ...part, stem };
}
