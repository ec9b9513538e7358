import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Family } from '../../../item-bank/families/family.ts';
import { families, findFamily } from '../../../item-bank/families/index.ts';
import { makeItems } from '../../../item-bank/families/make-items.ts';
import type { ParameterRule, Parameters } from '../../../item-bank/families/parameters.ts';
import { printItemName } from '../../../item-bank/items/item-name.ts';
import type { Item } from '../../../item-bank/types.ts';
import { goTo, printAddress } from '../../address.ts';
import { ApiError } from '../../api-client.ts';
import { newItemId, saveItem } from '../../item-draft/item-client.ts';
import { readItem } from '../../item-draft/read-item.ts';
import { deskWords as words } from '../../messages/item-desk.ts';
import { controlStyles } from '../control-styles.ts';
import { printKey } from '../print-key.ts';
import '../zp-item.ts';

/** A variant on show. Its id is chosen here, so that saving it twice keeps it once. */
interface Variant {
	readonly id: string;
	readonly item: Item;
}

/** Makes items from a family: parameters by their rules, variants as they come out, and the chosen ones saved as drafts. */
export class ZpFamilyDesk extends LitElement {
	static override properties = {
		query: { attribute: false },
		family: { state: true },
		parameters: { state: true },
		seed: { state: true },
		variants: { state: true },
		chosen: { state: true },
		kept: { state: true },
		told: { state: true },
		isBusy: { state: true },
	};
	/** family names one; model and code narrow the list. */
	declare query: URLSearchParams;
	declare private family: Family | undefined;
	declare private parameters: Parameters;
	declare private seed: number;
	declare private variants: readonly Variant[];
	declare private chosen: readonly string[];
	declare private kept: readonly Variant[];
	/** Why there are no variants, or what went wrong. */
	declare private told: string;
	declare private isBusy: boolean;

	constructor() {
		super();
		this.parameters = {};
		this.seed = 1;
		this.variants = [];
		this.chosen = [];
		this.kept = [];
		this.told = '';
		this.isBusy = false;
	}

	static override styles = [
		controlStyles,
		css`
			:host { display: grid; grid-template-columns: 330px minmax(0, 1fr); font: 400 16px/24px var(--sans); }
			.choose { padding: 14px 18px 28px 28px; border-right: 2px solid var(--paper-line); }
			.show { padding: 14px 28px 56px; min-width: 0; }
			h2 { font-size: 20px; line-height: 28px; }
			h3 { font-size: 16px; line-height: 28px; }
			.field { display: grid; grid-template-columns: minmax(0, 1fr); margin: 6px 0; }
			.field > label { font-size: 14px; line-height: 19px; color: var(--ink-soft); }
			.field > label::first-letter { text-transform: uppercase; }
			.switch { display: flex; gap: 8px; align-items: flex-start; min-height: 32px; margin: 6px 0; font-size: 14px; line-height: 19px; }
			.hint { font-size: 13px; line-height: 18px; color: var(--ink-soft); margin: 0; }
			.bar { display: flex; flex-wrap: wrap; gap: 8px; align-items: center; position: sticky; top: 0; background: var(--paper); z-index: 1; padding: 7px 0; border-bottom: 1px solid var(--rule); }
			ol { list-style: none; margin: 0; padding: 0; }
			.variant { display: grid; grid-template-columns: 130px minmax(0, 1fr); gap: 14px; border-bottom: 1px solid var(--paper-line); padding: 14px 0; }
			.variant label { display: flex; gap: 8px; align-items: center; min-height: 28px; }
			.variant .key { font: 400 16px/24px var(--serif); }
			.kept a { display: inline-block; margin-right: 14px; }
			@media (max-width: 860px) {
				:host { grid-template-columns: minmax(0, 1fr); }
				.choose { border-right: 0; border-bottom: 2px solid var(--paper-line); padding: 14px; }
				.show { padding: 14px; }
				.variant { grid-template-columns: minmax(0, 1fr); gap: 4px; }
			}
		`,
	];

	protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
		if (!changed.has('query')) return;
		const fitting = this.listFamilies();
		const next = findFamily(this.query.get('family') ?? '') ?? fitting[0];
		if (next === this.family) return;
		this.family = next;
		this.parameters = {};
		this.make();
	}

	/** Families that make items for the cell named in the address. */
	private listFamilies(): readonly Family[] {
		const [model, code] = [this.query.get('model'), this.query.get('code')];
		return families.filter(
			({ given, standards }) =>
				(model === null || given.some((each) => each === model)) &&
				(code === null || standards.some((alignment) => alignment.code === code)),
		);
	}

	private make(): void {
		const { family, parameters, seed } = this;
		this.chosen = [];
		if (!family) {
			this.variants = [];
			this.told = words.familyNone;
			return;
		}
		const { items, problems } = makeItems({ family: family.id, count: 6, seed, parameters });
		this.variants = items.map((item) => ({ id: newItemId(), item }));
		this.told = problems.map(({ message }) => `${message}.`).join(' ');
	}

	private set(name: string, value: string | number | boolean): void {
		this.parameters = { ...this.parameters, [name]: value };
		this.make();
	}

	private takeSeed(seed: number): void {
		this.seed = seed;
		this.make();
	}

	private async keep(): Promise<void> {
		this.isBusy = true;
		const wanted = this.variants.filter(({ id }) => this.chosen.includes(id));
		const done: Variant[] = [];
		try {
			for (const variant of wanted) {
				await saveItem(variant.id, 0, variant.item);
				done.push(variant);
			}
			this.told = '';
		} catch (error) {
			if (!(error instanceof ApiError)) throw error;
			this.told = `${error.message} ${words.keptSome(done.length, wanted.length)}`;
		}
		this.kept = [...done, ...this.kept];
		this.chosen = this.chosen.filter((id) => !done.some((variant) => variant.id === id));
		this.isBusy = false;
	}

	protected override render(): TemplateResult {
		const { family } = this;
		const listed = this.listFamilies();
		const shown = family && !listed.includes(family) ? [family, ...listed] : listed;
		return html`
			<section class="choose" aria-label=${words.family}>
				<h2>${words.familyMakes}</h2>
				<div class="field"><label for="family">${words.family}</label>
					<select id="family" .value=${live(family?.id ?? '')} @change=${(event: Event) => this.chooseFamily(event)}>
						${shown.map(({ id, name }) => html`<option value=${id} ?selected=${id === family?.id}>${name}</option>`)}
					</select></div>
				${family ? html`<p class="hint">${family.sentence}</p>${Object.entries(family.parameters).map(([name, rule]) => this.renderRule(name, rule))}` : nothing}
				<div class="field"><label for="seed">${words.familySeed}</label>
					<input id="seed" type="number" min="1" step="1" .value=${String(this.seed)} @input=${({ target }: Event) => target instanceof HTMLInputElement && target.valueAsNumber >= 1 && this.takeSeed(Math.floor(target.valueAsNumber))} /></div>
				<button type="button" @click=${() => this.takeSeed(this.seed + 1)}>${words.familyOther}</button>
			</section>
			<section class="show" aria-label=${words.variants}>
				<div class="bar">
					<button type="button" class="primary" ?disabled=${this.isBusy || this.chosen.length === 0} @click=${() => void this.keep()}>${this.isBusy ? words.saving : words.keepChosen(this.chosen.length)}</button>
					<button type="button" @click=${() => this.chooseAll()}>${this.chosen.length === this.unkept().length ? words.chooseNone : words.chooseAll}</button>
				</div>
				<p role="status" class=${this.told === '' ? 'hint' : 'failure'}>${this.told}</p>
				<p class="kept" role="status">${this.kept.length === 0 ? nothing : html`${words.keptItems(this.kept.length)} ${this.kept.map(({ id, item }) => html`<a href=${printAddress('items', {}, id)}>${printItemName(item.name)}</a>`)}`}</p>
				<ol>${this.variants.map((variant, index) => this.renderVariant(variant, index + 1))}</ol>
			</section>`;
	}

	private unkept(): readonly Variant[] {
		return this.variants.filter(({ id }) => !this.kept.some((variant) => variant.id === id));
	}

	private chooseAll(): void {
		const all = this.unkept().map(({ id }) => id);
		this.chosen = this.chosen.length === all.length ? [] : all;
	}

	private chooseFamily({ target }: Event): void {
		if (!(target instanceof HTMLSelectElement)) return;
		const [model, code] = [this.query.get('model') ?? undefined, this.query.get('code') ?? undefined];
		goTo(printAddress('items', { family: target.value, model, code }, 'new'), false);
	}

	private renderRule(name: string, rule: ParameterRule): TemplateResult {
		const value = this.parameters[name] ?? rule.usual;
		const id = `parameter-${name}`;
		switch (rule.kind) {
			case 'integer':
				return html`<div class="field"><label for=${id}>${rule.sentence}</label>
					<input id=${id} type="number" step="1" min=${rule.least} max=${rule.most} .value=${String(value)} @input=${({ target }: Event) => target instanceof HTMLInputElement && Number.isInteger(target.valueAsNumber) && this.set(name, target.valueAsNumber)} /></div>`;
			case 'word':
				return html`<div class="field"><label for=${id}>${rule.sentence}</label>
					<select id=${id} .value=${live(String(value))} @change=${({ target }: Event) => target instanceof HTMLSelectElement && this.set(name, target.value)}>
						${rule.words.map((word) => html`<option value=${word} ?selected=${word === value}>${word.replaceAll('-', word.length < 4 ? '−' : ' ')}</option>`)}
					</select></div>`;
			case 'switch':
				return html`<label class="switch"><input type="checkbox" .checked=${live(value === true)} @change=${({ target }: Event) => target instanceof HTMLInputElement && this.set(name, target.checked)} /> ${rule.sentence}</label>`;
		}
	}

	private renderVariant({ id, item }: Variant, number: number): TemplateResult {
		const isKept = this.kept.some((variant) => variant.id === id);
		const isChosen = this.chosen.includes(id);
		const keys = readItem(item).parts.flatMap(({ key }) => (key ? [printKey(key)] : []));
		const choose = (): void => {
			this.chosen = isChosen ? this.chosen.filter((other) => other !== id) : [...this.chosen, id];
		};
		return html`<li class="variant">
			<div>
				<label><input type="checkbox" .checked=${live(isChosen)} ?disabled=${isKept} aria-label=${words.variantChoose(number)} @change=${choose} /> ${words.variant(number)}</label>
				<span class="key">${words.variantKey(keys.join('; '))}</span>
			</div>
			<zp-item .item=${item}></zp-item>
		</li>`;
	}
}

customElements.define('zp-family-desk', ZpFamilyDesk);
