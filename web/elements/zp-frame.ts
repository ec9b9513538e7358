import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { type Address, type PageName, parseAddress, printAddress } from '../address.ts';
import { bankFoundEvent, bankLostEvent } from '../api-client.ts';
import { words } from '../messages/words.ts';
import { type Told, toldEvent } from '../tell.ts';
import { controlStyles } from './control-styles.ts';
import { frameStyles } from './frame-styles.ts';
import { renderSign } from './marks.ts';

const files = import.meta.glob('../pages/zp-*.ts');
const fileOf: Readonly<Record<PageName, string>> = {
	board: '../pages/zp-board-page.ts',
	find: '../pages/zp-find-page.ts',
	items: '../pages/zp-item-desk.ts',
	forms: '../pages/zp-forms-page.ts',
	sittings: '../pages/zp-sittings-page.ts',
	reports: '../pages/zp-report-page.ts',
};
const listed: readonly PageName[] = ['board', 'find', 'forms', 'sittings', 'reports'];
const inks = ['system', 'paper', 'slate'] as const;

/** The frame around every page: which pages there are, the page itself (loaded when first asked for), what was done last. */
export class ZpFrame extends LitElement {
	static override properties = {
		address: { state: true },
		failure: { state: true },
		ready: { state: true },
		told: { state: true },
		isLost: { state: true },
	};
	declare private address: Address | undefined;
	declare private failure: string | undefined;
	/** The page whose file has been loaded. */
	declare private ready: PageName | undefined;
	declare private told: Told | undefined;
	declare private isLost: boolean;
	private toldTimer = 0;
	private lostTimer = 0;
	private readonly listeners: readonly (readonly [string, (event: Event) => void])[] = [
		['hashchange', () => void this.follow(true)],
		[toldEvent, (event) => this.hear((event as CustomEvent<Told>).detail)],
		[bankLostEvent, () => this.watch()],
	];

	constructor() {
		super();
		this.isLost = false;
	}

	static override styles = [controlStyles, frameStyles];

	override connectedCallback(): void {
		super.connectedCallback();
		for (const [name, listener] of this.listeners) window.addEventListener(name, listener);
		void this.follow(false);
	}

	override disconnectedCallback(): void {
		for (const [name, listener] of this.listeners) window.removeEventListener(name, listener);
		clearTimeout(this.lostTimer);
		super.disconnectedCallback();
	}

	/** Shows the page the address names. Focus goes to a page that was not there before, never elsewhere. */
	private async follow(isStep: boolean): Promise<void> {
		const before = this.address;
		const address = parseAddress(location.hash);
		this.address = address;
		if (!address) {
			document.title = words.frame.name;
			return;
		}
		const isOther = before?.page !== address.page || (before.id === undefined) !== (address.id === undefined);
		if (this.ready !== address.page) {
			this.failure = undefined;
			try {
				const load = files[fileOf[address.page]];
				if (load) await load();
				if (this.address?.page !== address.page) return;
				if (load) this.ready = address.page;
				else this.failure = words.frame.missingPage;
			} catch {
				this.failure = words.frame.lost;
				this.watch();
			}
		}
		if (isOther) document.title = words.frame.title(words.frame.page[address.page]);
		await this.updateComplete;
		if (isOther && isStep) this.renderRoot.querySelector('main')?.focus();
	}

	private hear(told: Told): void {
		this.told = told;
		clearTimeout(this.toldTimer);
		this.toldTimer = window.setTimeout(() => this.forget(), told.undo ? 30_000 : 8_000);
	}

	private forget(): void {
		const hasFocus = this.renderRoot.querySelector('.told :focus') !== null;
		this.told = undefined;
		if (hasFocus) this.renderRoot.querySelector('main')?.focus();
	}

	private async undo(): Promise<void> {
		const undo = this.told?.undo;
		this.forget();
		try {
			await undo?.();
			this.hear({ text: words.frame.undone });
		} catch (error) {
			this.hear({ text: words.frame.undoFailed(error instanceof Error ? error.message : '') });
		}
	}

