import { html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import { goTo, printAddress } from '../address.ts';
import { newFormId } from '../forms/draft-storage.ts';
import { startDraft } from '../forms/form-work.ts';
import '../elements/form/zp-form-builder.ts';
import '../elements/form/zp-form-comparison.ts';
import '../elements/form/zp-form-desk.ts';
import '../elements/form/zp-form-list.ts';

/**
 * The forms of the bank: the list, one form on its desk, forms built from a blueprint (`?view=build`), two forms compared
 * (`?view=compare`).
 */
export class ZpFormsPage extends LitElement {
	static override properties = { formId: { attribute: 'form-id' }, query: { attribute: false } };
	/** Id of a form; "new" where one is to be made; empty for the list. */
	declare formId: string;
	declare query: URLSearchParams;

	constructor() {
		super();
		this.formId = '';
		this.query = new URLSearchParams();
	}

	protected override willUpdate(changed: PropertyValues): void {
		// A new form gets its address at once, so that a reload comes back to it.
		if (changed.has('formId') && this.formId === 'new') {
			goTo(printAddress('forms', { add: this.query.get('add') ?? '' }, startDraft(newFormId())), false);
		}
	}

	protected override render(): TemplateResult {
		const { formId, query } = this;
		if (formId === 'new') return html``;
		if (formId !== '') return html`<zp-form-desk form-id=${formId} add=${query.get('add') ?? ''}></zp-form-desk>`;
		switch (query.get('view')) {
			case 'build':
				return html`<zp-form-builder plan=${query.get('blueprint') ?? ''}></zp-form-builder>`;
			case 'compare':
				return html`<zp-form-comparison first=${query.get('first') ?? ''} second=${query.get('second') ?? ''}></zp-form-comparison>`;
			default:
				return html`<zp-form-list></zp-form-list>`;
		}
	}
}

customElements.define('zp-forms-page', ZpFormsPage);
