import { html, type TemplateResult } from 'lit';
import { deskWords as words } from '../../messages/item-desk.ts';
import { renderRichText } from '../rich-text.ts';

/** One side of a difference, a line each; lines the other side does not have stand out. */
export function renderSide(lines: readonly string[], other: readonly string[]): TemplateResult {
	if (lines.length === 0) return html`<span class="soft">${words.absent}</span>`;
	return html`<ul class="side">${lines.map((line) => html`<li class=${other.includes(line) ? 'same' : 'differs'}>${renderRichText(line)}</li>`)}</ul>`;
}

/** What a field of an item is called. */
export function nameField(field: string): string {
	return words.fieldNames[field] ?? field;
}
