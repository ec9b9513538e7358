import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import { pointsAt, positionsOf } from '../../../item-bank/forms/check-form.ts';
import type { Form, FormItem, FormSection } from '../../../item-bank/types.ts';
import {
	addItem,
	addSection,
	findPlace,
	moveItem,
	moveSection,
	nextPlace,
	type Place,
	positionOf,
	removeItem,
	removeSection,
	retitleSection,
	setPoints,
} from '../../forms/form-edits.ts';
import type { FormWork } from '../../forms/form-work.ts';
import { followRow, readBoxes } from '../../forms/row-drag.ts';
import { formsText } from '../../messages/forms.ts';
import { words } from '../../messages/words.ts';
import { tell } from '../../tell.ts';
import { controlStyles } from '../control-styles.ts';
import { type RowState, renderRow } from './form-row.ts';
import { arrow, strike } from './glyphs.ts';
import { outlineStyles } from './outline-styles.ts';

const text = formsText.outline;

/**
 * The form as an ordered list: sections with titles, one row an item, moved by hand or by keyboard. Fires "finder-asked"
 * (detail: section) and "swap-asked" (detail: item id).
 */
export class ZpFormOutline extends LitElement {
	static override properties = {
		work: { attribute: false },
		revision: { type: Number },
		keys: { type: Boolean },
		full: { type: Boolean },
		chosen: { state: true },
		over: { state: true },
		dragged: { state: true },
		said: { state: true },
	};
	declare work: FormWork;
	declare revision: number;
	/** Whether keys and worked steps show. */
	declare keys: boolean;
	/** Whether every item shows as a student meets it. */
	declare full: boolean;
	declare private chosen: string | undefined;
	declare private over: Place | undefined;
	declare private dragged: string | undefined;
	/** Said to screen readers when something moves. */
	declare private said: string;
	private landed: string | undefined;
	private isFocusDue = false;

	constructor() {
		super();
		Object.assign(this, { keys: false, full: false, said: '' });
	}

	static override styles = [controlStyles, outlineStyles];

	/** Opens a row and brings it into view. */
	showItem(item: string): void {
		this.chosen = item;
		this.landed = item;
		this.isFocusDue = true;
	}

	/** Puts the focus on the button that adds items to a section. */
	focusFoot(section: number): void {
		this.renderRoot.querySelector<HTMLElement>(`[data-section="${section}"] .foot button`)?.focus();
	}

	/** Puts the focus on the button that swaps an item. */
	focusSwap(item: string): void {
		const button = this.renderRoot.querySelector<HTMLElement>(`[data-item="${item}"] [data-dialog="swap"]`);
		if (button) button.focus();
		else this.focusRow(item);
	}

	protected override updated(_changed: PropertyValues): void {
		if (!this.isFocusDue || this.chosen === undefined) return;
		const row = this.renderRoot.querySelector<HTMLElement>(`[data-item="${this.chosen}"] .name`);
		if (!row) return;
		this.isFocusDue = false;
		row.focus();
		row.scrollIntoView({ block: 'nearest' });
	}

	protected override render(): TemplateResult | typeof nothing {
		const { form } = this.work;
		if (!form) return nothing;
		return html`
			<p class="spoken" id="keys">${text.keyboard}</p>
			${form.sections.map((section, index) => this.renderSection(form, section, index))}
			<p class="foot whole"><button @click=${() => this.work.change(addSection(form, text.newSection(form.sections.length + 1)), text.did.sectionAdded)}>${text.addSection}</button></p>
			<div class="spoken" role="status">${this.said}</div>
		`;
	}

