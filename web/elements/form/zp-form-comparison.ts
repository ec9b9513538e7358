import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import type { BalanceReport, FormSummary } from '../../../item-bank/types.ts';
import { goTo, printAddress } from '../../address.ts';
import { ApiError, fetchForms } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { formsText } from '../../messages/forms.ts';
import { words } from '../../messages/words.ts';
import { controlStyles } from '../control-styles.ts';
import './zp-balance-table.ts';

const text = formsText.compare;

/** Two forms beside each other; which ones stands in the address. */
export class ZpFormComparison extends LitElement {
	static override properties = {
		first: { type: String },
		second: { type: String },
		forms: { state: true },
		report: { state: true },
		failure: { state: true },
	};
	declare first: string;
	declare second: string;
	declare private forms: readonly FormSummary[] | undefined;
	declare private report: BalanceReport | undefined;
	declare private failure: string | undefined;

	static override styles = [
		controlStyles,
		css`
			:host { display: block; padding: 14px 28px 42px; max-width: 1100px; }
			h1 { font-size: 24px; line-height: 42px; }
			.up { font-size: 14px; }
			.choice { display: flex; flex-wrap: wrap; gap: 14px; margin-bottom: 14px; }
			.choice label { display: grid; color: var(--ink-soft); font-size: 14px; line-height: 21px; min-width: 0; }
			@media (max-width: 720px) { :host { padding: 14px; } }
		`,
	];

	override connectedCallback(): void {
		super.connectedCallback();
		void this.attempt(async () => {
			this.forms = await fetchForms();
		});
	}

	protected override willUpdate(changed: PropertyValues): void {
		if (!changed.has('first') && !changed.has('second')) return;
		const { first, second } = this;
		this.report = undefined;
		this.failure = undefined;
		if (first === '' || second === '') return;
		void this.attempt(async () => {
			const report = await callApi('GET /api/forms/compare', { query: { first, second } });
			if (first === this.first && second === this.second) this.report = report;
		});
	}

	private async attempt(work: () => Promise<void>): Promise<void> {
		try {
			await work();
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		}
	}

	protected override render(): TemplateResult {
		const isBusy = this.first !== '' && this.second !== '' && !this.report && this.failure === undefined;
		return html`
			<a class="up" href=${printAddress('forms')}>${formsText.desk.forms}</a>
			<h1>${text.title}</h1>
			${
				this.forms && this.forms.length < 2
					? html`<p>${text.needTwo}</p>`
					: html`<div class="choice">${this.renderChoice('first', text.first)} ${this.renderChoice('second', text.second)}</div>`
			}
			<div role="alert">${this.failure === undefined ? nothing : html`<p class="failure">${this.failure}</p>`}</div>
			<div role="status">${isBusy ? text.reading : this.forms === undefined ? words.frame.reading : nothing}</div>
			${this.report ? html`<zp-balance-table .report=${this.report}></zp-balance-table>` : html`<p>${text.choose}</p>`}
		`;
	}

	private renderChoice(side: 'first' | 'second', label: string): TemplateResult {
		const chosen = this[side];
		const choose = (event: Event): void => {
			const id = event.target instanceof HTMLSelectElement ? event.target.value : '';
			goTo(printAddress('forms', { view: 'compare', first: this.first, second: this.second, [side]: id }));
		};
		return html`<label>${label}
			<select @change=${choose}>
				<option value="" ?selected=${chosen === ''}>–</option>
				${(this.forms ?? []).map(({ id, title }) => html`<option value=${id} ?selected=${id === chosen}>${title}</option>`)}
			</select>
		</label>`;
	}
}

customElements.define('zp-form-comparison', ZpFormComparison);
