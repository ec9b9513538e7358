import { html, type TemplateResult } from 'lit';

/** An arrow up or down. Hidden from screen readers: name the button. */
export function arrow(step: -1 | 1): TemplateResult {
	const path = step === -1 ? 'M7 12V3M3 6.5L7 2.5L11 6.5' : 'M7 2v9M3 7.5L7 11.5L11 7.5';
	return html`<svg viewBox="0 0 14 14" aria-hidden="true"><path d=${path} /></svg>`;
}

/** A struck-out mark. Hidden from screen readers. */
export const strike: TemplateResult = html`<svg viewBox="0 0 14 14" aria-hidden="true"><path d="M3 3L11 11M11 3L3 11" /></svg>`;

/** Where a row can be taken hold of. Hidden from screen readers. */
export const grip: TemplateResult = html`<svg viewBox="0 0 8 14" aria-hidden="true">
	<path d="M1 3H7M1 7H7M1 11H7" stroke="currentColor" stroke-width="1.5" />
</svg>`;
