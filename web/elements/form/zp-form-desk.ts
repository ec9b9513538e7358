import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { positionsOf } from '../../../item-bank/forms/check-form.ts';
import { printItemName } from '../../../item-bank/items/item-name.ts';
import type { BlueprintEntry, Form, GroupEntry, ItemEntry } from '../../../item-bank/types.ts';
import { goTo, printAddress } from '../../address.ts';
import { ApiError, fetchGroups } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { readPlan, writePlan } from '../../forms/draft-storage.ts';
import { addItem, positionOf } from '../../forms/form-edits.ts';
import { FormWork } from '../../forms/form-work.ts';
import { formsText } from '../../messages/forms.ts';
import { words } from '../../messages/words.ts';
import { tell } from '../../tell.ts';
import { controlStyles } from '../control-styles.ts';
import { deskStyles } from './desk-styles.ts';
import './zp-form-conflict.ts';
import './zp-form-dialogs.ts';
import type { DialogName } from './zp-form-dialogs.ts';
import './zp-form-facts.ts';
import './zp-form-head.ts';
import type { ZpFormHead } from './zp-form-head.ts';
import './zp-form-outline.ts';
import type { ZpFormOutline } from './zp-form-outline.ts';
import './zp-item-finder.ts';

const text = formsText.desk;

/** One form on the desk: put together, held against a plan, saved as versions, shown, printed, exported, given. */
export class ZpFormDesk extends LitElement {
	static override properties = {
		formId: { attribute: 'form-id' },
		add: { type: String },
		blueprints: { state: true },
		blueprint: { state: true },
		groups: { state: true },
		keys: { state: true },
		full: { state: true },
		section: { state: true },
		dialog: { state: true },
		said: { state: true },
	};
	declare formId: string;
	/** Id of an item to add on opening, from the address. */
	declare add: string;
	declare private blueprints: readonly BlueprintEntry[];
	declare private blueprint: string;
	declare private groups: readonly GroupEntry[];
	declare private keys: boolean;
	declare private full: boolean;
	/** The section whose finder is open. */
	declare private section: number | undefined;
	declare private dialog: DialogName | undefined;
	/** Said to screen readers when something was done. */
	declare private said: string;
	/** The item that is to be swapped. */
	declare private swapped: string;
	private readonly work = new FormWork(this);
	private readonly press = (event: KeyboardEvent): void => this.takeKey(event);
	private readonly refresh = (): void => void this.work.refreshGivings();

	constructor() {
		super();
		Object.assign(this, { blueprints: [], groups: [], blueprint: '', keys: false, full: false, said: '', add: '' });
	}

	static override styles = [controlStyles, deskStyles];

	override connectedCallback(): void {
		super.connectedCallback();
		window.addEventListener('keydown', this.press);
		window.addEventListener('zp-form-given', this.refresh);
		void this.loadSurroundings();
	}

	override disconnectedCallback(): void {
		window.removeEventListener('keydown', this.press);
		window.removeEventListener('zp-form-given', this.refresh);
		super.disconnectedCallback();
	}

	protected override willUpdate(changed: PropertyValues): void {
		if (changed.has('formId') || changed.has('add')) void this.open(changed.has('formId'));
	}

	/** Opens the form, adds the item the address names, and takes it out of the address, so that a reload adds nothing. */
	private async open(isOther: boolean): Promise<void> {
		const { formId, add } = this;
		const comesFromSheet = this.dialog !== undefined;
		if (isOther) {
			Object.assign(this, { section: undefined, dialog: undefined, keys: false });
			this.blueprint = readPlan(localStorage, formId);
			await this.work.open(formId);
			if (comesFromSheet) void this.focusHead('title');
			document.title = words.frame.title(this.work.form?.title || formsText.list.untitled);
		}
		if (add === '' || !this.work.form || this.formId !== formId) return;
		goTo(printAddress('forms', {}, formId), false);
		try {
			this.addItem(await callApi('GET /api/items/{id}', { path: { id: add } }));
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			tell(text.addFailed(add, error.message));
		}
	}

	private async loadSurroundings(): Promise<void> {
		const [blueprints, groups] = await Promise.allSettled([callApi('GET /api/blueprints'), fetchGroups()]);
		if (blueprints.status === 'fulfilled') this.blueprints = blueprints.value;
		if (groups.status === 'fulfilled') this.groups = groups.value;
	}

	private get outline(): ZpFormOutline | null {
		return this.renderRoot.querySelector<ZpFormOutline>('zp-form-outline');
	}

	private addItem(entry: ItemEntry): void {
		const { form } = this.work;
		if (!form) return;
		if (positionOf(form, entry.id) !== undefined) {
			tell(text.alreadyThere(printItemName(entry.item.name)));
			return;
		}
		this.work.items.learn([entry]);
		const next = addItem(form, { item: entry.id, version: entry.version }, this.section ?? form.sections.length - 1);
		this.work.change(next, text.did.added);
		this.said = text.added(printItemName(entry.item.name), positionOf(next, entry.id) ?? 0);
		if (this.section === undefined) {
			tell(this.said);
			this.outline?.showItem(entry.id);
		}
	}

	private async save(): Promise<void> {
		if (await this.work.save()) tell(text.told(this.work.version));
		else
			await this.updateComplete.then(() =>
				this.renderRoot.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus(),
			);
	}

	private takeKey(event: KeyboardEvent): void {
		const isField = event.composedPath().some((node) => node instanceof HTMLInputElement && node.type !== 'checkbox');
		if (!(event.ctrlKey || event.metaKey) || event.altKey || this.dialog !== undefined) return;
		if (event.key === 's') void this.save();
		else if (event.key === 'z' && !isField) this.step(event.shiftKey ? 'redo' : 'undo');
		else return;
		event.preventDefault();
	}

