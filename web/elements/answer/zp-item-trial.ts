import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { partsOf } from '../../../item-bank/items/parts.ts';
import type { Item, PartItem, PartResponse } from '../../../item-bank/types.ts';
import { answerWords as words } from '../../messages/answer.ts';
import { itemStyles, renderBlock } from '../item-blocks.ts';
import { emptyResponse, renderAnswerPlace } from './answer-place.ts';
import './zp-outcome.ts';

/** An item as a student meets it, to be answered; then what came of the answer. A change of the item starts it over. */
export class ZpItemTrial extends LitElement {
	static override properties = {
		item: { attribute: false },
		grid: { type: String },
		isUnchecked: { type: Boolean, attribute: 'unchecked' },
		responses: { state: true },
		isChecked: { state: true },
	};
	declare item: Item | undefined;
	/** Grid profile of the form, instead of the item's own. */
	declare grid: string | undefined;
	/** No way to check the answer: nothing of the key is to be seen. */
	declare isUnchecked: boolean;
	declare private responses: readonly (PartResponse | undefined)[];
	declare private isChecked: boolean;

	constructor() {
		super();
		this.isUnchecked = false;
		this.responses = [];
		this.isChecked = false;
	}

	static override styles = [
		itemStyles,
		css`
			h2 { font: 600 18px/28px var(--sans); margin: 28px 0 8px; }
			section.part { border-top: 1px solid var(--paper-line); margin-top: 28px; }
			.actions { display: flex; flex-wrap: wrap; gap: 12px; margin: 28px 0 0; }
			.actions[hidden] { display: none; }
			.actions button { font: 600 18px/24px var(--sans); min-height: 48px; padding: 8px 22px; border: 1.5px solid var(--ink); border-radius: 0; background: var(--sheet); color: var(--ink); cursor: pointer; touch-action: manipulation; }
			.actions .main { background: var(--ink); color: var(--paper); }
			.outcome { margin-top: 28px; border-left: 2px solid var(--ink); padding-left: 18px; }
		`,
	];

	protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
		if (changed.has('isUnchecked') && this.isUnchecked) this.isChecked = false;
		if (!changed.has('item') || this.item === undefined) return;
		this.responses = partsOf(this.item).map(() => undefined);
		this.isChecked = false;
	}

	protected override render(): TemplateResult | typeof nothing {
		const { item } = this;
		if (!item) return nothing;
		const parts = partsOf(item);
		return html`
			${item.stem.map(renderBlock)}
			${parts.map((part, index) => (item.kind === 'set' ? this.renderPart(part, index) : this.renderPlace(part, index)))}
			<div class="actions" ?hidden=${this.isUnchecked}>
				${
					this.isChecked
						? html`<button type="button" data-action="change" @click=${() => this.turn(false, '[data-action=check]')}>${words.change}</button>
							<button type="button" @click=${() => this.startOver()}>${words.again}</button>`
						: html`<button type="button" class="main" data-action="check" @click=${() => this.turn(true, '.outcome')}>${words.check}</button>`
				}
			</div>
		`;
	}

	private renderPart(part: PartItem, index: number): TemplateResult {
		return html`<section class="part" aria-label=${words.part(index + 1)}>
			<h2>${words.part(index + 1)}</h2>
			${part.stem.map(renderBlock)}${this.renderPlace(part, index)}
		</section>`;
	}

	private renderPlace(part: PartItem, index: number): TemplateResult {
		const response = this.responses[index];
		const take = (taken: PartResponse): void => {
			this.responses = this.responses.with(index, taken);
		};
		return html`${renderAnswerPlace(part, { response, locked: this.isChecked, grid: this.grid, take })}
			${
				this.isChecked
					? html`<div class="outcome" role="group" aria-label="What came of it" tabindex="-1">
						<zp-outcome .item=${part} .response=${response ?? emptyResponse(part)} .grid=${this.grid}></zp-outcome>
					</div>`
					: nothing
			}`;
	}

	/** The keyboard goes where the page has changed. */
	private async turn(isChecked: boolean, focus: string): Promise<void> {
		this.isChecked = isChecked;
		await this.updateComplete;
		this.renderRoot.querySelector<HTMLElement>(focus)?.focus();
	}

	private async startOver(): Promise<void> {
		this.responses = this.responses.map(() => undefined);
		await this.turn(false, '[data-action=check]');
	}
}

customElements.define('zp-item-trial', ZpItemTrial);
