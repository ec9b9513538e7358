import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { printItemName } from '../../item-bank/items/item-name.ts';
import type { FormDetails, Item, ItemEntry } from '../../item-bank/types.ts';
import { printAddress } from '../address.ts';
import { findText } from '../messages/find.ts';
import { words } from '../messages/words.ts';
import { controlStyles } from './control-styles.ts';
import { hitTableStyles } from './hit-table-styles.ts';
import { renderMathematics, renderRichText } from './rich-text.ts';

/**
 * Items that were found, one a row. Arrow keys go from row to row. Fires item-chosen with the {@link ItemEntry} to add to the
 * form, and table-left when the arrow key goes up from the first row.
 */
export class ZpHitTable extends LitElement {
	static override properties = {
		items: { attribute: false },
		form: { attribute: false },
		framework: { attribute: false },
		isBusy: { type: Boolean, attribute: 'busy' },
	};
	declare items: readonly ItemEntry[];
	/** The form that items can be added to. */
	declare form: FormDetails | undefined;
	/** Whose codes the rows name. */
	declare framework: { readonly id: string; readonly edition: string } | undefined;
	/** Whether an item is on its way into the form. */
	declare isBusy: boolean;

	constructor() {
		super();
		this.items = [];
		this.isBusy = false;
	}

	static override styles = [controlStyles, hitTableStyles];

	/** Puts the focus on a row, counted from 0; the last where there are fewer. */
	focusRow(index: number): void {
		const links = this.links();
		links[Math.min(index, links.length - 1)]?.focus();
	}

	private links(): readonly HTMLElement[] {
		return [...this.renderRoot.querySelectorAll<HTMLElement>('a.name')];
	}

	private press(event: KeyboardEvent): void {
		if (event.altKey || event.metaKey || event.ctrlKey || event.shiftKey) return;
		const row = event.target instanceof HTMLElement ? event.target.closest('tr') : null;
		const links = this.links();
		const at = links.findIndex((link) => row?.contains(link));
		const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: links.length - 1 }[event.key];
		if (to === undefined || at < 0) return;
		event.preventDefault();
		if (to < 0) this.dispatchEvent(new Event('table-left'));
		else this.focusRow(to);
	}

	private choose(entry: ItemEntry): void {
		if (this.canAdd(entry) && !this.isBusy) {
			this.dispatchEvent(new CustomEvent<ItemEntry>('item-chosen', { detail: entry }));
		}
	}

	private canAdd({ id, status }: ItemEntry): boolean {
		return status === 'approved' && this.form?.items.every((each) => each.id !== id) === true;
	}

	protected override render(): TemplateResult {
		const { columns } = findText;
		return html`<table @keydown=${(event: KeyboardEvent) => this.press(event)}>
			<caption class="spoken">${findText.table}</caption>
			<thead>
				<tr>
					<th scope="col">${columns.item}</th>
					<th scope="col" class="code">${columns.standard}</th>
					<th scope="col" class="model">${columns.model}</th>
					<th scope="col" class="kind">${columns.kind}</th>
					<th scope="col" class="count">${columns.dok}</th>
					<th scope="col" class="count">${columns.points}</th>
					${this.form ? html`<th scope="col" class="add">${columns.add}</th>` : nothing}
				</tr>
			</thead>
			<tbody>
				${this.items.map((entry) => this.renderRow(entry))}
			</tbody>
		</table>`;
	}

	private renderRow(entry: ItemEntry): TemplateResult {
		const { id, item, status } = entry;
		const code = this.codeOf(item);
		const [model, kind] = [words.models[item.given], words.kinds[item.kind]];
		return html`<tr>
			<th scope="row">
				<span class="line">
					<a class="name" href=${printAddress('items', {}, id)}>${printItemName(item.name)}</a>
					${status === 'approved' ? nothing : html`<span class="status">${words.statuses[status]}</span>`}
					<span class="words">${renderStem(item)}</span>
				</span>
				<span class="facts">${[code, model, words.drawer.facts(kind, item.dok, item.points, 'approved')].filter((part) => part !== '').join(', ')}</span>
			</th>
			<td class="code">${code}</td>
			<td class="model">${model}</td>
			<td class="kind">${kind}</td>
			<td class="count">${item.dok}</td>
			<td class="count">${item.points}</td>
			${this.form ? html`<td class="add">${this.renderAdd(this.form, entry)}</td>` : nothing}
		</tr>`;
	}

	/** The button stays where it is when its item is taken, so that the focus does. */
	private renderAdd(form: FormDetails, entry: ItemEntry): TemplateResult {
		if (entry.status !== 'approved') return html`<span class="soft">${findText.notApproved}</span>`;
		const canAdd = this.canAdd(entry);
		const name = printItemName(entry.item.name);
		return html`<button
			aria-disabled=${String(!canAdd || this.isBusy)} class=${canAdd ? '' : 'taken'}
			aria-label=${canAdd ? findText.addItem(name, form.record.form.title) : findText.isOnIt(name, form.record.form.title)}
			@click=${() => this.choose(entry)}
		>${canAdd ? findText.add : findText.onIt}</button>`;
	}

	/** The code that counts in the framework the page is seen through, else the first of it. */
	private codeOf({ alignments }: Item): string {
		const { framework } = this;
		const here = alignments.filter((each) => each.framework === framework?.id && each.edition === framework.edition);
		return (here.find(({ primary }) => primary === true) ?? here[0])?.code ?? '';
	}
}

/** What a student reads in an item, in one run. */
function renderStem({ stem }: Item): readonly TemplateResult[] {
	return stem.flatMap((block) => {
		if (block.kind === 'paragraph') return [html`${renderRichText(block.text)} `];
		return block.kind === 'mathematics' ? [html`${renderMathematics(block.math)} `] : [];
	});
}

customElements.define('zp-hit-table', ZpHitTable);
