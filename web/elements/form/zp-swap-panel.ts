import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { printItemName } from '../../../item-bank/items/item-name.ts';
import type { ItemEntry, SwapOfferEntry } from '../../../item-bank/types.ts';
import { ApiError } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { positionOf, replaceItem } from '../../forms/form-edits.ts';
import type { FormWork } from '../../forms/form-work.ts';
import { formsText } from '../../messages/forms.ts';
import { tell } from '../../tell.ts';
import { controlStyles } from '../control-styles.ts';
import '../zp-item.ts';

const text = formsText.swap;

interface Offer {
	readonly offer: SwapOfferEntry;
	readonly entry: ItemEntry;
}

/** The items most like one of the form, each as a student meets it, with what differs. Fires "swap-ended" (detail: item id). */
export class ZpSwapPanel extends LitElement {
	static override properties = {
		work: { attribute: false },
		item: { type: String },
		blueprint: { type: String },
		offers: { state: true },
		failure: { state: true },
	};
	declare work: FormWork;
	/** Id of the item to be replaced. */
	declare item: string;
	/** Id of the blueprint to keep; empty for none. */
	declare blueprint: string;
	declare private offers: readonly Offer[] | undefined;
	declare private failure: string | undefined;

	static override styles = [
		controlStyles,
		css`
			:host { display: block; }
			ul { list-style: none; margin: 0; padding: 0; }
			li { border-bottom: 1px solid var(--paper-line); padding: 10px 0; }
			.head { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 4px 14px; align-items: center; }
			.head strong { font-weight: 600; flex: 1 1 200px; }
			zp-item { padding: 7px 0; }
			p { margin: 4px 0; }
		`,
	];

	protected override willUpdate(changed: PropertyValues): void {
		if (changed.has('item')) void this.search();
	}

	private async search(): Promise<void> {
		const { work, item } = this;
		Object.assign(this, { offers: undefined, failure: undefined });
		const saved = work.saved?.record;
		const position = saved && positionOf(saved.form, item);
		if (!saved || position === undefined) {
			this.failure = text.unsaved;
			return;
		}
		try {
			const body = {
				version: saved.version,
				position,
				...(this.blueprint === '' ? {} : { blueprint: this.blueprint }),
			};
			const found = await callApi('POST /api/forms/{id}/swap', { path: { id: work.id }, body });
			const free = found.filter((offer) => work.form && positionOf(work.form, offer.item) === undefined);
			const entries = await Promise.all(
				free.map((offer) =>
					callApi('GET /api/items/{id}', { path: { id: offer.item }, query: { version: offer.version } }),
				),
			);
			if (this.item !== item) return;
			this.offers = free.flatMap((offer, index) => {
				const entry = entries[index];
				return entry ? [{ offer, entry }] : [];
			});
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		}
	}

	protected override render(): TemplateResult {
		return html`
			<div role="status">${this.failure ?? (this.offers === undefined ? text.searching : this.offers.length === 0 ? text.none : nothing)}</div>
			<ul>${(this.offers ?? []).map((offer) => this.renderOffer(offer))}</ul>
		`;
	}

	private renderOffer({ offer, entry }: Offer): TemplateResult {
		const { likeness, differences, keepsPlan } = offer;
		return html`<li>
			<div class="head">
				<strong>${printItemName(entry.item.name)}</strong>
				<span class="soft">${text.likeness(likeness)}</span>
				<button @click=${() => this.take(entry)} aria-label="${text.take}: ${printItemName(entry.item.name)}">${text.take}</button>
			</div>
			<p class="soft">${differences.length === 0 ? text.same : differences.join('; ')}${keepsPlan ? nothing : html`; <span class="short">${text.breaksPlan}</span>`}</p>
			<zp-item .item=${entry.item} grid=${this.work.form?.gridProfile ?? ''}></zp-item>
		</li>`;
	}

	private take(entry: ItemEntry): void {
		const { form } = this.work;
		if (!form) return;
		const old = form.sections.flatMap(({ items }) => items).find(({ item }) => item === this.item);
		const name = old ? this.work.items.nameOf(old) : this.item;
		this.work.items.learn([entry]);
		this.work.change(replaceItem(form, this.item, { item: entry.id, version: entry.version }), text.took);
		tell(text.told(name, printItemName(entry.item.name)), async () => {
			if (this.work.form && old) this.work.change(replaceItem(this.work.form, entry.id, old), text.took);
		});
		this.dispatchEvent(new CustomEvent<string>('swap-ended', { detail: entry.id }));
	}
}

customElements.define('zp-swap-panel', ZpSwapPanel);
