import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { findFramework, findStandard } from '../../../item-bank/standards/code.ts';
import type { KindName, ModelType } from '../../../item-bank/types.ts';
import { printAddress } from '../../address.ts';
import type { Beginning } from '../../item-draft/fresh-item.ts';
import { listDrafts } from '../../item-draft/keep-draft.ts';
import { deskWords as words } from '../../messages/item-desk.ts';
import { words as shared } from '../../messages/words.ts';
import { controlStyles } from '../control-styles.ts';
import { alignTo, frameworkNames } from './about-fields.ts';

/** Begins a new item: how it is answered and for which cell of the board. Fires start-chosen with the {@link Beginning}. */
export class ZpItemStart extends LitElement {
	static override properties = {
		query: { attribute: false },
		framework: { state: true },
		code: { state: true },
		given: { state: true },
		kind: { state: true },
	};
	/** May name framework, edition, code, model and kind to begin with. */
	declare query: URLSearchParams;
	declare private framework: string;
	declare private code: string | undefined;
	declare private given: ModelType;
	declare private kind: KindName;

	static override styles = [
		controlStyles,
		css`
			:host { display: block; padding: 21px 28px; max-width: 880px; }
			h2 { font-size: 24px; line-height: 28px; margin-bottom: 14px; }
			h3 { font-size: 16px; line-height: 28px; margin-top: 21px; border-bottom: 1px solid var(--paper-line); }
			legend { width: 100%; }
			.fields { display: flex; flex-wrap: wrap; gap: 7px 28px; padding: 7px 0; }
			.fields label { display: grid; font-size: 14px; color: var(--ink-soft); }
			select { max-width: 320px; }
			.choices { display: flex; flex-wrap: wrap; gap: 4px 28px; padding: 7px 0; }
			.choices label { display: inline-flex; gap: 8px; align-items: center; min-height: 32px; }
			.statement { font-size: 14px; line-height: 21px; color: var(--ink-soft); margin: 0; max-width: 60em; }
			.actions { display: flex; flex-wrap: wrap; gap: 14px; align-items: center; margin-top: 21px; }
			ul { margin: 0; padding: 0; list-style: none; }
			@media (max-width: 720px) { :host { padding: 14px; } }
		`,
	];

	protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
		if (!changed.has('query')) return;
		const named = `${this.query.get('framework') ?? ''} ${this.query.get('edition') ?? ''}`;
		this.framework = named in frameworkNames ? named : (Object.keys(frameworkNames)[0] ?? '');
		this.code = this.query.get('code') ?? undefined;
		const model = this.query.get('model');
		this.given = model !== null && model in shared.models ? (model as ModelType) : 'symbols';
		const kind = this.query.get('kind');
		this.kind = kind !== null && kind in shared.kinds ? (kind as KindName) : 'choice';
	}

	protected override render(): TemplateResult {
		const { framework, code } = alignTo(this.framework, this.code);
		const [id = '', edition = ''] = this.framework.split(' ');
		const standards = findFramework(id, edition)?.standards ?? [];
		const drafts = listDrafts();
		return html`
			<h2>${words.startTitle}</h2>
			${
				drafts.length === 0
					? nothing
					: html`<h3>${words.openDrafts}</h3><ul>${drafts.map(({ id: draftId, draft }) => html`<li><a href=${printAddress('items', {}, draftId)}>${words.openDraft(draft.item.name, new Date(draft.at).toLocaleString('en', { dateStyle: 'medium', timeStyle: 'short' }))}</a></li>`)}</ul>`
			}
			<h3>${words.startCell}</h3>
			<div class="fields">
				<label>${words.framework}<select .value=${live(this.framework)} @change=${(event: Event) => this.chooseFramework(event)}>
					${Object.entries(frameworkNames).map(([key, name]) => html`<option value=${key} ?selected=${key === this.framework}>${name}</option>`)}</select></label>
				<label>${words.code}<select .value=${live(code)} @change=${({ target }: Event) => target instanceof HTMLSelectElement && this.chooseCode(target.value)}>
					${standards.map((standard) => html`<option value=${standard.code} ?selected=${standard.code === code}>${standard.code}</option>`)}</select></label>
			</div>
			<p class="statement">${findStandard(framework, edition, code)?.statement ?? nothing}</p>
			<fieldset><legend><h3>${words.startGiven}</h3></legend>${this.renderChoices('given', shared.models)}</fieldset>
			<fieldset><legend><h3>${words.startKind}</h3></legend>${this.renderChoices('kind', shared.kinds)}</fieldset>
			<div class="actions">
				<button type="button" class="primary" @click=${() => this.start()}>${words.begin}</button>
				<a href=${printAddress('items', { family: 'any', model: this.given, framework: id, edition, code }, 'new')}>${words.startFamily}</a>
			</div>
		`;
	}

	private renderChoices(field: 'given' | 'kind', names: Readonly<Record<string, string>>): TemplateResult {
		return html`<div class="choices">
			${Object.entries(names).map(
				([name, shown]) =>
					html`<label><input type="radio" name=${field} value=${name} .checked=${live(this[field] === name)} @change=${() => this.choose(field, name)} /> ${shown}</label>`,
			)}
		</div>`;
	}

	private choose(field: 'given' | 'kind', name: string): void {
		if (field === 'given') this.given = name as ModelType;
		else this.kind = name as KindName;
	}

	private chooseFramework({ target }: Event): void {
		if (!(target instanceof HTMLSelectElement)) return;
		this.framework = target.value;
		this.code = undefined;
	}

	private chooseCode(code: string): void {
		this.code = code;
	}

	private start(): void {
		const { kind, given } = this;
		const detail: Beginning = { kind, given, alignment: alignTo(this.framework, this.code) };
		this.dispatchEvent(new CustomEvent('start-chosen', { detail, bubbles: true, composed: true }));
	}
}

customElements.define('zp-item-start', ZpItemStart);
