import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { printItemName } from '../../../item-bank/items/item-name.ts';
import type { SittingAnswers, SittingPlace } from '../../../item-bank/types.ts';
import { ApiError, bankFoundEvent } from '../../api-client.ts';
import { callApi } from '../../call-api.ts';
import { inText } from '../../messages/results-in.ts';
import { words } from '../../messages/words.ts';
import { cellKey, entryOf, isOneKey, listCells, readBlock } from '../../results/entry-cells.ts';
import { keepEntries, readEntries } from '../../results/kept-entries.ts';
import { tell } from '../../tell.ts';
import { controlStyles } from '../control-styles.ts';
import '../zp-wait.ts';
import { entryGridStyles } from './entry-grid-styles.ts';
import { moveInGrid } from './move-in-grid.ts';

/** Milliseconds after the last key before what was typed is sent, if the cursor stays in the cell. */
const pause = 2000;

interface Change {
	readonly code: string;
	readonly place: SittingPlace;
	readonly before: string;
}

/** Responses of one class typed by hand: what is typed goes to the bank by itself, row by row. */
export class ZpEntryGrid extends LitElement {
	static override properties = {
		sitting: {},
		grid: { state: true },
		failure: { state: true },
		isLost: { state: true },
		at: { state: true },
		version: { state: true },
	};
	declare sitting: string;
	declare private grid: SittingAnswers | undefined;
	declare private failure: string | undefined;
	declare private isLost: boolean;
	declare private at: { readonly code: string; readonly place: SittingPlace } | undefined;
	/** Raised when a map below changes. */
	declare private version: number;
	/** Texts in the bank. */
	private cells: ReadonlyMap<string, string> = new Map();
	/** Typed, not in the bank. */
	private readonly waiting = new Map<string, string>();
	/** Typed, refused by the bank, with why. */
	private readonly refused = new Map<string, string>();
	private readonly changes: Change[] = [];
	private isKept = true;
	private timer = 0;
	private sending: Promise<void> | undefined;
	private readonly found = (): void => {
		this.isLost = false;
		if (this.grid) this.plan(0);
		else void this.load();
	};

	constructor() {
		super();
		this.sitting = '';
		this.isLost = false;
		this.version = 0;
	}

	static override styles = [controlStyles, css`:host { display: block; }`, entryGridStyles];

	override connectedCallback(): void {
		super.connectedCallback();
		window.addEventListener(bankFoundEvent, this.found);
	}

	override disconnectedCallback(): void {
		window.removeEventListener(bankFoundEvent, this.found);
		super.disconnectedCallback();
		void this.send();
	}

	protected override willUpdate(changed: PropertyValues<this>): void {
		if (changed.has('sitting')) void this.load();
	}

	private async load(): Promise<void> {
		try {
			this.take(await callApi('GET /api/sittings/{id}/answers', { path: { id: this.sitting } }));
			this.failure = undefined;
			const kept = readEntries(localStorage, this.sitting);
			for (const [key, text] of kept) this.waiting.set(key, text);
			if (kept.size > 0) {
				tell(inText.entry.resumed(kept.size));
				this.plan(0);
			}
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		}
	}

	private take(grid: SittingAnswers): void {
		this.grid = grid;
		this.cells = listCells(grid);
	}

	private textAt(code: string, { label }: SittingPlace): string {
		const key = cellKey({ code, label });
		return this.waiting.get(key) ?? this.cells.get(key) ?? '';
	}

	private type(code: string, place: SittingPlace, text: string): void {
		const key = cellKey({ code, label: place.label });
		const before = this.textAt(code, place);
		if (text.trim() === before.trim() && !this.refused.has(key)) return;
		this.changes.push({ code, place, before });
		this.refused.delete(key);
		if (text.trim() === (this.cells.get(key) ?? '')) this.waiting.delete(key);
		else this.waiting.set(key, text);
		this.keep();
		this.plan(pause);
	}

	private keep(): void {
		this.isKept = keepEntries(localStorage, this.sitting, this.waiting);
		this.version += 1;
	}

	private plan(delay: number): void {
		clearTimeout(this.timer);
		this.timer = window.setTimeout(() => void this.send(), delay);
	}

	/** Sends what waits, a student at a time; what the bank refuses stays in its cell with the reason. */
	private async send(): Promise<void> {
		await this.sending;
		const places = new Map(this.grid?.places.map((place) => [place.label, place]));
		const codes = new Set([...this.waiting.keys()].map((key) => key.slice(0, key.lastIndexOf(' '))));
		this.sending = (async () => {
			for (const code of codes) await this.sendStudent(code, places);
		})();
		await this.sending;
	}

	private async sendStudent(code: string, places: ReadonlyMap<string, SittingPlace>): Promise<void> {
		const mine = [...this.waiting].flatMap(([key, text]) => {
			const place = places.get(key.slice(key.lastIndexOf(' ') + 1));
			return key.startsWith(`${code} `) && place && !this.refused.has(key) ? [{ key, text, place }] : [];
		});
		if (mine.length === 0) return;
		try {
			const answers = mine.map(({ place, text }) => entryOf(place, text));
			const path = { id: this.sitting, code };
			this.take(await callApi('PUT /api/sittings/{id}/students/{code}', { path, body: { answers } }));
			// What was typed over in the meantime still waits.
			for (const { key, text } of mine) if (this.waiting.get(key) === text) this.waiting.delete(key);
			this.isLost = false;
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			const faults = error.problems.flatMap(({ path, message }) => {
				const index = /^\/answers\/(\d+)/.exec(path)?.[1];
				const one = index === undefined ? undefined : mine[Number(index)];
				return one ? [{ key: one.key, message }] : [];
			});
			for (const { key, message } of faults) this.refused.set(key, message);
			if (faults.length === 0 && error.code === 'unreachable') this.isLost = true;
			else if (faults.length === 0) this.failure = error.message;
			else if (faults.length < mine.length) await this.sendStudent(code, places);
		} finally {
			this.keep();
		}
	}

