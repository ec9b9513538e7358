import { css, html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import { formsText } from '../../messages/forms.ts';
import { controlStyles } from '../control-styles.ts';

/** A sheet laid over the page: a heading, what is slotted, one way out. Opens when drawn; fires "dialog-closed". */
export class ZpDialog extends LitElement {
	static override properties = { heading: { type: String }, wide: { type: Boolean } };
	declare heading: string;
	declare wide: boolean;

	constructor() {
		super();
		Object.assign(this, { heading: '', wide: false });
	}

	static override styles = [
		controlStyles,
		css`
			dialog { border: 2px solid var(--ink); background: var(--paper); color: var(--ink); padding: 0; width: min(680px, calc(100vw - 28px)); max-height: calc(100dvh - 56px); }
			dialog.wide { width: min(960px, calc(100vw - 28px)); }
			dialog::backdrop { background: rgb(20 26 34 / 0.55); }
			header { display: flex; justify-content: space-between; gap: 14px; align-items: center; padding: 10px 21px; border-bottom: 1px solid var(--ink); position: sticky; top: 0; background: var(--paper); z-index: 1; }
			h2 { font-size: 18px; line-height: 24px; }
			.body { padding: 14px 21px 21px; }
			@media (max-width: 720px) { header, .body { padding-left: 14px; padding-right: 14px; } }
		`,
	];

	protected override firstUpdated(_changed: PropertyValues): void {
		this.renderRoot.querySelector('dialog')?.showModal();
	}

	protected override render(): TemplateResult {
		return html`<dialog class=${this.wide ? 'wide' : ''} aria-labelledby="heading" @close=${() => this.dispatchEvent(new Event('dialog-closed'))}>
			<header>
				<h2 id="heading">${this.heading}</h2>
				<button @click=${() => this.renderRoot.querySelector('dialog')?.close()}>${formsText.dialogClose}</button>
			</header>
			<div class="body"><slot></slot></div>
		</dialog>`;
	}
}

customElements.define('zp-dialog', ZpDialog);
