import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { FormGiving, GroupEntry } from '../../../item-bank/types.ts';
import { ApiError, fetchGroups } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { formsText } from '../../messages/forms.ts';
import { words } from '../../messages/words.ts';
import { tell } from '../../tell.ts';
import { controlStyles } from '../control-styles.ts';

const text = formsText.give;

/** How long a giving waits before it is recorded, since the bank takes none back, in milliseconds. */
const graceTime = 8_000;

/** Records that a class gets a form on a day; for some seconds it can be taken back. Fires "form-given" once it is recorded. */
export class ZpGivePanel extends LitElement {
	static override properties = {
		form: { type: String },
		version: { type: Number },
		groups: { state: true },
		failure: { state: true },
		fault: { state: true },
	};
	declare form: string;
	declare version: number;
	declare private groups: readonly GroupEntry[] | undefined;
	declare private failure: string | undefined;
	/** The field that is not filled in. */
	declare private fault: 'group' | 'date' | undefined;

	static override styles = [
		controlStyles,
		css`
			:host { display: block; }
			form { display: flex; flex-wrap: wrap; gap: 14px; align-items: end; }
			label { display: grid; color: var(--ink-soft); font-size: 14px; line-height: 21px; }
			.fault { color: var(--pencil); font-size: 14px; }
			input[type='date'] { font: inherit; color: var(--ink); background: var(--sheet); border: 1px solid var(--paper-line); border-bottom: 2px solid var(--rule); min-height: 32px; padding: 3px 8px; }
			p { margin: 0 0 10px; }
		`,
	];

	override connectedCallback(): void {
		super.connectedCallback();
		void this.load();
	}

	private async load(): Promise<void> {
		try {
			this.groups = await fetchGroups();
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		}
	}

	protected override render(): TemplateResult {
		const { groups } = this;
		if (this.failure !== undefined) return html`<p class="failure" role="alert">${this.failure}</p>`;
		if (!groups) return html`<p role="status">${words.frame.reading}</p>`;
		if (groups.length === 0) return html`<p>${text.noGroups}</p>`;
		return html`
			<p>${text.lead}</p>
			<form novalidate @submit=${(event: SubmitEvent) => this.submit(event)}>
				<label>${text.group}
					<select name="group" aria-invalid=${this.fault === 'group'} aria-describedby="fault">
						<option value="">–</option>
						${groups.map(({ id, group }) => html`<option value=${id}>${group.name}</option>`)}
					</select>
					${this.fault === 'group' ? html`<span class="fault" id="fault">${text.pick}</span>` : nothing}
				</label>
				<label>${text.date}
					<input type="date" name="date" .value=${today()} aria-invalid=${this.fault === 'date'} aria-describedby="fault" />
					${this.fault === 'date' ? html`<span class="fault" id="fault">${text.day}</span>` : nothing}
				</label>
				<button class="primary">${text.submit}</button>
			</form>
		`;
	}

	private submit(event: SubmitEvent): void {
		event.preventDefault();
		const fields = new FormData(event.target as HTMLFormElement);
		const group = this.groups?.find(({ id }) => id === fields.get('group'));
		const date = String(fields.get('date') ?? '');
		this.fault = !group ? 'group' : date === '' ? 'date' : undefined;
		if (!group || date === '') {
			void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
			return;
		}
		holdGiving(this.form, { version: this.version, group: group.id, date }, group.group.name);
		this.dispatchEvent(new Event('form-given'));
	}
}

/** Waits before recording, so that a slip can be taken back; leaving the page records at once. */
function holdGiving(form: string, giving: FormGiving, name: string): void {
	let isOver = false;
	const record = async (): Promise<void> => {
		if (isOver) return;
		isOver = true;
		clearTimeout(timer);
		try {
			await callApi('POST /api/forms/{id}/give', { path: { id: form }, body: giving });
			tell(text.told(name, giving.date));
			window.dispatchEvent(new Event('zp-form-given'));
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			tell(error.message);
		}
	};
	const leave = (): void => {
		if (isOver) return;
		isOver = true;
		const body = JSON.stringify(giving);
		void fetch(`/api/forms/${form}/give`, {
			method: 'POST',
			headers: { 'content-type': 'application/json' },
			body,
			keepalive: true,
		});
	};
	const timer = setTimeout(() => void record(), graceTime);
	window.addEventListener('pagehide', leave, { once: true });
	tell(text.held(name, giving.date), async () => {
		if (isOver) throw new Error(text.told(name, giving.date));
		isOver = true;
		clearTimeout(timer);
	});
}

/** The day it is here, YYYY-MM-DD. */
function today(): string {
	const now = new Date();
	return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}

customElements.define('zp-give-panel', ZpGivePanel);
