import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { CarriageEntry, CarryingTable, ExportOrder } from '../../item-bank/types.ts';
import { ApiError, fetchCarrying } from '../api-client.ts';

/** Says before an export what a version carries of a form: what becomes something else, and what is lost. */
export class ZpCarrying extends LitElement {
	static override properties = {
		form: { type: String },
		version: { type: Number },
		as: { type: String },
		table: { state: true },
		failure: { state: true },
	};
	/** Id of the form. */
	declare form: string;
	declare version: number;
	declare as: ExportOrder['as'];
	declare private table: CarryingTable | undefined;
	declare private failure: string | undefined;

	static override styles = css`
		:host { display: block; margin: 7px 0; }
		p { margin: 0; }
		ul { margin: 0; padding-left: 20px; }
		.soft { color: var(--ink-soft); }
	`;

	protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
		if (changed.has('form') || changed.has('version')) void this.look();
	}

	private async look(): Promise<void> {
		const { form, version } = this;
		this.table = undefined;
		this.failure = undefined;
		try {
			const table = await fetchCarrying(form, version);
			if (form === this.form && version === this.version) this.table = table;
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		}
	}

	protected override render(): TemplateResult {
		if (this.failure !== undefined) return html`<p class="soft">What it carries cannot be told: ${this.failure}</p>`;
		if (!this.table) return html`<p class="soft">Looking at what it carries…</p>`;
		const lines = groupLines(this.table, this.as);
		const plain = this.table.items.filter(({ carries }) => isPlain(carries[this.as])).length;
		return html`
			<p>Before you export: ${plain} of ${this.table.items.length} items are carried as they are.</p>
			${lines.length === 0 ? nothing : html`<ul>${lines.map((line) => html`<li>${line}</li>`)}</ul>`}
		`;
	}
}

function isPlain({ how, lost }: CarriageEntry): boolean {
	return how === 'carried' && lost.length === 0;
}

/** One line for all that share a fate, with the numbers of the items. */
function groupLines({ items, around }: CarryingTable, as: ExportOrder['as']): readonly string[] {
	const groups = new Map<string, string[]>();
	const put = (entry: CarriageEntry, name: string): void => {
		if (!isPlain(entry)) groups.set(describe(entry), [...(groups.get(describe(entry)) ?? []), name]);
	};
	for (const { position, carries } of items) put(carries[as], String(position));
	const told = [...groups].map(
		([text, names]) => `${names.length === 1 ? 'Item' : 'Items'} ${names.join(', ')}: ${text}`,
	);
	const sides = around.filter(({ carries }) => !isPlain(carries[as]));
	return [...told, ...sides.map(({ label, carries }) => `The ${label}: ${describe(carries[as])}`)];
}

function describe({ how, as, lost, why }: CarriageEntry): string {
	if (how === 'refused') return `cannot be written. ${why ?? ''}`;
	return `${how === 'converted' ? 'only as' : ''} ${as}${lost.length === 0 ? '' : `; loses ${lost.join(', ')}`}`.trim();
}

customElements.define('zp-carrying', ZpCarrying);
