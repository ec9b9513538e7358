import type { Item } from '../types.ts';

/** One piece of writing inside an item, with its place as a JSON pointer. */
export interface ItemText {
	readonly path: string;
	/** rich: text with mathematics between backticks; mathematics: an expression or statement; plain: neither. */
	readonly kind: 'rich' | 'mathematics' | 'plain';
	readonly text: string;
}

/** Every text of an item in document order. */
export function textsOf(item: Item): readonly ItemText[] {
	return [
		{ path: '/name', kind: 'plain', text: item.name },
		...item.stem.flatMap((block, index) => blockTexts(block, `/stem/${index}`)),
		...(item.kind === 'gridded' ? griddedTexts(item) : choiceTexts(item)),
	];
}

function blockTexts(block: Item['stem'][number], path: string): readonly ItemText[] {
	switch (block.kind) {
		case 'paragraph':
			return [{ path: `${path}/text`, kind: 'rich', text: block.text }];
		case 'mathematics':
			return [{ path: `${path}/math`, kind: 'mathematics', text: block.math }];
		case 'figure':
			return [];
		case 'table':
			return [
				...(block.caption === undefined
					? []
					: [{ path: `${path}/caption`, kind: 'rich' as const, text: block.caption }]),
				...block.header.map((text, column) => ({ path: `${path}/header/${column}`, kind: 'rich' as const, text })),
				...block.rows.flatMap((row, at) =>
					row.map((text, column) => ({ path: `${path}/rows/${at}/${column}`, kind: 'rich' as const, text })),
				),
			];
	}
}

function griddedTexts(item: Extract<Item, { kind: 'gridded' }>): readonly ItemText[] {
	return [
		{ path: '/expression', kind: 'mathematics', text: item.expression },
		...(item.unit === undefined ? [] : [{ path: '/unit', kind: 'plain' as const, text: item.unit }]),
	];
}

function choiceTexts(item: Exclude<Item, { kind: 'gridded' }>): readonly ItemText[] {
	const options = item.options.flatMap(({ content }, index): readonly ItemText[] => {
		const path = `/options/${index}/content`;
		switch (content.kind) {
			case 'mathematics':
				return [{ path: `${path}/math`, kind: 'mathematics', text: content.math }];
			case 'text':
				return [
					{ path: `${path}/text`, kind: 'rich', text: content.text },
					...(content.worth === undefined
						? []
						: [{ path: `${path}/worth`, kind: 'mathematics' as const, text: content.worth }]),
				];
			case 'figure':
				return [];
		}
	});
	const { rule } = item;
	if ('expression' in rule)
		return [...options, { path: '/rule/expression', kind: 'mathematics', text: rule.expression }];
	if (rule.kind === 'stated') return [...options, { path: '/rule/reason', kind: 'rich', text: rule.reason }];
	return options;
}
