import { css, html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { columnSymbols, type GridColumns } from '../../../item-bank/responses/grid.ts';
import { findGridProfile } from '../../../item-bank/responses/grid-profiles.ts';
import type { GridProfile, GridResponse } from '../../../item-bank/types.ts';
import { answerWords as words } from '../../messages/answer.ts';
import { AnswerElement } from './answer-element.ts';
import { answerStyles } from './answer-styles.ts';
import { columnFor, columnsOf, type Mark, markColumn, nameColumn, printMark, readMark, sayMark } from './grid-marks.ts';

/**
 * The signed answer grid as people fill it: a box on top of each column to write in, below it one bubble a symbol. What is
 * written is marked and what is marked is written. Typing goes on to the next column; Left and Right go between columns, Down
 * from a box to its bubbles, Backspace erases. A marked bubble is erased by pressing it again.
 */
export class ZpGridAnswer extends AnswerElement<GridResponse> {
	static override properties = { profile: { type: String }, unit: { type: String } };
	/** Id of the grid profile. */
	declare profile: string;
	/** Printed after the grid. */
	declare unit: string | undefined;

	static override styles = [
		answerStyles,
		css`
			.row { display: flex; gap: 14px; align-items: flex-start; }
			.grid { display: inline-flex; border: 1.5px solid var(--ink); padding: 8px 6px; background: var(--sheet); }
			.column { display: flex; flex-direction: column; align-items: center; }
			.column + .column { border-left: 1px solid var(--paper-line); }
			.box { width: 40px; height: 44px; margin: 0 4px 6px; padding: 0; border: 2px solid var(--ink); border-radius: 0; background: var(--sheet); color: var(--ink); font: 600 24px/1 var(--serif); text-align: center; }
			.unit { font-size: 20px; padding-top: 16px; }
		`,
	];

	protected override render(): TemplateResult | typeof nothing {
		const profile = findGridProfile(this.profile);
		if (!profile) return nothing;
		const columns = columnsOf(profile, this.response?.columns);
		return html`
			<p class="hint" id="hint">${words.gridHint}</p>
			<div class="row">
				<div class="grid" role="group" aria-describedby="hint" aria-label=${words.gridName(words.gridSign[profile.signColumn], profile.digitColumns)}>
					${columns.map((marks, column) => this.renderColumn(profile, columns, column, marks[0]))}
				</div>
				${this.unit ? html`<span class="unit">${this.unit}</span>` : nothing}
			</div>
			${this.renderSaid()}
		`;
	}

	private renderColumn(
		profile: GridProfile,
		columns: GridColumns,
		column: number,
		marked: Mark | undefined,
	): TemplateResult {
		const name = nameColumn(profile, column);
		return html`<fieldset class="column" data-column=${column} @keydown=${(event: KeyboardEvent) => this.press(event, profile, columns, column)}>
			<legend class="spoken">${name}</legend>
			<input class="box" aria-label=${words.box(name)} autocomplete="off" autocapitalize="off" spellcheck="false" .value=${live(printMark(marked))}
				?readonly=${this.locked} @focus=${selectAll} @input=${(event: InputEvent) => this.write(event, profile, columns, column)} />
			${columnSymbols(profile, column).map(
				(mark) => html`<label class="bubble">
					<input type="radio" name="column-${column}" value=${mark} aria-label=${sayMark(mark)} .checked=${live(mark === marked)} ?disabled=${this.locked}
						@click=${(event: MouseEvent) => this.eraseMarked(event, profile, columns, column, mark)}
						@change=${() => this.mark(profile, columns, column, mark)} />
					<span aria-hidden="true">${printMark(mark)}</span>
				</label>`,
			)}
		</fieldset>`;
	}

	private mark(profile: GridProfile, columns: GridColumns, column: number, mark: Mark | undefined): void {
		const filled = markColumn(columns, column, mark);
		const name = nameColumn(profile, column);
		const said = mark === undefined ? words.erased(name) : words.marked(name, sayMark(mark));
		this.give(
			{ kind: 'grid', columns: filled },
			`${said} ${words.gridReads(filled.map(([symbol]) => sayMark(symbol)))}`,
		);
	}

	/** Only a pointer erases: Space on a marked bubble is how a keyboard confirms it. */
	private eraseMarked(event: MouseEvent, profile: GridProfile, columns: GridColumns, column: number, mark: Mark): void {
		if (event.detail > 0 && columns[column]?.includes(mark)) this.mark(profile, columns, column, undefined);
	}

	private write(event: InputEvent, profile: GridProfile, columns: GridColumns, column: number): void {
		if (!(event.target instanceof HTMLInputElement)) return;
		const typed = event.data?.at(-1) ?? event.target.value.trim().at(-1);
		if (typed === undefined) this.mark(profile, columns, column, undefined);
		else this.type(typed, profile, columns, column, 'box');
		// The box shows what is marked, whatever was typed into it.
		this.requestUpdate();
	}

	private type(
		typed: string,
		profile: GridProfile,
		columns: GridColumns,
		column: number,
		from: 'box' | 'bubble',
	): void {
		const mark = readMark(typed);
		const target = mark === undefined ? undefined : columnFor(profile, column, mark);
		if (mark === undefined || target === undefined) {
			this.say(words.notOffered(nameColumn(profile, column), columnSymbols(profile, column).map(sayMark)));
			return;
		}
		this.mark(profile, columns, target, mark);
		void this.enter(Math.min(target + 1, columns.length - 1), from);
	}

	private press(event: KeyboardEvent, profile: GridProfile, columns: GridColumns, column: number): void {
		if (this.locked || event.ctrlKey || event.metaKey || event.altKey) return;
		const { target, key } = event;
		const from = target instanceof HTMLInputElement && target.type === 'radio' ? 'bubble' : 'box';
		const isFirst =
			from === 'bubble' && target instanceof HTMLElement && target.closest('label')?.previousElementSibling;
		const act = {
			ArrowLeft: () => void this.enter(Math.max(0, column - 1), from),
			ArrowRight: () => void this.enter(Math.min(columns.length - 1, column + 1), from),
			ArrowDown: from === 'box' ? () => void this.enter(column, 'bubble') : undefined,
			ArrowUp: isFirst instanceof HTMLInputElement ? () => void this.enter(column, 'box') : undefined,
			Delete: () => this.mark(profile, columns, column, undefined),
			Backspace: () => this.eraseBack(profile, columns, column, from),
		}[key];
		const typed =
			from === 'bubble' && key.length === 1 && key !== ' '
				? () => this.type(key, profile, columns, column, from)
				: undefined;
		const work = act ?? typed;
		if (work === undefined) return;
		event.preventDefault();
		work();
	}

	/** Erases the column, or where it is empty the one before. */
	private eraseBack(profile: GridProfile, columns: GridColumns, column: number, from: 'box' | 'bubble'): void {
		const isEmpty = columns[column]?.length === 0;
		const target = isEmpty ? Math.max(0, column - 1) : column;
		this.mark(profile, columns, target, undefined);
		void this.enter(target, from);
	}

	private async enter(column: number, place: 'box' | 'bubble'): Promise<void> {
		await this.updateComplete;
		const within = this.renderRoot.querySelector(`[data-column="${column}"]`);
		const bubble =
			within?.querySelector<HTMLElement>('input:checked') ?? within?.querySelector<HTMLElement>('input[type=radio]');
		(place === 'box' ? within?.querySelector<HTMLElement>('.box') : bubble)?.focus();
	}
}

function selectAll({ target }: FocusEvent): void {
	if (target instanceof HTMLInputElement) target.select();
}

customElements.define('zp-grid-answer', ZpGridAnswer);