	private renderSection(form: Form, section: FormSection, index: number): TemplateResult {
		const { title, items } = section;
		const points = items.reduce((sum, entry) => sum + this.pointsOf(entry), 0);
		const last = form.sections.length - 1;
		const act = (
			name: string,
			label: string,
			glyph: TemplateResult,
			change: () => void,
			isOff: boolean,
		): TemplateResult =>
			html`<button data-act=${name} aria-disabled=${isOff} aria-label=${label} title=${label} @click=${() => isOff || change()}>${glyph}</button>`;
		return html`<section data-section=${index} aria-label=${title}>
			<div class="head">
				<input aria-label=${text.sectionTitle(index + 1)} maxlength="120" .value=${live(title)} aria-invalid=${title.trim() === '' ? 'true' : 'false'}
					@change=${(event: Event) => this.work.change(retitleSection(form, index, textOf(event)), text.did.sectionRenamed)} />
				<span class="soft">${words.items(items.length)}, ${words.points(points)}</span>
				${act('up', text.sectionUp(title), arrow(-1), () => this.moveSection(form, index, -1), index === 0)}
				${act('down', text.sectionDown(title), arrow(1), () => this.moveSection(form, index, 1), index === last)}
				${act('remove', text.sectionRemove(title), strike, () => this.removeSection(form, index), last === 0)}
			</div>
			${title.trim() === '' ? html`<p class="fault">${text.sectionWithoutTitle}</p>` : nothing}
			${items.length === 0 ? html`<p class="empty">${text.emptySection}</p>` : nothing}
			<ol aria-label=${text.itemsOf(title)}>
				${repeat(
					items,
					({ item }) => item,
					(entry, at) => this.renderItem(form, entry, { section: index, index: at }),
				)}
			</ol>
			${this.isOver(index, items.length) ? html`<div class="drop"></div>` : nothing}
			<p class="foot"><button @click=${() => this.ask('finder-asked', index)}>${text.addItems(title)}</button></p>
			<slot name="finder-${index}"></slot>
		</section>`;
	}

	private renderItem(form: Form, entry: FormItem, { section, index }: Place): TemplateResult {
		const { item } = entry;
		const state: RowState = {
			work: this.work,
			entry,
			position: positionOf(form, item) ?? 0,
			path: `/sections/${section}/items/${index}`,
			isChosen: this.chosen === item,
			isFull: this.full,
			isDragged: this.dragged === item,
			hasLanded: this.landed === item,
			isTarget: this.isOver(section, index),
			keys: this.keys,
		};
		return renderRow(state, {
			choose: () => this.choose(item),
			press: (event) => this.press(event, form, item),
			drag: (event) => this.drag(event, form, item),
			move: (step) => this.move(form, item, step),
			takeOut: () => this.takeOut(form, item),
			swap: () => this.ask('swap-asked', item),
			givePoints: (event) => this.givePoints(event, form, entry),
		});
	}

	private pointsOf(entry: FormItem): number {
		const item = this.work.items.find(entry.item, entry.version);
		return item ? pointsAt(entry, item) : (entry.points ?? 0);
	}

	/** Moves a section and goes with it. */
	private moveSection(form: Form, at: number, step: -1 | 1): void {
		this.work.change(moveSection(form, at, step), text.did.sectionMoved);
		this.said = text.sectionNow(form.sections[at]?.title ?? '', at + step + 1);
		this.focusSection(at + step, step === -1 ? 'up' : 'down');
	}

	private removeSection(form: Form, at: number): void {
		this.work.change(removeSection(form, at), text.did.sectionRemoved);
		this.said = text.did.sectionRemoved;
		this.focusSection(Math.max(0, at - 1), 'remove');
	}

	private focusSection(at: number, act: string): void {
		void this.updateComplete.then(() =>
			this.renderRoot.querySelector<HTMLElement>(`[data-section="${at}"] [data-act="${act}"]`)?.focus(),
		);
	}

	private choose(id: string): void {
		this.chosen = this.chosen === id ? undefined : id;
		this.landed = undefined;
	}

