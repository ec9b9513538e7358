import { css, html, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { Option, OrderItem, OrderResponse } from '../../../item-bank/types.ts';
import { answerWords as words } from '../../messages/answer.ts';
import { renderContent } from '../item-blocks.ts';
import { AnswerElement } from './answer-element.ts';
import { answerStyles } from './answer-styles.ts';
import { moveEntry } from './entry-order.ts';

/**
 * Entries to put in order: pressed they go to the next place, dragged they go where they are dropped, and in their place
 * they are moved by buttons or the arrow keys. The places are ticks on a line from one end to the other.
 */
export class ZpOrderAnswer extends AnswerElement<OrderResponse> {
	static override properties = { item: { attribute: false } };
	declare item: OrderItem;

	static override styles = [
		answerStyles,
		css`
			.sides { display: flex; flex-wrap: wrap; gap: 14px 48px; }
			h2 { font: 600 16px/28px var(--sans); margin: 0; }
			ol, ul { list-style: none; margin: 0; padding: 0; }
			.tray { display: flex; flex-direction: column; gap: 8px; min-width: 120px; }
			.tray button { display: flex; gap: 12px; align-items: center; text-align: left; width: 100%; font: inherit; cursor: grab; }
			.places { border-left: 2px solid var(--ink); margin: 4px 0 4px 10px; }
			.places li { display: flex; flex-wrap: wrap; gap: 4px 8px; align-items: center; min-height: 52px; position: relative; padding-left: 26px; }
			.places li::before { content: ''; position: absolute; left: -9px; top: 50%; width: 16px; border-top: 2px solid var(--ink); }
			.face { display: flex; gap: 12px; align-items: center; min-width: 130px; cursor: grab; }
			.empty { color: var(--ink-soft); border-bottom: 1px dashed var(--ink-soft); min-width: 130px; }
			.end { font: 400 16px/24px var(--sans); color: var(--ink-soft); }
			.places button { padding: 8px; }
		`,
	];

	protected override render(): TemplateResult {
		const { item } = this;
		const order = this.response?.order ?? [];
		const waiting = item.entries.filter(({ id }) => !order.includes(id));
		const ends = item.direction === 'ascending' ? [words.least, words.greatest] : [words.greatest, words.least];
		return html`<p class="hint">${words.orderHint}</p>
			<div class="sides">
				<section aria-labelledby="tray" @dragover=${allowDrop} @drop=${(event: DragEvent) => this.drop(event, undefined)}>
					<h2 id="tray">${words.orderTray}</h2>
					<ul class="tray">
						${waiting.length === 0 ? html`<li class="end">${words.allPlaced}</li>` : nothing}
						${repeat(
							waiting,
							({ id }) => id,
							(
								entry,
							) => html`<li><button type="button" draggable=${this.locked ? 'false' : 'true'} data-id=${entry.id} aria-describedby="tray" ?disabled=${this.locked}
								@dragstart=${(event: DragEvent) => startDrag(event, entry.id)} @click=${() => this.place(entry.id)}><span class="letter">${words.letter(entry.id)}</span><span>${renderContent(entry)}</span></button></li>`,
						)}
					</ul>
				</section>
				<section aria-labelledby="places">
					<h2 id="places">${words.orderPlaces}</h2>
					<div class="end">${ends[0]}</div>
					<ol class="places">
						${repeat(
							item.entries.map((_entry, index) => order[index] ?? index),
							(key) => key,
							(_key, index) =>
								this.renderPlace(
									item.entries.find(({ id }) => id === order[index]),
									index,
								),
						)}
					</ol>
					<div class="end">${ends[1]}</div>
				</section>
			</div>
			${this.renderSaid()}`;
	}

	private renderPlace(entry: Option | undefined, index: number): TemplateResult {
		const drop = (event: DragEvent): void => this.drop(event, index);
		if (!entry)
			return html`<li @dragover=${allowDrop} @drop=${drop}><span class="empty">${words.emptyPlace}</span></li>`;
		const { id } = entry;
		const button = (action: string, name: string, face: string, act: () => void): TemplateResult =>
			html`<button type="button" data-action=${action} aria-label=${name} ?disabled=${this.locked} @click=${act}>${face}</button>`;
		return html`<li data-placed=${id} @dragover=${allowDrop} @drop=${drop} @keydown=${(event: KeyboardEvent) => this.press(event, id, index)}>
			<span class="face" draggable=${this.locked ? 'false' : 'true'} @dragstart=${(event: DragEvent) => startDrag(event, id)}><span class="letter">${words.letter(id)}</span><span>${renderContent(entry)}</span></span>
			${button('up', words.moveUp(id), '↑', () => this.move(id, index - 1, 'up'))}
			${button('down', words.moveDown(id), '↓', () => this.move(id, index + 1, 'down'))}
			${button('back', words.takeBack(id), '×', () => this.takeBack(id))}
		</li>`;
	}

	private place(id: string, at = this.response?.order.length ?? 0): void {
		this.settle(moveEntry(this.response?.order ?? [], id, at), id);
		const next = this.item.entries.find((entry) => !this.response?.order.includes(entry.id));
		void this.focusOn(next ? `[data-id="${next.id}"]` : `[data-placed="${id}"] [data-action=up]`);
	}

	private move(id: string, to: number, action: string): void {
		const order = this.response?.order ?? [];
		this.settle(moveEntry(order, id, Math.max(0, Math.min(order.length - 1, to))), id);
		// A node that is moved in the page loses the keyboard.
		void this.focusOn(`[data-placed="${id}"] [data-action=${action}]`);
	}

	private settle(order: readonly string[], id: string): void {
		this.give({ kind: 'order', order }, words.placed(id, order.indexOf(id) + 1, this.item.entries.length));
	}

	private takeBack(id: string): void {
		this.give(
			{ kind: 'order', order: (this.response?.order ?? []).filter((other) => other !== id) },
			words.takenBack(id),
		);
		void this.focusOn(`[data-id="${id}"]`);
	}

	private press(event: KeyboardEvent, id: string, index: number): void {
		const by = { ArrowUp: -1, ArrowDown: 1 }[event.key];
		if (by === undefined || this.locked || !(event.target instanceof HTMLElement)) return;
		event.preventDefault();
		this.move(id, index + by, event.target.dataset.action ?? 'up');
	}

	private drop(event: DragEvent, index: number | undefined): void {
		event.preventDefault();
		event.stopPropagation();
		const id = event.dataTransfer?.getData('text/plain') ?? '';
		if (this.locked || !this.item.entries.some((entry) => entry.id === id)) return;
		if (index === undefined) this.takeBack(id);
		else this.place(id, index);
	}
}

function startDrag({ dataTransfer }: DragEvent, id: string): void {
	dataTransfer?.setData('text/plain', id);
}

function allowDrop(event: DragEvent): void {
	event.preventDefault();
}

customElements.define('zp-order-answer', ZpOrderAnswer);
