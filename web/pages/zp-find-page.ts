import { html, LitElement, nothing, type TemplateResult } from 'lit';
import type { FormDetails, FormSummary, FrameworkList, ItemEntry, ItemPage } from '../../item-bank/types.ts';
import { goTo } from '../address.ts';
import { ApiError, bankChangedEvent, bankFoundEvent } from '../api-client.ts';
import { addToForm } from '../board/form-change.ts';
import { keepFramework, recallFramework } from '../board/last-framework.ts';
import { callApi } from '../call-api.ts';
import { controlStyles } from '../elements/control-styles.ts';
import '../elements/zp-find-margin.ts';
import '../elements/zp-hit-table.ts';
import type { ZpHitTable } from '../elements/zp-hit-table.ts';
import '../elements/zp-wait.ts';
import '../elements/zp-word-field.ts';
import type { TypedWords, ZpWordField } from '../elements/zp-word-field.ts';
import {
	clearFindState,
	countMarked,
	type FindState,
	pageLength,
	parseFindState,
	printFindState,
	queryOf,
	sorts,
} from '../find/find-state.ts';
import { type Loosened, tryLoosened } from '../find/loosened.ts';
import { renderNothingFound } from '../find/render-nothing-found.ts';
import { findText } from '../messages/find.ts';
import { words } from '../messages/words.ts';
import { findPageStyles } from './find-page-styles.ts';

/** Finds items by words and by what they are; all of it stands in the address. What is found can be added to a form. */
export class ZpFindPage extends LitElement {
	static override properties = {
		query: { attribute: false },
		frameworks: { state: true },
		forms: { state: true },
		form: { state: true },
		section: { state: true },
		found: { state: true },
		items: { state: true },
		facets: { state: true },
		loosened: { state: true },
		failure: { state: true },
		isReading: { state: true },
		isAdding: { state: true },
		isWide: { state: true },
	};
	declare query: URLSearchParams;
	declare private frameworks: FrameworkList | undefined;
	declare private forms: readonly FormSummary[] | undefined;
	declare private form: FormDetails | undefined;
	declare private section: number | undefined;
	/** The page read last. */
	declare private found: ItemPage | undefined;
	declare private items: readonly ItemEntry[];
	declare private facets: ItemPage['facets'];
	/** What letting one condition go would find; asked only when nothing is found. */
	declare private loosened: readonly Loosened[] | undefined;
	declare private failure: string | undefined;
	declare private isReading: boolean;
	declare private isAdding: boolean;
	declare private isWide: boolean;
	private state: FindState = parseFindState(new URLSearchParams());
	/** What the rows at hand were asked for. */
	private asked = '';
	private call: AbortController | undefined;
	private readonly width = window.matchMedia('(min-width: 901px)');
	private readonly fit = (): void => {
		this.isWide = this.width.matches;
	};
	private readonly retry = (): void => void this.load(true);

	constructor() {
		super();
		Object.assign(this, { items: [], isReading: false, isAdding: false, isWide: this.width.matches });
	}

	static override styles = [controlStyles, findPageStyles];

	override connectedCallback(): void {
		super.connectedCallback();
		this.width.addEventListener('change', this.fit);
		window.addEventListener(bankFoundEvent, this.retry);
		window.addEventListener(bankChangedEvent, this.retry);
	}

	override disconnectedCallback(): void {
		this.width.removeEventListener('change', this.fit);
		window.removeEventListener(bankFoundEvent, this.retry);
		window.removeEventListener(bankChangedEvent, this.retry);
		this.call?.abort();
		super.disconnectedCallback();
	}

	protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
		if (!changed.has('query')) return;
		this.state = parseFindState(this.query);
		void this.load(false);
	}

	/** Reads what the address asks for and is not at hand; isAnew: everything. */
	private async load(isAnew: boolean): Promise<void> {
		if (isAnew) this.asked = '';
		try {
			this.frameworks ??= await callApi('GET /api/standards');
			const framework = this.state.framework ?? recallFramework(this.frameworks);
			if (framework) {
				this.state = { ...this.state, framework };
				keepFramework(framework);
			}
			await Promise.all([this.read(), this.loadForm(isAnew)]);
			this.failure = undefined;
		} catch (error) {
			this.fail(error);
		}
	}

	private fail(error: unknown): void {
		if (error instanceof DOMException && error.name === 'AbortError') return;
		if (!(error instanceof ApiError)) throw error;
		this.failure = error.message;
		if (error.code !== 'unreachable') this.found = undefined;
	}

	/** Reads the rows from the first; an answer to an older question is dropped. */
	private async read(): Promise<void> {
		const query = queryOf(this.state);
		const asked = JSON.stringify(query);
		if (asked === this.asked) return;
		this.asked = asked;
		this.call?.abort();
		const call = new AbortController();
		this.call = call;
		this.isReading = true;
		try {
			const limit = Math.max(this.state.shown, pageLength);
			const found = await callApi('GET /api/items', { query: { ...query, limit }, signal: call.signal });
			const loosened = found.total === 0 ? await tryLoosened(this.state, call.signal) : undefined;
			if (call !== this.call) return;
			Object.assign(this, { found, loosened, items: found.items, facets: found.facets });
		} catch (error) {
			if (this.call === call) this.asked = '';
			throw error;
		} finally {
			if (this.call === call) this.isReading = false;
		}
	}

	private async readMore(): Promise<void> {
		const cursor = this.found?.next;
		if (cursor === undefined || this.isReading) return;
		const { signal } = this.call ?? new AbortController();
		const before = this.items.length;
		this.isReading = true;
		try {
			const query = { ...queryOf(this.state), cursor, limit: pageLength, facets: false };
			const found = await callApi('GET /api/items', { query, signal });
			if (signal.aborted) return;
			this.found = found;
			this.items = [...this.items, ...found.items];
			this.failure = undefined;
			this.change({ shown: this.items.length }, false);
			await this.updateComplete;
			await this.focusRow(before);
		} catch (error) {
			this.fail(error);
		} finally {
			if (!signal.aborted) this.isReading = false;
		}
	}

	private async loadForm(isAnew: boolean): Promise<void> {
		if (isAnew || this.forms === undefined) this.forms = await callApi('GET /api/forms');
		const id = this.state.form;
		if (isAnew || this.form?.record.id !== id) {
			const form = id === undefined ? undefined : await callApi('GET /api/forms/{id}', { path: { id } });
			if (id !== this.state.form) return;
			if (form?.record.id !== this.form?.record.id) this.section = undefined;
			this.form = form;
		}
	}

	private change(part: Partial<FindState>, isNoted = true): void {
		const text = this.field?.typed.trim() ?? this.state.text;
		goTo(printFindState({ ...this.state, text, shown: pageLength, ...part }), isNoted);
	}

	private letGo(): void {
		const { text } = this.state;
		this.change({ ...clearFindState(this.state), text });
		this.field?.focus();
	}

	private chooseSort(event: Event): void {
		const value = event.target instanceof HTMLSelectElement ? event.target.value : '';
		this.change({ sort: sorts.find((name) => name === value) ?? 'added' });
	}

	private async focusRow(index: number): Promise<void> {
		const table = this.renderRoot.querySelector<ZpHitTable>('zp-hit-table');
		await table?.updateComplete;
		table?.focusRow(index);
	}

	private get field(): ZpWordField | null {
		return this.renderRoot.querySelector<ZpWordField>('zp-word-field');
	}

	private get sectionOfForm(): number {
		return this.section ?? (this.form?.record.form.sections.length ?? 1) - 1;
	}

	private async add(entry: ItemEntry): Promise<void> {
		if (!this.form || this.isAdding) return;
		this.isAdding = true;
		try {
			await addToForm(this.form, entry, this.sectionOfForm);
			this.failure = undefined;
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		} finally {
			this.isAdding = false;
		}
	}

	protected override render(): TemplateResult {
		const { state } = this;
		const marked = countMarked(state);
		return html`<div class="page">
			<details class="margin" ?open=${this.isWide}>
				<summary>${findText.narrow}${marked === 0 ? nothing : html`: ${findText.marked(marked)}`}</summary>
				<zp-find-margin
					.state=${state} .facets=${this.facets} .frameworks=${this.frameworks ?? []} .forms=${this.forms ?? []}
					.form=${this.form} .section=${this.sectionOfForm}
					@find-changed=${(event: CustomEvent<Partial<FindState>>) => this.change(event.detail)}
					@section-chosen=${(event: CustomEvent<number>) => {
						this.section = event.detail;
					}}
				></zp-find-margin>
			</details>
			<div class="middle">
				<div class="top">
					<zp-word-field
						text=${state.text} @field-left=${() => void this.focusRow(0)}
						@words-typed=${(event: CustomEvent<TypedWords>) => this.change({}, event.detail.isNoted)}
					></zp-word-field>
					<label class="sort">${findText.sort}
						<select @change=${(event: Event) => this.chooseSort(event)}>
							${sorts.map((name) => html`<option value=${name} ?selected=${name === state.sort}>${findText.sorts[name]}</option>`)}
						</select>
					</label>
				</div>
				<div role="alert">${this.failure === undefined ? nothing : html`<div class="failure"><p>${this.failure}</p><button @click=${this.retry}>${words.frame.again}</button></div>`}</div>
				<div class="line">
					<p role="status">${this.found ? findText.found(this.found.total, this.items.length) : nothing}</p>
					${marked === 0 ? nothing : html`<button @click=${() => this.letGo()}>${findText.letGo(marked)}</button>`}
				</div>
				${this.found ? this.renderFound(this.found) : this.failure === undefined ? html`<zp-wait></zp-wait>` : nothing}
			</div>
		</div>`;
	}

	private renderFound(found: ItemPage): TemplateResult {
		if (found.total === 0) return renderNothingFound(this.state, this.loosened ?? []);
		const left = found.total - this.items.length;
		return html`<div class="found" aria-busy=${String(this.isReading)}>
			<zp-hit-table
				.items=${this.items} .form=${this.form} .framework=${this.state.framework} ?busy=${this.isAdding}
				@item-chosen=${(event: CustomEvent<ItemEntry>) => void this.add(event.detail)}
				@table-left=${() => this.field?.focus()}
			></zp-hit-table>
			${found.next === undefined ? nothing : html`<button class="more" @click=${() => void this.readMore()}>${findText.more(Math.min(pageLength, left))}</button>`}
			<p class="keys">${findText.keys}</p>
		</div>`;
	}
}

customElements.define('zp-find-page', ZpFindPage);