	/** Arrow keys go through the rows; with Alt they move one; Delete takes it out. */
	private press(event: KeyboardEvent, form: Form, id: string): void {
		const step = event.key === 'ArrowUp' ? -1 : event.key === 'ArrowDown' ? 1 : undefined;
		if (step !== undefined && event.altKey) this.move(form, id, step);
		else if (step !== undefined) this.focusRow(positionsOf(form)[(positionOf(form, id) ?? 0) - 1 + step]?.entry.item);
		else if (event.key === 'Delete') this.takeOut(form, id);
		else return;
		event.preventDefault();
	}

	private move(form: Form, id: string, step: -1 | 1): void {
		const place = nextPlace(form, id, step);
		if (!place) {
			this.said = step === -1 ? text.isFirst : text.isLast;
			return;
		}
		this.place(moveItem(form, id, place), id);
	}

	/** Lays the moved form down, says where the item is now, and keeps the focus on it. */
	private place(next: Form, id: string): void {
		const held = this.renderRoot.querySelector(':focus')?.getAttribute('data-step');
		this.work.change(next, text.did.moved);
		const place = findPlace(next, id);
		const entry = place && next.sections[place.section]?.items[place.index];
		const name = entry ? this.work.items.nameOf(entry) : id;
		const section = next.sections[place?.section ?? 0]?.title ?? '';
		this.said = text.movedTo(name, positionOf(next, id) ?? 0, positionsOf(next).length, section);
		this.landed = id;
		void this.updateComplete.then(() => {
			const button = held
				? this.renderRoot.querySelector<HTMLElement>(`[data-item="${id}"] .acts [data-step="${held}"]`)
				: null;
			if (button) button.focus();
			else this.focusRow(id);
		});
	}

	private takeOut(form: Form, id: string): void {
		const place = findPlace(form, id);
		const entry = place && form.sections[place.section]?.items[place.index];
		if (!place || !entry) return;
		const position = positionOf(form, id) ?? 0;
		const neighbour = (positionsOf(form)[position] ?? positionsOf(form)[position - 2])?.entry.item;
		this.work.change(removeItem(form, id), text.did.removed);
		if (this.chosen === id) this.chosen = undefined;
		tell(text.removed(position, this.work.items.nameOf(entry)), async () => {
			if (this.work.form)
				this.work.change(addItem(this.work.form, entry, place.section, place.index), text.did.putBack);
		});
		void this.updateComplete.then(() => this.focusRow(neighbour));
	}

	private givePoints(event: Event, form: Form, entry: FormItem): void {
		const points = Number(textOf(event));
		const own = this.work.items.find(entry.item, entry.version)?.points;
		if (!Number.isInteger(points) || points < 1 || points > 10) {
			this.said = text.pointsRange;
			tell(text.pointsRange);
			this.requestUpdate();
		} else this.work.change(setPoints(form, entry.item, points === own ? undefined : points), text.did.points);
	}

	private drag(event: PointerEvent, form: Form, id: string): void {
		const from = findPlace(form, id);
		followRow(event, {
			boxes: () => readBoxes(this.renderRoot),
			show: (over) => Object.assign(this, { over, dragged: id }),
			drop: (over) => {
				Object.assign(this, { over: undefined, dragged: undefined });
				if (!over || !from) return;
				const isBelow = over.section === from.section && over.index > from.index;
				this.place(moveItem(form, id, { section: over.section, index: over.index - (isBelow ? 1 : 0) }), id);
			},
		});
	}

	private isOver(section: number, index: number): boolean {
		return this.over?.section === section && this.over.index === index;
	}

	private focusRow(id: string | undefined): void {
		const row = id === undefined ? null : this.renderRoot.querySelector<HTMLElement>(`[data-item="${id}"] .name`);
		(row ?? this.renderRoot.querySelector<HTMLElement>('.foot button'))?.focus();
	}

	private ask(name: 'finder-asked' | 'swap-asked', detail: number | string): void {
		this.dispatchEvent(new CustomEvent(name, { detail }));
	}
}

function textOf(event: Event): string {
	return event.target instanceof HTMLInputElement ? event.target.value : '';
}

customElements.define('zp-form-outline', ZpFormOutline);
