import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { gapSides, printSigns } from '../../item-bank/items/kinds/inline-choice.ts';
import type { InlineChoiceItem, Item, Option } from '../../item-bank/types.ts';
import { areLong, itemStyles, renderBlock, renderContent } from './item-blocks.ts';
import './zp-answer-grid.ts';
import './zp-figure.ts';

/** An item as a student meets it: nothing in it tells the key. */
export class ZpItem extends LitElement {
	static override properties = { item: { attribute: false }, grid: { type: String } };
	declare item: Item | undefined;
	/** Grid profile of the form, instead of the item's own. */
	declare grid: string | undefined;

	static override styles = [
		itemStyles,
		css`
			ol { list-style: none; margin: 0; padding: 0; display: flex; flex-wrap: wrap; gap: 4px 40px; }
			ol.long { flex-direction: column; }
			li { display: flex; gap: 10px; align-items: baseline; min-height: 36px; }
			li:has(zp-figure) { align-items: center; }
			li zp-figure { margin: 4px 0; }
			.columns { display: flex; flex-wrap: wrap; gap: 0 64px; }
			.columns ol { flex-direction: column; }
			.gap { display: inline-block; width: 3.5em; border-bottom: 2px solid var(--ink); }
			.lines div { border-bottom: 1px solid var(--ink-soft); height: 36px; }
			.part { font: 600 16px/28px var(--sans); margin: 14px 0 0; }
			.letter { font-family: var(--sans); font-weight: 600; min-width: 1.2em; }
		`,
	];

	protected override render(): TemplateResult | typeof nothing {
		const { item } = this;
		if (!item) return nothing;
		return html`${item.stem.map(renderBlock)}${this.renderAnswer(item)}`;
	}

	private renderAnswer(item: Item): TemplateResult {
		switch (item.kind) {
			case 'gridded':
				return html`<zp-answer-grid profile=${this.grid ?? item.grid} unit=${item.unit ?? ''}></zp-answer-grid>`;
			case 'choice':
			case 'multiple-choice':
				return renderOptions(item.options);
			case 'point':
				return html`<zp-figure .figure=${item.line}></zp-figure>`;
			case 'order':
				return renderOptions(item.entries);
			case 'match':
				return html`<div class="columns"><div>${renderOptions(item.left)}</div><div>${renderOptions(item.right)}</div></div>`;
			case 'inline-choice':
				return renderGap(item);
			case 'explanation':
				return html`<div class="lines" role="img" aria-label="${item.lines} lines to write on">
					${Array.from({ length: item.lines }, () => html`<div></div>`)}
				</div>`;
			case 'set':
				return html`${item.parts.map(
					(part, index) => html`<section aria-label="Part ${index + 1}">
						<p class="part">Part ${index + 1}</p>
						${part.stem.map(renderBlock)}${this.renderAnswer(part)}
					</section>`,
				)}`;
		}
	}
}

function renderGap(item: InlineChoiceItem): TemplateResult {
	const [before, after] = gapSides(item);
	return html`<p class="display"><span class="math">${before} <span class="gap" role="img" aria-label="gap"></span> ${after}</span></p>
		<ol>
			${item.choices.map(({ id, math }) => html`<li><span class="letter">${id.toUpperCase()}</span><span class="math">${printSigns(math)}</span></li>`)}
		</ol>`;
}

function renderOptions(options: readonly Option[]): TemplateResult {
	return html`<ol class=${areLong(options) ? 'long' : ''}>
		${options.map((option) => html`<li><span class="letter">${option.id.toUpperCase()}</span><span>${renderContent(option)}</span></li>`)}
	</ol>`;
}

customElements.define('zp-item', ZpItem);