	/** Asks every two seconds whether the bank is back. */
	private watch(): void {
		if (this.isLost) return;
		this.isLost = true;
		const ask = async (): Promise<void> => {
			const answer = await fetch('/api/health').catch(() => undefined);
			if (answer?.ok !== true) {
				this.lostTimer = window.setTimeout(() => void ask(), 2_000);
				return;
			}
			this.isLost = false;
			this.hear({ text: words.frame.found });
			if (this.failure !== undefined) await this.follow(false);
			window.dispatchEvent(new Event(bankFoundEvent));
		};
		this.lostTimer = window.setTimeout(() => void ask(), 1_000);
	}

	private chooseInk(event: Event): void {
		const ink = event.target instanceof HTMLSelectElement ? event.target.value : 'system';
		if (ink === 'system') {
			delete document.documentElement.dataset.ink;
			localStorage.removeItem('zp-ink');
		} else {
			document.documentElement.dataset.ink = ink;
			localStorage.setItem('zp-ink', ink);
		}
	}

	protected override render(): TemplateResult {
		const ink = document.documentElement.dataset.ink ?? 'system';
		return html`
			<header>
				<button class="skip" @click=${() => this.renderRoot.querySelector('main')?.focus()}>${words.frame.skip}</button>
				<a class="name" href=${printAddress('board')}><span class="signs">${renderSign('plus')}${renderSign('minus')}</span> ${words.frame.name}</a>
				<nav aria-label=${words.frame.pages}>
					<ol>
						${listed.map((name) => html`<li><a href=${printAddress(name)} aria-current=${this.address?.page === name ? 'page' : nothing}>${words.frame.page[name]}</a></li>`)}
					</ol>
				</nav>
				<label class="ink">${words.frame.ink}
					<select @change=${(event: Event) => this.chooseInk(event)}>
						${inks.map((name) => html`<option value=${name} ?selected=${ink === name}>${words.frame.inks[name]}</option>`)}
					</select>
				</label>
			</header>
			<div aria-live="assertive">${this.isLost ? html`<p class="lost">${words.frame.lost}</p>` : nothing}</div>
			<main tabindex="-1">
				<h1 class="spoken">${this.address ? words.frame.page[this.address.page] : words.frame.unknownPage}</h1>
				${this.renderPage()}</main>
			<footer>${words.frame.confidential}</footer>
			<div class="told" aria-live="polite">${this.told ? this.renderTold(this.told) : nothing}</div>
		`;
	}

	private renderPage(): TemplateResult | typeof nothing {
		const { address } = this;
		if (!address) {
			return html`<div class="plain"><h2>${words.frame.unknownPage}</h2><p>${words.frame.unknownPageAdvice}</p></div>`;
		}
		if (this.ready !== address.page) {
			return this.failure === undefined ? nothing : html`<div class="plain"><p>${this.failure}</p></div>`;
		}
		const { id, query } = address;
		switch (address.page) {
			case 'board':
				return html`<zp-board-page .query=${query}></zp-board-page>`;
			case 'find':
				return html`<zp-find-page .query=${query}></zp-find-page>`;
			case 'items':
				return html`<zp-item-desk item-id=${id === undefined || id === 'new' ? '' : id} .query=${query}></zp-item-desk>`;
			case 'forms':
				return html`<zp-forms-page form-id=${id ?? ''} .query=${query}></zp-forms-page>`;
			case 'sittings':
				return html`<zp-sittings-page sitting-id=${id ?? ''} .query=${query}></zp-sittings-page>`;
			case 'reports':
				return html`<zp-report-page kind=${id ?? ''} .query=${query}></zp-report-page>`;
		}
	}

	private renderTold({ text, undo }: Told): TemplateResult {
		return html`<div>
			<span>${text}</span>
			${undo ? html`<button @click=${() => void this.undo()}>${words.frame.undo}</button>` : nothing}
			<button @click=${() => this.forget()}>${words.frame.dismiss}</button>
		</div>`;
	}
}

customElements.define('zp-frame', ZpFrame);
