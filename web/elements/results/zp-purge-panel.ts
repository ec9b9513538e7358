import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { PurgeOrder, PurgeReport } from '../../../item-bank/types.ts';
import { ApiError, bankChangedEvent } from '../../api-client.ts';
import { studentText as text } from '../../messages/student.ts';
import { controlStyles } from '../control-styles.ts';
import '../zp-wait.ts';
import { resultsStyles } from './results-styles.ts';

/** Deletes something for good once its name has been typed, and says where it was found. Fires "purged". */
export class ZpPurgePanel extends LitElement {
	static override properties = {
		what: {},
		lead: {},
		purge: { attribute: false },
		report: { state: true },
		fault: { state: true },
		failure: { state: true },
		isBusy: { state: true },
	};
	/** What is to be typed: a student code or the id of a sitting. */
	declare what: string;
	/** What would be deleted. */
	declare lead: string;
	declare purge: (order: PurgeOrder) => Promise<PurgeReport>;
	declare private report: PurgeReport | undefined;
	declare private fault: string | undefined;
	declare private failure: string | undefined;
	declare private isBusy: boolean;

	static override styles = [
		controlStyles,
		resultsStyles,
		css`
			:host { padding: 7px 0 0; margin-top: 21px; border-top: 1px solid var(--paper-line); }
			summary { font-weight: 600; min-height: 28px; }
			form { display: grid; gap: 7px; justify-items: start; }
			label { display: grid; color: var(--ink-soft); font-size: 14px; line-height: 21px; }
			textarea { width: 46ch; max-width: 100%; }
			td { overflow-wrap: anywhere; }
		`,
	];

	private async submit(event: SubmitEvent): Promise<void> {
		event.preventDefault();
		const fields = new FormData(event.target as HTMLFormElement);
		const confirm = String(fields.get('confirm') ?? '').trim();
		this.fault = confirm === this.what ? undefined : text.mismatch(this.what, confirm);
		if (this.fault !== undefined) {
			await this.updateComplete;
			this.renderRoot.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
			return;
		}
		const backups = String(fields.get('backups') ?? '')
			.split('\n')
			.map((line) => line.trim())
			.filter((line) => line !== '');
		this.isBusy = true;
		this.failure = undefined;
		try {
			this.report = await this.purge({ confirm, ...(backups.length > 0 ? { backups } : {}) });
			window.dispatchEvent(new Event(bankChangedEvent));
			this.dispatchEvent(new Event('purged'));
			await this.updateComplete;
			this.renderRoot.querySelector<HTMLElement>('.done')?.focus();
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		} finally {
			this.isBusy = false;
		}
	}

	protected override render(): TemplateResult {
		return this.report
			? renderReport(this.report)
			: html`<details>
			<summary>${text.purge}</summary>
			<p>${this.lead}</p>
			<form novalidate @submit=${(event: SubmitEvent) => void this.submit(event)}>
				<label>${text.confirm(this.what)}
					<input type="text" name="confirm" autocomplete="off" aria-invalid=${this.fault !== undefined} aria-describedby="confirm-fault" />
				</label>
				<p class="fault" id="confirm-fault">${this.fault ?? ''}</p>
				<label>${text.backups}<textarea name="backups" rows="2"></textarea></label>
				<button aria-disabled=${this.isBusy}>${text.doPurge(this.what)}</button>
			</form>
			${this.isBusy ? html`<zp-wait label=${text.purging}></zp-wait>` : nothing}
			${this.failure === undefined ? nothing : html`<p class="failure" role="alert">${this.failure}</p>`}
		</details>`;
	}
}

function renderReport({ answers, places }: PurgeReport): TemplateResult {
	return html`<div class="done" tabindex="-1">
		<p><strong>${text.purged(answers)}</strong></p>
		<table>
			<caption class="spoken">${text.places}</caption>
			<thead><tr><th scope="col">${text.file}</th><th scope="col">${text.found}</th></tr></thead>
			<tbody>${places.map(({ file, found, why }) => html`<tr><th scope="row">${file}</th><td class=${found === 'refused' ? 'short' : ''}>${text.foundIs[found] ?? found}${why === undefined ? nothing : html`: ${why}`}</td></tr>`)}</tbody>
		</table>
	</div>`;
}

customElements.define('zp-purge-panel', ZpPurgePanel);
