import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { findPattern } from '../../../item-bank/patterns/index.ts';
import type { ChoiceItem, MultipleChoiceItem } from '../../../item-bank/types.ts';
import { type DistractorOffer, offerDistractors, takeDistractors } from '../../item-draft/fit-options.ts';
import { deskWords as words } from '../../messages/item-desk.ts';
import { controlStyles } from '../control-styles.ts';

/** Wrong numbers that error patterns lead to, the best set chosen to begin with. Fires options-taken with the changed item. */
export class ZpDistractorOffer extends LitElement {
	static override properties = {
		asked: { attribute: false },
		isOpen: { state: true },
		chosen: { state: true },
		said: { state: true },
	};
	declare asked: ChoiceItem | MultipleChoiceItem;
	declare private isOpen: boolean;
	/** Values chosen; undefined for the best set. */
	declare private chosen: readonly number[] | undefined;
	declare private said: string;

	constructor() {
		super();
		this.isOpen = false;
		this.said = '';
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; border-top: 1px solid var(--paper-line); margin-top: 8px; padding-top: 8px; }
			summary { font-weight: 600; min-height: 28px; }
			ul { list-style: none; margin: 4px 0; padding: 0; }
			label { display: grid; grid-template-columns: 24px 4em 1fr; gap: 8px; align-items: baseline; padding: 3px 0; min-height: 28px; border-bottom: 1px solid var(--paper-line); }
			.value { font: 400 18px/24px var(--serif); }
			.why { font-size: 14px; line-height: 20px; color: var(--ink-soft); }
			p { margin: 4px 0; font-size: 14px; line-height: 20px; }
		`,
	];

	protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
		const before = changed.get('asked') as ZpDistractorOffer['asked'] | undefined;
		if (before && JSON.stringify(before.rule) !== JSON.stringify(this.asked.rule)) this.chosen = undefined;
	}

	protected override render(): TemplateResult {
		const offer = this.isOpen ? offerDistractors(this.asked) : undefined;
		return html`<details @toggle=${({ target }: Event) => target instanceof HTMLDetailsElement && this.turn(target.open)}>
				<summary>${words.offer}</summary>
				${this.isOpen ? (offer ? this.renderOffer(offer) : html`<p>${words.offerNone}</p>`) : nothing}
			</details>
			<div class="spoken" aria-live="polite">${this.said}</div>`;
	}

	private turn(isOpen: boolean): void {
		this.isOpen = isOpen;
	}

	private renderOffer(offer: DistractorOffer): TemplateResult {
		const chosen = (this.chosen ?? offer.best).filter((value) => offer.candidates.some((one) => one.value === value));
		return html`<p class="soft">${words.offerHint}</p>
			<ul>
				${offer.candidates.map(
					({ value, patterns }) => html`<li><label>
						<input type="checkbox" .checked=${live(chosen.includes(value))} ?disabled=${!chosen.includes(value) && chosen.length >= 7} @change=${() => this.choose(value, chosen)} />
						<span class="value">${String(value).replace('-', '−')}</span>
						<span class="why">${patterns.map((id) => findPattern(id)?.name ?? id).join('; ')}</span>
					</label></li>`,
				)}
			</ul>
			${offer.shortfall === undefined ? nothing : html`<p class="soft">${offer.shortfall}.</p>`}
			<button type="button" ?disabled=${chosen.length === 0} @click=${() => this.take(offer, chosen)}>${words.offerTake(chosen.length)}</button>`;
	}

	private choose(value: number, chosen: readonly number[]): void {
		this.chosen = chosen.includes(value) ? chosen.filter((other) => other !== value) : [...chosen, value];
	}

	private take(offer: DistractorOffer, chosen: readonly number[]): void {
		const detail = takeDistractors(this.asked, offer, chosen);
		this.dispatchEvent(new CustomEvent('options-taken', { detail, bubbles: true, composed: true }));
		this.said = words.offerTaken(chosen.length + 1);
	}
}

customElements.define('zp-distractor-offer', ZpDistractorOffer);
