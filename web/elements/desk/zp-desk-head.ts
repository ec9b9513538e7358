import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { printItemName } from '../../../item-bank/items/item-name.ts';
import { printAddress } from '../../address.ts';
import { type DeskWork, isUnsaved } from '../../item-draft/desk-work.ts';
import { deskWords as words } from '../../messages/item-desk.ts';
import { controlStyles } from '../control-styles.ts';

/** What can be asked of the desk in its head. */
export type DeskRequest = 'save' | 'throw-away' | 'approve' | 'retire';

/** The head of the desk: which item and version, whether work is unsaved, and what can be done. Fires desk-asked. */
export class ZpDeskHead extends LitElement {
	static override properties = {
		work: { attribute: false },
		isBusy: { attribute: false },
		isKept: { attribute: false },
		at: { type: String },
		isAsking: { state: true },
	};
	declare work: DeskWork;
	declare isBusy: boolean;
	/** Whether the browser had room for the unsaved work. */
	declare isKept: boolean;
	/** When the work was kept. */
	declare at: string;
	/** Whether a person is asked if the version is to be retired. */
	declare private isAsking: boolean;

	constructor() {
		super();
		this.isAsking = false;
	}

	static override styles = [
		controlStyles,
		css`
			:host { position: sticky; top: 0; z-index: 3; background: var(--paper); display: flex; flex-wrap: wrap; gap: 4px 14px; align-items: center; padding: 7px 28px; border-bottom: 1px solid var(--rule); min-height: 53px; }
			h2 { font-size: 18px; line-height: 24px; overflow-wrap: anywhere; }
			.who { font-size: 14px; line-height: 20px; color: var(--ink-soft); display: block; }
			.actions { margin-left: auto; display: flex; flex-wrap: wrap; gap: 8px; align-items: center; }
			.unsaved { color: var(--pencil); font-size: 14px; line-height: 20px; max-width: 22em; }
			.unsaved:empty { display: none; }
			.ask { font-size: 14px; line-height: 20px; max-width: 26em; }
			button[aria-disabled='true'] { color: var(--ink-soft); background: transparent; border-color: var(--paper-line); }
			@media (max-width: 760px) {
				:host { padding: 7px 14px; position: static; }
				.actions { margin-left: 0; width: 100%; }
			}
		`,
	];

	protected override render(): TemplateResult {
		const { id, entry, item, baseVersion } = this.work;
		const isChanged = isUnsaved(this.work);
		const next = Math.max(entry?.version ?? 0, baseVersion) + 1;
		const save = this.isBusy ? words.saving : entry === undefined ? words.saveNew : words.save(next);
		return html`
			<div>
				<h2>${printItemName(item.name)}</h2>
				<span class="who">${entry ? words.where(id, entry.version, words.status[entry.status]) : words.whereNew(id)}</span>
			</div>
			<div class="actions">
				<span class="unsaved" role="status">${isChanged ? (this.isKept ? words.unsaved(this.at) : words.unkept) : nothing}</span>
				${this.isAsking && entry ? this.renderAsking(entry.version) : this.renderActions(isChanged, save)}
			</div>
		`;
	}

	private renderActions(isChanged: boolean, save: string): TemplateResult {
		const { id, entry } = this.work;
		return html`
			<a class="button" href=${printAddress('items', { try: 'yes' }, id)}>${words.tryIt}</a>
			${isChanged && entry ? html`<button type="button" @click=${() => this.ask('throw-away')}>${words.throwAway}</button>` : nothing}
			<button type="button" class="primary" data-action="save" aria-disabled=${!isChanged || this.isBusy} @click=${() => this.ask('save')}>${save}</button>
			${entry?.status === 'draft' ? html`<button type="button" data-action="approve" @click=${() => this.ask('approve')}>${words.approve(entry.version)}</button>` : nothing}
			${entry && entry.status !== 'retired' ? html`<button type="button" data-action="retire" @click=${() => this.turn(true)}>${words.retire(entry.version)}</button>` : nothing}
		`;
	}

	private renderAsking(version: number): TemplateResult {
		const retire = (): void => {
			this.ask('retire');
			void this.turn(false);
		};
		return html`<span class="ask" id="ask">${words.retireAsk(version)}</span>
			<button type="button" class="primary" aria-describedby="ask" @click=${retire}>${words.retireYes}</button>
			<button type="button" data-action="keep" @click=${() => this.turn(false)}>${words.retireNo}</button>`;
	}

	/** The keyboard goes along with the buttons. */
	private async turn(isAsking: boolean): Promise<void> {
		this.isAsking = isAsking;
		await this.updateComplete;
		this.renderRoot.querySelector<HTMLElement>(isAsking ? '[data-action=keep]' : '[data-action=save]')?.focus();
	}

	private ask(detail: DeskRequest): void {
		this.dispatchEvent(new CustomEvent('desk-asked', { detail, bubbles: true, composed: true }));
	}
}

customElements.define('zp-desk-head', ZpDeskHead);
