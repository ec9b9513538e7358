import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { pointsAt } from '../../../item-bank/forms/check-form.ts';
import type { FormItem } from '../../../item-bank/types.ts';
import type { FormWork } from '../../forms/form-work.ts';
import { formsText } from '../../messages/forms.ts';
import { words } from '../../messages/words.ts';
import '../zp-item-facts.ts';
import '../zp-item.ts';
import { arrow, grip, strike } from './glyphs.ts';

const text = formsText.outline;

/** How a row stands and what it is drawn from. */
export interface RowState {
	readonly work: FormWork;
	readonly entry: FormItem;
	/** 1 for the first item of the test. */
	readonly position: number;
	/** JSON pointer into the form. */
	readonly path: string;
	readonly isChosen: boolean;
	/** Opened because every item shows in full. */
	readonly isFull: boolean;
	readonly isDragged: boolean;
	readonly hasLanded: boolean;
	/** Whether a dragged row would land above this one. */
	readonly isTarget: boolean;
	readonly keys: boolean;
}

/** What can be done to a row. */
export interface RowActs {
	readonly choose: () => void;
	readonly press: (event: KeyboardEvent) => void;
	readonly drag: (event: PointerEvent) => void;
	readonly move: (step: -1 | 1) => void;
	readonly takeOut: () => void;
	readonly swap: () => void;
	readonly givePoints: (event: Event) => void;
}

/** One row of the outline: where it stands, what it is, and, opened, the item as a student meets it. */
export function renderRow(state: RowState, acts: RowActs): TemplateResult {
	const { work, entry, position, path } = state;
	const item = work.items.find(entry.item, entry.version);
	const isOpen = state.isFull || state.isChosen;
	const name = item ? work.items.nameOf(entry) : text.unknownItem(entry.item, entry.version);
	const fault = work.problems.find((problem) => problem.path.startsWith(`${path}/`) || problem.path === path);
	const marks = [
		state.isChosen ? 'chosen' : '',
		state.isDragged ? 'dragged' : '',
		state.hasLanded ? 'landed' : '',
		item ? '' : 'lost',
	];
	const tool = (label: string, act: () => void, glyph: TemplateResult): TemplateResult =>
		html`<button tabindex="-1" aria-label="${label}: ${name}" title=${label} @click=${act}>${glyph}</button>`;
	return html`<li class=${marks.join(' ')} data-item=${entry.item}>
		${state.isTarget ? html`<div class="drop"></div>` : nothing}
		<div class="row">
			<span class="grip" title=${text.drag} @pointerdown=${acts.drag}>${grip}${position}</span>
			<button class="name" aria-expanded=${isOpen} aria-describedby="keys" @click=${acts.choose} @keydown=${acts.press}>
				<span class="spoken">${position}.</span> ${name}
			</button>
			<span class="cell">${item?.alignments.find(({ primary }) => primary === true)?.code ?? ''}</span>
			<span class="cell model">${item ? words.models[item.given] : ''}</span>
			<span class="cell kind">${item ? words.kinds[item.kind] : ''}</span>
			<span class="points">${item ? pointsAt(entry, item) : (entry.points ?? '')}<span class="soft" aria-hidden="true"> ${text.pointShort}</span><span class="spoken"> ${text.points}</span></span>
			<span class="tools">
				${tool(text.moveUp, () => acts.move(-1), arrow(-1))} ${tool(text.moveDown, () => acts.move(1), arrow(1))}
				${tool(text.remove, acts.takeOut, strike)}
			</span>
		</div>
		${fault ? html`<p class="fault">${fault.message}</p>` : nothing}
		${isOpen ? renderOpen(state, acts) : nothing}
	</li>`;
}

function renderOpen({ work, entry, position, isChosen, keys }: RowState, acts: RowActs): TemplateResult {
	const record = work.items.findEntry(entry.item, entry.version);
	if (!record) return html`<div class="acts alone"><button @click=${acts.takeOut}>${text.remove}</button></div>`;
	return html`<article class="open" aria-label=${text.item(position)}>
		<zp-item .item=${record.item} grid=${work.form?.gridProfile ?? ''}></zp-item>
		<zp-item-facts .record=${record} .points=${entry.points} .keys=${keys}></zp-item-facts>
		${isChosen ? renderActs(entry, pointsAt(entry, record.item), acts) : nothing}
	</article>`;
}

function renderActs(entry: FormItem, points: number, acts: RowActs): TemplateResult {
	return html`<div class="acts">
		<button data-step="-1" @click=${() => acts.move(-1)}>${text.moveUp}</button>
		<button data-step="1" @click=${() => acts.move(1)}>${text.moveDown}</button>
		<button data-dialog="swap" @click=${acts.swap}>${text.swap}</button>
		<button @click=${acts.takeOut}>${text.remove}</button>
		<label>${text.pointsHere} <input type="number" min="1" max="10" .value=${live(String(points))} @change=${acts.givePoints} /></label>
		<a href="#/items/${entry.item}">${text.openItem}</a>
	</div>`;
}
