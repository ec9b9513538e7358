import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { FamilyEntry, MadeItems, ModelType } from '../../item-bank/types.ts';
import { ApiError, bankChangedEvent } from '../api-client.ts';
import { callApi } from '../call-api.ts';
import { words } from '../messages/words.ts';
import { tell } from '../tell.ts';
import { controlStyles } from './control-styles.ts';
import { itemLineStyles } from './item-line.ts';
import './zp-wait.ts';

const most = 20;

/** Makes items of a family for one cell of the board: first shown as students meet them, then kept as drafts, with a way to take that back. Fires items-kept. */
export class ZpMakePanel extends LitElement {
	static override properties = {
		model: { type: String },
		framework: { type: String },
		edition: { type: String },
		codes: { attribute: false },
		families: { state: true },
		family: { state: true },
		count: { state: true },
		seed: { state: true },
		made: { state: true },
		failure: { state: true },
		isBusy: { state: true },
	};
	declare model: ModelType;
	declare framework: string;
	declare edition: string;
	/** Standards of the cell: the families offered make items for one of them. */
	declare codes: readonly string[];
	declare private families: readonly FamilyEntry[] | undefined;
	declare private family: string | undefined;
	declare private count: number;
	declare private seed: string;
	/** What would be kept. */
	declare private made: MadeItems | undefined;
	declare private failure: string | undefined;
	declare private isBusy: boolean;

	constructor() {
		super();
		this.codes = [];
		this.count = 5;
		this.seed = '1';
		this.isBusy = false;
	}

	static override styles = [
		controlStyles,
		itemLineStyles,
		css`
			:host { display: block; }
			summary { font-weight: 600; min-height: 28px; }
			.fields { display: flex; flex-wrap: wrap; gap: 7px 14px; margin: 7px 0; align-items: end; }
			label { display: grid; gap: 2px; font-size: 14px; }
			input { width: 6em; }
			p { margin: 7px 0; line-height: 24px; }
			zp-item { font-size: 16px; line-height: 24px; overflow-x: auto; }
		`,
	];

	protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
		if (
			['model', 'framework', 'edition', 'codes'].some((name) => changed.has(name) && changed.get(name) !== undefined)
		) {
			this.family = undefined;
			this.made = undefined;
			this.failure = undefined;
		}
	}

	/** Families that make items with the model of the cell for one of its standards. */
	private fitting(): readonly FamilyEntry[] {
		return (this.families ?? []).filter(
			({ given, standards }) =>
				given.includes(this.model) &&
				standards.some(
					({ framework, edition, code }) =>
						framework === this.framework && edition === this.edition && this.codes.includes(code),
				),
		);
	}

	/** The family chosen, and a standard of the cell that its items carry. */
	private chosen(): { readonly family: FamilyEntry; readonly standard: string } | undefined {
		const fitting = this.fitting();
		const family = fitting.find(({ id }) => id === this.family) ?? fitting[0];
		const standard = family?.standards.find(
			({ framework, edition, code }) =>
				framework === this.framework && edition === this.edition && this.codes.includes(code),
		)?.code;
		return family && standard !== undefined ? { family, standard } : undefined;
	}

	private async open(event: Event): Promise<void> {
		if (!(event.target instanceof HTMLDetailsElement) || !event.target.open || this.families) return;
		void import('./zp-item.ts');
		await this.attempt(async () => {
			this.families = await callApi('GET /api/families');
		});
	}

	private async make(keep: boolean): Promise<void> {
		const chosen = this.chosen();
		if (!chosen || this.isBusy) return;
		await this.attempt(async () => {
			const { family, standard } = chosen;
			const body = { family: family.id, count: this.count, seed: this.seed, standard, keep };
			const made = await callApi('POST /api/items/make', { body });
			this.made = keep ? undefined : made;
			if (keep) this.tellKept(made);
		});
	}

	private tellKept({ items }: MadeItems): void {
		const ids = items.flatMap(({ id, isNew }) => (id !== undefined && isNew === true ? [id] : []));
		window.dispatchEvent(new Event(bankChangedEvent));
		this.dispatchEvent(new CustomEvent('items-kept'));
		if (ids.length === 0) {
			tell(words.make.keptBefore);
			return;
		}
		tell(words.make.kept(ids.length), async () => {
			for (const id of ids) await callApi('POST /api/items/{id}/retire', { path: { id }, body: { version: 1 } });
			window.dispatchEvent(new Event(bankChangedEvent));
		});
	}

	private async attempt(work: () => Promise<void>): Promise<void> {
		this.isBusy = true;
		this.failure = undefined;
		try {
			await work();
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.failure = [error.message, ...error.problems.map(({ message }) => message)].join(' ');
		} finally {
			this.isBusy = false;
		}
	}

	private change(part: { readonly family?: string; readonly count?: number; readonly seed?: string }): void {
		Object.assign(this, part);
		this.made = undefined;
	}

	protected override render(): TemplateResult {
		return html`<details @toggle=${(event: Event) => void this.open(event)}>
			<summary>${words.make.title}</summary>
			${this.families ? this.renderChoice() : this.isBusy ? html`<zp-wait></zp-wait>` : nothing}
			<div role="alert">${this.failure === undefined ? nothing : html`<p class="failure">${this.failure}</p>`}</div>
		</details>`;
	}

	private renderChoice(): TemplateResult {
		const chosen = this.chosen();
		if (!chosen) return html`<p>${words.make.none}</p>`;
		const { family, standard } = chosen;
		const isCount = Number.isInteger(this.count) && this.count >= 1 && this.count <= most;
		return html`
			<div class="fields">
				<label>${words.make.family}
					<select @change=${(event: Event) => this.change({ family: valueIn(event) })}>
						${this.fitting().map(({ id, name }) => html`<option value=${id} ?selected=${id === family.id}>${name}</option>`)}
					</select>
				</label>
				<label>${words.make.count}
					<input type="number" min="1" max=${most} .value=${String(this.count)} aria-invalid=${String(!isCount)} aria-describedby="count-wrong" @input=${(event: Event) => this.change({ count: Number(valueIn(event)) })} />
				</label>
				<label>${words.make.seed}
					<input type="text" maxlength="40" .value=${this.seed} @input=${(event: Event) => this.change({ seed: valueIn(event) })} />
				</label>
				<button ?disabled=${!isCount || this.isBusy || this.seed === ''} @click=${() => void this.make(false)}>${words.make.show}</button>
			</div>
			<p id="count-wrong" class="short" ?hidden=${isCount}>${words.make.countWrong(most)}</p>
			<p class="soft">${family.sentence} ${words.make.standard(standard)}</p>
			${this.made ? this.renderMade(this.made) : nothing}
		`;
	}

	private renderMade({ items, problems }: MadeItems): TemplateResult {
		return html`
			${problems.map(({ message }) => html`<p class="failure">${message}</p>`)}
			<ol class="items">
				${items.map(({ item, id }) => html`<li><zp-item .item=${item}></zp-item>${id === undefined ? nothing : html`<p class="facts">${words.make.there}</p>`}</li>`)}
			</ol>
			${items.length === 0 ? nothing : html`<p><button class="primary" ?disabled=${this.isBusy} @click=${() => void this.make(true)}>${words.make.keep(items.length)}</button></p>`}
		`;
	}
}

function valueIn({ target }: Event): string {
	return target instanceof HTMLInputElement || target instanceof HTMLSelectElement ? target.value : '';
}

customElements.define('zp-make-panel', ZpMakePanel);
