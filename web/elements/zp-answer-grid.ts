import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { columnCount, columnSymbols } from '../../item-bank/responses/grid.ts';
import { findGridProfile } from '../../item-bank/responses/grid-profiles.ts';

/** An empty signed answer grid as it stands on paper: a box on top of each column, then the symbols the column offers. */
export class ZpAnswerGrid extends LitElement {
	static override properties = { profile: { type: String }, unit: { type: String } };
	declare profile: string;
	declare unit: string | undefined;

	static override styles = css`
		:host { display: inline-flex; gap: 12px; align-items: flex-start; font: 400 13px/1 var(--serif); }
		.grid { display: inline-flex; gap: 4px; border: 1px solid var(--ink); padding: 6px; background: var(--sheet); }
		.column { display: flex; flex-direction: column; gap: 3px; align-items: center; }
		.box { width: 24px; height: 26px; border: 1.5px solid var(--ink); margin-bottom: 3px; }
		.mark { width: 20px; height: 20px; border: 1px solid var(--ink-soft); border-radius: 50%; display: grid; place-items: center; }
		.unit { font-size: 18px; line-height: 28px; padding-top: 4px; }
		.spoken { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
	`;

	protected override render(): TemplateResult | typeof nothing {
		const profile = findGridProfile(this.profile);
		if (!profile) return nothing;
		const columns = Array.from({ length: columnCount(profile) }, (_unused, column) => columnSymbols(profile, column));
		const sign = { none: '', first: 'a sign column and ', floating: 'room for a sign and ' }[profile.signColumn];
		return html`
			<div class="grid" aria-hidden="true">
				${columns.map(
					(symbols) =>
						html`<div class="column"><div class="box"></div>${symbols.map((symbol) => html`<div class="mark">${symbol.replace('-', '−')}</div>`)}</div>`,
				)}
			</div>
			${this.unit ? html`<span class="unit">${this.unit}</span>` : nothing}
			<span class="spoken">Answer grid with ${sign}${profile.digitColumns} digit columns.</span>
		`;
	}
}

customElements.define('zp-answer-grid', ZpAnswerGrid);