	private async focusHead(place: 'title' | 'save'): Promise<void> {
		await this.updateComplete;
		await this.renderRoot.querySelector<ZpFormHead>('zp-form-head')?.focusPlace(place);
	}

	private step(way: 'undo' | 'redo'): void {
		const what = this.work[way]();
		if (what !== undefined) this.said = way === 'undo' ? text.undid(what) : text.redid(what);
	}

	private close(): void {
		const name = this.dialog;
		this.dialog = undefined;
		void this.updateComplete.then(() => {
			if (name === 'swap') this.outline?.focusSwap(this.swapped);
			else this.renderRoot.querySelector<HTMLElement>(`[data-dialog="${name}"]`)?.focus();
		});
	}

	private endSwap(item: string): void {
		this.dialog = undefined;
		this.outline?.showItem(item);
	}

	private openFinder(section: number): void {
		this.section = section;
	}

	/** Closes the finder and gives the focus back to the button that opened it. */
	private closeFinder(): void {
		const { section } = this;
		this.section = undefined;
		this.outline?.focusFoot(section ?? 0);
	}

	private choosePlan(id: string): void {
		this.blueprint = id;
		writePlan(localStorage, this.formId, id);
	}

	protected override render(): TemplateResult {
		const { work } = this;
		if (!work.form) return html`<div class="middle">${this.renderAbsence()}</div>`;
		return html`
			<div class="desk">
				<div class="middle">
					<a class="up" href=${printAddress('forms')}>${text.forms}</a>
					<zp-form-head .work=${work} .revision=${work.revision} .groups=${this.groups}
						@save-asked=${() => void this.save()} @undo-asked=${() => this.step('undo')} @redo-asked=${() => this.step('redo')}></zp-form-head>
					${work.conflict ? html`<zp-form-conflict .work=${work} .revision=${work.revision} @conflict-settled=${() => void this.focusHead('save')}></zp-form-conflict>` : nothing}
					${this.renderBar()} ${this.renderViews(work.form)}
					<zp-form-outline .work=${work} .revision=${work.revision} .keys=${this.keys} .full=${this.full}
						@finder-asked=${(event: CustomEvent<number>) => this.openFinder(event.detail)}
						@swap-asked=${(event: CustomEvent<string>) => Object.assign(this, { swapped: event.detail, dialog: 'swap' })}>
						${this.renderFinder(work.form)}
					</zp-form-outline>
				</div>
				<aside aria-label=${text.computed}>
					<div class="stick" tabindex="0" role="group" aria-label=${text.computed}>
						<zp-form-facts .work=${work} .revision=${work.revision} .blueprints=${this.blueprints} blueprint=${this.blueprint}
							@blueprint-chosen=${(event: CustomEvent<string>) => this.choosePlan(event.detail)}></zp-form-facts>
					</div>
				</aside>
			</div>
			<div class="spoken" role="status">${this.said}</div>
			${
				this.dialog === undefined
					? nothing
					: html`<zp-form-dialogs .work=${work} .revision=${work.revision} .name=${this.dialog} .item=${this.swapped} .blueprint=${this.blueprint}
						@swap-ended=${(event: CustomEvent<string>) => this.endSwap(event.detail)} @dialog-closed=${() => this.close()} @save-asked=${() => void this.save()}></zp-form-dialogs>`
			}
		`;
	}

	private renderAbsence(): TemplateResult {
		const { failure } = this.work;
		if (failure?.code === 'not-found') {
			return html`<p class="failure" role="alert">${text.notFound(this.formId)}</p><p><a href=${printAddress('forms')}>${text.forms}</a></p>`;
		}
		if (failure) return html`<p class="failure" role="alert">${failure.message}</p>`;
		return html`<p role="status">${words.frame.reading}</p>`;
	}

	private renderBar(): TemplateResult {
		const act = (name: DialogName, words: string): TemplateResult =>
			html`<button data-dialog=${name} @click=${() => Object.assign(this, { dialog: name })}>${words}</button>`;
		return html`<div class="bar" role="group" aria-label=${text.more}>
			${act('preview', text.see)} ${act('print', text.print)} ${act('export', text.export)} ${act('give', text.give)} ${act('another', text.another)}
			${this.work.saved ? html`<a class="button" href=${printAddress('forms', { view: 'compare', first: this.formId })}>${text.compare}</a>` : nothing}
		</div>`;
	}

	private renderViews(form: Form): TemplateResult {
		if (positionsOf(form).length === 0) return html`<p class="first">${text.firstMark}</p>`;
		return html`<div class="views">
			<label><input type="checkbox" .checked=${live(this.full)} @change=${() => Object.assign(this, { full: !this.full })} /> ${text.full}</label>
			<label><input type="checkbox" .checked=${live(this.keys)} @change=${() => Object.assign(this, { keys: !this.keys })} /> ${text.keys}</label>
			<span class="soft">${formsText.outline.hint}</span>
		</div>`;
	}

	private renderFinder(form: Form): TemplateResult | typeof nothing {
		const { section } = this;
		const title = section === undefined ? undefined : form.sections[section]?.title;
		if (title === undefined) return nothing;
		const taken = new Set(positionsOf(form).map(({ entry }) => entry.item));
		return html`<zp-item-finder slot="finder-${section}" section=${title} .taken=${taken} grid=${form.gridProfile}
			@item-chosen=${(event: CustomEvent<ItemEntry>) => this.addItem(event.detail)} @finder-closed=${() => this.closeFinder()}></zp-item-finder>`;
	}
}

customElements.define('zp-form-desk', ZpFormDesk);
