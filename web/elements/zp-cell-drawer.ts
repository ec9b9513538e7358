import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { printItemName } from '../../item-bank/items/item-name.ts';
import type {
	EvidenceEntry,
	FormDetails,
	ItemEntry,
	ItemPage,
	ItemQuery,
	ModelType,
	Supply,
} from '../../item-bank/types.ts';
import { printAddress } from '../address.ts';
import { ApiError } from '../api-client.ts';
import { formItemsIn, type PlanCell } from '../board/board-plan.ts';
import type { BoardFilter, Cell, Lens } from '../board/board-state.ts';
import { addToForm } from '../board/form-change.ts';
import { callApi } from '../call-api.ts';
import { words } from '../messages/words.ts';
import { evidenceMarks } from './board-cells.ts';
import { cellDrawerStyles } from './cell-drawer-styles.ts';
import { controlStyles } from './control-styles.ts';
import { describeItem, itemLineStyles, renderFirstWords } from './item-line.ts';
import './zp-line.ts';
import './zp-make-panel.ts';
import './zp-wait.ts';

/** What stands behind a cell of the board, and what one can do there. Fires drawer-closed. */
export class ZpCellDrawer extends LitElement {
	static override properties = {
		supply: { attribute: false },
		cell: { attribute: false },
		codes: { attribute: false },
		filter: { attribute: false },
		lens: { type: String },
		form: { attribute: false },
		plan: { attribute: false },
		evidence: { attribute: false },
		sitting: { type: String },
		found: { state: true },
		items: { state: true },
		failure: { state: true },
		section: { state: true },
		isBusy: { state: true },
	};
	declare supply: Supply;
	declare cell: Cell;
	/** Codes counted in the row of the cell; undefined: the row of totals. */
	declare codes: readonly string[] | undefined;
	declare filter: BoardFilter;
	declare lens: Lens;
	declare form: FormDetails | undefined;
	declare plan: PlanCell | undefined;
	declare evidence: EvidenceEntry | undefined;
	/** Whose responses the evidence is; all sittings where undefined. */
	declare sitting: string | undefined;
	/** The page read last. */
	declare private found: ItemPage | undefined;
	declare private items: readonly ItemEntry[];
	declare private failure: string | undefined;
	declare private section: number | undefined;
	declare private isBusy: boolean;
	private call: AbortController | undefined;
	private asked = '';
	private shown = '';
	private readonly width = window.matchMedia('(min-width: 1200px)');
	private readonly fit = (): void => this.stand();

	constructor() {
		super();
		this.items = [];
		this.isBusy = false;
	}

	static override styles = [controlStyles, itemLineStyles, cellDrawerStyles];

	override connectedCallback(): void {
		super.connectedCallback();
		this.width.addEventListener('change', this.fit);
	}

	override disconnectedCallback(): void {
		this.width.removeEventListener('change', this.fit);
		this.call?.abort();
		super.disconnectedCallback();
	}

	protected override willUpdate(): void {
		const asked = JSON.stringify(this.query());
		if (asked === this.asked) return;
		this.asked = asked;
		this.readAnew();
	}

	protected override updated(): void {
		const shown = `${this.cell.code} ${this.cell.column}`;
		if (shown === this.shown) return;
		this.shown = shown;
		this.stand();
		this.renderRoot.querySelector<HTMLElement>('h2')?.focus();
	}

	/** Beside the board where there is room, else over it with the rest of the page at rest. */
	private stand(): void {
		const dialog = this.renderRoot.querySelector('dialog');
		const isModal = !this.width.matches;
		if (!dialog || (dialog.open && dialog.matches(':modal') === isModal)) return;
		if (dialog.open) dialog.close();
		if (isModal) dialog.showModal();
		else dialog.show();
	}

