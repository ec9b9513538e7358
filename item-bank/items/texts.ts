import type { Item, PartItem, StemBlock } from '../types.ts';
import { entryListsOf } from './entries.ts';

/** One piece of writing inside an item, with its place as a JSON pointer. */
export interface ItemText {
	readonly path: string;
	/** rich: text with mathematics between backticks; mathematics: an expression or statement; plain: neither. */
	readonly kind: 'rich' | 'mathematics' | 'plain';
	readonly text: string;
	/** staff: students never see it, such as an expression the key is computed from. */
	readonly seenBy: 'students' | 'staff';
}

/** Every text of an item in document order. */
export function textsOf(item: Item): readonly ItemText[] {
	const name: ItemText = { path: '/name', kind: 'plain', text: item.name, seenBy: 'staff' };
	if (item.kind !== 'set') return [name, ...blockTexts(item.stem, '/stem'), ...answerTexts(item)];
	const parts = item.parts.flatMap((part, index) =>
		textsOf(part).map((text) => ({ ...text, path: `/parts/${index}${text.path}` })),
	);
	return [name, ...blockTexts(item.stem, '/stem'), ...parts];
}

function blockTexts(blocks: readonly StemBlock[], path: string): readonly ItemText[] {
	return blocks.flatMap((block, index) => textsInBlock(block, `${path}/${index}`));
}

function textsInBlock(block: StemBlock, path: string): readonly ItemText[] {
	switch (block.kind) {
		case 'paragraph':
			return [rich(`${path}/text`, block.text)];
		case 'mathematics':
			return [mathematics(`${path}/math`, block.math)];
		case 'figure':
			return [];
		case 'table':
			return [
				...(block.caption === undefined ? [] : [rich(`${path}/caption`, block.caption)]),
				...block.header.map((text, column) => rich(`${path}/header/${column}`, text)),
				...block.rows.flatMap((row, at) => row.map((text, column) => rich(`${path}/rows/${at}/${column}`, text))),
			];
	}
}

function answerTexts(item: PartItem): readonly ItemText[] {
	switch (item.kind) {
		case 'gridded':
			return [hidden('/expression', item.expression), ...(item.unit === undefined ? [] : [plain('/unit', item.unit)])];
		case 'point':
			return [hidden('/expression', item.expression)];
		case 'order':
		case 'match':
			return entryTexts(item);
		case 'inline-choice':
			return [
				plain('/statement', item.statement),
				...item.choices.map(({ math }, index) => plain(`/choices/${index}/math`, math)),
			];
		case 'explanation':
			return item.rubric.flatMap(({ descriptor, sample }, index) => [
				staff(rich(`/rubric/${index}/descriptor`, descriptor)),
				...(sample === undefined ? [] : [staff(rich(`/rubric/${index}/sample`, sample))]),
			]);
		case 'choice':
		case 'multiple-choice':
			return [...entryTexts(item), ...ruleTexts(item)];
	}
}

function ruleTexts({ rule }: Extract<PartItem, { readonly kind: 'choice' | 'multiple-choice' }>): readonly ItemText[] {
	if ('expression' in rule) return [hidden('/rule/expression', rule.expression)];
	return rule.kind === 'stated' ? [staff(rich('/rule/reason', rule.reason))] : [];
}

function entryTexts(item: PartItem): readonly ItemText[] {
	return entryListsOf(item).flatMap(({ path: list, entries }) =>
		entries.flatMap(({ content }, index): readonly ItemText[] => {
			const path = `${list}/${index}/content`;
			switch (content.kind) {
				case 'mathematics':
					return [mathematics(`${path}/math`, content.math)];
				case 'text': {
					const worth = content.worth === undefined ? [] : [hidden(`${path}/worth`, content.worth)];
					return [rich(`${path}/text`, content.text), ...worth];
				}
				case 'figure':
					return [];
			}
		}),
	);
}

const rich = (path: string, text: string): ItemText => ({ path, kind: 'rich', text, seenBy: 'students' });
const plain = (path: string, text: string): ItemText => ({ path, kind: 'plain', text, seenBy: 'students' });
const mathematics = (path: string, text: string): ItemText => ({ path, kind: 'mathematics', text, seenBy: 'students' });
const hidden = (path: string, text: string): ItemText => ({ path, kind: 'mathematics', text, seenBy: 'staff' });
const staff = (text: ItemText): ItemText => ({ ...text, seenBy: 'staff' });