	private undo(): void {
		const last = this.changes.pop();
		if (!last) return;
		this.type(last.code, last.place, last.before);
		this.changes.pop();
		tell(inText.entry.taken(last.code, last.place.label));
	}

	protected override render(): TemplateResult {
		if (this.failure !== undefined) {
			return html`<div class="failure" role="alert"><p>${this.failure}</p><button @click=${() => void this.load()}>${words.frame.again}</button></div>`;
		}
		const { grid } = this;
		if (!grid) return html`<zp-wait></zp-wait>`;
		const text = inText.entry;
		if (grid.students.length === 0) return html`<p><strong>${text.noStudents}.</strong> ${text.noStudentsAdvice}</p>`;
		return html`
			<p class="soft keys" id="keys">${text.keys}</p>
			<div class="state">
				<p aria-live="polite">${this.renderState()}</p>
				<button ?disabled=${this.changes.length === 0} @click=${() => this.undo()}>${text.undo}</button>
			</div>
			${this.renderRefused()}
			<p class="at">${this.at ? text.place(this.at.place.label, printItemName(this.at.place.name)) : ' '}</p>
			<div class="wide">
				<table aria-describedby="keys" @keydown=${(event: KeyboardEvent) => moveInGrid(event, grid.places.length)} @paste=${(event: ClipboardEvent) => this.paste(event)}>
					<caption class="spoken">${text.table}</caption>
					<thead><tr><th scope="col">${text.student}</th>${grid.places.map(({ label, name }) => html`<th scope="col" title=${printItemName(name)}>${label}</th>`)}<th scope="col" class="count">${text.count}</th></tr></thead>
					<tbody>${grid.students.map(({ code }, row) => this.renderRow(grid, code, row))}</tbody>
				</table>
			</div>
		`;
	}

	private renderState(): string {
		const waiting = [...this.waiting.keys()].filter((key) => !this.refused.has(key)).length;
		const text = inText.entry;
		if (!this.isKept) return text.notKept;
		if (waiting === 0) return this.refused.size === 0 ? text.saved : '';
		return this.isLost ? text.kept(waiting) : text.saving(waiting);
	}

	private renderRefused(): TemplateResult | typeof nothing {
		if (this.refused.size === 0) return nothing;
		return html`<div class="failure" role="alert"><p>${inText.entry.refused(this.refused.size)}</p>
			<ul>${[...this.refused].map(([key, message]) => html`<li><strong>${key.slice(0, key.lastIndexOf(' '))}</strong>: ${message}</li>`)}</ul></div>`;
	}

	private renderRow({ places }: SittingAnswers, code: string, row: number): TemplateResult {
		const filled = places.filter((place) => this.textAt(code, place) !== '').length;
		return html`<tr>
			<th scope="row">${code}</th>
			${places.map((place, column) => this.renderCell(code, place, row, column))}
			<td class="count ${filled === places.length ? '' : 'soft'}">${inText.entry.done(filled, places.length)}</td>
		</tr>`;
	}

	private renderCell(code: string, place: SittingPlace, row: number, column: number): TemplateResult {
		const key = cellKey({ code, label: place.label });
		const problem = this.refused.get(key);
		return html`<td><input type="text" autocomplete="off" spellcheck="false" data-row=${row} data-column=${column}
			class="${this.waiting.has(key) ? 'waits' : ''} ${place.kind === 'explanation' ? 'long' : ''}" title=${problem ?? nothing}
			aria-label=${inText.entry.cell(code, place.label)} aria-invalid=${problem === undefined ? 'false' : 'true'}
			.value=${this.textAt(code, place)}
			@focus=${() => {
				this.at = { code, place };
			}}
			@input=${(event: InputEvent) => this.hear(event, code, place)}
			@change=${() => this.plan(0)}></td>`;
	}

	private hear(event: InputEvent, code: string, place: SittingPlace): void {
		const { target } = event;
		if (!(target instanceof HTMLInputElement)) return;
		this.type(code, place, target.value);
		const isWhole = isOneKey(place.kind) && /^[a-z]$/i.test(target.value) && event.inputType === 'insertText';
		if (isWhole) this.cellAt(Number(target.dataset.row), Number(target.dataset.column) + 1)?.select();
	}

	private cellAt(row: number, column: number): HTMLInputElement | null {
		return this.renderRoot.querySelector(`input[data-row="${row}"][data-column="${column}"]`);
	}

	/** A block from a spreadsheet fills the grid from the cell with the cursor. */
	private paste(event: ClipboardEvent): void {
		const { target } = event;
		const rows = readBlock(event.clipboardData?.getData('text/plain') ?? '');
		const isBlock = rows.length > 1 || (rows[0]?.length ?? 0) > 1;
		const { grid } = this;
		if (!isBlock || !grid || !(target instanceof HTMLInputElement)) return;
		event.preventDefault();
		for (const [down, row] of rows.entries()) {
			for (const [across, text] of row.entries()) {
				const code = grid.students[Number(target.dataset.row) + down]?.code;
				const place = grid.places[Number(target.dataset.column) + across];
				if (code !== undefined && place && text !== '') this.type(code, place, text);
			}
		}
		tell(inText.entry.pasteOver(rows.length, Math.max(...rows.map((row) => row.length))));
	}
}

customElements.define('zp-entry-grid', ZpEntryGrid);
