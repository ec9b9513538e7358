import type { Item } from '../types.ts';
import { textsOf } from './texts.ts';

/** The words a search looks through: name, what students read, and tags. Backticks are dropped and minus signs stay as typed. */
export function searchableText(item: Item): string {
	const shown = textsOf(item).filter(({ seenBy, path }) => seenBy === 'students' || path === '/name');
	const words = [...shown.map(({ text }) => text), ...(item.tags ?? [])];
	return words.join(' ').replaceAll('`', '').replace(/\s+/g, ' ').trim();
}
