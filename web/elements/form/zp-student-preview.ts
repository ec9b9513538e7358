import { css, html, LitElement, type TemplateResult } from 'lit';
import { positionsOf } from '../../../item-bank/forms/check-form.ts';
import type { FormWork } from '../../forms/form-work.ts';
import { formsText } from '../../messages/forms.ts';
import { controlStyles } from '../control-styles.ts';
import '../zp-item.ts';

const text = formsText.preview;

/** The form as a student meets it: one item after the other, large, without keys and without what the bank knows. */
export class ZpStudentPreview extends LitElement {
	static override properties = { work: { attribute: false }, at: { state: true } };
	declare work: FormWork;
	declare private at: number;

	constructor() {
		super();
		this.at = 0;
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; }
			.place { display: flex; justify-content: space-between; gap: 14px; align-items: center; }
			.track { display: block; width: 100%; height: 14px; }
			zp-item { min-height: 300px; padding: 14px 0; font-size: 20px; }
			nav { display: flex; justify-content: space-between; border-top: 1px solid var(--rule); padding-top: 14px; }
			nav button { min-height: 44px; min-width: 120px; justify-content: center; }
		`,
	];

	protected override render(): TemplateResult {
		const { form } = this.work;
		const places = form ? positionsOf(form) : [];
		const here = places[this.at];
		const item = here && this.work.items.find(here.entry.item, here.entry.version);
		if (!form || !here) return html`<p>${text.empty}</p>`;
		const dot = places.length === 1 ? 50 : 2 + (this.at / (places.length - 1)) * 96;
		return html`
			<div class="place"><strong aria-live="polite">${text.of(this.at + 1, places.length)}</strong><span class="soft">${form.sections[here.sectionIndex]?.title}</span></div>
			<svg class="track" viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true"><path d="M0 2H100M${dot} 0V4" stroke="var(--ink)" stroke-width="1" vector-effect="non-scaling-stroke" /></svg>
			<zp-item .item=${item} grid=${form.gridProfile}></zp-item>
			<nav aria-label=${text.of(this.at + 1, places.length)}>
				<button aria-disabled=${this.at === 0} @click=${() => this.go(-1, places.length)}>${text.back}</button>
				<button class="primary" aria-disabled=${this.at === places.length - 1} @click=${() => this.go(1, places.length)}>${text.next}</button>
			</nav>
		`;
	}

	private go(step: number, length: number): void {
		this.at = Math.max(0, Math.min(length - 1, this.at + step));
	}
}

customElements.define('zp-student-preview', ZpStudentPreview);
