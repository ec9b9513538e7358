import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { BlueprintEntry, BuildOrder, BuildResult, FormSummary } from '../../../item-bank/types.ts';
import { printAddress } from '../../address.ts';
import { ApiError, fetchForms } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { formsText } from '../../messages/forms.ts';
import { words } from '../../messages/words.ts';
import { controlStyles } from '../control-styles.ts';
import './zp-build-answer.ts';

const text = formsText.build;

/** Builds forms from a blueprint: what is wanted, the search with its progress and a way to stop it, and the answer. */
export class ZpFormBuilder extends LitElement {
	static override properties = {
		plan: { type: String },
		blueprints: { state: true },
		forms: { state: true },
		seconds: { state: true },
		isBusy: { state: true },
		result: { state: true },
		note: { state: true },
		failure: { state: true },
	};
	/** Id of the blueprint the address names; empty for none. */
	declare plan: string;
	declare private blueprints: readonly BlueprintEntry[] | undefined;
	declare private forms: readonly FormSummary[];
	declare private isBusy: boolean;
	/** How long the search has gone on. */
	declare private seconds: number;
	declare private result: BuildResult | undefined;
	declare private note: string | undefined;
	declare private failure: ApiError | undefined;
	/** The blueprint of the last search. */
	private asked = '';
	private order: BuildOrder | undefined;
	private running: AbortController | undefined;

	constructor() {
		super();
		Object.assign(this, { plan: '', forms: [], isBusy: false, seconds: 0 });
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; padding: 14px 28px 42px; max-width: 1100px; }
			h1 { font-size: 24px; line-height: 42px; }
			.up { font-size: 14px; }
			p { max-width: 44em; margin: 0 0 14px; }
			form { display: flex; flex-wrap: wrap; gap: 14px; align-items: end; border-top: 1px solid var(--rule); border-bottom: 1px solid var(--rule); padding: 10px 0 14px; margin-bottom: 14px; }
			form label { display: grid; color: var(--ink-soft); font-size: 14px; line-height: 21px; min-width: 0; }
			form input { width: 7em; }
			.track { width: 240px; height: 14px; display: block; }
			.track circle { animation: seek 1.6s ease-in-out infinite alternate; }
			@keyframes seek { from { transform: translateX(0); } to { transform: translateX(216px); } }
			@media (prefers-reduced-motion: reduce) { .track circle { animation: none; } }
			@media (max-width: 720px) { :host { padding: 14px; } }
		`,
	];

	override connectedCallback(): void {
		super.connectedCallback();
		void this.load();
	}

	override disconnectedCallback(): void {
		this.running?.abort();
		super.disconnectedCallback();
	}

	private async load(): Promise<void> {
		try {
			[this.blueprints, this.forms] = await Promise.all([callApi('GET /api/blueprints'), fetchForms()]);
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error;
		}
	}

	private async build(event: SubmitEvent): Promise<void> {
		event.preventDefault();
		if (this.isBusy) return;
		const fields = new FormData(event.target as HTMLFormElement);
		const [blueprint, seed, like] = ['blueprint', 'seed', 'like'].map((name) => String(fields.get(name) ?? '').trim());
		const order: BuildOrder = {
			blueprint: blueprint ?? '',
			count: Number(fields.get('count')),
			...(seed ? { seed } : {}),
			...(like ? { like } : {}),
		};
		await this.run(order);
	}

	/** Builds the last order once more, with the items it lacked made and everything kept. */
	private async buildWithMissing(): Promise<void> {
		if (this.isBusy || this.order === undefined) return;
		await this.run({ ...this.order, makeMissing: true, keep: true });
	}

	private async run(order: BuildOrder): Promise<void> {
		this.order = order;
		this.asked = order.blueprint ?? '';
		const running = new AbortController();
		this.running = running;
		Object.assign(this, { isBusy: true, seconds: 0, result: undefined, failure: undefined, note: undefined });
		const clock = setInterval(() => {
			this.seconds += 1;
		}, 1_000);
		try {
			this.result = await callApi('POST /api/forms/build', { body: order, signal: running.signal });
		} catch (error) {
			if (running.signal.aborted) this.note = text.cancelled;
			else if (error instanceof ApiError) this.failure = error;
			else throw error;
		} finally {
			clearInterval(clock);
			this.isBusy = false;
		}
		await this.updateComplete;
		this.renderRoot.querySelector<HTMLElement>('zp-build-answer')?.focus();
	}

	protected override render(): TemplateResult {
		return html`
			<a class="up" href=${printAddress('forms')}>${formsText.desk.forms}</a>
			<h1>${text.title}</h1>
			<p>${text.lead}</p>
			${this.blueprints === undefined ? nothing : this.blueprints.length === 0 ? html`<p>${text.noBlueprints}</p>` : this.renderOrder(this.blueprints)}
			<div role="status">${this.note ?? (this.isBusy ? this.renderProgress() : this.blueprints === undefined && !this.failure ? words.frame.reading : nothing)}</div>
			<div role="alert">${this.failure ? html`<div class="failure"><p>${this.failure.message}</p><ul>${this.failure.problems.map(({ message }) => html`<li>${message}</li>`)}</ul></div>` : nothing}</div>
			${this.result ? html`<zp-build-answer .result=${this.result} plan=${this.asked} tabindex="-1" @missing-asked=${() => void this.buildWithMissing()}></zp-build-answer>` : nothing}
		`;
	}

	private renderOrder(blueprints: readonly BlueprintEntry[]): TemplateResult {
		return html`<form @submit=${(event: SubmitEvent) => void this.build(event)}>
			<label>${text.blueprint}
				<select name="blueprint">${blueprints.map(({ id, blueprint }) => html`<option value=${id} ?selected=${id === this.plan}>${blueprint.title}</option>`)}</select></label>
			<label>${text.count}
				<select name="count">${text.countWords.map((name, index) => html`<option value=${index + 1} ?selected=${index === 1}>${name}</option>`)}</select></label>
			<label>${text.like}
				<select name="like"><option value="">${text.likeNone}</option>${this.forms.map(({ id, title }) => html`<option value=${id}>${title}</option>`)}</select></label>
			<label>${text.seed} (${text.seedMeaning}) <input name="seed" maxlength="60" value="1" /></label>
			<button class="primary" aria-disabled=${this.isBusy}>${text.submit}</button>
			${this.isBusy ? html`<button type="button" @click=${() => this.running?.abort()}>${text.cancel}</button>` : nothing}
		</form>`;
	}

	private renderProgress(): TemplateResult {
		return html`<svg class="track" viewBox="0 0 240 14" aria-hidden="true"><path d="M4 7H236M12 4v6M120 4v6M228 4v6" stroke="var(--rule)" fill="none" /><circle cx="12" cy="7" r="4" fill="var(--ink)" /></svg>
			<span>${text.working(this.seconds)}</span>`;
	}
}

customElements.define('zp-form-builder', ZpFormBuilder);