	private query(): ItemQuery {
		const { framework, edition } = this.supply;
		const { code, column } = this.cell;
		return {
			...this.filter,
			status: this.filter.status.length > 0 ? this.filter.status : ['approved'],
			...(column === 'total' ? {} : { model: [column] }),
			...(code === '' ? {} : { framework, edition, code, below: true }),
		};
	}

	private readAnew(): void {
		this.found = undefined;
		this.items = [];
		void this.read();
	}

	/** Reads the first page, or the next one. */
	private async read(): Promise<void> {
		this.call?.abort();
		this.call = new AbortController();
		const next = this.found?.next;
		const query = { ...this.query(), limit: 25, facets: false, ...(next === undefined ? {} : { cursor: next }) };
		try {
			this.found = await callApi('GET /api/items', { query, signal: this.call.signal });
			this.items = [...this.items, ...this.found.items];
			this.failure = undefined;
		} catch (error) {
			if (error instanceof DOMException && error.name === 'AbortError') return;
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		}
	}

	private async add(entry: ItemEntry): Promise<void> {
		if (!this.form || this.isBusy) return;
		this.isBusy = true;
		try {
			await addToForm(this.form, entry, this.section ?? this.form.record.form.sections.length - 1);
			this.failure = undefined;
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		} finally {
			this.isBusy = false;
		}
	}

	private close(event?: Event): void {
		event?.preventDefault();
		this.dispatchEvent(new CustomEvent('drawer-closed'));
	}

	private press(event: KeyboardEvent): void {
		if (event.key === 'Escape') this.close(event);
	}

	protected override render(): TemplateResult {
		const { code, column } = this.cell;
		const standard = this.supply.standards.find((each) => each.code === code);
		const model = column === 'total' ? undefined : column;
		const { framework, edition } = this.supply;
		const place = { framework, edition, code, model };
		return html`<dialog aria-labelledby="title" @cancel=${(event: Event) => this.close(event)} @keydown=${(event: KeyboardEvent) => this.press(event)}>
			<div class="head">
				<h2 id="title" tabindex="-1">${words.drawer.title(code === '' ? words.board.allStandards : code, column)}</h2>
				<button @click=${() => this.close()}>${words.drawer.close}</button>
			</div>
			${standard ? html`<p class="statement">${standard.statement} <span class="soft">${words.drawer.source}</span></p>` : nothing}
			${this.renderPlan()} ${this.renderEvidence()}
			<div class="ways">
				<a class="button primary" href=${printAddress('items', place, 'new')}>${words.drawer.write}</a>
				<a class="button" href=${printAddress('find', { ...this.query(), below: code === '' ? undefined : 'true' })}>${words.drawer.find}</a>
			</div>
			<div role="alert">${this.failure === undefined ? nothing : html`<p class="failure">${this.failure}</p>`}</div>
			${this.renderMaking(model)} ${this.renderForm()} ${this.renderBank()}
		</dialog>`;
	}

	private renderMaking(model: ModelType | undefined): TemplateResult | typeof nothing {
		if (model === undefined || this.cell.code === '') return nothing;
		const { framework, edition } = this.supply;
		return html`<zp-make-panel model=${model} framework=${framework} edition=${edition} .codes=${this.codes ?? [this.cell.code]} @items-kept=${() => this.readAnew()}></zp-make-panel>`;
	}

	private renderPlan(): TemplateResult | typeof nothing {
		const { plan } = this;
		if (this.lens !== 'plan' || !plan || (plan.wanted === undefined && plan.delivered === undefined)) return nothing;
		const { wanted, delivered, off } = plan;
		const most = Math.max(4, wanted?.max ?? 0, wanted?.min ?? 0, delivered ?? 0);
		const marks = {
			from: 0,
			to: most,
			tick: most <= 12 ? 1 : 5,
			...(wanted === undefined ? {} : { wanted }),
			...(delivered === undefined ? {} : { at: delivered }),
		};
		return html`<p>
			<zp-line .marks=${marks} label=${words.drawer.plan}></zp-line>
			${wanted === undefined ? words.board.noPlan : words.board.wanted(wanted.min, wanted.max)}${delivered === undefined ? '' : `, ${words.board.delivers(delivered)}`}
			${off === 0 ? nothing : html`<span class="short">${words.board.off(off)}</span>`}
		</p>`;
	}

