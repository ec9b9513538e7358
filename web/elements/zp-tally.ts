import { css, html, LitElement, type TemplateResult } from 'lit';
import { words } from '../messages/words.ts';
import { renderTally } from './marks.ts';

/** A count as tally strokes in fives up to 25, then as a figure; read aloud as the number. */
export class ZpTally extends LitElement {
	static override properties = { count: { type: Number } };
	declare count: number;

	constructor() {
		super();
		this.count = 0;
	}

	static override styles = css`
		:host { display: inline-block; vertical-align: middle; color: var(--ink-soft); font-variant-numeric: tabular-nums; }
		svg { display: block; }
		.spoken { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
	`;

	protected override render(): TemplateResult {
		return html`${renderTally(this.count)}<span class="spoken">${words.figure(this.count)}</span>`;
	}
}

customElements.define('zp-tally', ZpTally);
