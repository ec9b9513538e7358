import { html, type TemplateResult } from 'lit';
import { deskWords as words } from '../../messages/item-desk.ts';

/** Where the regions of the desk stand one below the other: a way to each of them. */
export function renderJumps(root: ParentNode): TemplateResult {
	const jump = (region: string): void => {
		const section = root.querySelector<HTMLElement>(`section.${region}`);
		section?.focus({ preventScroll: true });
		section?.scrollIntoView({ block: 'start' });
	};
	return html`<nav class="jumps" aria-label=${words.jumps}>${Object.entries(words.regions).map(([region, name]) => html`<button class="plain" @click=${() => jump(region)}>${name}</button>`)}</nav>`;
}
