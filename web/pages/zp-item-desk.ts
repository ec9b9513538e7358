import { html, LitElement, nothing, type PropertyDeclarations, type TemplateResult } from 'lit';
import type { Item, ItemEntry } from '../../item-bank/types.ts';
import { goTo, printAddress } from '../address.ts';
import { ApiError, bankFoundEvent } from '../api-client.ts';
import { controlStyles } from '../elements/control-styles.ts';
import { renderFailure, renderMissing } from '../elements/desk/desk-failure.ts';
import { makeEditor } from '../elements/desk/editor.ts';
import { followNote } from '../elements/desk/follow-note.ts';
import { renderItemFields } from '../elements/desk/item-fields.ts';
import { renderJumps } from '../elements/desk/jump-line.ts';
import type { DeskRequest } from '../elements/desk/zp-desk-head.ts';
import '../elements/answer/zp-item-trial.ts';
import '../elements/desk/zp-desk-head.ts';
import '../elements/desk/zp-item-history.ts';
import '../elements/desk/zp-item-reading.ts';
import '../elements/desk/zp-item-start.ts';
import '../elements/desk/zp-version-choice.ts';
import '../elements/zp-item.ts';
import { type DeskWork, isUnsaved, openWork } from '../item-draft/desk-work.ts';
import { type Beginning, startItem } from '../item-draft/fresh-item.ts';
import { approveItem, fetchItem, newItemId, retireItem, saveItem } from '../item-draft/item-client.ts';
import { dropDraft, findDraft, keepDraft } from '../item-draft/keep-draft.ts';
import { type ItemReading, readItem } from '../item-draft/read-item.ts';
import { deskWords as words } from '../messages/item-desk.ts';
import { tell } from '../tell.ts';
import { itemDeskStyles } from './item-desk-styles.ts';

/** One item to read, answer, change, save as a version, approve and retire; a new one to begin; or several from a family. */
export class ZpItemDesk extends LitElement {
	static override properties: PropertyDeclarations = {
		itemId: { attribute: 'item-id' },
		query: { attribute: false },
		work: { state: true },
		newest: { state: true },
		base: { state: true },
		failure: { state: true },
		isBusy: { state: true },
		isKept: { state: true },
		said: { state: true },
	};
	/** Empty where a new item is to be begun. */
	declare itemId: string;
	declare query: URLSearchParams;
	declare private work: DeskWork | undefined;
	/** The version somebody else saved meanwhile, and the item that both changes were made from. */
	declare private newest: ItemEntry | undefined;
	declare private base: Item | undefined;
	declare private failure: ApiError | undefined;
	declare private isBusy: boolean;
	declare private isKept: boolean;
	declare private said: string;
	private reading: ItemReading = { parts: [], notes: [], difficulty: undefined };
	private readonly found = (): void => this.hearBank();
	private readonly press = (event: KeyboardEvent): void => this.pressKey(event);

	constructor() {
		super();
		this.itemId = this.said = '';
		this.isBusy = false;
		this.isKept = true;
	}

	static override styles = [controlStyles, itemDeskStyles];

	override connectedCallback(): void {
		super.connectedCallback();
		window.addEventListener(bankFoundEvent, this.found);
		window.addEventListener('keydown', this.press);
	}

	override disconnectedCallback(): void {
		window.removeEventListener(bankFoundEvent, this.found);
		window.removeEventListener('keydown', this.press);
		super.disconnectedCallback();
	}

	protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
		if (changed.has('itemId') && this.itemId !== this.work?.id) void this.open();
		if (changed.has('work') && this.work && this.work.item !== (changed.get('work') as DeskWork | undefined)?.item) {
			this.reading = readItem(this.work.item);
		}
	}

	private async open(): Promise<void> {
		const id = this.itemId;
		this.work = undefined;
		this.newest = undefined;
		this.failure = undefined;
		if (id === '') return;
		await this.attempt(async () => {
			const work = await openWork(id);
			if (id !== this.itemId) return;
			this.work = work;
			document.title = words.title(work.item.name);
			if (work.isBehind && work.entry) await this.meetConflict(work.entry);
		});
	}

	private start({ detail }: CustomEvent<Beginning>): void {
		const id = newItemId();
		keepDraft(id, { baseVersion: 0, item: startItem(detail), at: new Date().toISOString() });
		goTo(printAddress('items', {}, id));
	}

	/** Puts changed work on the desk and keeps it in this browser. */
	private put(item: Item): void {
		const { work } = this;
		if (!work) return;
		this.work = { ...work, item };
		if (isUnsaved(this.work)) {
			this.isKept = keepDraft(work.id, { baseVersion: work.baseVersion, item, at: new Date().toISOString() });
		} else dropDraft(work.id);
	}

	private answer({ detail }: CustomEvent<DeskRequest>): void {
		const { work } = this;
		if (!work || this.isBusy) return;
		switch (detail) {
			case 'save':
				if (isUnsaved(work)) void this.save(work.item, work.baseVersion);
				else tell(words.allSaved);
				return;
			case 'throw-away':
				this.throwAway(work);
				break;
			case 'approve':
				void this.approve(work);
				break;
			case 'retire':
				void this.stamp(work, retireItem, words.retired);
		}
	}

	private async save(item: Item, baseVersion: number): Promise<void> {
		const { work } = this;
		if (!work) return;
		this.isBusy = true;
		await this.attempt(async () => {
			const saving = await saveItem(work.id, baseVersion, item);
			if (this.work?.id !== work.id) return;
			if (saving.kind === 'conflict') {
				await this.meetConflict(saving.newest);
				return;
			}
			const { record } = saving.saved;
			// What was written while the bank was saving is not in this version yet.
			const later = this.work.item === work.item ? record.item : this.work.item;
			this.work = { id: work.id, entry: record, baseVersion: record.version, item: record.item, isBehind: false };
			this.newest = undefined;
			this.put(later);
			tell(words.saved(record.version));
		});
		this.isBusy = false;
	}

	private async meetConflict(newest: ItemEntry): Promise<void> {
		const { work } = this;
		if (!work) return;
		this.base = work.baseVersion === 0 ? undefined : (await fetchItem(work.id, work.baseVersion)).item;
		this.newest = newest;
		if (this.work?.id === work.id) this.work = { ...this.work, entry: newest, isBehind: true };
		await this.updateComplete;
		const choice = this.renderRoot.querySelector<LitElement>('zp-version-choice');
		await choice?.updateComplete;
		choice?.renderRoot.querySelector<HTMLElement>('h3')?.focus();
	}

	/** The choice is work on top of the newer version; where it says the same there is nothing to save. */
	private async settle(item: Item): Promise<void> {
		const { newest, work } = this;
		if (!newest || !work) return;
		this.newest = undefined;
		this.work = { ...work, entry: newest, baseVersion: newest.version, isBehind: false };
		this.put(item);
		if (isUnsaved(this.work)) await this.save(item, newest.version);
		this.renderRoot.querySelector<HTMLElement>('.yours')?.focus();
	}

	private throwAway(work: DeskWork): void {
		if (!work.entry) return;
		this.newest = undefined;
		this.failure = undefined;
		this.work = { ...work, item: work.entry.item, baseVersion: work.entry.version, isBehind: false };
		dropDraft(work.id);
		tell(words.thrownAway, async () => {
			this.work = work;
			this.put(work.item);
		});
		this.renderRoot.querySelector<HTMLElement>('.yours')?.focus();
	}

	private async approve(work: DeskWork): Promise<void> {
		const stops = this.reading.notes.filter(({ severity }) => severity === 'stop').length;
		if (isUnsaved(work)) tell(words.saveFirst);
		else if (stops > 0) {
			tell(words.stopped(stops));
			this.renderRoot.querySelector<HTMLElement>('.bank')?.focus();
		} else await this.stamp(work, approveItem, words.approved);
	}

	/** A step of the version's status. */
	private async stamp(
		{ id, entry }: DeskWork,
		step: (id: string, version: number) => Promise<ItemEntry>,
		say: (version: number) => string,
	): Promise<void> {
		if (!entry) return;
		this.isBusy = true;
		await this.attempt(async () => {
			const stamped = await step(id, entry.version);
			if (this.work?.id !== id) return;
			this.work = { ...this.work, entry: stamped };
			tell(say(stamped.version));
		});
		this.isBusy = false;
	}

	private async attempt(work: () => Promise<void>): Promise<void> {
		try {
			this.failure = undefined;
			this.said = '';
			await work();
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error;
		}
	}

	private hearBank(): void {
		if (this.failure?.code !== 'unreachable') return;
		this.failure = undefined;
		if (this.work) this.said = words.answersAgain;
		else void this.open();
	}

	private pressKey(event: KeyboardEvent): void {
		if (event.key !== 's' || !(event.ctrlKey || event.metaKey) || event.altKey || !this.work) return;
		event.preventDefault();
		this.answer(new CustomEvent('desk-asked', { detail: 'save' }));
	}

	protected override render(): TemplateResult {
		if (this.itemId === '') {
			// Families are a large part of the core: they are loaded where items are made from one.
			if (this.query.has('family')) void import('../elements/desk/zp-family-desk.ts');
			return this.query.has('family')
				? html`<zp-family-desk .query=${this.query}></zp-family-desk>`
				: html`<zp-item-start .query=${this.query} @start-chosen=${(event: CustomEvent<Beginning>) => this.start(event)}></zp-item-start>`;
		}
		const { failure, work } = this;
		if (!work) return failure ? renderMissing(failure, this.itemId) : html`<p class="plain">${words.reading}</p>`;
		return this.query.has('try') ? this.renderTrial(work) : this.renderDesk(work);
	}

	private renderTrial({ id, item }: DeskWork): TemplateResult {
		return html`<div class="try">
			<nav aria-label=${words.tryIt}><a href=${printAddress('items', {}, id)}>${words.backToDesk}</a></nav>
			<zp-item-trial .item=${item} .grid=${this.query.get('grid') ?? undefined}></zp-item-trial>
		</div>`;
	}

	private renderDesk(work: DeskWork): TemplateResult {
		const { newest, failure: error, said } = this;
		const editor = makeEditor(
			() => (this.work ?? work).item,
			this.reading.notes,
			(item) => this.put(item),
		);
		const follow = (path: string): void => followNote(this.renderRoot, path);
		const at = findDraft(work.id)?.at;
		const time = new Date(at ?? Date.now()).toLocaleTimeString('en', { timeStyle: 'short' });
		return html`
			<zp-desk-head .work=${work} .isBusy=${this.isBusy} .isKept=${this.isKept} at=${time} @desk-asked=${(event: CustomEvent<DeskRequest>) => this.answer(event)}></zp-desk-head>
			<div class="told" role="alert">${renderFailure({ error, said, again: () => this.answer(new CustomEvent('desk-asked', { detail: 'save' })), follow })}</div>
			${
				newest
					? html`<zp-version-choice .base=${this.base} .newest=${newest} .mine=${work.item} ?busy=${this.isBusy}
							@choice-settled=${({ detail }: CustomEvent<Item>) => void this.settle(detail)}></zp-version-choice>`
					: nothing
			}
			${renderJumps(this.renderRoot)}
			<div class="desk">
				<section class="sheet" tabindex="0" aria-label=${words.regions.sheet}><h3>${words.regions.sheet}</h3><zp-item .item=${work.item}></zp-item></section>
				<section class="yours" tabindex="-1" aria-label=${words.regions.yours}><h3>${words.regions.yours}</h3>${renderItemFields(editor, this.reading)}</section>
				<section class="bank" tabindex="0" aria-label=${words.regions.bank} @note-followed=${({ detail }: CustomEvent<string>) => follow(detail)}>
					<h3>${words.regions.bank}</h3>
					<zp-item-reading .item=${work.item} .reading=${this.reading}></zp-item-reading>
					${
						work.entry
							? html`<zp-item-history item-id=${work.id} version=${work.entry.version} status=${work.entry.status} .item=${work.item}
									@version-taken=${({ detail }: CustomEvent<Item>) => this.put(detail)}></zp-item-history>`
							: nothing
					}
				</section>
			</div>
		`;
	}
}

customElements.define('zp-item-desk', ZpItemDesk);
