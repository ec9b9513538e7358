import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { printItemName } from '../../../item-bank/items/item-name.ts';
import type { ItemEntry, ItemQuery, KindName, ModelType } from '../../../item-bank/types.ts';
import { ApiError } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { formsText } from '../../messages/forms.ts';
import { words } from '../../messages/words.ts';
import { controlStyles } from '../control-styles.ts';
import '../zp-item.ts';

const text = formsText.finder;

/** How many items one page of hits has. */
const pageLength = 12;

/** Finds items of the bank and offers them to a section of a form. Fires "item-chosen" (detail: the entry) and "finder-closed". */
export class ZpItemFinder extends LitElement {
	static override properties = {
		section: { type: String },
		taken: { attribute: false },
		grid: { type: String },
		query: { state: true },
		hits: { state: true },
		total: { state: true },
		next: { state: true },
		failure: { state: true },
		opened: { state: true },
		isSlow: { state: true },
	};
	/** Title of the section that gets the items. */
	declare section: string;
	/** Ids already on the form. */
	declare taken: ReadonlySet<string>;
	declare grid: string;
	declare private query: ItemQuery;
	declare private hits: readonly ItemEntry[] | undefined;
	declare private total: number;
	declare private next: string | undefined;
	declare private failure: string | undefined;
	declare private opened: string | undefined;
	/** Whether a search has gone on long enough to say so. */
	declare private isSlow: boolean;
	private running: AbortController | undefined;
	private typing = 0;

