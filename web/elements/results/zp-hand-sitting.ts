import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { FormSummary, GroupEntry } from '../../../item-bank/types.ts';
import { goTo, printAddress } from '../../address.ts';
import { ApiError } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { sittingText } from '../../messages/sittings.ts';
import { controlStyles } from '../control-styles.ts';

/** Starts a sitting whose responses are typed by hand. */
export class ZpHandSitting extends LitElement {
	static override properties = {
		forms: { attribute: false },
		groups: { attribute: false },
		failure: { state: true },
		isBusy: { state: true },
	};
	declare forms: readonly FormSummary[];
	declare groups: readonly GroupEntry[];
	declare private failure: string | undefined;
	declare private isBusy: boolean;

	constructor() {
		super();
		this.forms = [];
		this.groups = [];
		this.isBusy = false;
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; margin-top: 28px; max-width: 900px; }
			h3 { font-size: 17px; line-height: 28px; border-bottom: 1px solid var(--rule); margin-bottom: 7px; }
			form { display: flex; flex-wrap: wrap; gap: 14px; align-items: end; }
			label { display: grid; gap: 3px; font-weight: 600; min-width: 0; }
			input[type='date'] { font: 400 16px/24px var(--sans); color: var(--ink); background: var(--sheet); border: 1px solid var(--paper-line); border-bottom: 2px solid var(--rule); padding: 3px 8px; min-height: 32px; }
			p { margin: 0 0 7px; }
			.failure { margin-top: 7px; }
		`,
	];

	protected override render(): TemplateResult {
		const text = sittingText.byHand;
		const missing = this.forms.length === 0 ? text.noForms : this.groups.length === 0 ? text.noGroups : undefined;
		return html`<h3>${text.title}</h3>
			${
				missing === undefined
					? html`<p class="soft">${text.advice}</p>
			<form @submit=${(event: SubmitEvent) => this.start(event)}>
				<label>${text.form}<select name="form">${this.forms.map(({ id, title }) => html`<option value=${id}>${title}</option>`)}</select></label>
				<label>${text.group}<select name="group">${this.groups.map(({ id, group }) => html`<option value=${id}>${group.name}</option>`)}</select></label>
				<label>${text.date}<input type="date" name="date" required .value=${today()}></label>
				<button class="primary" ?disabled=${this.isBusy}>${text.start}</button>
			</form>`
					: html`<p>${missing}</p>`
			}
			${this.failure === undefined ? nothing : html`<p class="failure" role="alert">${this.failure}</p>`}`;
	}

	private start(event: SubmitEvent): void {
		event.preventDefault();
		if (!(event.target instanceof HTMLFormElement)) return;
		const fields = new FormData(event.target);
		const read = (name: string): string => String(fields.get(name) ?? '');
		void this.add(read('form'), read('group'), read('date'));
	}

	private async add(form: string, group: string, date: string): Promise<void> {
		if (!/^\d{4}-\d\d-\d\d$/.test(date)) {
			this.failure = sittingText.byHand.dateProblem;
			return;
		}
		this.isBusy = true;
		this.failure = undefined;
		try {
			const version = this.forms.find(({ id }) => id === form)?.version ?? 1;
			const body = { sitting: { form, version, group, date, mode: 'hand' } } as const;
			const { id } = await callApi('POST /api/sittings', { body });
			goTo(printAddress('sittings', {}, id));
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		} finally {
			this.isBusy = false;
		}
	}
}

/** The local calendar day. */
function today(): string {
	const now = new Date();
	return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}

customElements.define('zp-hand-sitting', ZpHandSitting);
