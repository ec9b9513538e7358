import type { TemplateResult } from 'lit';
import { css, html } from 'lit';
import type { ItemEntry, StemBlock } from '../../item-bank/types.ts';
import { words } from '../messages/words.ts';
import { renderMathematics, renderRichText } from './rich-text.ts';

/** The words a student reads first in an item, as on paper; its name where there are none. Tells no key. */
export function renderFirstWords({ item }: Pick<ItemEntry, 'item'>): TemplateResult {
	const block = item.stem.find((each): each is Extract<StemBlock, { kind: 'paragraph' | 'mathematics' }> =>
		['paragraph', 'mathematics'].includes(each.kind),
	);
	if (!block) return html`${item.name}`;
	return block.kind === 'paragraph' ? html`${renderRichText(block.text)}` : renderMathematics(block.math);
}

/** Kind, DOK, points, and the status where it is not approved. */
export function describeItem({ item, status }: ItemEntry): string {
	return words.drawer.facts(words.kinds[item.kind], item.dok, item.points, words.statuses[status]);
}

/** How a list of items looks: what students read in serif, what the bank says in sans below. */
export const itemLineStyles = css`
	.items { list-style: none; margin: 0; padding: 0; }
	.items > li { border-bottom: 1px solid var(--paper-line); padding: 7px 0; }
	.name { display: inline-block; line-height: 24px; text-decoration-color: var(--rule); }
	.name:hover { text-decoration-color: currentColor; }
	.words { font: 400 16px/23px var(--serif); color: var(--ink-soft); margin: 0; display: -webkit-box; -webkit-box-orient: vertical; -webkit-line-clamp: 2; overflow: hidden; }
	.words .math { white-space: nowrap; }
	.facts { font-size: 14px; line-height: 21px; color: var(--ink-soft); margin: 0; display: flex; flex-wrap: wrap; gap: 0 14px; align-items: baseline; }
	.facts button { min-height: 28px; font-size: 14px; line-height: 20px; }
	.facts .taken { border-color: transparent; background: transparent; font-weight: 400; color: var(--ink-soft); cursor: default; padding: 3px 0; }
	@media (pointer: coarse) { .name { padding: 10px 0; } .facts button { min-height: 44px; } }
`;