	constructor() {
		super();
		Object.assign(this, { section: '', taken: new Set(), query: { status: ['approved'] }, total: 0, isSlow: false });
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; border: 1px solid var(--rule); background: var(--sheet); padding: 10px 14px; margin: 7px 0 14px; }
			.head { display: flex; justify-content: space-between; gap: 14px; align-items: center; }
			h2 { font-size: 16px; line-height: 24px; }
			form { display: flex; flex-wrap: wrap; gap: 8px 14px; align-items: end; margin: 7px 0; }
			form label { display: grid; font-size: 14px; line-height: 20px; color: var(--ink-soft); }
			form label.text { flex: 1 1 220px; }
			form label.tick { display: flex; gap: 8px; align-items: center; min-height: 32px; }
			ul { list-style: none; margin: 0; padding: 0; max-height: 420px; overflow-y: auto; border-top: 1px solid var(--rule); }
			li { border-bottom: 1px solid var(--paper-line); }
			.hit { display: grid; grid-template-columns: minmax(0, 1fr) 90px 90px 108px 88px; gap: 0 8px; align-items: center; min-height: 32px; font-size: 15px; line-height: 24px; }
			.name { all: unset; box-sizing: border-box; cursor: pointer; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; line-height: 28px; }
			.name:hover { text-decoration: underline; text-underline-offset: 3px; }
			.name:focus-visible { outline: 3px solid var(--focus); outline-offset: -3px; }
			.cell { color: var(--ink-soft); overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
			.hit button.add { min-height: 28px; padding: 0 10px; justify-content: center; }
			.add[aria-disabled='true'] { border-color: transparent; color: var(--ink-soft); font-weight: 400; cursor: default; background: transparent; }
			zp-item { padding: 7px 14px; background: var(--paper); }
			.count { font-size: 14px; color: var(--ink-soft); margin: 4px 0; }
			@media (max-width: 720px) {
				:host { padding: 10px; }
				.hit { grid-template-columns: minmax(0, 1fr) 76px 72px; min-height: 44px; }
				.name { white-space: normal; line-height: 22px; }
				.model, .kind { display: none; }
			}
		`,
	];

	override connectedCallback(): void {
		super.connectedCallback();
		if (this.hits === undefined) void this.find();
	}

	override disconnectedCallback(): void {
		this.running?.abort();
		clearTimeout(this.typing);
		super.disconnectedCallback();
	}

	protected override firstUpdated(_changed: PropertyValues): void {
		this.renderRoot.querySelector('input')?.focus();
	}

	private async find(cursor?: string): Promise<void> {
		this.running?.abort();
		const running = new AbortController();
		this.running = running;
		const slow = setTimeout(() => {
			this.isSlow = true;
		}, 300);
		try {
			const query = { ...this.query, limit: pageLength, ...(cursor === undefined ? {} : { cursor }) };
			const page = await callApi('GET /api/items', { query, signal: running.signal });
			if (running.signal.aborted) return;
			this.hits = cursor === undefined ? page.items : [...(this.hits ?? []), ...page.items];
			Object.assign(this, { total: page.total, next: page.next, failure: undefined });
		} catch (error) {
			if (running.signal.aborted) return;
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		} finally {
			clearTimeout(slow);
			if (!running.signal.aborted) this.isSlow = false;
		}
	}

	/** Adds the next page, and goes on with its first item. */
	private async findMore(): Promise<void> {
		const before = this.hits?.length ?? 0;
		await this.find(this.next);
		await this.updateComplete;
		this.renderRoot.querySelectorAll<HTMLElement>('.hit .name')[before]?.focus();
	}

	private ask(changes: Partial<Record<keyof ItemQuery, ItemQuery[keyof ItemQuery]>>, delay = 0): void {
		const fields = Object.entries({ ...this.query, ...changes }).filter(
			([, value]) => value !== undefined && value !== '',
		);
		this.query = Object.fromEntries(fields) as ItemQuery;
		clearTimeout(this.typing);
		this.typing = window.setTimeout(() => void this.find(), delay);
	}

	protected override render(): TemplateResult {
		return html`
			<div class="head">
				<h2>${text.title(this.section)}</h2>
				<button class="plain" @click=${() => this.dispatchEvent(new Event('finder-closed'))}>${text.close}</button>
			</div>
			<form role="search" @submit=${(event: Event) => event.preventDefault()}>
				<label class="text">${text.search}
					<input type="search" placeholder=${text.placeholder} @input=${(event: Event) => this.ask({ text: fieldOf(event) || undefined }, 200)} /></label>
				<label>${text.model} ${this.renderChoice(words.models, (value) => this.ask({ model: value === '' ? undefined : [value as ModelType] }))}</label>
				<label>${text.kind} ${this.renderChoice(words.kinds, (value) => this.ask({ kind: value === '' ? undefined : [value as KindName] }))}</label>
				<label class="tick"><input type="checkbox" @change=${(event: Event) => this.ask({ status: isTicked(event) ? ['approved', 'draft'] : ['approved'] })} /> ${text.drafts}</label>
			</form>
			<div role="status" class="count">${this.failure ?? (this.isSlow ? words.frame.reading : this.hits === undefined ? '' : text.found(this.hits.length, this.total))}</div>
			${this.hits?.length === 0 ? html`<p>${text.nothing}</p>` : nothing}
			${this.hits && this.hits.length > 0 ? html`<ul tabindex="-1" aria-label=${text.hits}>${this.hits.map((entry) => this.renderHit(entry))}</ul>` : nothing}
			${this.next === undefined ? nothing : html`<p class="count"><button @click=${() => void this.findMore()}>${text.more}</button></p>`}
		`;
	}

	private renderChoice(names: Readonly<Record<string, string>>, choose: (value: string) => void): TemplateResult {
		return html`<select @change=${(event: Event) => choose(fieldOf(event))}>
			<option value="">${text.any}</option>
			${Object.entries(names).map(([value, name]) => html`<option value=${value}>${name}</option>`)}
		</select>`;
	}

	private renderHit(entry: ItemEntry): TemplateResult {
		const { id, item, status } = entry;
		const name = printItemName(item.name);
		const isTaken = this.taken.has(id);
		const isOpen = this.opened === `${id} ${entry.version}`;
		return html`<li>
			<div class="hit">
				<button class="name" aria-expanded=${isOpen} @click=${() => this.open(entry)}>${name}${status === 'draft' ? html` <span class="soft">(${words.statuses.draft})</span>` : nothing}</button>
				<span class="cell">${item.alignments.find(({ primary }) => primary === true)?.code ?? ''}</span>
				<span class="cell model">${words.models[item.given]}</span>
				<span class="cell kind">${words.kinds[item.kind]}</span>
				<button class="add" aria-disabled=${isTaken} aria-label=${isTaken ? text.isTaken(name) : text.addNamed(name)} @click=${() => this.choose(entry)}>${isTaken ? text.taken : text.add}</button>
			</div>
			${isOpen ? html`<zp-item .item=${item} grid=${this.grid}></zp-item>` : nothing}
		</li>`;
	}

	private open({ id, version }: ItemEntry): void {
		const key = `${id} ${version}`;
		this.opened = this.opened === key ? undefined : key;
	}

	/** The button stays where it is when its item is taken, so that the focus does. */
	private choose(entry: ItemEntry): void {
		if (!this.taken.has(entry.id)) this.dispatchEvent(new CustomEvent<ItemEntry>('item-chosen', { detail: entry }));
	}
}

function fieldOf(event: Event): string {
	return event.target instanceof HTMLInputElement || event.target instanceof HTMLSelectElement
		? event.target.value
		: '';
}

function isTicked(event: Event): boolean {
	return event.target instanceof HTMLInputElement && event.target.checked;
}

customElements.define('zp-item-finder', ZpItemFinder);
