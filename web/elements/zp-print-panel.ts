import { html, LitElement, nothing, type TemplateResult } from 'lit';
import type { GroupEntry, PrintOrder } from '../../item-bank/types.ts';
import { ApiError, fetchGroups, printForm } from '../api-client.ts';
import { panelStyles } from './panel-styles.ts';

interface PrintedArchive {
	readonly name: string;
	readonly address: string;
	readonly size: number;
}

/** Puts a form on paper: for whom and on which paper, then one archive of PDF files. */
export class ZpPrintPanel extends LitElement {
	static override properties = {
		form: { type: String },
		version: { type: Number },
		groups: { state: true },
		order: { state: true },
		isBusy: { state: true },
		archive: { state: true },
		failure: { state: true },
	};
	/** Id of the form. */
	declare form: string;
	declare version: number;
	declare private groups: readonly GroupEntry[];
	declare private order: Omit<PrintOrder, 'version'>;
	declare private isBusy: boolean;
	declare private archive: PrintedArchive | undefined;
	declare private failure: ApiError | undefined;

	constructor() {
		super();
		this.groups = [];
		this.order = { paper: 'letter', grids: 'separate' };
		this.isBusy = false;
	}

	static override styles = panelStyles;

	protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
		if (changed.has('form') && changed.get('form') !== undefined) this.forget();
	}

	private forget(): void {
		if (this.archive) URL.revokeObjectURL(this.archive.address);
		this.archive = undefined;
		this.failure = undefined;
	}

	private async attempt(work: () => Promise<void>): Promise<void> {
		try {
			await work();
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error;
		}
	}

	private async print(): Promise<void> {
		this.forget();
		this.isBusy = true;
		await this.attempt(async () => {
			const { name, content } = await printForm(this.form, { ...this.order, version: this.version });
			this.archive = { name, address: URL.createObjectURL(content), size: content.size };
		});
		this.isBusy = false;
	}

	private change(changes: Partial<PrintOrder>): void {
		this.order = { ...this.order, ...changes };
	}

	private chooseGroup(event: Event): void {
		const { group: _former, ...rest } = this.order;
		const id = event.target instanceof HTMLSelectElement ? event.target.value : '';
		this.order = id === '' ? rest : { ...rest, group: id };
	}

	private loadGroups(): Promise<void> {
		return this.attempt(async () => {
			this.groups = await fetchGroups();
		});
	}

	protected override render(): TemplateResult {
		const { paper, grids, large } = this.order;
		return html`<details @toggle=${() => void this.loadGroups()}>
			<summary>Put this form on paper</summary>
			<div class="choices">
				<fieldset>
					<legend>Paper</legend>
					${this.renderRadio('paper', paper === 'letter', 'Letter', { paper: 'letter' })}
					${this.renderRadio('paper', paper === 'a4', 'A4', { paper: 'a4' })}
				</fieldset>
				<fieldset>
					<legend>Answers</legend>
					${this.renderRadio('grids', grids === 'separate', 'on answer sheets', { grids: 'separate' })}
					${this.renderRadio('grids', grids === 'beside', 'beside each item', { grids: 'beside' })}
				</fieldset>
				<fieldset>
					<legend>Print</legend>
					<label><input type="checkbox" .checked=${large === true} @change=${() => this.change({ large: large !== true })} /> large, one item a page</label>
				</fieldset>
				<fieldset>
					<legend>For</legend>
					<label>
						<span>Class</span>
						<select @change=${(event: Event) => this.chooseGroup(event)}>
							<option value="">nobody in particular</option>
							${this.groups.map(({ id, group }) => html`<option value=${id}>${group.name} (${group.studentCodes.length})</option>`)}
						</select>
					</label>
				</fieldset>
			</div>
			<button ?disabled=${this.isBusy} @click=${() => void this.print()}>${this.isBusy ? 'Drawing the pages…' : 'Draw the pages'}</button>
			<div role="status">${this.renderArchive()}</div>
			<div role="alert">${this.renderFailure()}</div>
		</details>`;
	}

	private renderRadio(name: string, isChosen: boolean, words: string, changes: Partial<PrintOrder>): TemplateResult {
		return html`<label><input type="radio" name=${name} .checked=${isChosen} @change=${() => this.change(changes)} /> ${words}</label>`;
	}

	private renderArchive(): TemplateResult | typeof nothing {
		if (!this.archive) return nothing;
		const { name, address, size } = this.archive;
		return html`<ul class="files">
			<li><a href=${address} download=${name}>Save ${name}</a> <span class="soft">${Math.ceil(size / 1024)} kB: booklet, answer sheets, key with worked steps, administration sheet, work pages</span></li>
		</ul>
		<p class="soft">Key and administration sheet are for staff: keep them confidential.</p>`;
	}

	private renderFailure(): TemplateResult | typeof nothing {
		return this.failure ? html`<p class="failure">Nothing was drawn. ${this.failure.message}</p>` : nothing;
	}
}

customElements.define('zp-print-panel', ZpPrintPanel);
