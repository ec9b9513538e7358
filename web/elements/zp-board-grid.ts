import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { type EvidenceBoard, findEvidence } from '../board/board-evidence.ts';
import type { Plan } from '../board/board-plan.ts';
import { type BoardRow, type Counts, noCounts } from '../board/board-rows.ts';
import { type Cell, type Column, columns, type Lens } from '../board/board-state.ts';
import { words } from '../messages/words.ts';
import { renderEvidence, renderPlan, renderSupply } from './board-cells.ts';
import { boardGridStyles } from './board-grid-styles.ts';
import { controlStyles } from './control-styles.ts';
import { type GridPlace, moveInGrid } from './grid-keys.ts';
import { renderSign } from './marks.ts';

/**
 * Standards down the side, model types across, as an ARIA tree grid: one cell is in the tab order and arrow keys move on. Fires
 * cell-chosen with a {@link Cell} and row-folded with the key of a row.
 */
export class ZpBoardGrid extends LitElement {
	static override properties = {
		label: { type: String },
		lens: { type: String },
		rows: { attribute: false },
		totals: { attribute: false },
		plan: { attribute: false },
		evidence: { attribute: false },
		cell: { attribute: false },
		place: { state: true },
	};
	declare label: string;
	declare lens: Lens;
	declare rows: readonly BoardRow[];
	declare totals: Counts;
	declare plan: Plan | undefined;
	declare evidence: EvidenceBoard | undefined;
	/** The cell whose items are shown beside the board. */
	declare cell: Cell | undefined;
	/** The cell that is in the tab order. */
	declare private place: GridPlace;

	constructor() {
		super();
		this.label = '';
		this.lens = 'supply';
		this.rows = [];
		this.totals = noCounts;
		this.place = { key: undefined, column: 'head' };
	}

	static override styles = [controlStyles, boardGridStyles];

	/** Puts the focus on the cell in the tab order. */
	override focus(): void {
		this.renderRoot.querySelector<HTMLElement>('[tabindex="0"]')?.focus();
	}

	/** Makes a cell the one in the tab order and puts the focus there. */
	async focusCell({ code, column }: Cell): Promise<void> {
		this.place = { key: code, column };
		await this.updateComplete;
		this.focus();
	}

	private get keys(): readonly string[] {
		return [...this.rows.map(({ key }) => key), ''];
	}

	private choose(code: string, column: Column): void {
		this.place = { key: code, column };
		this.dispatchEvent(new CustomEvent<Cell>('cell-chosen', { detail: { code, column } }));
	}

	private fold(row: BoardRow): void {
		this.place = { ...this.place, key: row.key, column: 'head' };
		if (row.hasRowsBelow) this.dispatchEvent(new CustomEvent<string>('row-folded', { detail: row.key }));
	}

	private async press(event: KeyboardEvent): Promise<void> {
		if (event.altKey || event.metaKey) return;
		const { key = this.keys[0] ?? '', column } = this.place;
		const row = this.rows.find((each) => each.key === key);
		const isHead = column === 'head' || (row !== undefined && row.standard === undefined);
		if (event.key === 'Enter' || event.key === ' ') {
			event.preventDefault();
			if (!isHead) this.choose(key, column);
			else if (row) this.fold(row);
			return;
		}
		const folds =
			(event.key === 'ArrowRight' && row?.isClosed) || (event.key === 'ArrowLeft' && row?.isClosed === false);
		if (isHead && row?.hasRowsBelow && folds) {
			event.preventDefault();
			this.fold(row);
			return;
		}
		const place = moveInGrid({ key, column }, event, this.keys);
		if (!place) return;
		event.preventDefault();
		this.place = place;
		await this.updateComplete;
		this.focus();
	}

	protected override render(): TemplateResult {
		return html`<table role="treegrid" aria-label=${this.label} @keydown=${(event: KeyboardEvent) => void this.press(event)}>
			<colgroup><col class="head" />${columns.map(() => html`<col />`)}</colgroup>
			<thead>
				<tr role="row">
					<th role="columnheader" scope="col">${words.board.standard}</th>
					${columns.map((column) => html`<th role="columnheader" scope="col">${words.board.column(column)}</th>`)}
				</tr>
			</thead>
			<tbody>
				${repeat(
					this.rows,
					({ key }) => key,
					(row) => this.renderRow(row),
				)}
				<tr role="row" aria-level="1" class="totals">
					<th role="rowheader" scope="row" tabindex=${this.tabOf('', 'head')}>${words.board.allStandards}</th>
					${columns.map((column) => this.renderCell('', column, this.totals, false))}
				</tr>
			</tbody>
		</table>`;
	}

	private renderRow(row: BoardRow): TemplateResult {
		const { key, standard, level, hasRowsBelow, isClosed, counts } = row;
		const isHeading = standard === undefined;
		return html`<tr role="row" aria-level=${level} aria-expanded=${hasRowsBelow ? String(!isClosed) : nothing} class=${isHeading ? 'heading' : ''}>
			<th
				role="rowheader" scope="row" colspan=${isHeading ? columns.length + 1 : nothing} tabindex=${this.tabOf(key, 'head')}
				class="level-${Math.min(level, 5)} ${hasRowsBelow ? 'folds' : ''}" title=${standard?.statement ?? nothing}
				@click=${() => this.fold(row)}
			>
				<span class="line">
					<span class="fold">${hasRowsBelow ? renderSign(isClosed ? 'plus' : 'minus') : nothing}</span>
					<span class="code">${key}</span>
					${standard ? html`<span class="statement">${standard.statement}</span>` : nothing}
				</span>
			</th>
			${isHeading ? nothing : columns.map((column) => this.renderCell(key, column, counts, hasRowsBelow))}
		</tr>`;
	}

	private renderCell(key: string, column: Column, counts: Counts, hasRowsBelow: boolean): TemplateResult {
		const isChosen = this.cell?.code === key && this.cell.column === column;
		return html`<td
			role="gridcell" tabindex=${this.tabOf(key, column)} aria-selected=${String(isChosen)}
			class=${column === 'total' ? 'total' : ''} @click=${() => this.choose(key, column)}
		><span class="content">${this.renderContent(key, column, counts, hasRowsBelow)}</span></td>`;
	}

	private renderContent(
		key: string,
		column: Column,
		counts: Counts,
		hasRowsBelow: boolean,
	): TemplateResult | typeof nothing {
		const isTotal = key === '' || column === 'total';
		switch (this.lens) {
			case 'supply':
				return renderSupply(counts[column], isTotal);
			case 'plan': {
				const cell = this.plan?.cells.get(key)?.[column] ?? { wanted: undefined, delivered: undefined, off: 0 };
				return renderPlan(cell, (isTotal ? this.plan?.mostInTotal : this.plan?.most) ?? 4);
			}
			case 'evidence':
				return renderEvidence(findEvidence(this.evidence, key, column), hasRowsBelow);
		}
	}

	private tabOf(key: string, column: Column | 'head'): string {
		const keys = this.keys;
		const place =
			this.place.key !== undefined && keys.includes(this.place.key) ? this.place : { key: keys[0], column: 'head' };
		const row = this.rows.find((each) => each.key === place.key);
		const at = row !== undefined && row.standard === undefined ? 'head' : place.column;
		return place.key === key && at === column ? '0' : '-1';
	}
}

customElements.define('zp-board-grid', ZpBoardGrid);
