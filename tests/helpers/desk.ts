import type { Locator } from 'playwright-core';
import type { Item } from '../../item-bank/types.ts';

/** Keeps an item under an id in a bank that is served. */
export async function keepItem(url: string, id: string, item: Item): Promise<void> {
	const headers = { 'content-type': 'application/json' };
	const answer = await fetch(`${url}api/items`, { method: 'POST', headers, body: JSON.stringify({ id, item }) });
	if (!answer.ok) throw new Error(await answer.text());
}

/** Everything an element says, shadow roots included. */
export function readText(locator: Locator): Promise<string> {
	return locator.first().evaluate((element) => {
		const textOf = (node: Node): string => {
			if (node instanceof Text) return node.data;
			if (node instanceof HTMLStyleElement) return '';
			const inner = node instanceof Element && node.shadowRoot ? node.shadowRoot : node;
			return [...inner.childNodes].map(textOf).join('');
		};
		return textOf(element).replace(/\s+/g, ' ');
	});
}
