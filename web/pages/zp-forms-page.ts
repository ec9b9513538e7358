import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { maximumOf, positionsOf } from '../../item-bank/forms/check-form.ts';
import { findGridProfile } from '../../item-bank/responses/grid-profiles.ts';
import type { FormDetails, FormItem, FormSummary } from '../../item-bank/types.ts';
import { ApiError, fetchForm, fetchForms } from '../api-client.ts';
import '../elements/zp-export-panel.ts';
import '../elements/zp-item-facts.ts';
import '../elements/zp-item.ts';
import '../elements/zp-print-panel.ts';
import { pageStyles } from './forms-page-styles.ts';

/** The forms of the bank: which there are, each item as a student meets it, and the way out to a platform. */
export class ZpFormsPage extends LitElement {
	static override properties = {
		forms: { state: true },
		form: { state: true },
		failure: { state: true },
		keys: { state: true },
	};
	declare private forms: readonly FormSummary[] | undefined;
	declare private form: FormDetails | undefined;
	declare private failure: string | undefined;
	declare private keys: boolean;
	private readonly followAddress = (): void => void this.open();

	constructor() {
		super();
		this.keys = false;
	}

	static override styles = [pageStyles, css`:host { display: block; }`];

	override connectedCallback(): void {
		super.connectedCallback();
		window.addEventListener('hashchange', this.followAddress);
		void this.open();
	}

	override disconnectedCallback(): void {
		window.removeEventListener('hashchange', this.followAddress);
		super.disconnectedCallback();
	}

	/** Loads the list once, then the form that the address names, or the first one. */
	private async open(): Promise<void> {
		try {
			this.forms ??= await fetchForms();
			const id = /^#\/forms\/([a-z0-9-]+)$/.exec(location.hash)?.[1] ?? this.forms[0]?.id;
			if (id === undefined || id === this.form?.record.id) return;
			this.form = await fetchForm(id);
			this.failure = undefined;
			document.title = `${this.form.record.form.title} · Zeropair`;
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		}
	}

	protected override render(): TemplateResult {
		return html`
			<div class="page">
				<nav aria-label="Forms">${this.renderList()}</nav>
				<div class="middle">${this.renderMain()}</div>
			</div>
		`;
	}

	private renderList(): TemplateResult {
		if (this.forms === undefined)
			return html`<h2>Forms</h2><p>${this.failure === undefined ? 'Reading the bank…' : '–'}</p>`;
		if (this.forms.length === 0) return html`<h2>Forms</h2><p>None yet.</p>`;
		return html`<h2>Forms</h2>
			<ul>
				${this.forms.map(
					({ id, title, items, givings }) => html`<li>
						<a href="#/forms/${id}" aria-current=${id === this.form?.record.id ? 'page' : 'false'}>${title}</a>
						<small>${items} items, ${givings === 0 ? 'not given yet' : `given ${givings} times`}</small>
					</li>`,
				)}
			</ul>`;
	}

	private renderMain(): TemplateResult | typeof nothing {
		if (this.failure !== undefined) return html`<p class="failure" role="alert">${this.failure}</p>`;
		if (this.forms?.length === 0) {
			return html`<h2>No form in the bank</h2>
				<p>Make the first with <code>npm run zeropair -- forms create FILE</code>, or fill an empty bank with the demo department: <code>npm run zeropair -- demo</code>.</p>`;
		}
		if (!this.form) return nothing;
		return this.renderForm(this.form);
	}

	private renderForm({ record, items }: FormDetails): TemplateResult {
		const { id, version, form } = record;
		const positions = positionsOf(form);
		const itemOf = (entry: FormItem) => items.find((item) => item.id === entry.item && item.version === entry.version);
		const points = maximumOf(form, (item) => items.find((candidate) => candidate.id === item)?.item);
		return html`
			<div class="title">
				<h2>${form.title}</h2>
				<p>${id}, version ${version}: ${positions.length} items, ${points} points, answer grid “${findGridProfile(form.gridProfile)?.name ?? form.gridProfile}”</p>
				<label><input type="checkbox" .checked=${this.keys} @change=${(event: Event) => this.showKeys(event)} /> Show keys and worked steps</label>
			</div>
			<zp-export-panel form=${id} version=${version}></zp-export-panel>
			<zp-print-panel form=${id} version=${version}></zp-print-panel>
			${form.sections.map(
				(section, sectionIndex) => html`<section aria-labelledby="section-${sectionIndex}">
					<h3 id="section-${sectionIndex}">${section.title}</h3>
					${positions
						.filter((position) => position.sectionIndex === sectionIndex)
						.map(({ position, entry }) => this.renderItem(position, itemOf(entry), form.gridProfile, entry.points))}
				</section>`,
			)}
		`;
	}

	private renderItem(
		position: number,
		record: FormDetails['items'][number] | undefined,
		grid: string,
		points: number | undefined,
	): TemplateResult | typeof nothing {
		if (!record) return nothing;
		return html`<article aria-label="Item ${position}">
			<span class="number">${position}</span>
			<zp-item .item=${record.item} grid=${grid}></zp-item>
			<zp-item-facts .record=${record} .points=${points} .keys=${this.keys}></zp-item-facts>
		</article>`;
	}

	private showKeys(event: Event): void {
		this.keys = event.target instanceof HTMLInputElement && event.target.checked;
	}
}

customElements.define('zp-forms-page', ZpFormsPage);
