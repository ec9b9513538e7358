import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { positionOf } from '../../forms/form-edits.ts';
import type { FormWork } from '../../forms/form-work.ts';
import { formsText } from '../../messages/forms.ts';
import { controlStyles } from '../control-styles.ts';
import '../zp-export-panel.ts';
import '../zp-print-panel.ts';
import './zp-another-panel.ts';
import './zp-dialog.ts';
import './zp-give-panel.ts';
import './zp-student-preview.ts';
import './zp-swap-panel.ts';

const text = formsText.desk;

/** What can be laid over the desk. */
export type DialogName = 'preview' | 'print' | 'export' | 'give' | 'another' | 'swap';

/** The sheets that are laid over a form's desk. Fires "dialog-closed", "save-asked", and "swap-ended" with the id of the item taken. */
export class ZpFormDialogs extends LitElement {
	static override properties = {
		work: { attribute: false },
		revision: { type: Number },
		name: { type: String },
		item: { type: String },
		blueprint: { type: String },
	};
	declare work: FormWork;
	declare revision: number;
	declare name: DialogName;
	/** The item to swap. */
	declare item: string;
	declare blueprint: string;

	static override styles = controlStyles;

	protected override render(): TemplateResult {
		const isWide = this.name === 'preview' || this.name === 'swap';
		return html`<zp-dialog heading=${this.heading} .wide=${isWide} @dialog-closed=${() => this.end('dialog-closed')}>
			${this.renderBody()}
		</zp-dialog>`;
	}

	protected override updated(changed: PropertyValues): void {
		// The panels fold on their own; a dialog that only shows a fold would ask for one press too many.
		if (changed.has('name') || changed.has('work')) void this.unfold();
	}

	private async unfold(): Promise<void> {
		const panel = this.renderRoot.querySelector<LitElement>('zp-export-panel, zp-print-panel');
		await panel?.updateComplete;
		panel?.renderRoot.querySelector<HTMLElement>('summary')?.click();
	}

	private get heading(): string {
		const { form } = this.work;
		switch (this.name) {
			case 'preview':
				return formsText.preview.title(form?.title ?? '');
			case 'print':
				return `${text.print}: ${form?.title ?? ''}`;
			case 'export':
				return `${text.export}: ${form?.title ?? ''}`;
			case 'give':
				return formsText.give.title;
			case 'another':
				return formsText.another.title;
			case 'swap': {
				const entry = form?.sections.flatMap(({ items }) => items).find(({ item }) => item === this.item);
				const name = entry ? this.work.items.nameOf(entry) : this.item;
				return formsText.swap.title((form && positionOf(form, this.item)) ?? 0, name);
			}
			default:
				return this.name satisfies never;
		}
	}

	private renderBody(): TemplateResult {
		const { work } = this;
		const version = work.saved?.record.version;
		switch (this.name) {
			case 'preview':
				return html`<zp-student-preview .work=${work}></zp-student-preview>`;
			case 'another':
				return html`<zp-another-panel .work=${work}></zp-another-panel>`;
			case 'swap':
				return html`<zp-swap-panel .work=${work} item=${this.item} blueprint=${this.blueprint} @swap-ended=${(event: CustomEvent<string>) => this.endSwap(event.detail)}></zp-swap-panel>`;
			case 'print':
				return this.renderSaved((at) => html`<zp-print-panel form=${work.id} version=${at}></zp-print-panel>`, version);
			case 'export':
				return this.renderSaved(
					(at) => html`<zp-export-panel form=${work.id} version=${at}></zp-export-panel>`,
					version,
				);
			case 'give':
				return this.renderSaved(
					(at) =>
						html`<zp-give-panel form=${work.id} version=${at} @form-given=${() => this.end('dialog-closed')}></zp-give-panel>`,
					version,
				);
			default:
				return this.name satisfies never;
		}
	}

	/** What needs the form in the bank: it says so when the desk holds more. */
	private renderSaved(render: (version: number) => TemplateResult, version: number | undefined): TemplateResult {
		const save = html`<button @click=${() => this.end('save-asked')}>${text.save}</button>`;
		if (version === undefined) return html`<p>${text.saveFirstNew}</p>${save}`;
		return html`${this.work.isUnsaved ? html`<p class="failure">${text.saveFirst} ${save}</p>` : nothing}${render(version)}`;
	}

	private endSwap(detail: string): void {
		this.dispatchEvent(new CustomEvent<string>('swap-ended', { detail }));
	}

	private end(name: 'dialog-closed' | 'save-asked'): void {
		this.dispatchEvent(new Event(name));
	}
}

customElements.define('zp-form-dialogs', ZpFormDialogs);
