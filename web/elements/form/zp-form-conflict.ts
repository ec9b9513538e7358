import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { FormItem } from '../../../item-bank/types.ts';
import { compareStates } from '../../forms/form-differences.ts';
import type { FormWork } from '../../forms/form-work.ts';
import { formsText } from '../../messages/forms.ts';
import { controlStyles } from '../control-styles.ts';

const text = formsText.conflict;

/** Two states of one form beside each other, when somebody else saved in between, and the three ways to go on. */
export class ZpFormConflict extends LitElement {
	static override properties = { work: { attribute: false }, revision: { type: Number } };
	declare work: FormWork;
	declare revision: number;

	static override styles = [
		controlStyles,
		css`
			:host { display: block; border-left: 4px solid var(--pencil); background: var(--pencil-wash); padding: 10px 14px; margin: 14px 0; }
			h2 { font-size: 18px; line-height: 28px; }
			.sides { display: grid; grid-template-columns: 1fr 1fr; gap: 14px; }
			h3 { font-size: 15px; line-height: 24px; border-bottom: 1px solid var(--ink); }
			ul { margin: 0; padding-left: 20px; font-size: 15px; line-height: 24px; }
			p { margin: 4px 0; }
			.ways { display: flex; flex-wrap: wrap; gap: 8px; margin-top: 10px; }
			@media (max-width: 720px) { .sides { grid-template-columns: 1fr; } }
		`,
	];

	protected override render(): TemplateResult | typeof nothing {
		const { conflict, form } = this.work;
		if (!conflict || !form) return nothing;
		const theirs = conflict.record;
		const differences = compareStates(theirs.form, form);
		const { added, removed, moved, changed } = differences;
		const both = [
			differences.title ? text.titles(form.title, theirs.form.title) : '',
			differences.gridProfile ? text.grid : '',
			differences.sections ? text.sections : '',
			moved.length > 0 ? text.moved(moved.length) : '',
			changed.length > 0 ? text.changed(changed.length) : '',
		].filter((line) => line !== '');
		return html`
			<h2 id="head" tabindex="-1">${text.title(this.work.version, theirs.version)}</h2>
			<p>${text.lead}</p>
			<div class="sides">
				<div><h3>${text.mine}</h3><p>${text.onlyMine}:</p>${this.renderItems(added)}</div>
				<div><h3>${text.theirs(theirs.version)}</h3><p>${text.onlyTheirs}:</p>${this.renderItems(removed)}</div>
			</div>
			${both.length > 0 ? html`<p>${text.differs}:</p><ul>${both.map((line) => html`<li>${line}</li>`)}</ul>` : nothing}
			<div class="ways">
				<button @click=${() => this.settle('mine')}>${text.keepMine}</button>
				<button @click=${() => this.settle('theirs')}>${text.keepTheirs}</button>
				${added.length > 0 ? html`<button @click=${() => this.settle('both')}>${text.keepBoth(added.length)}</button>` : nothing}
			</div>
		`;
	}

	protected override firstUpdated(): void {
		this.renderRoot.querySelector<HTMLElement>('#head')?.focus();
	}

	private renderItems(entries: readonly FormItem[]): TemplateResult {
		if (entries.length === 0) return html`<p class="soft">${text.none}</p>`;
		return html`<ul>${entries.map((entry) => html`<li>${this.work.items.nameOf(entry)}</li>`)}</ul>`;
	}

	private settle(choice: 'mine' | 'theirs' | 'both'): void {
		void this.work.settle(choice);
		this.dispatchEvent(new Event('conflict-settled'));
	}
}

customElements.define('zp-form-conflict', ZpFormConflict);
