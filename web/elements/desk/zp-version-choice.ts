import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Item, ItemEntry } from '../../../item-bank/types.ts';
import { compareBranches, type Divergence, takeFields } from '../../item-draft/compare-items.ts';
import { deskWords as words } from '../../messages/item-desk.ts';
import { controlStyles } from '../control-styles.ts';
import { nameField, renderSide } from './difference-rows.ts';

/**
 * Two changes to one item side by side, field by field, to choose from. Fires choice-settled with the item to save on top of the
 * newer version.
 */
export class ZpVersionChoice extends LitElement {
	static override properties = {
		base: { attribute: false },
		newest: { attribute: false },
		mine: { attribute: false },
		isBusy: { type: Boolean, attribute: 'busy' },
		chosen: { state: true },
	};
	/** What both were made from, where it is known. */
	declare base: Item | undefined;
	/** The version somebody else saved. */
	declare newest: ItemEntry;
	declare mine: Item;
	declare isBusy: boolean;
	/** Where a person chose; other fields follow who changed them. */
	declare private chosen: Readonly<Record<string, 'theirs' | 'mine'>>;

	constructor() {
		super();
		this.isBusy = false;
		this.chosen = {};
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; border: 1px solid var(--pencil); border-left-width: 4px; background: var(--pencil-wash); padding: 14px 18px; font: 400 16px/24px var(--sans); }
			h3 { font-size: 18px; line-height: 28px; }
			p { margin: 0 0 8px; }
			.scroll { overflow-x: auto; }
			table { border-collapse: collapse; width: 100%; min-width: 560px; background: var(--sheet); }
			th, td { text-align: left; vertical-align: top; padding: 7px 10px; border-top: 1px solid var(--rule); font-weight: 400; }
			thead th { font-weight: 600; border-top: 0; }
			td { width: 40%; }
			label { display: flex; gap: 8px; align-items: flex-start; }
			label input { margin-top: 3px; }
			ul.side { list-style: none; margin: 0; padding: 0; overflow-wrap: anywhere; }
			.side .differs { font-weight: 600; }
			.side .same { color: var(--ink-soft); }
			small { display: block; color: var(--ink-soft); font-size: 14px; line-height: 20px; }
			.actions { display: flex; flex-wrap: wrap; gap: 8px; margin-top: 14px; }
			.whose { display: none; }
			@media (max-width: 760px) {
				table { min-width: 0; }
				thead { display: none; }
				tr, th, td { display: block; width: auto; }
				td { border-top: 0; padding-top: 0; }
				.whose { display: block; }
			}
		`,
	];

	protected override render(): TemplateResult {
		const { newest, mine } = this;
		const rows = compareBranches(this.base, newest.item, mine);
		const isWhole = newest.item.kind !== mine.kind;
		return html`
			<h3 tabindex="-1">${words.conflict(newest.version)}</h3>
			<p>${rows.length === 0 ? words.settleNone : isWhole ? words.kindDiffers : words.conflictAdvice}</p>
			${
				rows.length === 0 || isWhole
					? nothing
					: html`<div class="scroll" tabindex="0" role="group" aria-label=${words.conflict(newest.version)}><table>
							<thead><tr><td></td><th scope="col">${words.theirs(newest.version)}</th><th scope="col">${words.mine}</th></tr></thead>
							<tbody>${rows.map((row) => this.renderRow(row))}</tbody>
						</table></div>`
			}
			<div class="actions">
				${isWhole ? nothing : html`<button type="button" class="primary" ?disabled=${this.isBusy} @click=${() => this.settle(this.merge(rows))}>${words.settle(newest.version + 1)}</button>`}
				<button type="button" ?disabled=${this.isBusy} @click=${() => this.settle(newest.item)}>${words.takeAllTheirs}</button>
				<button type="button" ?disabled=${this.isBusy} @click=${() => this.settle(mine)}>${words.takeAllMine}</button>
			</div>
		`;
	}

	private renderRow(row: Divergence): TemplateResult {
		const side = this.sideOf(row);
		const choose = (wanted: 'theirs' | 'mine', lines: readonly string[], other: readonly string[]): TemplateResult =>
			html`<td><label><input type="radio" name="choice-${row.field}" .checked=${live(side === wanted)} @change=${() => this.choose(row.field, wanted)}
				aria-label="${nameField(row.field)}: ${wanted === 'theirs' ? words.theirs(this.newest.version) : words.mine}" aria-describedby="side-${row.field}-${wanted}" /> <span id="side-${row.field}-${wanted}"><small class="whose">${wanted === 'theirs' ? words.theirs(this.newest.version) : words.mine}</small>${renderSide(lines, other)}</span></label></td>`;
		return html`<tr>
			<th scope="row">${nameField(row.field)}<small>${words.changedBy[row.changedBy]}</small></th>
			${choose('theirs', row.before, row.after)}${choose('mine', row.after, row.before)}
		</tr>`;
	}

	private sideOf({ field, changedBy }: Divergence): 'theirs' | 'mine' {
		return this.chosen[field] ?? (changedBy === 'theirs' ? 'theirs' : 'mine');
	}

	private choose(field: string, side: 'theirs' | 'mine'): void {
		this.chosen = { ...this.chosen, [field]: side };
	}

	private merge(rows: readonly Divergence[]): Item {
		const fields = rows.filter((row) => this.sideOf(row) === 'theirs').map(({ field }) => field);
		return takeFields(this.mine, this.newest.item, fields);
	}

	private settle(item: Item): void {
		this.dispatchEvent(new CustomEvent('choice-settled', { detail: item, bubbles: true, composed: true }));
	}
}

customElements.define('zp-version-choice', ZpVersionChoice);