	private renderEvidence(): TemplateResult | typeof nothing {
		if (this.lens !== 'evidence') return nothing;
		const { evidence } = this;
		const { framework, edition } = this.supply;
		const report = new URLSearchParams({ framework, edition, ...(this.sitting ? { sitting: this.sitting } : {}) });
		const marks = evidence && evidenceMarks(evidence);
		if (!evidence || !marks) {
			return html`<p>${evidence?.hidden === undefined ? words.board.noResponses : words.board.hidden[evidence.hidden]}.</p>`;
		}
		return html`<p><zp-line .marks=${marks} label=${words.drawer.evidence} count=${evidence.responses ?? 0}></zp-line></p>
			<p>${words.board.evidence(evidence)}.</p>
			<p><a href="/api/reports/coverage/pdf?${report}" download>${words.drawer.report}</a></p>`;
	}

	private renderForm(): TemplateResult | typeof nothing {
		const { form } = this;
		if (!form) return nothing;
		const items = formItemsIn(form, this.supply, this.codes, this.cell.column);
		const { title, sections } = form.record.form;
		const chosen = this.section ?? sections.length - 1;
		return html`<h3>${words.drawer.onForm(title, items.length)}</h3>
			<ul class="items">${items.map((entry) => this.renderItem(entry, nothing))}</ul>
			${
				sections.length < 2
					? nothing
					: html`<label>${words.drawer.section}
						<select @change=${(event: Event) => this.chooseSection(event)}>
							${sections.map((section, index) => html`<option value=${index} ?selected=${index === chosen}>${section.title}</option>`)}
						</select>
					</label>`
			}`;
	}

	private chooseSection(event: Event): void {
		this.section = event.target instanceof HTMLSelectElement ? Number(event.target.value) : undefined;
	}

	private renderBank(): TemplateResult {
		if (!this.found) return this.failure === undefined ? html`<zp-wait></zp-wait>` : html``;
		const placed = new Set(this.form?.items.map(({ id }) => id));
		const wayOf = (entry: ItemEntry): TemplateResult | typeof nothing => {
			if (!this.form || entry.status !== 'approved') return nothing;
			const isOn = placed.has(entry.id);
			const name = printItemName(entry.item.name);
			return html`<button
				class=${isOn ? 'taken' : ''} aria-disabled=${String(isOn || this.isBusy)}
				aria-label=${isOn ? words.drawer.isOnIt(name) : words.drawer.addItem(name)}
				@click=${() => !isOn && void this.add(entry)}
			>${isOn ? words.drawer.onIt : words.drawer.add}</button>`;
		};
		return html`<h3>${words.drawer.inBank(this.found.total)}</h3>
			${this.found.total === 0 ? html`<p>${words.drawer.none}</p>` : nothing}
			${this.cell.code === '' && this.found.total > 0 ? html`<p class="soft">${words.drawer.withUnseen}</p>` : nothing}
			<ul class="items">${this.items.map((entry) => this.renderItem(entry, wayOf(entry)))}</ul>
			${this.found.next === undefined ? nothing : html`<button class="more" @click=${() => void this.read()}>${words.drawer.more}</button>`}`;
	}

	private renderItem(entry: ItemEntry, way: TemplateResult | typeof nothing): TemplateResult {
		return html`<li>
			<a class="name" href=${printAddress('items', {}, entry.id)}>${printItemName(entry.item.name)}</a>
			<p class="words">${renderFirstWords(entry)}</p>
			<p class="facts">
				<span>${describeItem(entry)}</span>
				${way}
			</p>
		</li>`;
	}
}

customElements.define('zp-cell-drawer', ZpCellDrawer);
