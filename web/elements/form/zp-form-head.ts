import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { gridProfiles } from '../../../item-bank/responses/grid-profiles.ts';
import type { Form, GroupEntry } from '../../../item-bank/types.ts';
import type { FormWork } from '../../forms/form-work.ts';
import { formsText } from '../../messages/forms.ts';
import { controlStyles } from '../control-styles.ts';
import { deskStyles } from './desk-styles.ts';

const text = formsText.desk;

/** Title and answer grid of the form, whether the bank has it, and the way back. Fires "save-asked", "undo-asked", "redo-asked". */
export class ZpFormHead extends LitElement {
	static override properties = {
		work: { attribute: false },
		revision: { type: Number },
		groups: { attribute: false },
		isTouched: { state: true },
	};
	declare work: FormWork;
	declare revision: number;
	declare groups: readonly GroupEntry[];
	/** Whether saving was tried without a title. */
	declare private isTouched: boolean;

	constructor() {
		super();
		Object.assign(this, { groups: [], isTouched: false });
	}

	static override styles = [controlStyles, deskStyles];

	/** Puts the focus on the title or on the button that saves. */
	async focusPlace(place: 'title' | 'save'): Promise<void> {
		await this.updateComplete;
		this.renderRoot.querySelector<HTMLElement>(place === 'title' ? 'input' : 'button.primary')?.focus();
	}

	protected override render(): TemplateResult | typeof nothing {
		const { work } = this;
		const { form } = work;
		if (!form) return nothing;
		return html`
			<h1>
				<label class="title"><span class="spoken">${text.title}</span>
					<input maxlength="120" placeholder=${text.titlePlaceholder} .value=${live(form.title)} aria-describedby="title-fault"
						aria-invalid=${this.titleFault === undefined ? 'false' : 'true'} @change=${(event: Event) => this.retitle(form, event)} /></label>
			</h1>
			<p class="fault" id="title-fault">${this.titleFault ?? nothing}</p>
			<div class="state">
				<button class="primary" aria-disabled=${work.saving === 'busy' || !work.isUnsaved} @click=${() => this.save(form)}>${work.saving === 'busy' ? text.saving : text.save}</button>
				<span role="status" class=${work.isUnsaved ? 'unsaved' : 'soft'}>${work.isUnsaved ? text.unsaved(work.version) : text.saved(work.version)}</span>
				<button aria-disabled=${work.undoable === undefined} title=${work.undoable ?? ''} @click=${() => this.ask('undo-asked')}>${text.undo}</button>
				<button aria-disabled=${work.redoable === undefined} title=${work.redoable ?? ''} @click=${() => this.ask('redo-asked')}>${text.redo}</button>
				${work.isUnsaved && work.saved && !work.conflict ? html`<button class="plain" @click=${() => this.discard()}>${text.discard}</button>` : nothing}
				<label>${text.grid}
					<select title=${text.gridMeaning} aria-invalid=${this.faultsAt('/gridProfile').length > 0} @change=${(event: Event) => this.chooseGrid(form, event)}>
						${gridProfiles.map(({ id, name }) => html`<option value=${id} ?selected=${id === form.gridProfile}>${name}</option>`)}
					</select></label>
			</div>
			${this.renderTrouble()} ${this.renderGivings()}
		`;
	}

	private get titleFault(): string | undefined {
		const isBlank = this.work.form?.title.trim() === '';
		if (isBlank && this.isTouched) return text.titleMissing;
		return this.faultsAt('/title')[0];
	}

	private faultsAt(path: string): readonly string[] {
		return this.work.problems.filter((problem) => problem.path.startsWith(path)).map(({ message }) => message);
	}

	private renderTrouble(): TemplateResult {
		const { work } = this;
		const isHere = (path: string): boolean => !/^\/sections\/\d+\/items\/\d+|^\/title/.test(path);
		const others = work.problems.filter(({ path }) => isHere(path));
		return html`<div role="alert">
			${work.saving === 'waiting' ? html`<p class="failure">${text.waiting}</p>` : nothing}
			${work.isOutdated ? html`<p class="failure">${text.elsewhere} <button @click=${() => this.openAgain()}>${text.takeElsewhere}</button></p>` : nothing}
			${work.isKept ? nothing : html`<p class="failure">${text.notKept}</p>`}
			${work.saving === 'waiting' || !work.failure ? nothing : html`<div class="failure">${text.notSaved(work.failure.message)}${others.length > 1 ? html`<ul>${others.map(({ message }) => html`<li>${message}</li>`)}</ul>` : nothing}</div>`}
		</div>`;
	}

	private renderGivings(): TemplateResult | typeof nothing {
		const givings = this.work.saved?.givings ?? [];
		if (givings.length === 0) return nothing;
		const nameOf = (id: string): string => this.groups.find((entry) => entry.id === id)?.group.name ?? id;
		const lines = givings.map(({ group, date, version }) => text.giving(nameOf(group), date, version));
		return html`<p class="soft">${text.givings(lines)}</p>`;
	}

	private discard(): void {
		this.work.discard();
		void this.focusPlace('save');
	}

	private openAgain(): void {
		void this.work.open(this.work.id).then(() => this.focusPlace('save'));
	}

	private save(form: Form): void {
		this.isTouched = true;
		if (form.title.trim() === '') {
			void this.updateComplete.then(() => this.renderRoot.querySelector('input')?.focus());
			return;
		}
		if (this.work.saving !== 'busy' && this.work.isUnsaved) this.ask('save-asked');
	}

	private retitle(form: Form, event: Event): void {
		const title = event.target instanceof HTMLInputElement ? event.target.value : form.title;
		this.work.change({ ...form, title }, text.titleChanged);
	}

	private chooseGrid(form: Form, event: Event): void {
		const gridProfile = event.target instanceof HTMLSelectElement ? event.target.value : form.gridProfile;
		this.work.change({ ...form, gridProfile }, text.gridChanged);
	}

	private ask(name: 'save-asked' | 'undo-asked' | 'redo-asked'): void {
		this.dispatchEvent(new Event(name));
	}
}

customElements.define('zp-form-head', ZpFormHead);
