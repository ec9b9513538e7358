import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { Item, ItemEntry, ItemHistory } from '../../../item-bank/types.ts';
import { ApiError } from '../../api-client.ts';
import { compareItems } from '../../item-draft/compare-items.ts';
import { fetchHistory, fetchItem } from '../../item-draft/item-client.ts';
import { deskWords as words } from '../../messages/item-desk.ts';
import { controlStyles } from '../control-styles.ts';
import { nameField, renderSide } from './difference-rows.ts';

/**
 * Every version of an item and what was done when, read when it is opened; a version can be compared with what is on the desk.
 * Fires version-taken with the item of a version to work on from.
 */
export class ZpItemHistory extends LitElement {
	static override properties = {
		itemId: { attribute: 'item-id' },
		version: { type: Number },
		item: { attribute: false },
		history: { state: true },
		compared: { state: true },
		failure: { state: true },
	};
	declare itemId: string;
	/** The newest version the desk knows of; history is read again when it grows. */
	declare version: number;
	/** What is on the desk. */
	declare item: Item;
	declare private history: ItemHistory | undefined;
	declare private compared: ItemEntry | undefined;
	declare private failure: string | undefined;
	private isOpen = false;

	static override styles = [
		controlStyles,
		css`
			:host { display: block; border-top: 1px solid var(--paper-line); padding-top: 8px; font: 400 15px/21px var(--sans); }
			summary { font-weight: 600; min-height: 28px; }
			ol { list-style: none; margin: 0; padding: 0; }
			ol li { border-bottom: 1px solid var(--paper-line); padding: 3px 0; }
			time { color: var(--ink-soft); }
			button { font-size: 14px; min-height: 24px; padding: 0 4px; }
			h4 { font-size: 15px; margin-top: 10px; }
			dt { font-weight: 600; margin-top: 6px; }
			dd { margin: 0; }
			ul.side { list-style: none; margin: 0; padding: 0; }
			.side .differs { border-left: 3px solid var(--pencil); padding-left: 8px; }
			.side .same { padding-left: 11px; color: var(--ink-soft); }
			.word { color: var(--ink-soft); font-size: 14px; }
		`,
	];

	protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
		if (!changed.has('itemId') && !changed.has('version')) return;
		this.compared = undefined;
		this.history = undefined;
		if (this.isOpen) void this.read();
	}

	private async read(): Promise<void> {
		await this.attempt(async () => {
			this.history = await fetchHistory(this.itemId);
		});
	}

	private async compare(version: number): Promise<void> {
		await this.attempt(async () => {
			this.compared = await fetchItem(this.itemId, version);
		});
	}

	private async attempt(work: () => Promise<void>): Promise<void> {
		try {
			await work();
			this.failure = undefined;
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		}
	}

	protected override render(): TemplateResult {
		return html`<details @toggle=${({ target }: Event) => target instanceof HTMLDetailsElement && this.turn(target.open)}>
			<summary>${words.history}</summary>
			${this.failure === undefined ? nothing : html`<p class="failure">${this.failure}</p>`}
			<ol>${(this.history?.happenings ?? []).map(({ what, version, at }) => this.renderHappening(what, version, at))}</ol>
			<div role="status">${this.compared ? this.renderComparison(this.compared) : nothing}</div>
		</details>`;
	}

	private turn(isOpen: boolean): void {
		this.isOpen = isOpen;
		if (isOpen && this.history === undefined) void this.read();
	}

	private renderHappening(what: keyof typeof words.happening, version: number | undefined, at: string): TemplateResult {
		const isVersion = version !== undefined && (what === 'created' || what === 'revised');
		return html`<li>
			${version === undefined ? nothing : `${words.version(version)} `}${words.happening[what]} <time datetime=${at}>${new Date(at).toLocaleString('en', { dateStyle: 'medium', timeStyle: 'short' })}</time>
			${isVersion ? html`<br /><button type="button" class="plain" @click=${() => void this.compare(version)}>${words.compareWith(version)}</button>` : nothing}
		</li>`;
	}

	private renderComparison({ version, item }: ItemEntry): TemplateResult {
		const differences = compareItems(item, this.item);
		if (differences.length === 0) return html`<p>${words.sameAs(version)}</p>`;
		return html`<h4>${words.compareWith(version)}</h4>
			<dl>
				${differences.map(
					({ field, before, after }) => html`<dt>${nameField(field)}</dt>
						<dd><span class="word">${words.was}</span>${renderSide(before, after)}</dd>
						<dd><span class="word">${words.is}</span>${renderSide(after, before)}</dd>`,
				)}
			</dl>
			<button type="button" @click=${() => this.take(item)}>${words.takeVersion(version)}</button>`;
	}

	private take(item: Item): void {
		this.dispatchEvent(new CustomEvent('version-taken', { detail: item, bubbles: true, composed: true }));
	}
}

customElements.define('zp-item-history', ZpItemHistory);
