import { css, html, LitElement, type TemplateResult } from 'lit';
import { words } from '../messages/words.ts';

/** Says that something is being read or made, from 300 ms on: a mark going along a line, still where motion is unwelcome. */
export class ZpWait extends LitElement {
	static override properties = { label: { type: String }, isLong: { state: true } };
	declare label: string;
	declare private isLong: boolean;
	private timer = 0;

	constructor() {
		super();
		this.label = words.frame.reading;
		this.isLong = false;
	}

	static override styles = css`
		:host { display: block; min-height: 28px; color: var(--ink-soft); }
		.line { display: block; position: relative; width: 160px; height: 10px; border-bottom: 1px solid var(--rule); }
		.line::before { content: ''; position: absolute; bottom: -5px; left: 0; width: 9px; height: 9px; border-radius: 50%; background: var(--ink); animation: along 1.2s ease-in-out infinite alternate; }
		@keyframes along { to { left: 151px; } }
		@media (prefers-reduced-motion: reduce) { .line::before { animation: none; left: 76px; } }
	`;

	override connectedCallback(): void {
		super.connectedCallback();
		this.timer = window.setTimeout(() => {
			this.isLong = true;
		}, 300);
	}

	override disconnectedCallback(): void {
		clearTimeout(this.timer);
		this.isLong = false;
		super.disconnectedCallback();
	}

	protected override render(): TemplateResult {
		return html`<div aria-live="polite">${this.isLong ? html`${this.label}<span class="line"></span>` : ''}</div>`;
	}
}

customElements.define('zp-wait', ZpWait);
