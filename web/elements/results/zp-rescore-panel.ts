import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { RescoringReport, SittingEntry } from '../../../item-bank/types.ts';
import { ApiError, bankChangedEvent } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { rescoringText as text } from '../../messages/rescoring.ts';
import { controlStyles } from '../control-styles.ts';
import '../zp-wait.ts';
import { resultsStyles } from './results-styles.ts';

/** Scores a sitting anew by the keys of another version of its form, and says what that changed. */
export class ZpRescorePanel extends LitElement {
	static override properties = {
		entry: { attribute: false },
		newest: { type: Number },
		report: { state: true },
		fault: { state: true },
		failure: { state: true },
		isBusy: { state: true },
	};
	declare entry: SittingEntry | undefined;
	/** Newest version of the form. */
	declare newest: number;
	declare private report: RescoringReport | undefined;
	declare private fault: string | undefined;
	declare private failure: string | undefined;
	declare private isBusy: boolean;

	constructor() {
		super();
		this.newest = 1;
		this.isBusy = false;
	}

	static override styles = [
		controlStyles,
		resultsStyles,
		css`
			:host { padding: 7px 0 0; margin-top: 21px; border-top: 1px solid var(--paper-line); }
			summary { font-weight: 600; min-height: 28px; }
			form { display: grid; gap: 7px; justify-items: start; }
			label { display: grid; color: var(--ink-soft); font-size: 14px; line-height: 21px; }
			input { width: 46ch; max-width: 100%; }
		`,
	];

	private async submit(event: SubmitEvent): Promise<void> {
		event.preventDefault();
		const { entry } = this;
		const fields = new FormData(event.target as HTMLFormElement);
		const why = String(fields.get('why') ?? '').trim();
		this.fault = why === '' ? text.noReason : undefined;
		if (!entry || this.fault !== undefined) {
			this.renderRoot.querySelector<HTMLElement>('input')?.focus();
			return;
		}
		this.isBusy = true;
		this.failure = undefined;
		try {
			const body = { version: Number(fields.get('version')), why };
			this.report = await callApi('POST /api/sittings/{id}/rescore', { path: { id: entry.id }, body });
			window.dispatchEvent(new Event(bankChangedEvent));
			this.dispatchEvent(new Event('rescored'));
			await this.updateComplete;
			this.renderRoot.querySelector<HTMLElement>('.done')?.focus();
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		} finally {
			this.isBusy = false;
		}
	}

	protected override render(): TemplateResult | typeof nothing {
		const { entry } = this;
		if (!entry) return nothing;
		const versions = Array.from({ length: this.newest }, (_, index) => this.newest - index);
		return html`<details><summary>${text.title}</summary>
			<p>${text.lead(entry.scoring, entry.scoredAs)}</p>
			<form novalidate @submit=${(event: SubmitEvent) => void this.submit(event)}>
				<label>${text.version}<select name="version">${versions.map((version) => html`<option value=${version}>${text.versionName(version, version === entry.scoredAs)}</option>`)}</select></label>
				<label>${text.why}<input type="text" name="why" maxlength="200" aria-describedby="why-help" aria-invalid=${this.fault === undefined ? 'false' : 'true'}></label>
				<p id="why-help" class=${this.fault === undefined ? 'soft' : 'short'}>${this.fault ?? text.whyHelp}</p>
				<button ?disabled=${this.isBusy}>${text.submit}</button>
				${this.isBusy ? html`<zp-wait></zp-wait>` : nothing}
			</form>
			${this.failure === undefined ? nothing : html`<p class="failure" role="alert">${this.failure}</p>`}
			${this.report ? renderChanges(this.report) : nothing}
		</details>`;
	}
}

function renderChanges({ changed, kept }: RescoringReport): TemplateResult {
	return html`<div class="done" tabindex="-1"><p>${text.changed(changed.length, kept)}</p>
		${
			changed.length === 0
				? nothing
				: html`<div class="wide" tabindex="0" role="region" aria-label=${text.table}><table>
			<thead><tr><th scope="col">${text.student}</th><th scope="col">${text.place}</th><th scope="col">${text.before}</th><th scope="col">${text.after}</th></tr></thead>
			<tbody>${changed.map(
				({ code, position, part, before, after }) =>
					html`<tr><th scope="row">${code}</th><td>${part === undefined ? position : `${position}.${part}`}</td><td>${text.points(before.points, before.maximum)}</td><td>${text.points(after.points, after.maximum)}</td></tr>`,
			)}</tbody></table></div>`
		}</div>`;
}

customElements.define('zp-rescore-panel', ZpRescorePanel);
