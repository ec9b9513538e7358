import { css, html, LitElement, type TemplateResult } from 'lit';
import type { Lens } from '../board/board-state.ts';
import { words } from '../messages/words.ts';
import { controlStyles } from './control-styles.ts';

const lenses: readonly Lens[] = ['supply', 'plan', 'evidence'];

/** A line with three points, one for each way of reading the board. Fires lens-chosen with the {@link Lens}. */
export class ZpLens extends LitElement {
	static override properties = { lens: { type: String } };
	declare lens: Lens;

	constructor() {
		super();
		this.lens = 'supply';
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; }
			.points { display: flex; position: relative; width: max-content; max-width: 100%; }
			.points::before { content: ''; position: absolute; left: 60px; right: 60px; bottom: 9px; border-top: 1.5px solid var(--ink); }
			label { position: relative; width: 120px; text-align: center; padding-bottom: 20px; line-height: 24px; }
			.points input { position: absolute; left: 50%; bottom: 0; width: 20px; height: 20px; margin-left: -10px; appearance: none; border-radius: 50%; cursor: pointer; }
			.points input::before { content: ''; position: absolute; inset: 4px; border-radius: 50%; background: var(--paper); border: 2px solid var(--ink); }
			.points input:checked::before { inset: 3px; background: var(--ink); }
			label:has(:checked) { font-weight: 600; }
			label:hover { text-decoration: underline; text-underline-offset: 3px; }
			@media (max-width: 480px) { label { width: 104px; } .points::before { left: 52px; right: 52px; } }
			@media print { label:not(:has(:checked)) { opacity: 0.6; } }
		`,
	];

	private choose(lens: Lens): void {
		this.dispatchEvent(new CustomEvent('lens-chosen', { detail: lens, bubbles: true, composed: true }));
	}

	protected override render(): TemplateResult {
		return html`<fieldset>
			<legend class="spoken">${words.board.lens}</legend>
			<div class="points">
				${lenses.map(
					(lens) => html`<label>
						<input type="radio" name="lens" value=${lens} .checked=${this.lens === lens} @change=${() => this.choose(lens)} />
						${words.board.lenses[lens]}
					</label>`,
				)}
			</div>
		</fieldset>`;
	}
}

customElements.define('zp-lens', ZpLens);
