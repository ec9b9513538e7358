import { html, LitElement, nothing, type TemplateResult } from 'lit';
import type {
	BlueprintEntry,
	Evidence,
	FormDetails,
	FormSummary,
	FrameworkList,
	GroupEntry,
	SittingEntry,
	Supply,
} from '../../item-bank/types.ts';
import { goTo } from '../address.ts';
import { ApiError, bankChangedEvent, bankFoundEvent } from '../api-client.ts';
import { writeBoardCsv } from '../board/board-csv.ts';
import { type EvidenceBoard, findEvidence, placeEvidence } from '../board/board-evidence.ts';
import { type Plan, planBoard } from '../board/board-plan.ts';
import { type BoardRow, buildRows, type Counts, noCounts, totalCounts } from '../board/board-rows.ts';
import { type BoardState, type Cell, type Lens, parseBoardState, printBoardState } from '../board/board-state.ts';
import { keepFramework, recallFramework } from '../board/last-framework.ts';
import { callApi } from '../call-api.ts';
import { renderBoardNote } from '../elements/board-notes.ts';
import { controlStyles } from '../elements/control-styles.ts';
import '../elements/zp-board-grid.ts';
import type { ZpBoardGrid } from '../elements/zp-board-grid.ts';
import '../elements/zp-board-margin.ts';
import '../elements/zp-lens.ts';
import '../elements/zp-wait.ts';
import { words } from '../messages/words.ts';
import { saveFile } from '../save-file.ts';
import { boardPageStyles } from './board-page-styles.ts';

/** The board: standards by model types, read through three lenses; a cell opens what stands behind it. */
export class ZpBoardPage extends LitElement {
	static override properties = {
		query: { attribute: false },
		frameworks: { state: true },
		supply: { state: true },
		unseen: { state: true },
		blueprints: { state: true },
		forms: { state: true },
		form: { state: true },
		sittings: { state: true },
		evidence: { state: true },
		failure: { state: true },
		isWide: { state: true },
	};
	declare query: URLSearchParams;
	declare private frameworks: FrameworkList | undefined;
	declare private supply: Supply | undefined;
	/** Items that fit but have no standard in the framework. */
	declare private unseen: number;
	declare private blueprints: readonly BlueprintEntry[] | undefined;
	declare private forms: readonly FormSummary[] | undefined;
	declare private form: FormDetails | undefined;
	declare private sittings: readonly SittingEntry[] | undefined;
	private groups: readonly GroupEntry[] = [];
	declare private evidence: Evidence | undefined;
	declare private failure: string | undefined;
	declare private isWide: boolean;
	private state: BoardState = parseBoardState(new URLSearchParams());
	/** What rows, totals and plan were made of. */
	private parts: readonly unknown[] = [];
	private rows: readonly BoardRow[] = [];
	private totals: Counts = noCounts;
	private plan: Plan | undefined;
	private placed: EvidenceBoard | undefined;
	/** The cell the drawer showed last. */
	private opened: Cell | undefined;
	/** What the supply at hand was asked for. */
	private asked = '';
	/** What the evidence at hand was asked for. */
	private askedEvidence = '';
	private call: AbortController | undefined;
	private readonly width = window.matchMedia('(min-width: 901px)');
	private readonly fit = (): void => {
		this.isWide = this.width.matches;
	};
	private readonly retry = (): void => void this.load(true);

	constructor() {
		super();
		this.unseen = 0;
		this.isWide = this.width.matches;
	}

	static override styles = [controlStyles, boardPageStyles];

	override connectedCallback(): void {
		super.connectedCallback();
		this.width.addEventListener('change', this.fit);
		window.addEventListener(bankFoundEvent, this.retry);
		window.addEventListener(bankChangedEvent, this.retry);
	}

	override disconnectedCallback(): void {
		this.width.removeEventListener('change', this.fit);
		window.removeEventListener(bankFoundEvent, this.retry);
		window.removeEventListener(bankChangedEvent, this.retry);
		this.call?.abort();
		super.disconnectedCallback();
	}

	protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
		if (changed.has('query')) {
			this.state = parseBoardState(this.query);
			void this.load(false);
		}
		this.compute();
		if (changed.has('evidence')) this.placed = this.evidence && placeEvidence(this.evidence);
	}

	/** Computes rows and plan anew when what they are made of has changed: the grid draws only what is another object. */
	private compute(): void {
		const { supply, form } = this;
		const { closed } = this.state;
		const blueprint = this.blueprints?.find(({ id }) => id === this.state.blueprint)?.blueprint;
		const parts = [supply, closed.join('\n'), blueprint, form];
		if (parts.every((part, index) => part === this.parts[index])) return;
		this.parts = parts;
		this.rows = supply ? buildRows(supply, closed) : [];
		this.totals = supply ? totalCounts(supply) : noCounts;
		this.plan = supply && planBoard(supply, this.rows, blueprint, form);
	}

	/** Loads the drawer when a cell is opened, and gives the focus back to the cell when it is closed. */
	protected override updated(): void {
		const { cell } = this.state;
		const before = this.opened;
		this.opened = this.supply ? cell : undefined;
		if (this.opened) void import('../elements/zp-cell-drawer.ts');
		else if (before && document.activeElement !== this.renderRoot.querySelector('zp-lens')) {
			void this.renderRoot.querySelector<ZpBoardGrid>('zp-board-grid')?.focusCell(before);
		}
	}

	/** Reads what the address asks for and is not at hand; isAnew: everything. */
	private async load(isAnew: boolean): Promise<void> {
		try {
			if (isAnew) this.asked = this.askedEvidence = '';
			this.frameworks ??= await callApi('GET /api/standards');
			await Promise.all([this.loadSupply(this.frameworks), this.loadForm(isAnew), this.loadEvidence(this.frameworks)]);
			if (isAnew || this.blueprints === undefined) {
				[this.blueprints, this.forms, this.sittings, this.groups] = await Promise.all([
					callApi('GET /api/blueprints'),
					callApi('GET /api/forms'),
					callApi('GET /api/sittings'),
					callApi('GET /api/groups'),
				]);
			}
			this.failure = undefined;
		} catch (error) {
			if (error instanceof DOMException && error.name === 'AbortError') return;
			if (!(error instanceof ApiError)) throw error;
			this.failure = error.message;
		}
	}

	private async loadSupply(frameworks: FrameworkList): Promise<void> {
		const chosen = this.state.framework ?? recallFramework(frameworks);
		if (!chosen) return;
		this.state = { ...this.state, framework: chosen };
		const { filter } = this.state;
		const asked = JSON.stringify([chosen, filter]);
		if (asked === this.asked) return;
		this.asked = asked;
		this.call?.abort();
		this.call = new AbortController();
		const { signal } = this.call;
		try {
			const path = { framework: chosen.id, edition: chosen.edition };
			const status = filter.status.length > 0 ? filter.status : (['approved'] as const);
			const [supply, { total }] = await Promise.all([
				callApi('GET /api/standards/{framework}/{edition}', { path, query: filter, signal }),
				callApi('GET /api/items', { query: { ...filter, status, limit: 1, facets: false }, signal }),
			]);
			this.supply = supply;
			this.unseen = total - totalCounts(supply).total;
			keepFramework(chosen);
		} catch (error) {
			if (this.asked === asked) this.asked = '';
			throw error;
		}
	}

	private async loadForm(isAnew: boolean): Promise<void> {
		const id = this.state.form;
		if (id === undefined) this.form = undefined;
		else if (isAnew || this.form?.record.id !== id) this.form = await callApi('GET /api/forms/{id}', { path: { id } });
	}

	/** Reads the shared copy, in which small groups are hidden, when the lens asks for it. */
	private async loadEvidence(frameworks: FrameworkList): Promise<void> {
		const { lens, sitting, framework = recallFramework(frameworks) } = this.state;
		if (lens !== 'evidence' || !framework) return;
		const query = {
			framework: framework.id,
			edition: framework.edition,
			...(sitting === undefined ? {} : { sitting: [sitting] }),
		};
		const asked = JSON.stringify(query);
		if (asked === this.askedEvidence) return;
		this.askedEvidence = asked;
		this.evidence = undefined;
		try {
			const evidence = await callApi('GET /api/evidence', { query });
			if (this.askedEvidence === asked) this.evidence = evidence;
		} catch (error) {
			if (this.askedEvidence === asked) this.askedEvidence = '';
			throw error;
		}
	}

	private change(part: Partial<BoardState>, isNoted = true): void {
		goTo(printBoardState({ ...this.state, ...part }), isNoted);
	}

	private chooseCell(cell: Cell): void {
		this.change({ cell });
	}

	private fold(key: string): void {
		const { closed } = this.state;
		const after = closed.includes(key) ? closed.filter((each) => each !== key) : [...closed, key];
		this.change({ closed: after }, false);
	}

	private save(): void {
		if (!this.supply) return;
		const { lens } = this.state;
		const { supply, rows, totals, plan, placed: evidence } = this;
		const text = writeBoardCsv(lens, { supply, rows, totals, plan, evidence });
		const { framework, edition } = supply;
		saveFile(`${words.board.csv.file}-${framework}-${edition}-${lens}.csv`, text, 'text/csv');
	}

	protected override render(): TemplateResult {
		const { state, supply } = this;
		return html`<div class="page ${state.cell && supply ? 'opened' : ''}">
			<details class="margin" ?open=${this.isWide}>
				<summary>${words.board.shown}${supply ? html`: ${supply.name}, ${supply.edition}` : nothing}</summary>
				<zp-board-margin
					.state=${state} .frameworks=${this.frameworks ?? []} .blueprints=${this.blueprints ?? []} .forms=${this.forms ?? []}
					.sittings=${this.sittings ?? []} .groups=${this.groups}
					@board-changed=${(event: CustomEvent<Partial<BoardState>>) => this.change(event.detail)}
				></zp-board-margin>
			</details>
			<div class="middle">
				<h2 class="printed">${supply?.name}, ${supply?.edition}: ${words.board.lenses[state.lens]}. ${words.board.printed(new Date().toLocaleDateString(document.documentElement.lang))}</h2>
				<div class="top">
					<zp-lens lens=${state.lens} @lens-chosen=${(event: CustomEvent<Lens>) => this.change({ lens: event.detail })}></zp-lens>
					<p>${words.board.lensSays[state.lens]}</p>
					<div class="ways">
						<button @click=${() => window.print()}>${words.board.print}</button>
						<button ?disabled=${!supply} @click=${() => this.save()}>${words.board.save}</button>
					</div>
				</div>
				${this.failure === undefined ? nothing : html`<div class="failure" role="alert"><p>${this.failure}</p><button @click=${this.retry}>${words.frame.again}</button></div>`}
				${supply ? this.renderBoard(supply) : this.failure === undefined ? html`<zp-wait></zp-wait>` : nothing}
			</div>
			${state.cell && supply ? this.renderDrawer(supply, state.cell) : nothing}
		</div>`;
	}

	private renderBoard(supply: Supply): TemplateResult {
		const { state, unseen, frameworks, blueprints, forms, form, plan, evidence } = this;
		return html`
			<div class="note" aria-live="polite">${renderBoardNote({ state, supply, unseen, frameworks, blueprints, forms, form, plan, evidence })}</div>
			<zp-board-grid
				label=${words.board.grid(`${supply.name}, ${supply.edition}`)} lens=${this.state.lens} .rows=${this.rows}
				.totals=${this.totals} .plan=${this.plan} .evidence=${this.placed} .cell=${this.state.cell}
				@cell-chosen=${(event: CustomEvent<Cell>) => this.chooseCell(event.detail)}
				@row-folded=${(event: CustomEvent<string>) => this.fold(event.detail)}
			></zp-board-grid>
			<p class="foot">
				${this.state.lens === 'supply' && this.unseen > 0 ? words.board.unseen(this.unseen) : nothing}
				<span class="keys">${words.board.keys}</span>
			</p>
		`;
	}

	private renderDrawer(supply: Supply, cell: Cell): TemplateResult {
		return html`<zp-cell-drawer
			.supply=${supply} .cell=${cell} .filter=${this.state.filter} .lens=${this.state.lens} .form=${this.form}
			.codes=${this.rows.find(({ key }) => key === cell.code)?.codes}
			.plan=${this.plan?.cells.get(cell.code)?.[cell.column]}
			.evidence=${findEvidence(this.placed, cell.code, cell.column)} .sitting=${this.state.sitting}
			@drawer-closed=${() => this.change({ cell: undefined })}
		></zp-cell-drawer>`;
	}
}

customElements.define('zp-board-page', ZpBoardPage);
