import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { positionsOf } from '../../../item-bank/forms/check-form.ts';
import type { FormWork } from '../../forms/form-work.ts';
import { formsText } from '../../messages/forms.ts';
import { controlStyles } from '../control-styles.ts';
import '../answer/zp-item-trial.ts';

const text = formsText.preview;

/**
 * The form as a student meets it: one item after the other, to be answered. What was answered stays while the preview is open. What is
 * right is told only where the teacher asks for it.
 */
export class ZpStudentPreview extends LitElement {
	static override properties = { work: { attribute: false }, at: { state: true }, isChecking: { state: true } };
	declare work: FormWork;
	declare private at: number;
	/** Whether answers can be checked, which shows keys. */
	declare private isChecking: boolean;
	/** Places that were looked at: their answers are kept. */
	private readonly seen = new Set<number>([0]);

	constructor() {
		super();
		this.at = 0;
		this.isChecking = false;
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: block; }
			.place { display: flex; justify-content: space-between; gap: 14px; align-items: center; }
			.track { display: block; width: 100%; height: 14px; }
			zp-item-trial { display: block; min-height: 300px; padding: 14px 0 21px; }
			zp-item-trial[hidden] { display: none; }
			.check { display: flex; gap: 8px; align-items: center; margin-bottom: 14px; }
			nav { display: flex; justify-content: space-between; border-top: 1px solid var(--rule); padding-top: 14px; }
			nav button { min-height: 44px; min-width: 120px; justify-content: center; }
		`,
	];

	protected override render(): TemplateResult {
		const { form } = this.work;
		const places = form ? positionsOf(form) : [];
		const here = places[this.at];
		if (!form || !here) return html`<p>${text.empty}</p>`;
		const dot = places.length === 1 ? 50 : 2 + (this.at / (places.length - 1)) * 96;
		return html`
			<div class="place"><strong aria-live="polite">${text.of(this.at + 1, places.length)}</strong><span class="soft">${form.sections[here.sectionIndex]?.title}</span></div>
			<svg class="track" viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true"><path d="M0 2H100M${dot} 0V4" stroke="var(--ink)" stroke-width="1" vector-effect="non-scaling-stroke" /></svg>
			${places.map(({ entry }, index) => (this.seen.has(index) ? html`<zp-item-trial ?hidden=${index !== this.at} .item=${this.work.items.find(entry.item, entry.version)} .grid=${form.gridProfile} .isUnchecked=${!this.isChecking}></zp-item-trial>` : nothing))}
			<label class="check"><input type="checkbox" .checked=${this.isChecking} @change=${(event: Event) => this.chooseChecking(event)}>${text.check}</label>
			<nav aria-label=${text.of(this.at + 1, places.length)}>
				<button aria-disabled=${this.at === 0} @click=${() => this.go(-1, places.length)}>${text.back}</button>
				<button class="primary" aria-disabled=${this.at === places.length - 1} @click=${() => this.go(1, places.length)}>${text.next}</button>
			</nav>
		`;
	}

	private go(step: number, length: number): void {
		this.at = Math.max(0, Math.min(length - 1, this.at + step));
		this.seen.add(this.at);
	}

	private chooseChecking(event: Event): void {
		this.isChecking = event.target instanceof HTMLInputElement && event.target.checked;
	}
}

customElements.define('zp-student-preview', ZpStudentPreview);
