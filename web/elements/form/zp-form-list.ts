import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { FormSummary } from '../../../item-bank/types.ts';
import { printAddress } from '../../address.ts';
import { ApiError, bankFoundEvent, fetchForms } from '../../api-client.ts';
import { type Draft, dropDraft, listDrafts, writeDraft } from '../../forms/draft-storage.ts';
import { formsText } from '../../messages/forms.ts';
import { words } from '../../messages/words.ts';
import { tell } from '../../tell.ts';
import { controlStyles } from '../control-styles.ts';
import '../zp-tally.ts';

const text = formsText.list;

/** Every form of the bank and the unsaved work of this browser, and the three ways to a form. */
export class ZpFormList extends LitElement {
	static override properties = { forms: { state: true }, drafts: { state: true }, failure: { state: true } };
	declare private forms: readonly FormSummary[] | undefined;
	declare private drafts: ReadonlyMap<string, Draft>;
	declare private failure: string | undefined;
	private readonly load = (): void => void this.read();

	constructor() {
		super();
		this.drafts = new Map();
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; padding: 14px 28px 42px; max-width: 1200px; }
			h1 { font-size: 24px; line-height: 42px; }
			p { margin: 0 0 14px; max-width: 44em; }
			.ways { display: flex; flex-wrap: wrap; gap: 8px; margin-bottom: 21px; }
			table { border-collapse: collapse; width: 100%; }
			th { text-align: left; font-weight: 600; font-size: 14px; border-bottom: 2px solid var(--ink); padding: 2px 8px; }
			td { border-bottom: 1px solid var(--paper-line); padding: 2px 8px; line-height: 28px; vertical-align: middle; }
			th:first-child, td:first-child { padding-left: 0; }
			.number { white-space: nowrap; }
			.number zp-tally { margin-right: 6px; }
			.unsaved { color: var(--pencil); font-weight: 600; }
			@media (max-width: 720px) {
				:host { padding: 14px; }
				thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
				tr { display: flex; flex-wrap: wrap; gap: 0 14px; border-bottom: 1px solid var(--paper-line); padding: 7px 0; }
				td { border: 0; padding: 0; }
				td:first-child { flex: 1 0 100%; }
				td:first-child a { display: inline-block; min-height: 32px; }
			}
		`,
	];

	override connectedCallback(): void {
		super.connectedCallback();
		window.addEventListener(bankFoundEvent, this.load);
		void this.read();
	}

	override disconnectedCallback(): void {
		window.removeEventListener(bankFoundEvent, this.load);
		super.disconnectedCallback();
	}

	private async read(): Promise<void> {
		const drafts = listDrafts(localStorage);
		for (const { id, draft } of drafts) if (isBlank(draft)) dropDraft(localStorage, id);
		this.drafts = new Map(drafts.filter(({ draft }) => !isBlank(draft)).map(({ id, draft }) => [id, draft]));
		try {
			this.forms = await fetchForms();
			this.failure = undefined;
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		}
	}

	protected override render(): TemplateResult {
		return html`
			<h1>${text.title}</h1>
			<p class="soft">${text.lead}</p>
			<div class="ways">
				<a class="button primary" href=${printAddress('forms', {}, 'new')}>${text.create}</a>
				<a class="button" href=${printAddress('forms', { view: 'build' })}>${text.build}</a>
				<a class="button" href=${printAddress('forms', { view: 'compare' })}>${text.compare}</a>
			</div>
			<div role="alert">${this.failure === undefined ? nothing : html`<p class="failure">${this.failure}</p>`}</div>
			${this.forms === undefined ? (this.failure === undefined ? html`<p role="status">${words.frame.reading}</p>` : nothing) : this.renderForms(this.forms)}
		`;
	}

	private renderForms(forms: readonly FormSummary[]): TemplateResult {
		const known = new Set(forms.map(({ id }) => id));
		const fresh = [...this.drafts].filter(([id]) => !known.has(id));
		if (forms.length + fresh.length === 0) return html`<h2>${text.emptyTitle}</h2><p>${text.empty}</p>`;
		const { form, items, version, given, state } = text.head;
		return html`<table>
			<thead><tr>${[form, items, version, given, state].map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>
			<tbody>
				${fresh.map(([id, draft]) => this.renderFresh(id, draft))}
				${forms.map((summary) => this.renderForm(summary))}
			</tbody>
		</table>`;
	}

	private renderForm({ id, title, items, version, givings }: FormSummary): TemplateResult {
		const draft = this.drafts.get(id);
		return html`<tr>
			<td><a href=${printAddress('forms', {}, id)}>${title}</a></td>
			<td class="number"><zp-tally .count=${items}></zp-tally>${words.items(items)}</td>
			<td class="number">${text.head.version.toLowerCase()} ${version}</td>
			<td class="number">${text.givenWords(givings)}</td>
			<td>${draft ? html`<span class="unsaved">${text.unsaved}</span> ${this.renderDiscard(id, draft)}` : nothing}</td>
		</tr>`;
	}

	private renderFresh(id: string, draft: Draft): TemplateResult {
		const items = draft.form.sections.reduce((sum, section) => sum + section.items.length, 0);
		return html`<tr>
			<td><a href=${printAddress('forms', {}, id)}>${draft.form.title || text.untitled}</a></td>
			<td class="number"><zp-tally .count=${items}></zp-tally>${words.items(items)}</td>
			<td></td><td></td>
			<td><span class="unsaved">${text.onlyHere}</span> ${this.renderDiscard(id, draft)}</td>
		</tr>`;
	}

	private renderDiscard(id: string, draft: Draft): TemplateResult {
		const title = draft.form.title || text.untitled;
		return html`<button class="plain" aria-label="${text.discard}: ${title}" @click=${() => this.discard(id, draft)}>${text.discard}</button>`;
	}

	private discard(id: string, draft: Draft): void {
		dropDraft(localStorage, id);
		void this.read().then(() => this.renderRoot.querySelector<HTMLElement>('.ways a')?.focus());
		tell(text.discarded(draft.form.title || text.untitled), async () => {
			writeDraft(localStorage, id, draft);
			await this.read();
		});
	}
}

/** Whether a new form was begun and left as it was. */
function isBlank({ baseVersion, form }: Draft): boolean {
	return baseVersion === 0 && form.title === '' && form.sections.every(({ items }) => items.length === 0);
}

customElements.define('zp-form-list', ZpFormList);
